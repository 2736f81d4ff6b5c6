package fits

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A Spot is one reading of a diameter: where along the part and which way across
// it was taken, in any words, the same words for the same place.
type Spot struct {
	Station string // "top of ring travel", "middle", "12 mm down"
	Way     string // "front-back", "side-side"; one word for a part measured one way
	Size    units.Length
}

// A Survey is a hole or a shaft measured in several places, worn, tapered and
// oval as it may be. Readings of the same place are averaged. Stations keep the
// order in which they first come.
type Survey struct {
	places []Spot // averaged
	std    units.Length
}

// NewSurvey returns a survey of readings whose standard uncertainty is std each.
// That the average of repeats is surer is not counted, since repeats share the
// error of the tool and of the hand. The error wraps units.ErrDomain for no
// readings, a size that is not more than 0, or an uncertainty that is less.
func NewSurvey(std units.Length, readings ...Spot) (Survey, error) {
	if len(readings) == 0 {
		return Survey{}, fmt.Errorf("no readings: want one at least: %w", units.ErrDomain)
	}
	s := Survey{std: std}
	count := map[[2]string]int{}
	for i, r := range readings {
		if err := checkReading(units.WithStd(r.Size, std)); err != nil {
			return Survey{}, fmt.Errorf("reading %d: %w", i+1, err)
		}
		s.add(r, count)
	}
	return s, nil
}

// add takes a reading into the average of its place.
func (s *Survey) add(r Spot, count map[[2]string]int) {
	key := [2]string{r.Station, r.Way}
	count[key]++
	if count[key] == 1 {
		s.places = append(s.places, r)
		return
	}
	i := slices.IndexFunc(s.places, func(p Spot) bool { return p.Station == r.Station && p.Way == r.Way })
	s.places[i].Size += (r.Size - s.places[i].Size) / units.Length(count[key])
}

// Places returns the places with their averages, in the order they first come.
func (s Survey) Places() []Spot { return slices.Clone(s.places) }

// Least returns the place with the smallest diameter. It governs what will go into
// a hole, and how loose the loosest place of a shaft is.
// The zero Survey has none.
func (s Survey) Least() Spot {
	if len(s.places) == 0 {
		return Spot{}
	}
	return slices.MinFunc(s.places, bySize)
}

// Most returns the place with the greatest diameter. It governs what a shaft will
// go into, and how loose the loosest place of a hole is.
// The zero Survey has none.
func (s Survey) Most() Spot {
	if len(s.places) == 0 {
		return Spot{}
	}
	return slices.MaxFunc(s.places, bySize)
}

func bySize(a, b Spot) int {
	switch {
	case a.Size < b.Size:
		return -1
	case a.Size > b.Size:
		return 1
	}
	return 0
}

// Part returns what a new part has to fit: the least and the greatest place, with
// the uncertainty of a reading. The zero Survey gives the zero Part, which is
// refused where it is used.
func (s Survey) Part() Part {
	if len(s.places) == 0 {
		return Part{}
	}
	return Part{Least: s.Least().Size, Most: s.Most().Size, Std: s.std}
}

// Stations returns the stations in the order they first come.
func (s Survey) Stations() []string {
	var names []string
	for _, p := range s.places {
		if !slices.Contains(names, p.Station) {
			names = append(names, p.Station)
		}
	}
	return names
}

// at returns the sizes at a station.
func (s Survey) at(station string) []units.Length {
	var sizes []units.Length
	for _, p := range s.places {
		if p.Station == station {
			sizes = append(sizes, p.Size)
		}
	}
	return sizes
}

// Mean returns the mean diameter at a station, the average over the ways across.
// The error wraps units.ErrDomain for a station there is not.
func (s Survey) Mean(station string) (units.Length, error) {
	sizes := s.at(station)
	if len(sizes) == 0 {
		return 0, fmt.Errorf("station %q: want one of %q: %w", station, s.Stations(), units.ErrDomain)
	}
	var sum units.Length
	for _, d := range sizes {
		sum += d
	}
	return sum / units.Length(len(sizes)), nil
}

// Ovality returns the greatest difference between two ways across at one station,
// and the station. It is a difference of diameters. A three-lobed part shows
// nothing of itself in two-point readings: for that a ring gauge or V-block is
// wanted.
func (s Survey) Ovality() (units.Length, string) {
	var most units.Length
	where := ""
	for i, station := range s.Stations() {
		sizes := s.at(station)
		if d := slices.Max(sizes) - slices.Min(sizes); d > most || i == 0 {
			most, where = d, station
		}
	}
	return most, where
}

// Taper returns the difference between the largest and the smallest mean diameter
// of the stations, and the two stations.
func (s Survey) Taper() (taper units.Length, large, small string) {
	var most, least units.Length
	for i, station := range s.Stations() {
		mean, _ := s.Mean(station) // the station is there
		if i == 0 || mean > most {
			most, large = mean, station
		}
		if i == 0 || mean < least {
			least, small = mean, station
		}
	}
	return most - least, large, small
}

// Wear returns by how much the most worn place differs from the mean diameter at a
// station that nothing has rubbed on, such as below the ring travel of a bore: more
// for a hole, less for a shaft, both positive. The place is returned too. The error
// wraps units.ErrDomain for a station there is not.
func (s Survey) Wear(unworn string) (units.Length, Spot, error) {
	ref, err := s.Mean(unworn)
	if err != nil {
		return 0, Spot{}, err
	}
	if most, least := s.Most(), s.Least(); most.Size-ref >= ref-least.Size {
		return most.Size - ref, most, nil
	}
	least := s.Least()
	return ref - least.Size, least, nil
}
