package units

import (
	"fmt"
	"math"
)

// DMS writes a in degrees, minutes and seconds, to the whole second: 28° 30′
// 15″. It is rounded to the second first and carried then, so that no 60 ever
// stands in it; half a second goes to the even one. Read it back with
// ParseAngle.
func (a Angle) DMS() string {
	sign, n, ok := a.whole(ArcSecond)
	if !ok {
		return a.String()
	}
	return fmt.Sprintf("%s%d° %02d′ %02d″", sign, n/3600, n/60%60, n%60)
}

// DM writes a in degrees and minutes, to the whole minute: 28° 30′. See DMS.
func (a Angle) DM() string {
	sign, n, ok := a.whole(ArcMinute)
	if !ok {
		return a.String()
	}
	return fmt.Sprintf("%s%d° %02d′", sign, n/60, n%60)
}

// whole counts how many of unit make up a. It reports false where there are
// more than a float64 counts one by one.
func (a Angle) whole(unit Angle) (sign string, n int64, ok bool) {
	x := math.Abs(float64(a / unit))
	if !(x < 1e14) {
		return "", 0, false
	}
	n = int64(math.RoundToEven(figure15(x)))
	if a < 0 && n != 0 {
		sign = "-"
	}
	return sign, n, true
}
