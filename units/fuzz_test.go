package units

import (
	"errors"
	"math"
	"testing"
	"unicode/utf8"
)

// Texts that have broken parsers before, and the shapes that are read.
var seeds = []string{
	"12.7 mm", `1 3/16"`, "1-3/16 in", "⅜ in", "5 ft 6 1/2 in", "28° 30′ 15″", "28d30m", "12,7 mm", "1,000 mm", "12.7", "",
	"1e400 mm", "1e-400 in", "-0 mm", "±", "84.5 ± 0.5 mm", "(84.5 ± 0.5) mm", "84.53(12) mm", "84.5 mm (u 0.3 mm, dof 4)",
	"84.5 mm ± 0.6 mm (k=2)", "84.5 mm ± 1 %", "1 pint (imp)", "14.7 lbf/sq. in.", "60 N·mm", "11.5e-6 K⁻¹", "9.5:1", "10 %",
	"20 °C ± 2 °C", "-459.67 °F", "3000 1/min", "(", ")", "()", "(u", "84.5 mm (u )", "1/", "1 1/", "1 1/0 in", "\xff", "1\xff mm", "12 m^-1", "12 -1",
	"5'6\"", "NaN", "inf mm", "1 - 2 mm", "\u2007", "12\u00a0mm", "- mm", "+/-", "1+-2 mm",
	"3 to 4 mm", "3–4 mm", "1-7/8 - 2 in", "3...4 mm", "28° 30′ to 29°", "9 to 10", "-3--1 mm", "3±1 mm",
}

// checkParser sees that parse never panics, that a refusal is a ParseError with
// its place in the text, and that what was read is finite and comes back.
func checkParser(t *testing.T, text string, parse func(string) (float64, error), marshal func(float64) ([]byte, error)) {
	v, err := parse(text)
	if err != nil {
		var e *ParseError
		if !errors.As(err, &e) {
			t.Fatalf("%q: %v is no ParseError", text, err)
		}
		if e.Pos < 0 || e.Pos > len(e.Text) || e.Msg == "" || e.Err == nil || e.Text != text {
			t.Fatalf("%q: bad error %#v", text, e)
		}
		if utf8.ValidString(text) && !utf8.ValidString(e.Error()) {
			t.Fatalf("%q: the message %q is not text", text, e.Error())
		}
		return
	}
	if math.IsNaN(v) || math.IsInf(v, 0) {
		t.Fatalf("%q was read as %g", text, v)
	}
	out, err := marshal(v)
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	back, err := parse(string(out))
	if err != nil || back != v {
		t.Fatalf("%q is %g, written %q, read back %g, %v", text, v, out, back, err)
	}
	again, err := marshal(back)
	if err != nil || string(again) != string(out) {
		t.Fatalf("%q is written %q and then %q, %v", text, out, again, err)
	}
}

func fuzzKind(f *testing.F, k *kind) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) { checkParser(t, text, k.parse, k.marshal) })
}

func FuzzParseLength(f *testing.F)             { fuzzKind(f, &lengthKind) }
func FuzzParseAngle(f *testing.F)              { fuzzKind(f, &angleKind) }
func FuzzParseArea(f *testing.F)               { fuzzKind(f, &areaKind) }
func FuzzParseVolume(f *testing.F)             { fuzzKind(f, &volumeKind) }
func FuzzParseMass(f *testing.F)               { fuzzKind(f, &massKind) }
func FuzzParseForce(f *testing.F)              { fuzzKind(f, &forceKind) }
func FuzzParseTorque(f *testing.F)             { fuzzKind(f, &torqueKind) }
func FuzzParsePressure(f *testing.F)           { fuzzKind(f, &pressureKind) }
func FuzzParseTemperature(f *testing.F)        { fuzzKind(f, &temperatureKind) }
func FuzzParseAngularSpeed(f *testing.F)       { fuzzKind(f, &angularSpeedKind) }
func FuzzParseTorsionalStiffness(f *testing.F) { fuzzKind(f, &torsionalStiffnessKind) }
func FuzzParseExpansion(f *testing.F)          { fuzzKind(f, &expansionKind) }
func FuzzParseRatio(f *testing.F)              { fuzzKind(f, &ratioKind) }

// Every kind at once, for those without a target of their own.
func FuzzParseEveryKind(f *testing.F) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, e := range everyKind {
			checkParser(t, text, e.kind.parse, e.kind.marshal)
		}
	})
}

func FuzzParseReading(f *testing.F) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		checkReading[Length](t, text)
		checkReading[Angle](t, text)
		checkReading[Temperature](t, text)
		checkReading[Ratio](t, text)
	})
}

func checkReading[Q Quantity](t *testing.T, text string) {
	r, err := ParseReading[Q](text)
	if err != nil {
		var e *ParseError
		if !errors.As(err, &e) || e.Pos < 0 || e.Pos > len(e.Text) || e.Text != text {
			t.Fatalf("%q: bad error %#v", text, err)
		}
		return
	}
	if !(r.Std >= 0) || math.IsInf(float64(r.Std), 0) || !(r.DoF >= 0) {
		t.Fatalf("%q was read as %#v", text, r)
	}
	out, err := r.MarshalText()
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	back, err := ParseReading[Q](string(out))
	if err != nil || back != r {
		t.Fatalf("%q is %#v, written %q, read back %#v, %v", text, r, out, back, err)
	}
}

// Folding is idempotent: what it gives is its own spelling.
func FuzzFoldUnit(f *testing.F) {
	for _, e := range everyKind {
		for _, s := range e.kind.scales {
			f.Add(s.name)
			f.Add(s.aliases[len(s.aliases)-1])
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		once, ok := foldUnit(text)
		if !ok {
			return
		}
		if twice, ok := foldUnit(once); !ok || twice != once {
			t.Fatalf("%q folds to %q and that to %q, %v", text, once, twice, ok)
		}
	})
}
