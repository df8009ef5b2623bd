package study

import (
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/permit"
	"moldturn/sim/record"
)

// Steps of a standard life: what each uses, and shares of resin that add up to
// one part whatever the hours are.
func TestPermitSteps(t *testing.T) {
	lay := func(verb sim.Verb, mean float64, want int16) sim.Step {
		return sim.Step{Doing: record.Laminating, Verb: verb, Mean: mean, Want: want}
	}
	steps := []sim.Step{
		{Doing: record.Masking, Spray: sim.SprayBand}, {Doing: record.Spraying, Spray: sim.SprayBase, Verb: sim.Sprayed},
		{Doing: record.Gelling, Pace: sim.ByCure}, {Doing: record.Spraying, Verb: sim.WashedOut}, {Doing: record.Spraying},
		lay(sim.SkinBegun, 1.25, 3), {Doing: record.SkinCure, Pace: sim.ByCure}, lay(sim.LaborEnded, 2.5, 4), lay(sim.LaborEnded, 7.0/3, 4), {Doing: record.Pulling},
	}
	want := []permit.Use{permit.Band, permit.GelCoat, permit.NoUse, permit.NoUse, permit.Barrier, permit.Skin, permit.NoUse, permit.Laminate, permit.Laminate, permit.NoUse}
	got := permitSteps(steps)
	sum := int64(0)
	for i := range got {
		if got[i].Use != want[i] {
			t.Errorf("step %d: %v, want %v", i, got[i].Use, want[i])
		}
		if got[i].Use == permit.Skin || got[i].Use == permit.Laminate {
			sum += got[i].Share
		}
	}
	if sum != permit.Whole {
		t.Errorf("shares of resin add up to %d", sum)
	}
	if labor := 3.75 + 10 + 28.0/3; math.Abs(float64(got[5].Share)/permit.Whole-3.75/labor) > 1e-6 {
		t.Errorf("the skin coat takes %d of a million, want %.6f", got[5].Share, 3.75/labor)
	}
}

// Over replications: months are means and ranges, crossings add up to the
// replications, levers are ordered by what they save.
func TestPermitsOverReplications(t *testing.T) {
	s := &permit.Setup{
		Plant:   permit.Plant{Parts: []permit.Part{{Area: 10, Film: 0.5, Thick: 5}}, Models: []string{"skiff"}},
		Amounts: permit.Amounts{Density: 1.2, Transfer: 0.75, Laminate: 1.5, Glass: 0.4},
		Materials: []permit.Material{
			{Name: "gel coat", Operation: permit.PigmentedGel, HAP: 33, Styrene: 33, Averaged: true, For: []permit.Use{permit.GelCoat}, Share: 1},
			{Name: "resin", Operation: permit.ProductionResin, Method: permit.Atomized, HAP: 35, Styrene: 35, Averaged: true, For: []permit.Use{permit.Laminate}, Share: 1},
		},
		Steps: permit.Steps{ResinHAP: 3, GelHAP: 3, Film: 0.0254, Transfer: 0.05, Glass: 0.03},
	}
	s.Plant.Start = twoModels().Start
	s.Plant.To = 2 * 366 * 24 * 3_600_000
	var counts []*permit.Counts
	for rep := range 4 {
		c := &permit.Counts{}
		for range s.Plant.End() {
			m := permit.MonthCounts{Parts: make([][permit.Laminate + 1]int64, 1), New: []int64{0}, Resurfaced: []int64{0}, Shipped: []int64{int64(10 + rep)}}
			m.Parts[0][permit.GelCoat], m.Parts[0][permit.Laminate] = int64(10+rep)*permit.Whole, int64(10+rep)*permit.Whole
			c.Months = append(c.Months, m)
		}
		counts = append(counts, c)
	}
	p := NewPermits(s, counts)
	per := p.Ledgers[0].HAP / float64(p.Ledgers[0].Boats)
	months := p.Months()
	last := months[len(months)-1]
	if math.Abs(last.Rolling-12*11.5*per) > 1e-6 || last.Low > last.Rolling || last.High < last.Rolling || last.Fails != 4 { // 35 % atomized has 77.7 kg/Mg
		t.Errorf("%+v, want a mean of %v", last, 12*11.5*per)
	}
	if y := p.PerYear(); math.Abs(y.Mean-last.Rolling) > 1e-6 {
		t.Errorf("a year %v, twelve months %v", y.Mean, last.Rolling)
	}
	by, never := p.Crossings(12 * 12.5 * per)
	if by[11] != 1 || never != 3 {
		t.Errorf("crossings %v, never %d; only 13 boats a month pass a cap for 12.5", by, never)
	}
	s.Cap = 12 * 12.5 * per
	if left := p.Left(s.Cap); math.Abs(left.Mean-12) > 1e-6 {
		t.Errorf("%v boats left on average, want 12", left.Mean)
	}
	levers := p.Levers()
	for i, l := range levers {
		if l.Saves.Mean <= 0 || i > 0 && l.Saves.Mean > levers[i-1].Saves.Mean || l.Room.Mean <= 0 {
			t.Errorf("%s saves %v after %v, room %v", l.Name, l.Saves.Mean, levers[max(i-1, 0)].Saves.Mean, l.Room.Mean)
		}
	}
	if levers[0].Name != "resin put on nonatomized" || !levers[0].Complying { // 45.59 < 46 and 155.6 < 159
		t.Errorf("first lever %+v", levers[0])
	}
}
