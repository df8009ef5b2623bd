package exposure

// Range is a range of air velocities, ft/min.
type Range struct{ Low, Design, High float64 }

// Draft is one row of the table of booth velocities.
type Draft struct {
	Work     string
	MaxCross float64 // crossdraft up to, ft/min
	Large    Range   // booths in which people walk
	Small    Range
}

// Drafts are velocities at the face of booths by kind of spraying and crossdraft:
// OSHA 29 CFR 1910.94(c)(6)(i), Table G-10, as printed in WAC 296-62-11019, Table
// 14. Operation anywhere in the range complies; crossdrafts over 100 ft/min are
// not permitted.
func Drafts() []Draft {
	return []Draft{
		{"electrostatic, or automatic airless without an operator", 0, Range{50, 50, 75}, Range{75, 100, 125}},
		{"air-operated guns, crossdraft up to 50 fpm", 50, Range{75, 100, 125}, Range{125, 150, 175}},
		{"air-operated guns, crossdraft up to 100 fpm", 100, Range{125, 150, 175}, Range{150, 200, 250}},
	}
}

// Guns is the row for air-operated guns at a crossdraft in ft/min; ok is false
// above 100, which is not permitted.
func Guns(crossdraft float64) (d Draft, ok bool) {
	for _, d := range Drafts()[1:] {
		if crossdraft <= d.MaxCross {
			return d, true
		}
	}
	return Draft{}, false
}

// LeastFace is the mean velocity over the open face of a spray booth that fire
// rules ask for, ft/min; with electrostatic guns 60. OSHA 29 CFR
// 1910.107(b)(5)(i), letters of interpretation of 1976 and 2001; the
// International Mechanical Code, 502.7.3.3, asks for 100 ft/min (0.51 m/s) too.
const LeastFace = 100.0

// Conversions of air, exact: 1 ft is 0.3048 m.
const (
	foot      = 0.3048
	m3hPerCfm = foot * foot * foot * 60
)

// FaceFpm is the mean velocity of an air flow in m³/h through an open face in
// m²; 0 without a face.
func FaceFpm(m3h, face float64) float64 {
	if face <= 0 {
		return 0
	}
	return m3h / face / 60 / foot
}

// AirM3h is the air for a velocity in ft/min over a face in m².
func AirM3h(fpm, face float64) float64 { return fpm * foot * 60 * face }

// Cfm is an air flow of m³/h in ft³/min.
func Cfm(m3h float64) float64 { return m3h / m3hPerCfm }

// M3h is an air flow of ft³/min in m³/h.
func M3h(cfm float64) float64 { return cfm * m3hPerCfm }
