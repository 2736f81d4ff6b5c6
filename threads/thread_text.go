package threads

import (
	"fmt"

	"example.com/benchsums/units"
)

// MarshalText writes the designation, which UnmarshalText reads back to the
// very same thread. A thread that stands in no series has no name and cannot be
// written; the error wraps units.ErrDomain.
func (t Thread) MarshalText() ([]byte, error) {
	if t.designation == "" {
		return nil, fmt.Errorf("%q: a thread of no series has no designation to write: %w", t.Designation(), units.ErrDomain)
	}
	return []byte(t.designation), nil
}

// UnmarshalText is Find for decoders and flags. Where it fails t is left as it
// was.
func (t *Thread) UnmarshalText(text []byte) error {
	found, err := Find(string(text))
	if err == nil {
		*t = found
	}
	return err
}
