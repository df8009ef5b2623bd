package defect

import "math"

// Shape is how a driver acts.
type Shape uint8

// Shapes. Each gives the factor 1 where nothing is wrong.
const (
	Above Shape = iota // 1 + Gain for each unit above From
	Below              // 1 + Gain for each unit below From
	Step               // Gain beyond From
	Power              // Gain for each unit, one upon the other
)

// Effect is a factor on the chance of a defect. The zero value has no effect.
type Effect struct {
	Driver Driver
	Shape  Shape
	From   float64 // bound in the driver's unit; unused by Power
	Gain   float64 // not negative; at least 1 for Step and Power
}

// Factor is what the effect multiplies the chance of part's defect with, 1 or
// more.
func (e *Effect) Factor(part *Part) float64 {
	if e.Driver == None {
		return 1
	}
	x := drivers[e.Driver].of(part)
	switch e.Shape {
	case Above:
		return 1 + e.Gain*max(x-e.From, 0)
	case Below:
		return 1 + e.Gain*max(e.From-x, 0)
	case Step:
		if x > e.From {
			return e.Gain
		}
		return 1
	default:
		return math.Pow(e.Gain, max(x, 0))
	}
}
