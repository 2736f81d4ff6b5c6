package threads

// Constants of the triangles, to 20 figures.
const (
	sqrt3    = 1.7320508075688772935 // √3
	tan30    = 0.57735026918962576451
	tan27_5  = 0.52056705055174628888
	tan23_75 = 0.44001053089183341737

	h60   = sqrt3 / 2          // H/p at 60°
	h55   = 1 / (2 * tan27_5)  // H/p at 55°
	h47_5 = 1 / (2 * tan23_75) // H/p at 47.5°
)

// A formRow is a form, its lengths over the pitch.
type formRow struct {
	name      string
	tan       float64 // of half the included angle
	depth     float64 // crest to root along the radius
	effective float64 // major less effective diameter
	minor     float64 // major less minor diameter
	crest     Shape
	crestSize float64
	root      Shape
	rootSize  float64
	source    string
	memory    bool
}

// The forms, as fractions of the height H where the standard cuts the triangle
// so. Each line: flank, depth, major less effective, major less minor; below it
// crest, root, source.
var forms = [formsEnd]formRow{
	{name: "no form"},
	ISOForm: {"ISO metric", tan30, 5 * h60 / 8, 3 * h60 / 4, 5 * h60 / 4,
		Flat, 1. / 8, Flat, 1. / 4,
		"ISO 68-1; Machinery's Handbook, 27th ed., p. 1794", false},
	ISOBoltForm: {"ISO metric bolt, rounded root", tan30, 17 * h60 / 24, 3 * h60 / 4, 17 * h60 / 12,
		Flat, 1. / 8, Round, h60 / 6,
		"Machinery's Handbook, 27th ed., p. 1794; get-it-made.co.uk coarse metric chart", false},
	UnifiedForm: {"Unified", tan30, 5 * h60 / 8, 3 * h60 / 4, 5 * h60 / 4,
		Flat, 1. / 8, Flat, 1. / 4,
		"ASME B1.1; Wikipedia, Unified Thread Standard", false},
	UNRBoltForm: {"Unified bolt, rounded root (UNR)", tan30, 11 * h60 / 16, 3 * h60 / 4, 11 * h60 / 8,
		Flat, 1. / 8, Round, 0.108, // the least radius; an arc tangent to the flanks there would be 3H/16
		"ASME B1.1-2003 as worked in Machinery's Handbook, 31st ed., Tables 3 and 6 (root radius from memory)", false},
	SellersForm: {"United States Standard (Sellers)", tan30, 3 * h60 / 4, 3 * h60 / 4, 3 * h60 / 2,
		Flat, 1. / 8, Flat, 1. / 8,
		"Shigley's Mechanical Engineering Design, 9th ed., Table 8-2; Jones, Turning and Boring", false},
	SharpVForm: {"sharp V", tan30, h60, h60, 2 * h60,
		Sharp, 0, Sharp, 0,
		"Jones, Turning and Boring", false},
	WhitworthForm: {"Whitworth", tan27_5, 2 * h55 / 3, 2 * h55 / 3, 4 * h55 / 3,
		Round, whitworthRadius, Round, whitworthRadius,
		"BS 84; Machinery's Handbook, 31st ed., p. 2087, Table 2", false},
	BAForm: {"British Association", tan23_75, 0.6, 0.6, 1.2,
		Round, baRadius, Round, baRadius,
		"BS 93:1951 (Machinery's Handbook, 31st ed., p. 2115)", false},
	CycleForm: {"British Standard Cycle", tan30, h60 - 1./3, h60 - 1./3, 2 * (h60 - 1./3),
		Round, 1. / 6, Round, 1. / 6,
		"BS 811:1950 as quoted on model-engineer.co.uk, 10 Feb 2018; core diameters of tradeclassicbikes.co.uk agree", false},
	LoewenherzForm: {"Loewenherz", 1. / 2, 3. / 4, 3. / 4, 3. / 2,
		Flat, 1. / 8, Flat, 1. / 8,
		"Wikipedia, Loewenherz thread; Machinery's Handbook, 31st ed., p. 2119", false},
	SIForm: {"SI (Zürich 1898)", tan30, 3 * h60 / 4, 3 * h60 / 4, 3 * h60 / 2,
		Flat, 1. / 8, FlatOrRound, 0, // up to H/16 deeper than basic
		"sizes.com metric thread table; Machinery's Handbook, 27th ed., p. 1824", false},
	OldDINForm: {"DIN 13 before ISO, bolt", tan30, 0.6945, 3 * h60 / 4, 1.389,
		Flat, 1. / 8, Round, 0.0633,
		"DIN 13 as in German handbooks of the 1920s, from memory", true},
	NPTForm: {"American taper pipe (NPT)", tan30, 0.8, 0.8, 1.6,
		Flat, (h60 - 0.8) / (2 * h60), Flat, (h60 - 0.8) / (2 * h60),
		"ASME B1.20.1 (unifiedalloys.com; Scribd document 468524381), depth 0.8p; flats from the geometry", false},
}

// The radius that rounds a triangle cut off by t where the arc meets the flanks
// smoothly is r = t sin(α/2) / (1 − sin(α/2)).
const (
	sin27_5  = 0.46174861323503393056
	sin23_75 = 0.40274668985873723482

	whitworthRadius = h55 / 6 * sin27_5 / (1 - sin27_5)
	baRadius        = (h47_5 - 0.6) / 2 * sin23_75 / (1 - sin23_75)
)
