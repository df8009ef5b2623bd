package money

import (
	"math"

	"moldturn/sim/clock"
)

// shop prices what belongs to no part: air and training.
func (p *pricing) shop() {
	p.air()
	p.g.add(Line{Name: "training", Label: "training", Class: Prevention, Model: -1, Quantity: int64(p.Plant.To - p.Plant.From), Per: msPerYear, Unit: "year",
		Price: p.Prices.Training, Of: "counted time", Inputs: []string{"money.training"}})
}

// heatOfAir is what 1 m³ of air takes per K: 1.2 kg/m³ × 1.006 kJ/(kg K) in Wh.
// Standard air of 1.2 kg/m³ and the specific heat of dry air are those of the
// ASHRAE Handbook, Fundamentals, chapter Psychrometrics; from memory.
const heatOfAir = 1.2 * 1.006 / 3.6

// air prices the air that booths move while someone sprays, and the heat it
// takes where the air outdoors is known.
func (p *pricing) air() {
	var moved, heat int64
	for month, t := range p.q.BoothTime {
		volume := float64(t) / float64(clock.Hour) * p.Plant.AirPerHour
		moved += int64(math.Round(volume))
		if p.Plant.Outdoor != nil {
			heat += int64(math.Round(volume * max(p.Plant.Supply-p.Plant.Outdoor[month], 0) * heatOfAir))
		}
	}
	p.g.add(Line{Name: "booth_air", Label: "air moved by booths", Model: -1, Quantity: moved, Per: 1000, Unit: "1,000 m³", Price: p.Prices.BoothAir,
		Of: "hours of spraying × air per hour", Inputs: []string{"money.booth.air", "money.booth.fan"}})
	p.g.add(Line{Name: "booth_heat", Label: "heat for the air of booths", Model: -1, Quantity: heat, Per: 1000, Unit: "kWh", Price: p.Prices.BoothHeat,
		Of: "air by month × degrees below money.booth.supply", Inputs: []string{"money.booth.heat", "money.booth.supply", "money.booth.outdoor"}})
}

// boats prices what goes by boats: margin, floor, lateness, warranty, rework
// materials.
func (p *pricing) boats() {
	for m, model := range p.Plant.Models {
		row := func(key, label string, quantity int64, per float64, unit string, price float64, of string, inputs ...string) Line {
			return Line{Name: name(key, model.Name), Label: label + ", " + model.Name, Model: m, Quantity: quantity, Per: per, Unit: unit, Price: price, Of: of, Inputs: inputs}
		}
		margin := row("margin", "margin of boats", p.q.Shipped[m], 1, "boat", model.Margin, "boats shipped", path("models", model.Name, "margin"))
		margin.Kind = Income
		p.g.add(margin)
		warranty := row("warranty", "warranty, set aside at shipping", p.q.Escaped[m], 1, "boat", p.Prices.EscapePrice(), "boats shipped with an escape", "money.warranty.claim", "money.warranty.chance")
		warranty.Class = ExternalFailure
		p.g.add(warranty)
		p.g.add(row("floor", "floor", p.q.FloorTime[m], msPerDay, "boat-day", p.Prices.FloorDay, "days of boats on the floor", "money.floor.day"))
		p.g.add(row("holding", "money tied up on the floor", p.q.FloorTime[m], msPerDay, "boat-day", p.Prices.Holding*p.Prices.FloorValue/365.25, "days of boats on the floor", "money.floor.rate", "money.floor.value"))
		p.g.add(row("late", "late boats", p.q.LateTime[m], msPerDay, "boat-day", p.Prices.LateDay, "days after the due date", "money.late_day"))
	}
	for m, t := range p.q.ReworkTime {
		model := p.modelOf(m)
		l := Line{Name: "rework_materials", Label: "materials of rework" + p.of(model), Class: InternalFailure, Model: model, Quantity: t, Per: msPerHour, Unit: "h",
			Price: p.Prices.Rework, Of: "labor hours of buffing and mending", Inputs: []string{"money.rework"}}
		if model >= 0 {
			l.Name = name(l.Name, p.Plant.Models[m].Name)
		}
		p.g.add(l)
	}
}

// Claimed is what the claims cost that came in during the counted time, those
// of boats shipped before it included: the cash behind the warranty that the
// ledger sets aside at shipping. It is an expected amount, since the ledger
// draws no luck.
func (s *Setup) Claimed(q *Quantities) float64 {
	end := float64(s.Plant.To-s.Plant.From) / float64(clock.Week)
	sum := 0.0
	for w, n := range sorted(q.EscapesByWeek) {
		middle := float64(w) + 0.5
		sum += float64(n) * (s.Prices.claimed(end-middle) - s.Prices.claimed(-middle))
	}
	return sum * s.Prices.EscapePrice()
}
