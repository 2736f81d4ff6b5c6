package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Thread is one size of one series: its basic diameters, which are those of
// the drawing and not of any one bolt. It is a small value, to be copied and
// compared with ==. The zero Thread is no thread and all its sizes are 0.
type Thread struct {
	designation                    string
	major, effective, minor, pitch units.Length
	from                           string // letters of the sources in the table of the series
	series                         Series
	form                           Form
}

// New returns a thread that stands in no series, such as one measured on a
// machine: the diameters follow from the form. The major diameter must be
// more than the form takes off it for the minor diameter. The error wraps
// units.ErrDomain.
func New(form Form, major, pitch units.Length) (Thread, error) {
	switch {
	case form == 0 || form >= formsEnd:
		return Thread{}, fmt.Errorf("form %d: want one of the forms of this package: %w", form, units.ErrDomain)
	case !(pitch > 0) || math.IsInf(float64(pitch), 0):
		return Thread{}, fmt.Errorf("pitch %v: want more than 0 mm: %w", pitch, units.ErrDomain)
	case !(major > form.MinorBelow(pitch)) || math.IsInf(float64(major), 0):
		return Thread{}, fmt.Errorf("major diameter %v with pitch %v: want more than %v, twice the depth of thread: %w",
			major, pitch, form.MinorBelow(pitch), units.ErrDomain)
	}
	return basic("", major, pitch, "", Special, form), nil
}

// basic returns a thread whose diameters follow from its form.
func basic(designation string, major, pitch units.Length, from string, series Series, form Form) Thread {
	return Thread{designation, major, major - form.EffectiveBelow(pitch), major - form.MinorBelow(pitch), pitch, from, series, form}
}

// Major returns the basic major diameter, over the crests of the bolt.
func (t Thread) Major() units.Length { return t.major }

// Effective returns the basic effective diameter, where the thread is as wide
// as the space beside it; Americans and ISO call it the pitch diameter. Of a
// taper thread it is given at the gauge plane.
func (t Thread) Effective() units.Length { return t.effective }

// Minor returns the basic minor diameter, the core: of the nut, and of the
// bolt too where the form is the same for both.
func (t Thread) Minor() units.Length { return t.minor }

// Pitch returns the distance from one thread to the next along the axis.
func (t Thread) Pitch() units.Length { return t.pitch }

// TPI returns the threads in an inch, 25.4 mm over the pitch.
func (t Thread) TPI() float64 {
	if t.pitch == 0 {
		return 0
	}
	return float64(units.Inch / t.pitch)
}

// Form returns the form of the thread.
func (t Thread) Form() Form { return t.form }

// Series returns the series it stands in, Special if in none.
func (t Thread) Series() Series { return t.series }

// Taper returns by how much the diameter grows along the axis: 1/16 for taper
// pipe threads and 0 for all others.
func (t Thread) Taper() float64 { return t.series.row().taper }

// Designation returns how the thread is written, "1/4-26 BSF"; Find reads it
// back. A thread that stands in no series is described: "6.35 mm x 1.27 mm
// Whitworth".
func (t Thread) Designation() string {
	if t.designation == "" && t.pitch != 0 {
		return fmt.Sprintf("%v x %v %v", t.major, t.pitch, t.form)
	}
	return t.designation
}

// String returns the designation.
func (t Thread) String() string { return t.Designation() }

// Same reports whether t and u are one thread under two names: of equal form,
// pitch, major diameter and taper. The ISO and Unified forms are one profile.
func (t Thread) Same(u Thread) bool {
	return profile(t.form) == profile(u.form) && t.Taper() == u.Taper() &&
		near(t.pitch, u.pitch) && near(t.major, u.major)
}

func profile(f Form) Form {
	if f == UnifiedForm {
		return ISOForm
	}
	return f
}

// near allows for the last bits that a conversion of units leaves.
func near(a, b units.Length) bool { return math.Abs(float64(a-b)) <= 1e-9*math.Abs(float64(a)) }
