package permit

// line is an emission factor per ton and unit of weight fraction: a·h below a
// third, b·h − c from there on.
type line struct{ a, b, c float64 }

// Emission factors of open molding, UEF-1: ANSI/ACMA/ICPA UEF-1-2004, the same
// as 40 CFR 63 Subpart WWWW, Table 1. The formulas are from memory; those of
// manual, atomized and nonatomized resin and of atomized gel coat give the
// published limits of Table 3 to Subpart WWWW back within 1 lb/ton. That of
// nonatomized gel coat and all modifiers are not confirmed.
var (
	manualResin      = line{0.126, 0.286, 0.0529}
	atomizedResin    = line{0.169, 0.714, 0.18}
	nonatomizedResin = line{0.107, 0.157, 0.0165}
	atomizedGel      = line{0.445, 1.03646, 0.195}
	nonatomizedGel   = line{0.185, 0.4506, 0.0505}
)

// at is the factor for the HAP weight fraction h, in lb per ton.
func (l line) at(h float64) float64 {
	if h < 0.33 {
		return l.a * h * 2000
	}
	return (l.b*h - l.c) * 2000
}

// bagged are the factors of a vacuum bag for mechanical and manual work, by Bag.
// From memory, not confirmed.
var bagged = [2][bagging]float64{{1, 0.85, 0.55}, {1, 0.8, 0.5}}

// Factor is the emission factor of neat resin or gel coat in lb of organic HAP
// per short ton, or kg per 2,000 kg. hap is the content in weight percent; 0 for
// Solvent. suppressed is the vapor suppressant effectiveness, 0 … 1, 0 without
// suppressant; it acts on resin only.
func Factor(o Operation, m Method, hap, suppressed float64) float64 {
	h := hap / 100
	switch {
	case o.Gel() && m.Atomized():
		return atomizedGel.at(h)
	case o.Gel():
		return nonatomizedGel.at(h)
	case o.Resin() && m.ByHand():
		return manualResin.at(h) * bagged[1][m.Bag()] * (1 - 0.50*suppressed)
	case o.Resin():
		l := nonatomizedResin
		if m.Atomized() {
			l = atomizedResin
		}
		return l.at(h) * bagged[0][m.Bag()] * (1 - 0.45*suppressed)
	}
	return 0
}
