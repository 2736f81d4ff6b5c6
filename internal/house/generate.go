package house

// The records are written first, package by package, then the file made of
// them.
//go:generate go test -count=1 example.com/benchsums/units example.com/benchsums/geometry example.com/benchsums/ignition example.com/benchsums/springs example.com/benchsums/fits example.com/benchsums/threads -update
//go:generate go test -count=1 example.com/benchsums/internal/house -run TestChecksFile -update
