package sim

import (
	"fmt"
	"moldturn/sim/finish/defect"
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// partRoute draws the life of a part, with the steps of the standard route.
func (m *maker) partRoute(molded bool) []Step {
	var steps []Step
	add := func(s Step) *Step {
		steps = append(steps, s)
		return &steps[len(steps)-1]
	}
	if molded {
		m.sprayed(add)
		s := add(m.step("skin", record.Laminating, layCraft, m.pick(0.5, 1, 2), m.end(Finish)))
		s.Take, s.Add, s.Verb = []int16{bayPlace}, Scuffing, SkinBegun
		add(m.wait("skin wait", record.SkinCure, ByCure, 2))
		for range m.between(1, 2) {
			s = add(m.step("shot", record.Laminating, layCraft, m.pick(1, 2, 4), m.end(Finish)))
			s.Verb = LaborEnded
		}
		s = add(m.wait("hold", record.Curing, ByPolicy, 0))
		s.Swap, s.Take = []int16{bayPlace}, []int16{curePlace}
		s.Verb = Held
		m.has["swap of places held"] = true
		if m.some(0.5, "warm place") {
			s = add(m.wait("warm", record.Curing, ByPolicy, 0))
			s.When, s.Swap, s.Take, s.Verb = NeedHeat, []int16{curePlace, bayPlace}, []int16{warmPlace}, Held
		}
		s = add(m.step("pull", record.Pulling, pullCraft, 1, m.end(Finish)))
		s.Use, s.Verb, s.Free = []int16{hoistPlace}, Pulled, []int16{warmPlace, curePlace, bayPlace}
	}
	s := add(m.step("trim", record.Trimming, pullCraft, 1, Pause))
	s.Urgent = int8(m.between(0, 1))
	s = add(m.step("finish", record.Finishing, finishCraft, m.pick(1, 3), Pause))
	s.Take = []int16{finishStall}
	if molded {
		s = add(m.step("mend", record.Finishing, finishCraft, 0, Pause))
		s.SetTime(must(draw.Constant(0)))
		s.When, s.Add, s.Take = StuckPart, StuckHours, []int16{finishStall}
		s = add(m.step("inspect", record.Finishing, finishCraft, 0.5, Pause))
		s.Verb = Inspected
		s = add(m.step("put right", record.Finishing, finishCraft, 0, Pause))
		s.SetTime(must(draw.Constant(0)))
		s.When, s.Add, s.Verb, s.Take = Flawed, TouchUpHours, TouchedUp, []int16{finishStall}
		inspect := int16(len(steps) - 2)
		s = add(m.step("buff", record.Finishing, finishCraft, 0, Pause))
		s.SetTime(must(draw.Constant(0)))
		s.When, s.Add, s.Verb, s.Loop, s.Back = BelowTarget, BuffHours, Reworked, true, inspect
	}
	s = add(m.wait("store", record.Other, ByClock, 0))
	s.Take, s.Swap = []int16{storePlace}, []int16{finishStall}
	return steps
}

// sprayed adds the steps up to the skin coat.
func (m *maker) sprayed(add func(Step) *Step) {
	fit := m.end(Fit)
	gate := Dry | Warm
	s := add(m.step("band", record.Masking, gelCraft, 0.5, fit))
	s.When, s.Take, s.Spray, s.Gate = Banded, []int16{boothPlace}, SprayBand, gate
	s = add(m.wait("band wait", record.Gelling, ByCure, 0.5))
	s.When = Banded
	base := int16(2)
	s = add(m.step("base", record.Spraying, gelCraft, m.pick(0.5, 1.5), fit))
	s.Take, s.Spray, s.Gate, s.Opens, s.Verb = []int16{boothPlace}, SprayBase, gate, true, Sprayed
	s = add(m.wait("gel wait", record.Gelling, ByCure, 1.5))
	s.Free = []int16{boothPlace}
	s = add(m.step("wash out", record.Spraying, gelCraft, 2, Pause))
	s.When, s.Verb, s.Loop, s.Back = TooLate, WashedOut, true, base
}

func (m *maker) careRoute() []Step {
	s := []Step{
		m.step("check", record.Checking, moldCraft, 0.5, Pause),
		m.step("repair", record.Repairing, moldCraft, 0, Pause),
		m.wait("repair cure", record.Repairing, ByClock, 4),
		m.step("renew", record.Repairing, moldCraft, 8, Pause),
		m.step("light strip", record.Stripping, moldCraft, 2, Pause),
		m.step("full strip", record.Stripping, moldCraft, 5, Pause),
		m.step("wax", record.Waxing, moldCraft, 0.7, m.end(Finish)),
		m.wait("haze", record.Waxing, ByClock, 0.5),
		m.wait("to the line", record.Other, ByClock, 0),
	}
	s[0].Take, s[0].Verb = []int16{moldStall}, MoldChecked
	s[1].SetTime(must(draw.Constant(0)))
	s[1].When, s[1].Add = Damaged, RepairHours
	s[2].When, s[2].Verb = Damaged, Repaired
	s[3].When, s[3].Verb = WornOut, Renewed
	s[4].When, s[4].Verb, s[4].Gate = DueLight, LightStripped, Dry
	s[5].When, s[5].Verb, s[5].Gate = DueFull, FullStripped, Dry
	s[6].When, s[6].Verb, s[6].Gate = DueWax, Waxed, Dry
	s[7].When, s[7].Loop, s[7].Back = CoatsLeft, true, 6
	s[8].Free = []int16{moldStall}
	return s
}

func (m *maker) boatRoute() []Step {
	s := m.step("assembly", record.Assembling, boatCraft, m.pick(2, 6), Pause)
	s.Swap, s.Take = []int16{storePlace}, []int16{boatPlace}
	return []Step{s}
}

func (m *maker) route(steps []Step) int16 {
	m.p.Routes = append(m.p.Routes, Route{Name: fmt.Sprintf("route %d", len(m.p.Routes)), Steps: steps})
	return int16(len(m.p.Routes) - 1)
}

func (m *maker) models() {
	p := m.p
	for k := range m.between(1, 2) {
		model := Model{Name: fmt.Sprintf("model %d", k), Boat: m.route(m.boatRoute())}
		for c := range p.Colors {
			model.Colors = append(model.Colors, Share{int16(c), float64(m.between(1, 3))})
		}
		if m.some(0.4, "bands") {
			model.Bands = []Share{{0, 1}, {1, 1}}
		}
		parts := m.between(1, 3)
		m.has[[]string{"", "one part", "two parts", "three parts"}[parts]] = true
		for i := range parts {
			model.Parts = append(model.Parts, m.part(k, i, i > 0 && m.some(0.3, "part without mold")))
		}
		p.Models = append(p.Models, model)
	}
}

func (m *maker) part(model, index int, bare bool) int16 {
	p := m.p
	i := int16(len(p.Parts))
	part := Part{
		Name: fmt.Sprintf("part %d of model %d", index, model), Model: int16(model), Index: int16(index), Area: m.pick(8, 20), Color: None,
		Zone: 1, Care: None, Visible: index < 2, Grade: m.between(0, len(p.Finish.Grades)-1), Chips: m.pick(0, 0.3),
	}
	if part.Chips > 0 {
		m.has["chips"] = true
	}
	if index == 0 {
		part.Band = m.pick(0.3, 0.7)
	}
	if p.Defects != nil && p.Defects.Each[defect.Sticking].Scrap > 0 {
		m.has["scrap"] = true
	}
	part.Route = m.route(m.partRoute(!bare))
	if !bare {
		part.Care = m.route(m.careRoute())
		part.InUse = m.between(1, 3)
		for range part.InUse {
			mold := Mold{Part: i, Turns: -1, Since: -1, Surface: 0.1}
			if mold.New = m.some(0.08, "new molds"); mold.New {
				mold.Turns, mold.Since = 0, 0
			}
			p.Molds = append(p.Molds, mold)
		}
		if m.some(0.3, "reserve molds") {
			p.Molds = append(p.Molds, Mold{Part: i, Reserve: true, Turns: -1, Since: 0, Master: m.u() < 0.5})
		}
	}
	p.Parts = append(p.Parts, part)
	return i
}

func (m *maker) background() {
	if m.some(0.3, "background per week") {
		m.piece(Background{Name: "small parts", Craft: layCraft, PerWeek: m.pick(10, 30), Piece: 2, Place: None})
	}
	if m.some(0.3, "background per boat") {
		m.piece(Background{Name: "trim of small parts", Craft: pullCraft, PerBoat: m.pick(3, 10), Piece: 2, Place: None})
	}
}

func (m *maker) piece(g Background) {
	s := m.step(g.Name, record.Background, g.Craft, g.Piece, Pause)
	s.Want, s.Least, s.Urgent = 1, 1, int8(m.between(-1, 1))
	g.Route = m.route([]Step{s})
	m.p.Background = append(m.p.Background, g)
}

func (m *maker) failures() {
	p := m.p
	add := func(place, gun int16, up float64, working bool) {
		for u := range max(p.Places[place].Count, 0) {
			f := Failure{Place: place, Unit: int16(u), Gun: gun, Up: draw.Compile(m.hours(up)), Repair: draw.Compile(m.hours(4)), WhileWorking: working}
			p.Failures = append(p.Failures, f)
			m.has[[]string{"fails any time", "fails at work"}[map[bool]int{false: 0, true: 1}[working]]] = true
		}
	}
	if m.some(0.3, "gun failures") {
		add(boothPlace, 0, 20, m.u() < 0.7)
	}
	if m.some(0.3, "booth failures") {
		add(boothPlace, None, 60, m.u() < 0.5)
	}
	if m.some(0.3, "failures of other places") {
		add([]int16{bayPlace, moldStall, finishStall}[m.between(0, 2)], None, 30, m.u() < 0.5)
	}
}

func (m *maker) demand() {
	d := &m.p.Demand
	d.CancelLate = clock.Never
	models := len(m.p.Models)
	if m.u() < 0.45 {
		m.has["orders always waiting"] = true
		d.Full = true
		d.MateLead = m.between(0, 3)
		if m.some(0.6, "floor limit") {
			d.FloorLimit = m.between(3, 8)
		}
		bare := func(k Model) bool {
			return !slices.ContainsFunc(k.Parts, func(i int16) bool { return m.p.Parts[i].Care != None })
		}
		if slices.ContainsFunc(m.p.Models, bare) && d.FloorLimit == 0 {
			d.FloorLimit = 5
		}
		if d.MateLead > 0 {
			m.has["mate limit"] = true
		}
		return
	}
	if m.u() < 0.5 {
		d.CancelLate = clock.Time(m.between(1, 10)) * clock.Day
		m.has["cancellation"] = true
	}
	if m.u() < 0.6 {
		m.has["generated orders"] = true
		for range models {
			row := ModelDemand{PerWeek: m.pick(1, 3, 6), Due: draw.Compile(m.hours(200)), Even: m.u() < 0.3}
			for i := range row.Monthly {
				row.Monthly[i] = m.pick(0.5, 1, 1.5)
			}
			d.Models = append(d.Models, row)
		}
	}
	if len(d.Models) == 0 || m.u() < 0.3 {
		m.has["listed orders"] = true
		t := clock.Time(0)
		for range m.between(3, 25) {
			t += clock.FromHours(m.pick(0, 7, 40) * m.u())
			row := DatedOrder{Model: int16(m.between(0, models-1)), Color: int16(m.between(0, len(m.p.Colors)-1)), Band: None, Arrives: t, Due: t + clock.FromHours(100+200*m.u())}
			if row.Urgent = int8(m.between(0, 2)); row.Urgent > 0 {
				m.has["urgent orders"] = true
			}
			if m.u() < 0.3 && len(m.p.Models[row.Model].Bands) > 0 {
				row.Band = 1
			}
			d.Dated = append(d.Dated, row)
		}
	}
	if m.u() < 0.5 {
		d.FloorLimit = m.between(3, 8)
		d.MateLead = m.between(0, 2)
	}
}
