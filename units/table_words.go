package units

// symbol returns the symbol for a unit written as a word, and every other word
// as it is.
func symbol(w string) string {
	switch w {
	case "metre", "metres", "meter", "meters":
		return "m"
	case "centimetre", "centimetres", "centimeter", "centimeters":
		return "cm"
	case "millimetre", "millimetres", "millimeter", "millimeters", "mms":
		return "mm"
	case "micrometre", "micrometres", "micrometer", "micrometers", "micron", "microns", "um":
		return "μm"
	case "kilometre", "kilometres", "kilometer", "kilometers":
		return "km"
	case "inch", "inches", "ins":
		return "in"
	case "thous", "thousandth", "thousandths":
		return "thou"
	case "microinch", "microinches", "uin":
		return "μin"
	case "foot", "feet":
		return "ft"
	case "yard", "yards", "yds":
		return "yd"
	case "miles":
		return "mile"
	case "kilogram", "kilograms", "kilogramme", "kilogrammes", "kilo", "kilos", "kgs":
		return "kg"
	case "gram", "grams", "gramme", "grammes", "gm", "gms":
		return "g"
	case "pound", "pounds", "lbs":
		return "lb"
	case "ounce", "ounces", "ozs":
		return "oz"
	case "hundredweight", "hundredweights":
		return "cwt"
	case "tons":
		return "ton"
	case "tonnes":
		return "tonne"
	case "newton", "newtons":
		return "n"
	case "kilonewton", "kilonewtons":
		return "kn"
	case "poundal", "poundals":
		return "pdl"
	case "kp", "kilopond", "kiloponds":
		return "kgf"
	case "pascal", "pascals":
		return "pa"
	case "kilopascal", "kilopascals":
		return "kpa"
	case "megapascal", "megapascals":
		return "mpa"
	case "gigapascal", "gigapascals":
		return "gpa"
	case "bars":
		return "bar"
	case "atmosphere", "atmospheres":
		return "atm"
	case "torrs":
		return "torr"
	case "joule", "joules":
		return "j"
	case "kilocalorie", "kilocalories":
		return "kcal"
	case "watt", "watts":
		return "w"
	case "kilowatt", "kilowatts":
		return "kw"
	case "horsepower":
		return "hp"
	case "litre", "litres", "liter", "liters", "ltr", "ltrs":
		return "l"
	case "millilitre", "millilitres", "milliliter", "milliliters", "mls":
		return "ml"
	case "ccs", "ccm":
		return "cc"
	case "fluid":
		return "fl"
	case "gills":
		return "gill"
	case "pints", "pt", "pts":
		return "pint"
	case "quarts", "qt", "qts":
		return "quart"
	case "gallon", "gallons", "gals":
		return "gal"
	case "radian", "radians", "rads":
		return "rad"
	case "degree", "degrees", "deg", "degs":
		return "°"
	case "arcminute", "arcminutes", "arcmins":
		return "arcmin"
	case "arcsecond", "arcseconds", "arcsecs":
		return "arcsec"
	case "gons", "grad", "grads", "gradian", "gradians":
		return "gon"
	case "revolution", "revolutions", "revs", "turn", "turns":
		return "rev"
	case "second", "seconds", "sec", "secs":
		return "s"
	case "minute", "minutes", "mins":
		return "min"
	case "hour", "hours", "hr", "hrs":
		return "h"
	case "celsius", "centigrade":
		return "c"
	case "fahrenheit":
		return "f"
	case "kelvin", "kelvins":
		return "k"
	case "percent", "pct":
		return "%"
	}
	return w
}
