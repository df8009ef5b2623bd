package cure

import "moldturn/sim/clock"

// Hold is a resin with the rule by which parts of it are held in their molds.
type Hold struct {
	Resin    *Table
	Barcol   Barcol
	Hardness float64    // Barcol, wanted at the pull
	Clock    clock.Time // the least hold
	Most     clock.Time // the longest hold; clock.Never without one
}

// Rows is the card of the rule for shop temperatures in °C, see Card.
func (h *Hold) Rows(temps []float64) []CardRow {
	return Card(h.Resin, h.Barcol, temps, h.Hardness, h.Clock, h.Most)
}

// CardTemperatures are the shop temperatures in °C that a hold card is printed
// for, from cold to hot.
func CardTemperatures() []float64 {
	var temps []float64
	for t := 10; t <= 34; t += 2 {
		temps = append(temps, float64(t))
	}
	return temps
}
