package units

// vulgarFractions are the fractions that are one character: the Number Forms
// block of Unicode (U+2150 to U+215E), and the three of Latin-1 (U+00BC to
// U+00BE).
var vulgarFractions = [...]struct {
	char     rune
	num, den float64
}{
	{'¼', 1, 4},
	{'½', 1, 2},
	{'¾', 3, 4},
	{'⅐', 1, 7},
	{'⅑', 1, 9},
	{'⅒', 1, 10},
	{'⅓', 1, 3},
	{'⅔', 2, 3},
	{'⅕', 1, 5},
	{'⅖', 2, 5},
	{'⅗', 3, 5},
	{'⅘', 4, 5},
	{'⅙', 1, 6},
	{'⅚', 5, 6},
	{'⅛', 1, 8},
	{'⅜', 3, 8},
	{'⅝', 5, 8},
	{'⅞', 7, 8},
}
