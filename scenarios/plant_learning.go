package scenarios

import (
	"slices"
	"time"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// learning sets how models are learned and how people come and go.
func (b *builder) learning() {
	l := b.v.At("learning")
	b.plan.Learning = sim.Learning{Standard: float64(l.At("standard").Count()), Most: l.At("most").Number()}
	i := 0
	for _, v := range b.v.Each("models") {
		c := v.At("learning")
		b.plan.Models[i].Curve = sim.Curve{Gel: c.At("gel").Share(), Lamination: c.At("lamination").Share(), Assembly: c.At("assembly").Share(), Built: c.At("built").Count()}
		i++
	}
	i = 0
	for _, v := range b.v.Each("crafts") {
		b.plan.Crafts[i].Hires = sim.Hires{Turnover: v.At("turnover").Share(), Ramp: v.At("ramp").Hours() / 24, Start: v.At("ramp_start").Share(), Flaws: v.At("ramp_flaws").Number()}
		i++
	}
}

// newMolds are the days on which new molds of a part come, in order.
func (b *builder) newMolds(v *Value) []clock.Time {
	var out []clock.Time
	for _, d := range v.Each("mold_dates") {
		out = append(out, b.comes(d))
	}
	m := v.At("on_master")
	n, from := m.At("count").Count(), m.At("from")
	if n > 0 && !from.Given() {
		b.complain(m.At("count"), "molds on the master need the day on which the first is begun", "on_master: {count: 2, from: 2028-03-06}", "")
		return out
	}
	for k := range n {
		out = append(out, b.dayOf(from.Date())+clock.Time(k+1)*clock.FromHours(m.At("time").Hours()))
	}
	for _, t := range out {
		if t <= 0 {
			b.complain(v, "a new mold must come after the first day, "+b.v.At("start").Date().Format(time.DateOnly), "", "molds that are there from the start count in molds and new_molds")
			break
		}
	}
	slices.Sort(out)
	return out
}

// comes is the midnight of a date.
func (b *builder) comes(v *Value) clock.Time { return b.dayOf(v.Date()) }

func (b *builder) dayOf(d time.Time) clock.Time {
	return shift.Midnight(b.plan.Start, shift.DateOf(d.Year(), d.Month(), d.Day()))
}
