package main

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"rimstrip": main})
}

// The program as a user runs it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}

func demo(t *testing.T, args ...string) *options {
	t.Helper()
	o, err := parse(args, io.Discard)
	require.NoError(t, err)
	return o
}

// What is before a mark lies ahead of it in the direction of rotation.
func TestBeforeLiesAhead(t *testing.T) {
	for _, turns := range []string{"clockwise", "anticlockwise"} {
		o := demo(t, "-turns", turns)
		right := o.position(-30*units.Degree) - o.position(0)
		if o.turns == ignition.Clockwise != (right > 0) {
			t.Errorf("%s: 30° before lies %.1f mm to the right", turns, right)
		}
		if d := math.Abs(right) - o.along(30*units.Degree).Millimetres(); math.Abs(d) > 1e-9 {
			t.Errorf("%s: %.3f mm too far", turns, d)
		}
	}
}

// A strip laid round the rim closes on itself: its middle is half a thickness
// outside.
func TestStripClosesRoundTheRim(t *testing.T) {
	o := demo(t, "-diameter", "356mm", "-paper", "0.2mm")
	if got, want := o.length().Millimetres(), math.Pi*356.2; math.Abs(got-want) > 1e-9 {
		t.Errorf("%.6f mm, want %.6f", got, want)
	}
}

// Every mark is on some piece, and what two pieces share is the overlap.
func TestPiecesCoverTheStrip(t *testing.T) {
	for _, args := range [][]string{{}, {"-page", "Letter"}, {"-diameter", "60mm"}, {"-diameter", "1500mm"}, {"-printed", "97mm"}, {"-printed", "103mm"}} {
		o := demo(t, args...)
		for _, sheet := range papers {
			seen := 0
			for _, p := range o.pages(sheet) {
				for _, c := range p.texts {
					if strings.HasPrefix(c.text, "piece ") && strings.Contains(c.text, " of ") {
						seen++
					}
					if c.x < 5 || c.x > sheet.width-5 || c.y < 5 || c.y > sheet.height-5 {
						t.Errorf("%v: %q at %.0f, %.0f runs off the %s", args, c.text, c.x, c.y, sheet.name)
					}
				}
				for _, l := range p.lines {
					if max(l.x1, l.x2) > sheet.width-margin+0.01 || min(l.x1, l.x2) < margin-0.01 || max(l.y1, l.y2) > sheet.height-5 {
						t.Fatalf("%v: a line runs off the %s", args, sheet.name)
					}
				}
			}
			usable := (sheet.width - 2*margin) / o.scale
			if covered := usable*float64(seen) - overlap*float64(seen-1); covered < o.length().Millimetres() {
				t.Errorf("%v on %s: %d pieces cover %.1f of %.1f mm", args, sheet.name, seen, covered, o.length().Millimetres())
			}
		}
	}
}

// The PDF is the same to the byte every time.
func TestPDFIsReproducible(t *testing.T) {
	o := demo(t)
	var a, b bytes.Buffer
	for _, w := range []io.Writer{&a, &b} {
		require.NoError(t, writePDF(w, o.pages(o.sheet), o.sheet, "x"))
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("two PDFs of one strip differ")
	}
}

// dpi is how finely the print is measured.
const dpi = 1000

// TestRendered renders the strip as a printer would, at 1000 dots to the inch,
// and measures the degree lines on the picture. pdftoppm (poppler) does the
// rendering; where it is missing the SVG and PDF stand untested, so the build
// script sees to it that it is there and says so with BENCHSUMS_RENDER=1.
func TestRendered(t *testing.T) {
	pdftoppm, err := exec.LookPath("pdftoppm")
	if err != nil {
		if os.Getenv("BENCHSUMS_RENDER") != "" {
			t.Fatal(err)
		}
		t.Skip("pdftoppm is not installed, so there is nothing to render with; .ci/run installs it")
	}
	for _, printed := range []string{"100mm", "99.2mm"} {
		o := demo(t, "-printed", printed)
		dir := t.TempDir()
		pdf := filepath.Join(dir, "strip.pdf")
		var b bytes.Buffer
		require.NoError(t, writePDF(&b, o.pages(o.sheet), o.sheet, "strip"))
		require.NoError(t, os.WriteFile(pdf, b.Bytes(), 0o644))
		usable := (o.sheet.width - 2*margin) / o.scale
		step := usable - overlap
		rows := int((o.sheet.height - 2*margin - 22) / rowHeight)
		for i := range 5 {
			lines := darkLines(t, band(t, pdftoppm, pdf, o.sheet, i/rows+1, margin+22+rowHeight*float64(i%rows)+1))
			var want []float64
			for deg := -180; deg <= 180; deg++ {
				at := o.position(units.Angle(deg)*units.Degree) - step*float64(i)
				if at >= 0.5 && at <= min(usable, o.length().Millimetres()-step*float64(i))-0.5 {
					want = append(want, margin+at*o.scale)
				}
			}
			checkLinesAt(t, fmt.Sprintf("%s, piece %d", printed, i+1), lines, want)
		}
	}
}

// band renders a band of a page, through the shortest degree lines of a piece.
func band(t *testing.T, pdftoppm, pdf string, sheet paper, page int, y float64) string {
	t.Helper()
	out := filepath.Join(t.TempDir(), "band")
	cmd := exec.Command(pdftoppm, "-r", fmt.Sprint(dpi), "-gray", "-f", fmt.Sprint(page), "-l", fmt.Sprint(page), "-x", "0", "-y", fmt.Sprint(int(y*dpi/25.4)),
		"-W", fmt.Sprint(int(sheet.width*dpi/25.4)), "-H", "20", pdf, out)
	if msg, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, msg)
	}
	files, err := filepath.Glob(out + "*.pgm")
	if err != nil || len(files) != 1 {
		t.Fatalf("%v %v", files, err)
	}
	return files[0]
}

// checkLinesAt wants every degree line within 0.05 mm of its place, measured
// from the first to the last as well, so that no scale error hides.
func checkLinesAt(t *testing.T, printed string, lines, want []float64) {
	t.Helper()
	worst := 0.0
	for _, w := range want {
		nearest := math.Inf(1)
		for _, l := range lines {
			if math.Abs(l-w) < math.Abs(nearest) {
				nearest = l - w
			}
		}
		worst = max(worst, math.Abs(nearest))
	}
	if !(worst <= 0.05) || len(want) < 10 {
		t.Errorf("printed %s: the worst of %d degree lines lies %.3f mm off", printed, len(want), worst)
	}
	t.Logf("printed %s: the worst of %d degree lines lies %.3f mm off", printed, len(want), worst)
}

// darkLines returns the middles of the upright lines of a picture, in mm.
func darkLines(t *testing.T, name string) []float64 {
	t.Helper()
	img := readPGM(t, name)
	y := img.Rect.Dy() / 2
	var middles []float64
	sum, weight := 0.0, 0.0
	for x := range img.Rect.Dx() {
		ink := 255 - float64(img.GrayAt(x, y).Y)
		if ink > 20 {
			sum, weight = sum+ink*(float64(x)+0.5), weight+ink
			continue
		}
		if weight > 0 {
			middles = append(middles, sum/weight*25.4/dpi)
			sum, weight = 0, 0
		}
	}
	return middles
}

// readPGM reads a grey picture as poppler writes it.
func readPGM(t *testing.T, name string) *image.Gray {
	t.Helper()
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	var w, h, most int
	if _, err := fmt.Sscanf(string(data[:min(len(data), 40)]), "P5\n%d %d\n%d\n", &w, &h, &most); err != nil {
		t.Fatal(err)
	}
	img := image.NewGray(image.Rect(0, 0, w, h))
	pixels := data[len(data)-w*h:]
	for i, p := range pixels {
		img.SetGray(i%w, i/w, color.Gray{Y: p})
	}
	return img
}

func FuzzMark(f *testing.F) {
	for _, s := range []string{"spark=25.9° before", "a = 1 deg 30' after", "=", "x=5", "x=200° after"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var m markFlag
		if err := m.Set(text); err == nil && (len(m) != 1 || m[0].name == "" || !(math.Abs(m[0].after.Degrees()) <= 180)) {
			t.Errorf("%q was read as %v", text, m)
		}
	})
}
