package exposure

// Limit is a published limit for styrene in the air that people breathe.
type Limit struct {
	Name    string
	PPM     float64 // eight-hour time-weighted average
	Short   float64 // short-term or ceiling; 0 without
	Dated   string
	Source  string
	Memory  bool // from memory, not verified
	Enforce bool // a rule of law where it applies; otherwise a recommendation
}

// Limits are the published limits for styrene, least strict first. A plant's
// authority may have others, and newer ones. The years of the first three are
// from memory.
func Limits() []Limit {
	return []Limit{
		{Name: "OSHA PEL", PPM: 100, Short: 200, Dated: "1971", Enforce: true, Source: "29 CFR 1910.1000, Table Z-2; peak 600 ppm for 5 min in any 3 h: osha.gov chemical data, styrene"},
		{Name: "NIOSH REL", PPM: 50, Short: 100, Dated: "1983", Source: "NIOSH Pocket Guide to Chemical Hazards, 2005-151: 215 mg/m³, short-term 425 mg/m³"},
		{Name: "Cal/OSHA PEL", PPM: 50, Short: 100, Dated: "2005", Enforce: true, Source: "Title 8 CCR section 5155, Table AC-1; ceiling 500 ppm"},
		{Name: "ACGIH TLV, former", PPM: 20, Short: 40, Dated: "1996", Source: "ACGIH threshold limit values: 85 mg/m³, short-term 170 mg/m³"},
		{Name: "ACGIH TLV", PPM: 10, Short: 20, Dated: "2020", Memory: true, Source: "ACGIH threshold limit values from 2020, from memory"},
	}
}

// Properties of styrene, NIOSH Pocket Guide 2005-151 and suppliers' data sheets.
const (
	Mole        = 104.15 // g/mol; printed as 104.15 to 104.2
	Gravity     = 0.91   // to water
	LEL         = 0.9    // lower explosive limit, % by volume; some data sheets have 1.1 (from memory)
	LELOther    = 1.1
	Danger      = 700.0 // ppm immediately dangerous to life or health
	molarVolume = 24.45 // L/mol at 25 °C and 1 atm
	poundMole   = 387.0 // ft³ of gas in a pound-mole at 70 °F, as rounded in ventilation manuals
)

// MgPerM3 is the mass of styrene of one ppm in mg/m³.
const MgPerM3 = Mole / molarVolume

// QuarterLEL is a quarter of an explosive limit in % by volume, in ppm: exhaust
// of spray areas must stay at or below 25 % of the lower limit (NFPA 33, section
// 7.2; the International Mechanical Code too).
func QuarterLEL(lel float64) float64 { return lel / 100 * 1e6 / 4 }
