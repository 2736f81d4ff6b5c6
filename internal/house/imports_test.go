package house

import (
	"slices"
	"strings"
	"testing"
)

// floorPlan says which of our packages each package may stand on. Anything
// under internal that names one purpose is open to all.
var floorPlan = map[string][]string{
	"units":    {},
	"geometry": {"units"},
	"springs":  {"units"},
	"fits":     {"units"},
	"threads":  {"units"},
	"ignition": {"units", "geometry"},
}

func TestImportsFollowTheFloorPlan(t *testing.T) {
	_, files := sources(t)
	for _, s := range files {
		allowed, library := floorPlan[s.dir()]
		if !library || s.isTest() {
			continue
		}
		for _, path := range imports(s.file) {
			ours, ok := strings.CutPrefix(path, module+"/")
			switch {
			case ok && !slices.Contains(allowed, ours) && !strings.HasPrefix(ours, "internal/"):
				t.Errorf("%s imports %s: the floor plan allows %v", s.path, ours, allowed)
			case ok && ours == "internal/figures":
				t.Errorf("%s imports internal/figures, which is for tests", s.path)
			case !ok && strings.Contains(strings.Split(path, "/")[0], ".") && !strings.HasPrefix(path, "gonum.org/v1/gonum/"):
				t.Errorf("%s imports %s: the library stands on the standard library and gonum alone", s.path, path)
			}
		}
	}
}

func TestInternalPackagesStandAlone(t *testing.T) {
	_, files := sources(t)
	for _, s := range files {
		if !strings.HasPrefix(s.path, "internal/") || s.isTest() {
			continue
		}
		for _, path := range imports(s.file) {
			if ours, ok := strings.CutPrefix(path, module+"/"); ok && ours != "units" && !strings.HasPrefix(ours, "internal/") {
				t.Errorf("%s imports %s: internal packages stand on units at most", s.path, ours)
			}
		}
	}
}
