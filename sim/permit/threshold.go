package permit

// Masses of air permits.
const (
	KgPerTon = 907.18474 // of a short ton, 2,000 lb
	kgPerMg  = 1000
)

// Thresholds of a major source of HAP, in kg of a year: 9.1 Mg (10 tons) of one
// HAP or 22.7 Mg (25 tons) of a combination. 40 CFR 63 Subpart VVVV, Table 1,
// note 1. They are about what a plant could emit, not only what it does.
const (
	MajorOne = 10 * KgPerTon
	MajorAll = 25 * KgPerTon
)

// Major tells whether a year's emissions reach a threshold: one is the largest
// single HAP, all the combination, both in kg.
func Major(one, all float64) bool { return one >= MajorOne || all >= MajorAll }
