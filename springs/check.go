package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// positive refuses what is not a finite quantity above 0.
func positive[Q units.Quantity](what string, q Q) error {
	if !(q > 0) || math.IsInf(float64(q), 0) {
		return fmt.Errorf("%s %v: want more than %v: %w", what, q, Q(0), units.ErrDomain)
	}
	return nil
}

// notNegative refuses what is below 0, and what is not finite.
func notNegative[Q units.Quantity](what string, q Q) error {
	if !(q >= 0) || math.IsInf(float64(q), 0) {
		return fmt.Errorf("%s %v: want %v or more: %w", what, q, Q(0), units.ErrDomain)
	}
	return nil
}

// first returns the first error there is.
func first(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
