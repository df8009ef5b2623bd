package money

// Prices is what quantities cost. Its zero value prices everything at nothing.
// Rows in inputs.go name the sources of the defaults.
type Prices struct {
	Currency string // sign before amounts

	Wages    []float64 // by craft, per regular hour
	Loading  float64   // of wages: taxes, insurance, paid leave
	Overtime float64   // wage of an hour beyond the shift over that of a regular one
	OffFloor float64   // paid hours off the floor per hour on it: breaks, suits, clean-up

	Barrier, Resin, Glass, Wax, Compound, Stripper float64 // per kg
	Solvent                                        float64 // per L
	MoldRepair, Rework                             float64 // materials per labor hour
	Resurface                                      float64 // materials per m²

	BoothAir  float64 // per 1,000 m³ moved
	BoothHeat float64 // per kWh

	FloorDay   float64 // per boat and day on the floor
	Holding    float64 // share of ValueOnFloor per year
	FloorValue float64 // what is tied up in a boat on the floor
	LateDay    float64 // per boat and day late

	Claim       float64 // mean of a warranty claim
	ClaimChance float64 // of a boat shipped with an escape
	ClaimFrom   float64 // weeks from shipping to a claim at least
	ClaimTo     float64 // and at most

	Training float64 // per year
}

// EscapePrice is what is set aside for one boat shipped with an escape.
func (p *Prices) EscapePrice() float64 { return p.ClaimChance * p.Claim }

// claimed is the share of the claims of a boat that have come in so many weeks
// after shipping; delays are taken as equally likely from ClaimFrom to ClaimTo.
func (p *Prices) claimed(weeks float64) float64 {
	switch {
	case weeks <= p.ClaimFrom:
		return 0
	case weeks >= p.ClaimTo:
		return 1
	}
	return (weeks - p.ClaimFrom) / (p.ClaimTo - p.ClaimFrom)
}
