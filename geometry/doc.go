// Package geometry is the crank, the rod and the piston: where the piston is,
// how fast it moves, what volume it shuts in, and when it uncovers a port.
package geometry
