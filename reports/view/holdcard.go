package view

import (
	"moldturn/reports/cells"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	units "moldturn/sim/param/unit"
)

// HoldCard is the card that a supervisor posts on the wall: how long parts stay in
// their molds at a shop temperature, and where waiting is of no use. The zero
// Style is °C.
func HoldCard(h *cure.Hold, style units.Style) cells.Table {
	_, sign := style.Degrees(0)
	t := cells.Table{
		Title: "Hold in the mold after the last labor, to a Barcol hardness of " + fixed(h.Hardness, 0),
		Columns: []cells.Column{
			{Head: "shop, " + sign, Align: cells.Right}, {Head: "hold, h", Align: cells.Right},
			{Head: "hard enough after, h", Align: cells.Right}, {Head: "Barcol after " + fixed(h.Clock.Hours(), 0) + " h", Align: cells.Right},
			{Head: "never harder than", Align: cells.Right},
		},
		Notes: []string{"Waiting is of no use here: the shop is too cold for that hardness, or it would take too long. The mold needs heat."},
	}
	for _, r := range h.Rows(cure.CardTemperatures()) {
		shop, _ := style.Degrees(r.TempC)
		row := cells.Texts(fixed(shop, 0), "needs heat", "–", fixed(r.AtClock, 0), fixed(r.Ceiling, 0))
		if r.NeedsHeat {
			row.Cells[1].Notes = []int{0}
		} else {
			row.Cells[1].Text, row.Cells[2].Text = wholeUp(r.Hold), wholeUp(r.Wait)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// wholeUp is a time in hours, rounded up: nobody pulls a minute early.
func wholeUp(t clock.Time) string { return fixed(float64((t+clock.Hour-1)/clock.Hour), 0) }

// HoldCautions belong under every hold card.
func HoldCautions() []string {
	return []string{
		"The card is computed from this plant's inputs, most of them assumptions. Take Barcol readings, 10 to 12 on each laminate, and put the plant's own log in their place. The resin supplier's data sheet goes before it.",
		"Heat a cold mold evenly and by a little. A fresh thick laminate heats itself; heat on top of a hot exotherm can scorch, warp or crack it, and hot resin waste can burn.",
		"More peroxide is no substitute for heat: stay inside the supplier's range, and keep peroxide apart from promoter, heat and sparks.",
		"Styrene vapor is heavy and gathers in deep molds: ventilate before anyone reaches in, and keep heaters with open flames or glowing parts out.",
		"Local codes, the safety data sheets and people licensed for the work decide, not this card.",
	}
}
