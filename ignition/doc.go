// Package ignition turns degrees of crank into marks on a rim and back.
//
// # Finding top dead centre
//
// Written beside the code that does it.
package ignition
