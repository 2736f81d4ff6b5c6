package springs

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/units"
)

// A WireGauge is a series of numbered wire sizes.
type WireGauge int

const (
	// StandardWireGauge is the Imperial Standard Wire Gauge, SWG, BS 3737:1964,
	// 7/0 to 50.
	StandardWireGauge WireGauge = iota
	// MusicWireGauge is the American music wire gauge, 6/0 to 45, in which the
	// number rises with the size.
	MusicWireGauge
	// WashburnMoenGauge is the US steel wire gauge, 15 to 3, the numbers used
	// for springs.
	WashburnMoenGauge
)

// String names the gauge.
func (g WireGauge) String() string {
	switch g {
	case StandardWireGauge:
		return "SWG"
	case MusicWireGauge:
		return "music wire gauge"
	case WashburnMoenGauge:
		return "Washburn and Moen gauge"
	}
	return fmt.Sprintf("WireGauge(%d)", int(g))
}

func (g WireGauge) rows() []gaugeRow {
	switch g {
	case StandardWireGauge:
		return standardWireGauge[:]
	case MusicWireGauge:
		return musicWireGauge[:]
	case WashburnMoenGauge:
		return washburnMoenGauge[:]
	}
	return nil
}

// Diameter returns the size of a gauge number: "16", "7/0". A number with
// several noughts may be written 0000 as well as 4/0. The error is
// units.ErrDomain for a number the gauge does not have.
//
// Sources: see the tables; SWG from BS 3737:1964.
func (g WireGauge) Diameter(number string) (units.Length, error) {
	want := gaugeNumber(number)
	rows := g.rows()
	for _, r := range rows {
		if r.number == want {
			return units.Length(r.inch) * units.Inch, nil
		}
	}
	if len(rows) == 0 {
		return 0, fmt.Errorf("%v: want StandardWireGauge, MusicWireGauge or WashburnMoenGauge: %w", g, units.ErrDomain)
	}
	return 0, fmt.Errorf("%v %q: want a number from %s to %s: %w", g, number, rows[0].number, rows[len(rows)-1].number, units.ErrDomain)
}

// gaugeNumber writes 0 and 0000 as 1/0 and 4/0, and drops spaces.
func gaugeNumber(number string) string {
	n := strings.TrimSpace(number)
	if n != "" && strings.Trim(n, "0") == "" {
		return fmt.Sprintf("%d/0", len(n))
	}
	return n
}

// Numbers returns the numbers of the gauge in the order of its table.
func (g WireGauge) Numbers() []string {
	rows := g.rows()
	out := make([]string, len(rows))
	for i, r := range rows {
		out[i] = r.number
	}
	return out
}

// Nearest returns the number whose size is closest to diameter, and by how much
// the diameter is over that size. A difference larger than half the step to the
// next number means that the wire is of another gauge, or worn. The error is
// units.ErrDomain for a diameter outside the gauge.
func (g WireGauge) Nearest(diameter units.Length) (number string, over units.Length, err error) {
	rows := g.rows()
	least, most := math.Inf(1), 0.0
	best := math.Inf(1)
	for _, r := range rows {
		size := units.Length(units.Length(r.inch) * units.Inch) // rounded here, on every processor
		least, most = math.Min(least, float64(size)), math.Max(most, float64(size))
		if diff := math.Abs(float64(diameter - size)); diff < best {
			best, number, over = diff, r.number, diameter-size
		}
	}
	if !(float64(diameter) >= least*0.95 && float64(diameter) <= most*1.05) {
		return "", 0, fmt.Errorf("wire %v: %v runs from %v to %v: %w", diameter, g, units.Length(least), units.Length(most), units.ErrDomain)
	}
	return number, over, nil
}

// ListedSizes returns the sizes for which EN 10270-1 tables the strength of
// patented wire grade SM, as far as they could be read. The standard lists
// more.
func ListedSizes() []units.Length {
	out := make([]units.Length, len(listedSizesEN10270))
	for i, d := range listedSizesEN10270 {
		out[i] = units.Length(d) * units.Millimetre
	}
	return out
}
