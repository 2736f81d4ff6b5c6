package threads

import (
	"cmp"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// mostNear is how many threads an UnknownError suggests.
const mostNear = 3

// nearest returns the threads that come nearest to the query, those of the
// series asked for before others as near.
func (q *query) nearest() []Thread {
	type scored struct {
		t    Thread
		away float64
	}
	var all []scored
	asked := q.asked()
	for s := Special + 1; s < seriesEnd; s++ {
		for i := range s.Len() {
			away := q.away(s, i)
			if asked&(1<<s) == 0 {
				away = 2*away + 0.1
			}
			if away < 0.3 {
				all = append(all, scored{s.at(i), away})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b scored) int { return cmp.Compare(a.away, b.away) })
	var near []Thread
	for _, c := range all {
		if len(near) == mostNear {
			break
		}
		if !slices.ContainsFunc(near, c.t.Same) {
			near = append(near, c.t)
		}
	}
	return near
}

// away returns how far row i of s lies from what was asked for, as a share of
// the size and half the share of the pitch.
func (q *query) away(s Series, i int) float64 {
	t := &tables[s]
	d := math.Inf(1)
	switch {
	case s == BA:
		if q.kind == number {
			d = math.Abs(float64(i)-q.size) / 20
		}
	case t.nominal():
		if q.kind == inches || q.kind == bare {
			d = logRatio(t.nominalSize(i), q.size)
		}
	default:
		if q.kind != number && t.unit != q.otherUnit() {
			d = logRatio(t.rows[i].major, q.size)
		}
		if q.mayBeNumber() && t.form == UnifiedForm {
			d = min(d, logRatio(t.rows[i].major, numberSize(q.size)))
		}
	}
	if q.pitch == 0 {
		return d
	}
	_, p := t.size(i)
	want := units.Length(q.pitch) * units.Millimetre
	if q.pitchKind == inches || q.pitchKind == bare && t.tpi {
		want = units.Inch / units.Length(q.pitch)
	}
	return d + logRatio(float64(p), float64(want))/2
}

func logRatio(a, b float64) float64 { return math.Abs(math.Log(a / b)) }
