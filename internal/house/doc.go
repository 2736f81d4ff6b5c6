// Package house holds the rules of the house as tests: which package may
// import which, that every exported name is explained and shown, that CHECKS.md
// is current, that the library keeps its promises about panics and globals.
// There is nothing in it to import.
package house
