package ignition

// Kind is what sort of engine a timing is for.
type Kind int

// The kinds of engine that period practice was found for.
const (
	AnyKind          Kind = iota // all of them
	FarmEngine                   // slow stationary, hit-and-miss or throttled, four-stroke
	IndustrialEngine             // small governed industrial, four-stroke
	SideValve                    // motorcycle, side valves
	OverheadValve                // motorcycle, overhead valves
	SmallTwoStroke               // two-stroke; the rows found are of mopeds and scooters
	AeroAndCar                   // multi-cylinder, about 1917
	EarlyStationary              // tractor and gas engines before about 1920
)

// String names the kind.
func (k Kind) String() string {
	switch k {
	case AnyKind:
		return "any engine"
	case FarmEngine:
		return "slow farm engine"
	case IndustrialEngine:
		return "small industrial engine"
	case SideValve:
		return "side-valve motorcycle"
	case OverheadValve:
		return "overhead-valve motorcycle"
	case SmallTwoStroke:
		return "small two-stroke"
	case AeroAndCar:
		return "aero or car engine of about 1917"
	case EarlyStationary:
		return "tractor or gas engine before 1920"
	}
	return "kind not stated"
}

// kinds lists all kinds.
func kinds() []Kind {
	return []Kind{AnyKind, FarmEngine, IndustrialEngine, SideValve, OverheadValve, SmallTwoStroke, AeroAndCar, EarlyStationary}
}

// MarshalText writes the name of the kind. The error is [units.ErrDomain] for a
// kind that has none.
func (k Kind) MarshalText() ([]byte, error) { return writeWord(k, kinds()...) }

// UnmarshalText reads the name of a kind. The error is [units.ErrDomain] for
// anything else, and lists them.
func (k *Kind) UnmarshalText(text []byte) error {
	return readWord(k, text, "the sort of engine", kinds()...)
}

// Running says in which state of the engine a timing holds.
type Running int

// The states a timing is given for.
const (
	AtSpeed  Running = iota // running: fixed advance, or the most of a movable one
	AtStart                 // starting, or the least of a movable one
	ShowIdle                // kept turning slowly for show, far below rated speed
)

// String names the state.
func (r Running) String() string {
	switch r {
	case AtSpeed:
		return "at speed"
	case AtStart:
		return "in starting"
	case ShowIdle:
		return "turning slowly for show"
	}
	return "state not stated"
}

// MarshalText writes the name of the state. The error is [units.ErrDomain] for
// one that has none.
func (r Running) MarshalText() ([]byte, error) { return writeWord(r, AtSpeed, AtStart, ShowIdle) }

// UnmarshalText reads the name of a state. The error is [units.ErrDomain] for
// anything else.
func (r *Running) UnmarshalText(text []byte) error {
	return readWord(r, text, "the state the timing is for", AtSpeed, AtStart, ShowIdle)
}
