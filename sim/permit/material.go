package permit

import "fmt"

// Material is one product in its drums, put on in one way.
type Material struct {
	Name       string
	Operation  Operation
	Method     Method
	HAP        float64 // organic HAP content of the product without filler, weight percent
	Styrene    float64 // the largest single HAP in it, weight percent, at most HAP
	Filler     float64 // weight percent of the material as applied
	Suppressed float64 // vapor suppressant effectiveness, 0 … 1
	Evaporates float64 // share of the HAP of a Solvent that goes into the air, 0 … 1
	Averaged   bool    // takes part in the averaging; otherwise judged by content
	For        []Use
	Share      float64        // of each of its uses, 0 … 1
	Before     *[Year]float64 // kg used in the twelve months before the counted time, oldest first; nil: not known
}

// Year is the months that every judgment looks back.
const Year = 12

// Point is the point value of the material as applied, kg per Mg.
func (m *Material) Point() float64 {
	return Filled(PointValue(m.Operation, m.Method, m.HAP), m.Filler)
}

// Emitted is the estimate of organic HAP that goes into the air from so many kg
// as applied: the emission factor on what is not filler; for Solvent its HAP
// times the share that evaporates.
func (m *Material) Emitted(kg float64) float64 {
	neat := kg * (100 - m.Filler) / 100
	if m.Operation == Solvent {
		return neat * m.HAP / 100 * m.Evaporates
	}
	return neat * Factor(m.Operation, m.Method, m.HAP, m.Suppressed) / 2000
}

// largest is the share of the emitted HAP that is the largest single one.
func (m *Material) largest() float64 {
	if m.HAP <= 0 {
		return 0
	}
	return m.Styrene / m.HAP
}

// fault is what is wrong with the material, empty for nothing.
func (m *Material) fault() string {
	switch {
	case m.Styrene > m.HAP:
		return fmt.Sprintf("a single HAP of %v %% is more than all HAP of %v %%", m.Styrene, m.HAP)
	case m.Operation.Gel() && (m.Method.Bag() != Open || m.Method.ByHand()):
		return "gel coat is atomized or nonatomized"
	case m.Filler > 0 && !m.Operation.Resin():
		return "only resin has filler"
	}
	for _, u := range m.For {
		if !u.wants()(m.Operation) {
			return fmt.Sprintf("%v cannot serve as %v", m.Operation, u)
		}
	}
	return ""
}
