package cure

import "moldturn/sim/clock"

// CardRow is one line of a hold card: what a shop temperature means for the
// hold in the mold, counted from the end of the last labor in it.
type CardRow struct {
	TempC     float64    // constant shop and mold temperature
	Wait      clock.Time // to the hardness wanted; clock.Never when NeedsHeat
	Hold      clock.Time // the longer of Wait and the clock hours asked for; clock.Never when NeedsHeat
	AtClock   float64    // Barcol hardness after the clock hours
	Ceiling   float64    // Barcol hardness that is never exceeded at this temperature
	NeedsHeat bool       // waiting is useless: out of reach, or later than the longest wait
}

// Card gives a line for each of temps, °C. A part is ready with the Barcol
// hardness wanted and at least the hours of clock; a wait longer than longest
// counts as out of reach (clock.Never for no bound), because creeping to the
// plateau costs days where a little heat costs hours.
func Card(t *Table, b Barcol, temps []float64, hardness float64, hold, longest clock.Time) []CardRow {
	rows := make([]CardRow, len(temps))
	for i, tempC := range temps {
		rows[i] = t.cardRow(b, tempC, hardness, hold, longest)
	}
	return rows
}

func (t *Table) cardRow(b Barcol, tempC, hardness float64, hold, longest clock.Time) CardRow {
	r := CardRow{TempC: tempC, Ceiling: b.At(t.p.Plateau(tempC)), Wait: clock.Never, Hold: clock.Never}
	shop := NewDegree([]float64{tempC}, NewHours([]float64{tempC}, t.p), t)
	r.AtClock = b.At(shop.At(0, hold))
	wait, ok := shop.Ready(0, b.Degree(hardness), longest)
	if r.NeedsHeat = !ok; ok {
		r.Wait, r.Hold = wait, max(wait, hold)
	}
	return r
}
