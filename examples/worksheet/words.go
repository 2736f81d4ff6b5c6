package main

import (
	"fmt"
	"unicode"
	"unicode/utf8"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// capital makes the first letter of a text a capital.
func capital(text string) string {
	r, size := utf8.DecodeRuneInString(text)
	if unicode.IsLower(r) && r < utf8.RuneSelf { // π stays as it is
		return string(unicode.ToUpper(r)) + text[size:]
	}
	return text
}

// sentence makes a sentence of a phrase.
func sentence(text string) string { return capital(text) + "." }

// sentenceOf makes a sentence of a text that may be one already.
func sentenceOf(text string) string {
	if text == "" {
		return ""
	}
	text = capital(text)
	switch text[len(text)-1] {
	case '.', '?', '!':
		return text
	}
	return text + "."
}

func inside(ok bool) string {
	if ok {
		return "within"
	}
	return "more than"
}

// listed writes the readings a mean was taken of.
func listed[Q units.Quantity](readings []Q, u sheet.Unit[Q], decimals int) string {
	text := "("
	for i, r := range readings {
		if i > 0 {
			text += " + "
		}
		bare := u
		bare.Name = ""
		text += sheet.Plain(r, bare, decimals)
	}
	if len(readings) == 1 {
		return sheet.Plain(readings[0], u, decimals)
	}
	return fmt.Sprintf("%s) %s / %d", text, u.Name, len(readings))
}
