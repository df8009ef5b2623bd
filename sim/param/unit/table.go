package unit

import (
	"math/big"

	"moldturn/sim/param"
)

// measure is one unit of a kind: base = (written + shift) × factor, exactly.
type measure struct {
	signs  []string // accepted spellings in any case; the first is written
	factor string   // a decimal or a fraction, read exactly
	shift  string   // only for temperatures
	write  use
}

// use says in which system a measure is chosen for writing.
type use uint8

const (
	readOnly use = 0
	metric   use = 1
	us       use = 2
	both     use = metric | us
)

// measures lists the units of a kind, the preferred one of each system first.
//
// Factors: NIST Special Publication 811 (2008), Guide for the Use of the
// International System of Units, appendix B.8: inch 25.4 mm, foot 0.3048 m, mil
// 0.0254 mm, square foot 0.09290304 m², pound 0.45359237 kg, ounce
// 28.349523125 g, U.S. gallon 3.785411784 L, quart a fourth of it, degree
// Fahrenheit (t − 32)/1.8 °C. A short ton is 2,000 pounds, 907.18474 kg: NIST
// Handbook 44 (2024), appendix C, "Units of Mass Not Less Than Avoirdupois
// Pounds". A year is 365.25 days and a month its twelfth.
func measures(k param.Kind) []measure {
	switch k {
	case param.Duration, param.Dist:
		return []measure{
			{signs: []string{"h", "hr", "hrs", "hour", "hours"}, factor: "1", write: both},
			{signs: []string{"min", "mins", "minute", "minutes"}, factor: "1/60", write: both},
			{signs: []string{"s", "sec", "secs", "second", "seconds"}, factor: "1/3600", write: both},
			{signs: []string{"d", "day", "days"}, factor: "24"},
			{signs: []string{"wk", "wks", "week", "weeks"}, factor: "168"},
			{signs: []string{"ms"}, factor: "1/3600000"},
		}
	case param.Temperature:
		return []measure{
			{signs: []string{"C", "°C", "deg C"}, factor: "1", write: metric},
			{signs: []string{"F", "°F", "deg F"}, factor: "5/9", shift: "-32", write: us},
			{signs: []string{"K"}, factor: "1", shift: "-273.15"},
		}
	case param.Difference:
		return []measure{
			{signs: []string{"C", "°C", "deg C"}, factor: "1", write: metric},
			{signs: []string{"F", "°F", "deg F"}, factor: "5/9", write: us},
			{signs: []string{"K"}, factor: "1"},
		}
	case param.Area:
		return []measure{
			{signs: []string{"m2", "m²", "m^2", "sq m", "sqm"}, factor: "1", write: metric},
			{signs: []string{"ft2", "ft²", "ft^2", "sq ft", "sqft"}, factor: "0.09290304", write: us},
		}
	case param.Length:
		return []measure{
			{signs: []string{"mm"}, factor: "1", write: metric},
			{signs: []string{"m"}, factor: "1000", write: metric},
			{signs: []string{"cm"}, factor: "10"},
			{signs: []string{"µm", "μm", "um"}, factor: "0.001"},
			{signs: []string{"ft", "foot", "feet", "'"}, factor: "304.8", write: us},
			{signs: []string{"in", "inch", "inches", `"`}, factor: "25.4", write: us},
			{signs: []string{"mil", "mils"}, factor: "0.0254", write: us},
		}
	case param.Mass:
		return []measure{
			{signs: []string{"kg"}, factor: "1", write: metric},
			{signs: []string{"g"}, factor: "0.001", write: metric},
			{signs: []string{"t", "tonne", "tonnes", "metric ton", "metric tons"}, factor: "1000"},
			{signs: []string{megagram}, factor: "1000"},
			{signs: []string{"lb", "lbs"}, factor: "0.45359237", write: us},
			{signs: []string{"oz"}, factor: "0.028349523125", write: us},
			{signs: []string{"short tons", "short ton", "US tons", "US ton"}, factor: "907.18474"},
		}
	case param.Volume:
		return []measure{
			{signs: []string{"L", "liter", "liters"}, factor: "1", write: metric},
			{signs: []string{"ml"}, factor: "0.001", write: metric},
			{signs: []string{"gal", "gallon", "gallons"}, factor: "3.785411784", write: us},
			{signs: []string{"qt"}, factor: "0.946352946"},
		}
	case param.Rate:
		return []measure{
			{signs: []string{"/week", "/wk"}, factor: "1", write: both},
			{signs: []string{"/day", "/d"}, factor: "7", write: both},
			{signs: []string{"/year", "/yr"}, factor: "28/1461", write: both},
			{signs: []string{"/month"}, factor: "112/487"},
			{signs: []string{"/h", "/hr", "/hour"}, factor: "168", write: both},
		}
	case param.Money:
		return []measure{
			{signs: []string{""}, factor: "1", write: both},
			{signs: []string{"k"}, factor: "1000", write: both},
			{signs: []string{"M", "million"}, factor: "1000000", write: both},
		}
	case param.Share:
		return []measure{
			{signs: []string{"%", "percent"}, factor: "1/100", write: both},
			{signs: []string{""}, factor: "1"},
		}
	case param.Number, param.Count, param.NumberDist:
		return []measure{{signs: []string{""}, factor: "1", write: both}}
	}
	return nil
}

// toBase converts x, written in m, to the base unit.
func (m measure) toBase(x *big.Rat) *big.Rat {
	y := new(big.Rat).Set(x)
	if m.shift != "" {
		y.Add(y, exact(m.shift))
	}
	return y.Mul(y, exact(m.factor))
}

// fromBase converts y in the base unit to m.
func (m measure) fromBase(y *big.Rat) *big.Rat {
	x := new(big.Rat).Quo(y, exact(m.factor))
	if m.shift != "" {
		x.Sub(x, exact(m.shift))
	}
	return x
}

// exact reads a factor of the table.
func exact(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("unit: bad factor " + s)
	}
	return r
}
