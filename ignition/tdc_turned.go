package ignition

// Turned says which way the engine was turned by hand while readings were
// taken. It matters because slack in the bearings, and in a drive, lies on the
// other side after the engine is turned back.
type Turned int

// The two ways to turn an engine by hand.
const (
	Forward  Turned = iota + 1 // the way the engine runs
	Backward                   // against the way it runs
)

// String returns "forward" or "backward".
func (t Turned) String() string {
	switch t {
	case Forward:
		return "forward"
	case Backward:
		return "backward"
	}
	return "turning not stated"
}

// MarshalText writes "forward" or "backward". The error is [units.ErrDomain]
// for any other value.
func (t Turned) MarshalText() ([]byte, error) { return writeWord(t, Forward, Backward) }

// UnmarshalText reads "forward" or "backward". The error is [units.ErrDomain]
// for anything else.
func (t *Turned) UnmarshalText(text []byte) error {
	return readWord(t, text, "the way the engine was turned by hand", Forward, Backward)
}

// sign is +1 for forward and −1 for backward.
func (t Turned) sign() float64 {
	if t == Backward {
		return -1
	}
	return 1
}
