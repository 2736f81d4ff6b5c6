// Package sheet is what the example programs print: sections with an answer,
// figures with their uncertainty, the working step by step, what to scribe,
// questions and cautions; as text to be read at arm's length and as JSON.
//
// In text, ± is the half-width of an interval that holds the value 95 times in
// 100 (JCGM 100:2008, 6.3 and annex G). JSON gives the standard uncertainty.
package sheet
