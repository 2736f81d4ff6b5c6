package threads

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// An 18 mm plug in an old 7/8 in plug hole.
func TestBushForAnOldPlugHole(t *testing.T) {
	b, err := NewBush(mustFind(t, "7/8-18 plug"), mustFind(t, "M18x1.5"))
	if err != nil {
		t.Fatal(err)
	}
	// Root outside 22.225 − 1.226869 × 25.4/18 = 20.4938; (20.4938 − 18)/2.
	figures.Near(t, "wall, mm", b.Wall().Millimetres(), 1.2469, 0.0001)
	figures.Near(t, "ring, mm²", b.WallArea().SquareMillimetres(), math.Pi/4*(20.4938*20.4938-18*18), 0.01)
	if s := b.Strength(); !(s > 0.3 && s < 0.4) {
		t.Errorf("strength %.3f", s)
	}
	if b.Outer().Designation() != "7/8-18 plug" || b.Inner().Pitch() != 1.5*units.Millimetre {
		t.Errorf("threads %v and %v", b.Outer(), b.Inner())
	}
	thinner, err := NewBush(mustFind(t, "M22x1.5"), mustFind(t, "M18x1.5"))
	if err != nil || !(thinner.Wall() < b.Wall()) {
		t.Errorf("M22: %v, %v", thinner.Wall(), err)
	}
}

func TestBushRefuses(t *testing.T) {
	_, err := NewBush(mustFind(t, "M18x1.5"), mustFind(t, "M18x1.5"))
	wantError(t, err, units.ErrDomain, "M18x1.5 outside", "more than 18 mm", "it is 16.15")
	_, err = NewBush(Thread{}, mustFind(t, "M18x1.5"))
	wantError(t, err, units.ErrDomain, "no thread")
}

func TestBoltRoot(t *testing.T) {
	const source = "get-it-made.co.uk coarse metric chart: M10 bolt core d3"
	figures.Figure{Printed: "8.160", Source: source}.Check(t, mustFind(t, "M10").BoltRoot().Millimetres())
	bsf := mustFind(t, "1/4 BSF")
	if bsf.BoltRoot() != bsf.Minor() {
		t.Errorf("BSF root %v, minor %v", bsf.BoltRoot(), bsf.Minor())
	}
}
