package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An Origin is where a machine was made.
type Origin uint8

// The origins.
const (
	AnyOrigin   Origin = iota
	British            // and what was then the Empire
	American           // United States and Canada
	Continental        // Germany, France, Italy and their neighbours, and Japan
)

// String returns the origin in a word.
func (o Origin) String() string {
	switch o {
	case AnyOrigin:
		return "any"
	case British:
		return "British"
	case American:
		return "American"
	case Continental:
		return "continental"
	}
	return "unknown origin"
}

// A Prior says how likely each series is before anything is measured, as a
// weight for each thread of it. The zero Prior is flat, a weight of 1 for all.
// It is a small value that does not change; With returns another.
type Prior struct {
	weights [seriesEnd]float64
	set     bool
}

// The three grades of the priors, and what a series loses outside its years:
// not all, for a later owner may have put in any bolt.
const (
	usual     = 1
	sometimes = 0.3
	seldom    = 0.05

	outsideYears = 0.1
)

// How likely each series is on a machine from each place, and the years in
// which it was at home there; 0 is without end. All of it is common practice,
// no source, and the years are from memory. The Unified series start with the
// American ones of the same sizes, and the diameters, that went before them; the
// coarse metric series with the German standard DIN 13 of about 1919, which had
// its sizes, below 6 mm too, long before ISO took them over.
var priors = [seriesEnd]struct {
	british, american, continental float64
	from, to                       int
}{
	Special:          {usual, usual, usual, 0, 0},
	ISOCoarse:        {sometimes, sometimes, usual, 1919, 0},
	ISOFine:          {sometimes, sometimes, usual, 1947, 0},
	UNC:              {sometimes, usual, seldom, 1864, 0},
	UNF:              {sometimes, usual, seldom, 1911, 0},
	UNEF:             {seldom, sometimes, seldom, 1915, 0},
	UNS:              {seldom, sometimes, seldom, 1911, 1949},
	USS:              {seldom, usual, seldom, 1864, 1918},
	BSW:              {usual, seldom, seldom, 1841, 0},
	BSF:              {usual, seldom, seldom, 1908, 0},
	BA:               {usual, seldom, seldom, 1884, 0},
	BSC:              {usual, seldom, seldom, 1902, 0},
	Cycle20:          {sometimes, seldom, seldom, 1902, 0},
	Cycle20Whitworth: {sometimes, seldom, seldom, 1902, 0},
	CycleFittings:    {sometimes, sometimes, sometimes, 1895, 0},
	CEI:              {usual, seldom, seldom, 1902, 1938},
	Brass:            {usual, seldom, seldom, 0, 0},
	ME:               {sometimes, seldom, seldom, 1912, 0},
	BSPParallel:      {usual, seldom, usual, 1905, 0},
	BSPTaper:         {usual, seldom, usual, 1905, 0},
	NPT:              {seldom, usual, seldom, 1886, 0},
	SI:               {sometimes, seldom, usual, 1898, 1960},
	OldMetric:        {seldom, seldom, usual, 1898, 1965},
	Loewenherz:       {seldom, seldom, sometimes, 1892, 1925},
	SparkPlug:        {usual, usual, usual, 1902, 0},
	SparkPlugInch:    {sometimes, usual, seldom, 1908, 0},
}

// NewPrior returns a prior for a machine of the given origin, made some time
// from the one year to the other; two zeros leave the years open. A series is
// weighted 1 where it was usual, 0.3 where it was met sometimes and 0.05 where
// seldom, and a tenth of that outside its years. The weights are common
// practice, no source: they order candidates that the readings cannot part,
// and no more should be read into them.
//
// The error wraps units.ErrDomain for years the wrong way round.
func NewPrior(origin Origin, from, to int) (Prior, error) {
	if from > to {
		return Prior{}, fmt.Errorf("years %d to %d: want the earlier first: %w", from, to, units.ErrDomain)
	}
	if origin > Continental {
		return Prior{}, fmt.Errorf("origin %d: want one of the constants: %w", origin, units.ErrDomain)
	}
	p := Prior{set: true}
	for s := range p.weights {
		row := priors[s]
		p.weights[s] = [...]float64{usual, row.british, row.american, row.continental}[origin]
		late := row.to != 0 && from > row.to
		early := to != 0 && to < row.from
		if late || early {
			p.weights[s] *= outsideYears
		}
	}
	return p, nil
}

// Weight returns the weight of each thread of series s.
func (p Prior) Weight(s Series) float64 {
	if !p.set || s >= seriesEnd {
		return 1
	}
	return p.weights[s]
}

// With returns the prior with another weight for one series: 0 to rule it out,
// more than 1 where the rest of the machine is known to be in it. The error
// wraps units.ErrDomain for a series that is none or a weight below 0.
func (p Prior) With(s Series, weight float64) (Prior, error) {
	switch {
	case s >= seriesEnd:
		return Prior{}, fmt.Errorf("series %d: want one of the constants: %w", s, units.ErrDomain)
	case !(weight >= 0) || math.IsInf(weight, 0):
		return Prior{}, fmt.Errorf("weight %g for %v: want 0 or more: %w", weight, s, units.ErrDomain)
	}
	for i := range p.weights {
		p.weights[i] = p.Weight(Series(i))
	}
	p.set = true
	p.weights[s] = weight
	return p, nil
}
