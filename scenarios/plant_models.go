package scenarios

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/record"
)

// models makes the boats, their parts, molds and routes.
func (b *builder) models() {
	dark, _ := b.plan.Finish.Color("dark")
	for name, v := range b.v.Each("models") {
		m := sim.Model{Name: name}
		m.Colors = b.shares(v.At("colors"))
		m.Bands = b.shares(v.At("bands"))
		if len(m.Colors) == 0 && len(b.plan.Colors) > 0 {
			m.Colors = []sim.Share{{Color: 0, Weight: 1}}
		}
		number := int16(len(b.plan.Models))
		for part, pv := range v.Each("parts") {
			p := sim.Part{Name: part, Model: number, Index: int16(len(m.Parts)), Area: pv.At("area").SquareMeters(), Color: sim.None,
				Band: pv.At("band_share").Share(), Zone: shapeOf(pv.At("shape").Text()), Care: sim.None, InUse: pv.At("molds").Count(),
				Visible: pv.At("visible").Flag(), Grade: b.grade(pv.At("grade")), BandLook: dark, Chips: b.v.At("chips.share").Share()}
			if pv.At("color").Given() {
				p.Color = b.colors[pv.At("color").Text()]
			}
			r := &routeBuilder{b: b, work: pv.At("work"), area: p.Area, used: map[string]bool{}}
			p.Route = r.route(name+" "+part, pv.At("route"))
			if pv.At("care").Text() != "none" {
				p.Care = r.route(name+" "+part+" mold", pv.At("care"))
			}
			r.unused()
			m.Parts = append(m.Parts, int16(len(b.plan.Parts)))
			b.plan.Parts = append(b.plan.Parts, p)
			b.moldSet(name+" "+part, pv, int16(len(b.plan.Parts)-1))
		}
		r := &routeBuilder{b: b, work: v.At("work"), used: map[string]bool{}}
		m.Boat = r.route(name, v.At("boat"))
		r.unused()
		b.plan.Models = append(b.plan.Models, m)
	}
}

func shapeOf(name string) float64 {
	for _, s := range finish.Shapes() {
		if s.Name == name {
			return s.BuildUp
		}
	}
	return 1
}

func (b *builder) grade(v *Value) int {
	if i, ok := b.plan.Finish.Grade(v.Text()); ok {
		return i
	}
	var names []string
	for _, g := range b.plan.Finish.Grades {
		names = append(names, g.Name)
	}
	b.unknownName(v, "grade", v.Text(), names)
	return 0
}

// shares reads a map from colors to weights.
func (b *builder) shares(v *Value) []sim.Share {
	var out []sim.Share
	for name, w := range v.Each("") {
		c, ok := b.colors[name]
		if !ok {
			b.unknownName(w, "color", name, b.colorNames)
			continue
		}
		if w.Number() > 0 {
			out = append(out, sim.Share{Color: c, Weight: w.Number()})
		}
	}
	return out
}

// moldSet makes the molds of a part.
func (b *builder) moldSet(name string, v *Value, part int16) {
	if b.plan.Parts[part].Care == sim.None {
		return
	}
	molds, fresh := v.At("molds").Count(), v.At("new_molds").Count()
	later := b.newMolds(v)
	if molds == 0 && len(later) == 0 {
		b.complain(v.At("molds"), quoted(name)+" has no mold", "1 or more, or care: none", "")
	}
	if fresh > molds {
		b.complain(v.At("new_molds"), "more new molds than molds in rotation", "", "")
	}
	for i := range molds + v.At("reserve").Count() {
		b.plan.Molds = append(b.plan.Molds, sim.Mold{
			Name: name + " mold " + string(rune('A'+i%26)), Part: part, Reserve: i >= molds, New: i < molds && i >= molds-fresh,
			Turns: -1, Since: -1, Surface: v.At("surface").Number(),
		})
	}
	here := molds + v.At("reserve").Count()
	for i, at := range later {
		b.plan.Molds = append(b.plan.Molds, sim.Mold{Name: name + " mold " + string(rune('A'+(here+i)%26)), Part: part, New: true, Surface: b.plan.Life.Surface, Arrives: at})
	}
}

// background makes the work that is not followed part by part.
func (b *builder) background() {
	for name, v := range b.v.Each("background") {
		g := sim.Background{Name: name, Craft: b.crafts[v.At("craft").Text()], PerWeek: v.At("per_week").Hours(), PerBoat: v.At("per_boat").Hours(),
			Piece: v.At("piece").Hours(), Place: sim.None, Route: int16(len(b.plan.Routes))}
		people := v.At("people").Count()
		s := sim.Step{Name: name, Doing: record.Background, Craft: g.Craft, Want: int16(people), Least: int16(people), Slow: 1}
		s.SetTime(b.vary(constant(g.Piece / float64(people))))
		if v.At("place").Given() {
			g.Place = b.places[v.At("place").Text()]
			s.Take, s.Free = []int16{g.Place}, []int16{g.Place}
		}
		b.plan.Routes = append(b.plan.Routes, sim.Route{Name: name, Steps: []sim.Step{s}})
		b.plan.Background = append(b.plan.Background, g)
	}
}

func constant(hours float64) draw.Dist {
	d, err := draw.Constant(hours)
	if err != nil {
		panic(err) // rows bound every amount
	}
	return d
}

// vary gives a labor time written as one number the plant's variation.
func (b *builder) vary(d draw.Dist) draw.Dist {
	low, high := d.Bounds()
	cv := b.v.At("variation").Share()
	if low != high || cv == 0 || d.Mean() == 0 {
		return d
	}
	spread, err := b.laws.spread(d.Mean(), max(cv, 0.001))
	if err != nil {
		return d
	}
	return spread
}

// demand makes the plans with full and dated books.
func (b *builder) demand(p *Plant, files func(string) ([]byte, error)) {
	d := b.v.At("demand")
	base := sim.Demand{FloorLimit: d.At("floor_limit").Count(), MateLead: d.At("mate_lead").Count(), AnyMate: d.At("mates").Text() == "any", CancelLate: clock.FromHours(d.At("cancel_after").Hours())}
	if base.CancelLate == 0 {
		base.CancelLate = clock.Never
	}
	months, sum := [12]float64{}, 0.0
	i := 0
	for _, w := range d.Each("months") {
		months[i] = w.Number()
		sum += months[i]
		i++
	}
	for i := range months {
		if sum > 0 {
			months[i] *= 12 / sum
		}
	}
	orders := 0.0
	for _, v := range b.v.Each("models") {
		orders += v.At("orders").PerWeek()
		base.Models = append(base.Models, sim.ModelDemand{PerWeek: v.At("orders").PerWeek(), Monthly: months,
			Due: draw.Compile(v.At("due").Dist()), Even: d.At("even").Flag(), Floor: v.At("floor_limit").Count()})
		if from := v.At("orders_from"); from.Given() {
			base.Models[len(base.Models)-1].From = max(b.comes(from), 0)
		}
	}
	book := d.At("book").Text()
	if book != "orders" {
		full := *b.plan
		full.Demand = base
		full.Demand.Full = true
		p.Capacity = &full
	}
	if d.At("file").Given() && files != nil {
		b.orderBook(&base, d.At("file"), files)
	}
	if book == "orders" || book == "both" && (orders > 0 || len(base.Dated) > 0) {
		dated := *b.plan
		dated.Demand = base
		p.Dated = &dated
		if orders == 0 && len(base.Dated) == 0 {
			b.complain(d.At("book"), "an order book without orders", "give models their orders, or a demand.file", "")
		}
	}
}
