package fits

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A Material is what the sums on press fits and heat need of one. A property that
// is 0 is not known, and a sum that needs it says so. Where a source gives a range
// the property is the lower end and the field that ends in Most the upper; Most is
// 0 where there is one figure.
type Material struct {
	Name, Condition          string
	Modulus, ModulusMost     units.Pressure // Young's modulus E
	Poisson                  float64        // Poisson's ratio ν
	Expansion, ExpansionMost units.Expansion
	Yield, YieldMost         units.Pressure // yield or 0.2 % proof stress; grey iron has none
	Tensile                  units.Pressure
	Source                   string
}

// String writes the name and the condition.
func (m Material) String() string {
	if m.Condition == "" {
		return m.Name
	}
	return m.Name + " (" + m.Condition + ")"
}

// Materials returns every row of the table of materials, as its source has it: most
// sources give some of the properties only, and some give a range.
func Materials() []Material {
	var all []Material
	for i := range materialRows {
		all = append(all, materialAt(i))
	}
	return all
}

func materialAt(i int) Material {
	r := materialRows[i]
	m := Material{Name: r.name, Condition: r.condition, Poisson: r.poisson, Source: r.source}
	m.Modulus, m.ModulusMost = spread(r.modulus, units.Gigapascal)
	m.Expansion, m.ExpansionMost = spread(r.expansion, units.MicrometrePerMetreKelvin)
	m.Yield, m.YieldMost = spread(r.yield, units.Megapascal)
	m.Tensile = units.Pressure(r.tensile) * units.Megapascal
	return m
}

// spread gives a span its unit.
func spread[Q units.Quantity](s span, unit Q) (low, most Q) {
	if s.high > s.low {
		most = Q(s.high) * unit
	}
	return Q(s.low) * unit, most
}

// FindMaterial returns a material of the table by name and condition: "steel",
// "A36". An empty condition takes the one that the table of usual materials below
// has, with what the named source leaves out filled in from others:
//
//	steel               E, yield: A36; ν 0.29; expansion of A36 and 1020
//	grey cast iron      ASTM 20; expansion of G1800 to G4000
//	cast aluminium      LM25-M, sand; ν of any aluminium
//	aluminium           6061-T6; expansion of 6061
//	phosphor bronze     C51000, half hard; ν of manganese bronze
//	manganese bronze    C86100
//	red brass           C83400, the nearest here to gunmetal
//	brass               C26000, hard; expansion of C26000
//
// Source says what was taken from where. A casting of a forgotten maker may be
// anything: grey iron alone runs from 62 to 159 GPa. The error wraps units.ErrDomain
// and lists what there is.
func FindMaterial(name, condition string) (Material, error) {
	if condition == "" {
		for _, u := range usualMaterials {
			if u.name == name {
				return u.material(), nil
			}
		}
	}
	for i, r := range materialRows {
		if r.name == name && r.condition == condition {
			return materialAt(i), nil
		}
	}
	return Material{}, fmt.Errorf("material %q, condition %q: want one of %q: %w", name, condition, materialNames(), units.ErrDomain)
}

func materialNames() []string {
	var names []string
	for _, m := range Materials() {
		if s := m.String(); !slices.Contains(names, s) {
			names = append(names, s)
		}
	}
	return names
}

// usualMaterials take each property from a row of the table.
var usualMaterials = [...]usual{
	{"steel", "A36", "A36, second source", "A36 and 1020", "steel"},
	{"grey cast iron", "ASTM 20", "ASTM 20", "G1800, G3000, G4000", "grey cast iron"},
	{"cast aluminium", "LM25-M, sand", "any", "LM25-M, sand", "aluminium"},
	{"aluminium", "6061-T6", "6061-T6", "6061", "aluminium"},
	{"phosphor bronze", "C51000, half hard", "C86100, cast", "C51000, half hard", "manganese bronze"},
	{"manganese bronze", "C86100, cast", "C86100, cast", "C86100, cast", "manganese bronze"},
	{"red brass", "C83400, cast", "C83400, cast", "C83400, cast", "red brass"},
	{"brass", "C26000, hard", "C26000, hard", "C26000", "brass"},
}

type usual struct {
	name                     string
	base, poisson, expansion string // conditions
	poissonOf                string // the material whose Poisson's ratio it is
}

func (u usual) material() Material {
	m, _ := FindMaterial(u.name, u.base)
	nu, _ := FindMaterial(u.poissonOf, u.poisson)
	alpha, _ := FindMaterial(u.name, u.expansion)
	m.Poisson, m.Expansion, m.ExpansionMost = nu.Poisson, alpha.Expansion, alpha.ExpansionMost
	if nu.Source != m.Source {
		m.Source += "; ν of " + nu.String() + " from " + nu.Source
	}
	if alpha.Source != m.Source && alpha.Condition != m.Condition {
		m.Source += "; expansion of " + alpha.String() + " from " + alpha.Source
	}
	return m
}

// A Friction is the coefficient of adhesion of a press or shrink fit, from Low to
// High; the two are equal where the source gives one figure.
type Friction struct {
	Pair, Condition string
	Low, High       float64
	Shrink          bool // for parts shrunk together; else pressed
	Source          string
}

// Frictions returns the published coefficients. A joint that must hold is reckoned
// with the low one of breaking loose, the press with the high one of sliding on;
// an oiled joint holds less than half of a clean one.
//
// Sources: DIN 7190-1:2017, 5.3, by a secondary source, for shrink fits; DIN
// 7190:2001 from memory for pressed fits, to be verified before anything rests on it.
func Frictions() []Friction {
	var all []Friction
	for _, r := range adhesionRows {
		all = append(all, Friction{r.pair, r.condition, r.low, r.high, r.shrink, r.source})
	}
	return all
}
