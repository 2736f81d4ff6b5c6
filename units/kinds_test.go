package units

import (
	"fmt"
	"go/ast"
	"go/constant"
	goparser "go/parser"
	"go/token"
	"go/types"
	"math"
	"os"
	"strings"
	"testing"

	"gonum.org/v1/gonum/unit"
)

// everyKind lists the tables of all the types, with a value of each type for
// what only a value can be asked.
var everyKind = []struct {
	kind  *kind
	value Amount
}{
	{&lengthKind, Length(2)},
	{&angleKind, Angle(2)},
	{&areaKind, Area(2)},
	{&volumeKind, Volume(2)},
	{&massKind, Mass(2)},
	{&forceKind, Force(2)},
	{&torqueKind, Torque(2)},
	{&pressureKind, Pressure(2)},
	{&speedKind, Speed(2)},
	{&angularSpeedKind, AngularSpeed(2)},
	{&accelerationKind, Acceleration(2)},
	{&angularAccelerationKind, AngularAcceleration(2)},
	{&temperatureKind, Temperature(2)},
	{&temperatureDifferenceKind, TemperatureDifference(2)},
	{&stiffnessKind, Stiffness(2)},
	{&torsionalStiffnessKind, TorsionalStiffness(2)},
	{&energyKind, Energy(2)},
	{&powerKind, Power(2)},
	{&inertiaKind, MomentOfInertia(2)},
	{&densityKind, Density(2)},
	{&flowKind, Flow(2)},
	{&expansionKind, Expansion(2)},
	{&timeAreaKind, TimeArea(2)},
	{&specificTimeAreaKind, SpecificTimeArea(2)},
	{&ratioKind, Ratio(2)},
}

// No two units of a kind, no unit and trap, share a spelling, and every
// spelling is in the form in which it is looked for.
func TestSpellings(t *testing.T) {
	for _, e := range everyKind {
		seen := map[string]string{}
		see := func(spelling, of string) {
			if was, ok := seen[spelling]; ok && was != of {
				t.Errorf("%s: %q is both %s and %s", e.kind.name, spelling, was, of)
			}
			seen[spelling] = of
		}
		for _, s := range e.kind.scales {
			if s.aliases[0] != s.name {
				t.Errorf("%s: the first spelling of %q is %q", e.kind.name, s.name, s.aliases[0])
			}
			folded, ok := foldUnit(s.name)
			if ok {
				see(folded, s.goName)
			}
			for _, a := range s.aliases[1:] {
				see(a, s.goName)
				if f, ok := foldUnit(a); (!ok || f != a) && !strings.HasPrefix(a, ":") && a != ": 1" {
					t.Errorf("%s: spelling %q of %s folds to %q and is never found", e.kind.name, a, s.goName, f)
				}
			}
			if got, ok := e.kind.find(folded); folded != "" && (!ok || got.goName != s.goName) {
				t.Errorf("%s: the name %q folds to %q, which is not found as %s", e.kind.name, s.name, folded, s.goName)
			}
		}
		for _, tr := range e.kind.traps {
			for _, a := range tr.spellings {
				see(a, "a trap")
				if f, _ := foldUnit(a); f != a && a != "mPa" {
					t.Errorf("%s: trap %q folds to %q and never springs", e.kind.name, a, f)
				}
				if _, ok := e.kind.find(a); ok {
					t.Errorf("%s: %q is a trap and a unit", e.kind.name, a)
				}
			}
		}
	}
}

// The rungs of a ladder fit one another and the units of the kind.
func TestLadders(t *testing.T) {
	for _, e := range everyKind {
		for i, r := range e.kind.ladder {
			for _, name := range r.names {
				if f, ok := foldUnit(name); (!ok || f != name) && name != "′" && name != "″" {
					t.Errorf("%s: rung %q folds to %q", e.kind.name, name, f)
				}
				if s, ok := e.kind.find(name); ok && s.factor != r.factor {
					t.Errorf("%s: %s is %g on the ladder and %g alone", e.kind.name, name, r.factor, s.factor)
				}
			}
			if i == 0 {
				continue
			}
			if above := e.kind.ladder[i-1].factor / r.factor; math.Abs(above-r.limit) > 1e-12*above {
				t.Errorf("%s: %g of %s make one of %s, the ladder says %g", e.kind.name, above, r.names[0], e.kind.ladder[i-1].names[0], r.limit)
			}
		}
	}
}

// The factor of every scale is the constant that carries its name, and every
// constant of the package is a scale or one that text never means.
func TestScalesAreTheConstants(t *testing.T) {
	constants := packageConstants(t)
	textNever := map[string]bool{
		"USInch1893": true, "BritishInch1898": true, "BritishInch1922": true, "USSurveyFoot": true, "Millilitre1901": true,
	}
	for _, e := range everyKind {
		for _, s := range e.kind.scales {
			if s.goName == "Celsius" || s.goName == "Fahrenheit" { // functions
				continue
			}
			c, ok := constants[s.goName]
			if !ok {
				t.Errorf("%s: no constant %s", e.kind.name, s.goName)
				continue
			}
			if c.typ != e.kind.goName || c.value != s.factor {
				t.Errorf("%s: %s is %s(%g), the scale has %g", e.kind.name, s.goName, c.typ, c.value, s.factor)
			}
			delete(constants, s.goName)
		}
	}
	for name := range constants {
		if !textNever[name] {
			t.Errorf("constant %s is no scale: it cannot be read from text", name)
		}
	}
}

type typedConstant struct {
	typ   string
	value float64
}

// packageConstants type-checks the package and returns its exported constants
// of the quantity types.
func packageConstants(t *testing.T) map[string]typedConstant {
	t.Helper()
	set := token.NewFileSet()
	entries, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	var files []*ast.File
	for _, e := range entries {
		if name := e.Name(); strings.HasSuffix(name, ".go") && !strings.HasSuffix(name, "_test.go") {
			f, err := goparser.ParseFile(set, name, nil, goparser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, f)
		}
	}
	conf := types.Config{Error: func(error) {}}
	pkg, _ := conf.Check("units", set, files, nil) // nothing is imported: constants need nothing
	found := map[string]typedConstant{}
	for _, name := range pkg.Scope().Names() {
		c, ok := pkg.Scope().Lookup(name).(*types.Const)
		if !ok || !c.Exported() {
			continue
		}
		named, ok := c.Type().(*types.Named)
		if basic, isBasic := c.Type().Underlying().(*types.Basic); !ok || !isBasic || basic.Kind() != types.Float64 {
			continue
		}
		v, _ := constant.Float64Val(constant.ToFloat(c.Val()))
		found[name] = typedConstant{named.Obj().Name(), v}
	}
	return found
}

// gonum gets the dimensions and the SI value.
func TestUniter(t *testing.T) {
	newton := unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 1, unit.TimeDim: -2}
	for _, c := range []struct {
		got  unit.Uniter
		want unit.Uniter
	}{
		{Length(3), unit.Length(3)},
		{Angle(3), unit.Angle(3)},
		{Area(3), unit.New(3, unit.Dimensions{unit.LengthDim: 2})},
		{Volume(3), unit.New(3, unit.Dimensions{unit.LengthDim: 3})},
		{Mass(3), unit.Mass(3)},
		{Force(3), unit.New(3, newton)},
		{Torque(3), unit.Torque(3)},
		{Pressure(3), unit.Pressure(3)},
		{Speed(3), unit.Velocity(3)},
		{AngularSpeed(3), unit.New(3, unit.Dimensions{unit.AngleDim: 1, unit.TimeDim: -1})},
		{Acceleration(3), unit.Acceleration(3)},
		{AngularAcceleration(3), unit.New(3, unit.Dimensions{unit.AngleDim: 1, unit.TimeDim: -2})},
		{Temperature(3), unit.Temperature(3)},
		{TemperatureDifference(3), unit.Temperature(3)},
		{Stiffness(3), unit.New(3, unit.Dimensions{unit.MassDim: 1, unit.TimeDim: -2})},
		{Energy(3), unit.Energy(3)},
		{Power(3), unit.Power(3)},
		{MomentOfInertia(3), unit.New(3, unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2})},
		{Density(3), unit.New(3, unit.Dimensions{unit.MassDim: 1, unit.LengthDim: -3})},
		{Flow(3), unit.New(3, unit.Dimensions{unit.LengthDim: 3, unit.TimeDim: -1})},
		{Expansion(3), unit.New(3, unit.Dimensions{unit.TemperatureDim: -1})},
		{TimeArea(3), unit.New(3, unit.Dimensions{unit.TimeDim: 1, unit.LengthDim: 2})},
		{SpecificTimeArea(3), unit.New(3, unit.Dimensions{unit.TimeDim: 1, unit.LengthDim: -1})},
		{Ratio(3), unit.Dimless(3)},
	} {
		if got, want := c.got.Unit(), c.want.Unit(); !unit.DimensionsMatch(got, want) || got.Value() != 3 {
			t.Errorf("%T: %v, want %v", c.got, got, want)
		}
	}
	rate := unit.New(1, unit.Dimensions{}).Mul(Torque(6)).Div(Angle(2))
	if !unit.DimensionsMatch(rate, TorsionalStiffness(3)) || rate.Value() != 3 {
		t.Errorf("torque by angle is %v, torsional stiffness %v", rate, TorsionalStiffness(3).Unit())
	}
}

// What the units of one kind are called in other types must be said to be of
// those: every kind but the plain number is known to otherKind.
func TestOtherKindKnowsAll(t *testing.T) {
	for _, e := range everyKind {
		if e.kind == &ratioKind || e.kind == &temperatureDifferenceKind {
			continue
		}
		for _, s := range e.kind.scales {
			folded, _ := foldUnit(s.name)
			if _, ok := otherKind(folded); !ok {
				t.Errorf("%s: %q is not known as a unit of anything", e.kind.name, s.name)
			}
		}
	}
}

// The accessors agree with the constants: l.Millimetres() is l/Millimetre.
func TestGoSyntaxNamesTheType(t *testing.T) {
	for _, e := range everyKind {
		want := fmt.Sprintf("2*units.%s", e.kind.base.goName)
		if got := fmt.Sprintf("%#v", e.value); got != want {
			t.Errorf("%T: %%#v gives %s, want %s", e.value, got, want)
		}
		if want := "units." + e.kind.goName; fmt.Sprintf("%T", e.value) != want {
			t.Errorf("%T: the table says %s", e.value, want)
		}
		if e.kind.base.factor != 1 || e.kind.base.zero != 0 {
			t.Errorf("%s: the base %s is not the SI unit", e.kind.name, e.kind.base.name)
		}
		if e.value.kind() != e.kind {
			t.Errorf("%T: has the table of %s", e.value, e.value.kind().name)
		}
	}
}
