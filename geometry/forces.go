package geometry

import "example.com/benchsums/units"

// RodForce returns the force along the rod when the piston pushes on the gudgeon
// pin with the given force along the cylinder: F / cos φ.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) RodForce(theta units.Angle, piston units.Force) units.Force {
	sin, cos := c.fromCrankUp(sincos(theta))
	return piston / units.Force(c.cosRod(sin, cos))
}

// SideThrust returns the force of the piston on the cylinder wall when it pushes
// on the gudgeon pin with the given force along the cylinder: F tan φ, positive
// against the side opposite to the one the crankpin goes to after top dead
// centre. Setting the pin or the cylinder over towards that side makes it less on
// the way down.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) SideThrust(theta units.Angle, piston units.Force) units.Force {
	sin, cos := c.fromCrankUp(sincos(theta))
	return piston * units.Force((c.lambda*sin-c.epsilon)/c.cosRod(sin, cos))
}
