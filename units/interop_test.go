package units

import (
	"encoding/json"
	"flag"
	"io"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/pelletier/go-toml/v2"
)

// A TOML decoder puts a bare number straight into a type that is a float64
// underneath, as metres, without asking UnmarshalText: 60 millimetres become
// 60 metres and nobody is told. That is why files are decoded into Reading,
// which is a struct and refuses.
func TestTOMLBareNumber(t *testing.T) {
	var trap struct{ Stroke Length }
	if err := toml.Unmarshal([]byte("stroke = 60"), &trap); err != nil {
		t.Skipf("the decoder has learnt to refuse: %v", err)
	}
	if trap.Stroke != 60*Metre {
		t.Errorf("a bare 60 became %v, expected the 60 m of the trap", trap.Stroke)
	}
	for _, text := range []string{"stroke = 60", "stroke = 60.0", "stroke = true", "stroke = [60]", "stroke = '60'"} {
		var job struct{ Stroke Reading[Length] }
		if err := toml.Unmarshal([]byte(text), &job); err == nil {
			t.Errorf("%s was read as %v", text, job.Stroke)
		}
	}
	var job struct{ Stroke Reading[Length] }
	if err := toml.Unmarshal([]byte("stroke = '60'"), &job); err == nil || !strings.Contains(err.Error(), "which unit? write 60 mm or 60 in or 60 thou") {
		t.Errorf("a number in quotes: %v", err)
	}
}

func TestTOML(t *testing.T) {
	type job struct {
		Stroke Reading[Length]
		Rim    []Reading[Length]
		Shop   Reading[Temperature]
		Lean   Angle
		Slip   Reading[float64]
	}
	const text = `
stroke = "60 mm ± 0.1 mm"
rim = ["152 mm", "6 in ± 1/64 in"]
shop = "20 °C ± 2 °C"
lean = "12°"
slip = "0.15 ± 0.02"
`
	var got job
	if err := toml.Unmarshal([]byte(text), &got); err != nil {
		t.Fatal(err)
	}
	want := job{
		Stroke: PlusMinus(60*Millimetre, 0.1*Millimetre),
		Rim:    []Reading[Length]{Exact(152 * Millimetre), PlusMinus(6*Inch, Inch/64)},
		Shop:   PlusMinus(Celsius(20), 2),
		Lean:   12 * Degree,
		Slip:   PlusMinus(0.15, 0.02),
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("decoded (-want +got):\n%s", diff)
	}
	out, err := toml.Marshal(got)
	if err != nil {
		t.Fatal(err)
	}
	var back job
	if err := toml.Unmarshal(out, &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(got, back); diff != "" {
		t.Errorf("there and back (-want +got):\n%s", diff)
	}
}

func TestJSON(t *testing.T) {
	type card struct {
		Bore   Length          `json:"bore"`
		Timing Reading[Angle]  `json:"timing"`
		Plug   map[Length]bool `json:"plug,omitempty"`
	}
	in := card{35 * Millimetre, WithStd(28*Degree, 0.5*Degree), map[Length]bool{14 * Millimetre: true}}
	out, err := json.Marshal(in)
	if err != nil {
		t.Fatal(err)
	}
	if want := `{"bore":"35 mm","timing":"28° (u 0.5°)","plug":{"14 mm":true}}`; string(out) != want {
		t.Errorf("got %s, want %s", out, want)
	}
	var back card
	if err := json.Unmarshal(out, &back); err != nil || !cmp.Equal(in, back) {
		t.Errorf("got %v, %v, want %v", back, err, in)
	}
	for _, text := range []string{`{"bore": 35}`, `{"bore": "35"}`, `{"timing": 28}`} {
		if err := json.Unmarshal([]byte(text), new(card)); err == nil {
			t.Errorf("%s was read", text)
		}
	}
}

func TestFlag(t *testing.T) {
	var bore Length
	var rim Reading[Length]
	fs := flag.NewFlagSet("sum", flag.ContinueOnError)
	fs.SetOutput(io.Discard)
	fs.TextVar(&bore, "bore", 35*Millimetre, "bore")
	fs.TextVar(&rim, "rim", PlusMinus(152*Millimetre, 0.5*Millimetre), "rim `diameter`")
	if fs.Lookup("bore").DefValue != "35 mm" || fs.Lookup("rim").DefValue != "152 mm ± 0.5 mm" {
		t.Errorf("defaults: %q, %q", fs.Lookup("bore").DefValue, fs.Lookup("rim").DefValue)
	}
	if err := fs.Parse([]string{"-bore", `1 3/8"`, "-rim", "6 in ± 1/64 in"}); err != nil {
		t.Fatal(err)
	}
	if bore != 1.375*Inch || rim != PlusMinus(6*Inch, Inch/64) {
		t.Errorf("got %v, %v", bore, rim)
	}
	if err := fs.Parse([]string{"-bore", "35"}); err == nil || !strings.Contains(err.Error(), "which unit? write 35 mm or 35 in or 35 thou") {
		t.Errorf("a bare number: %v", err)
	}
}
