package scenarios

import "moldturn/sim/money"

// MoldYears is the time over which a mold is written off in prices of a year.
// Common practice, no source.
const MoldYears = 5

// yearHours is the hours of a mean year.
const yearHours = 365.25 * 24

// personPrice is one person of a craft for a year of some hours: wage and
// loading over those hours, paid time off the floor included, where the scenario has prices, else
// size.person. A size.person that was written down goes first.
func (s *Scenario) personPrice(craft string, hours float64) float64 {
	v := s.Base.Value
	m := v.At("money")
	if !m.Given() || !v.At("size.person").IsDefault() {
		return v.At("size.person").Dollars()
	}
	wage := m.At("wage").Dollars()
	for name, w := range m.Each("wages") {
		if name == craft {
			wage = w.Dollars()
		}
	}
	return wage * m.At("loading").Number() * (1 + m.At("off_floor").Share()) * hours
}

// moldPrice is one mold of a part for a year: its price where the scenario has
// prices, written off over MoldYears at the discount rate, else
// size.mold_per_m2. A size.mold_per_m2 that was written down goes first.
func (s *Scenario) moldPrice(part *Value) float64 {
	v := s.Base.Value
	m, area := v.At("money"), part.At("area").SquareMeters()
	if !m.Given() || !v.At("size.mold_per_m2").IsDefault() {
		return v.At("size.mold_per_m2").Dollars() * area
	}
	price := m.At("mold.price").Dollars() * area
	if part.At("mold_price").Given() {
		price = part.At("mold_price").Dollars()
	}
	return price * money.CapitalRecovery(m.At("discount").Share(), MoldYears)
}

// LeverPrices says where the prices of levers come from.
func (s *Scenario) LeverPrices() string {
	if s.Base.Value.At("money").Given() {
		return "people by wage, loading and the hours of their shift, molds by price over five years at money.discount, places by size.booth, size.guns, size.hoist and size.place"
	}
	return "the defaults size.person, size.booth, size.guns, size.hoist, size.place and size.mold_per_m2, unless the scenario has its own"
}
