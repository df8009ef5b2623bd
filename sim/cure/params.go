package cure

// Params describes one resin as catalyzed in the plant. The zero value is not
// usable; start from Default.
type Params struct {
	ActivationEnergy float64 // J/mol, of every rate below
	K1, K2           float64 // 1/h at 25 °C: rate from nothing, and rate that grows with the degree
	M, N             float64 // exponents of the degree reached and of what is left to the plateau
	Induction        float64 // h at 25 °C before cure starts, for Thick 1
	Thick            float64 // how much slower the last shot of a real lay-up cures than a thin one
	PlateauAt15      float64 // the highest degree reached at 15 °C
	PlateauPerC      float64 // what the plateau gains per °C
	PlateauMost      float64 // the plateau never lies higher
	DoneAfter, DoneC float64 // h and °C of a pull in good time; see Table.Reference
}

// Default is the resin of the assumptions table: see Inputs for the marks.
func Default() Params {
	return Params{
		ActivationEnergy: 50_000,
		K1:               0.08, K2: 2.6,
		M: 0.5, N: 1.8,
		Induction:   0.33,
		Thick:       2,
		PlateauAt15: 0.84, PlateauPerC: 0.004, PlateauMost: 0.97,
		DoneAfter: 24, DoneC: 21,
	}
}

// Plateau is the highest degree of cure that a laminate reaches at tempC,
// 0 … PlateauMost: once the resin has turned to glass at that temperature,
// waiting adds nothing.
//
// Source of the idea: glass transition follows the degree of cure on one curve
// whatever the cure temperature, Polymer 34 (1993) 3216. The numbers are
// assumptions.
func (p Params) Plateau(tempC float64) float64 {
	return min(max(p.PlateauAt15+p.PlateauPerC*(tempC-15), 0), p.PlateauMost)
}
