package main

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// doubt remembers a question for a section, to be asked when it is written.
func (b *bench) doubt(section, text string) {
	if b.doubts == nil {
		b.doubts = map[string][]string{}
	}
	if text = sentenceOf(text); !slices.Contains(b.doubts[section], text) {
		b.doubts[section] = append(b.doubts[section], text)
	}
}

// meanOf is mean for lengths in which a gross slip is looked for first: of
// three readings and more the one that stands out is left out and named, of
// two that lie far apart both are asked about.
func (b *bench) meanOf(section, key string, of lengths, goodTo units.Length) length {
	if len(of) == 2 && goodTo > 0 && math.Abs(float64(of[0]-of[1])) > 6*math.Sqrt2*float64(goodTo) {
		b.doubt(section, fmt.Sprintf("%s: the two readings %v and %v lie further apart than they are good to. Is one of them a slip of the pen?", key, of[0], of[1]))
	}
	odd, err := ignition.FindOdd(of, goodTo)
	if err != nil || len(odd) == 0 {
		return mean(of, goodTo)
	}
	var kept lengths
	for i, l := range of {
		if !slices.ContainsFunc(odd, func(o ignition.OddFigure) bool { return o.Try == i+1 }) {
			kept = append(kept, l)
		}
	}
	for _, o := range odd {
		b.doubt(section, fmt.Sprintf("%s: %s It was left out.", key, sentenceOf(o.String())))
	}
	return mean(kept, goodTo)
}
