package adaptersheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

const mm = units.Millimetre

// A size is one that is turned: its letter on the drawing, its limits, and how
// finely they are written.
type size struct {
	letter, name string
	min, max     length
	fine         bool // to a micrometre and a tenth of a thou, else to a hundredth and a thou
	why          string
}

// work is the adapter as far as it has been worked out.
type work struct {
	file *jobfile.File
	r    *Readings
	s    *sheet.Section

	spigot  spigot
	passage passage
	flange  flange
	sizes   []size
}

// Section works out the adapter. Errors name the line and the key of the file.
func Section(file *jobfile.File, r *Readings) (*sheet.Section, error) {
	if err := r.check(file); err != nil {
		return nil, err
	}
	w := &work{file: file, r: r, s: &sheet.Section{Number: 11, Key: "adapter", Title: "An adapter from the flange to the split collar"}}
	for _, step := range [...]func() error{w.fitSpigot, w.heat, w.closeSlot, w.grip, w.plan} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	w.table()
	w.order()
	w.s.Pictures = append(w.s.Pictures, w.drawing(), w.zones())
	w.s.Cautions = append(w.s.Cautions,
		"Air that leaks in past a joint weakens the mixture and overheats the engine: try the joints with the engine at rest, never with petrol or a flame.",
		"Petrol near: fuel off, tank away and the parts dry before any drilling, filing or warming. Eye protection, no gloves and no rag near the turning lathe, key out of the chuck; long stringy swarf is pulled with a hook. These sums do not replace the maker's instructions, local rules or a licensed fitter.")
	return w.s, nil
}

func (w *work) figure(key, name string, r reading) {
	w.s.Figures = append(w.s.Figures, sheet.Of("adapter."+key, name, r, sheet.Millimetre, sheet.Inch))
}

// plan works out what follows from the spigot.
func (w *work) plan() error {
	for _, step := range [...]func() error{w.planFlange, w.planNeck, w.planPassage, w.checkBar} {
		if err := step(); err != nil {
			return err
		}
	}
	return nil
}

// table lists every size with its limits in millimetres and inches.
func (w *work) table() {
	slices.SortFunc(w.sizes, func(a, b size) int { return strings.Compare(a.letter, b.letter) })
	t := sheet.Table{Title: "What to turn: measure within these limits", Rows: [][]string{{"", "size", "mm", "in", "why"}}}
	for _, z := range w.sizes {
		t.Rows = append(t.Rows, []string{z.letter, z.name, limits(z, sheet.Millimetre), limits(z, sheet.Inch), z.why})
	}
	w.s.Tables = append(w.s.Tables, t)
}

// limits writes the limits of a size drawn in to whole steps, so that a part
// that keeps to them keeps to the size.
func limits(z size, u sheet.Unit[length]) string {
	step, decimals := 0.01, 2
	switch {
	case u == sheet.Inch && z.fine:
		step, decimals = 0.0001, 4
	case u == sheet.Inch:
		step, decimals = 0.001, 3
	case z.fine:
		step, decimals = 0.001, 3
	}
	lo := math.Ceil(float64(z.min/u.One)/step-1e-6) * step
	hi := math.Floor(float64(z.max/u.One)/step+1e-6) * step
	if hi <= lo {
		return fmt.Sprintf("%.*f", decimals, float64((z.min+z.max)/2/u.One))
	}
	return fmt.Sprintf("%.*f to %.*f", decimals, lo, decimals, hi)
}

// order says in which order to work.
func (w *work) order() {
	letter := map[string]size{}
	for _, z := range w.sizes {
		letter[z.letter] = z
	}
	w.s.Scribe = append(w.s.Scribe,
		"Grip the bar by the end that becomes the flange. Face, drill and bore the parallel passage "+limits(letter["D"], sheet.Millimetre)+" mm, and turn spigot and neck in the same setting, so that they run true to one another.",
		"Creep up on the spigot with the collar itself, its clamp screw slack: stop at the larger limit if the collar goes on by hand; the closer it fits, the better it grips and seals. Measure cold, at about 20 °C: a piece hot from the tool measures large.",
		fmt.Sprintf("Turn it round, face to length, and bore the taper with the top slide set over %s, which is half the angle of the cone.", sheet.Plain(w.passage.half.Value, sheet.Degree, 1)),
		fmt.Sprintf("Mark the stud holes %s apart on one line through the middle of the bore, drill %.1f mm, and line the bore up with the port before the nuts are pulled down.", sheet.Show(w.flange.centres, sheet.Millimetre), w.flange.hole.Millimetres()))
}

// general is the tolerance, either way, of a size on which no fit depends.
//
// Source: ISO 2768-1, class m (from memory).
func general(l length) length {
	switch {
	case l <= 6*mm:
		return mm / 10
	case l <= 30*mm:
		return mm / 5
	}
	return 3 * mm / 10
}

// free adds a size on which no fit depends.
func (w *work) free(letter, name string, l length, why string) {
	w.sizes = append(w.sizes, size{letter, name, l - general(l), l + general(l), false, why})
}

// halfUp and halfDown round to half a millimetre.
func halfUp(l length) length   { return length(math.Ceil(float64(2*l/mm)-1e-9)) * mm / 2 }
func halfDown(l length) length { return length(math.Floor(float64(2*l/mm)+1e-9)) * mm / 2 }
