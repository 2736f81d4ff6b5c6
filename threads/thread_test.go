package threads

import "testing"

func TestEveryThreadHasASize(t *testing.T) {
	n := 0
	for th := range All() {
		n++
		if !(th.Major() > th.Effective() && th.Effective() > th.Minor() && th.Minor() > 0 && th.Pitch() > 0) {
			t.Errorf("%v: %v, %v, %v at pitch %v", th, th.Major(), th.Effective(), th.Minor(), th.Pitch())
		}
		if th.Designation() == "" || th.Source() == "" {
			t.Errorf("%v of %v has no designation or no source", th, th.Series())
		}
	}
	if n < 500 {
		t.Errorf("%d threads", n)
	}
}
