package money

// material is one line of a part type: a number of times and what each takes.
type material struct {
	name, label, each string
	times, take       int64
	per, price        float64
	unit              string
	class             Class
	kind              Kind
	inputs            []string
}

// part prices the materials and the molds of a part type.
func (p *pricing) part(i int) {
	x, q := &p.Plant.Parts[i], p.q
	strips := q.Light[i] + q.Full[i]
	coats := q.Coats[i] + q.Light[i]*p.Plant.LightCoats + q.Full[i]*p.Plant.FullCoats
	good := q.Pulled[i] - q.Scrapped[i]
	gel := []string{x.GelFrom, "gel_coat.film", "money.gel_coat.density", "money.gel_coat.transfer"}
	lay := []string{"money.resin", x.ThickFrom, "money.laminate.density", "money.laminate.glass", "money.laminate.waste"}
	glass := append([]string{"money.glass"}, lay[1:]...)
	rows := []material{
		{name: "gel_coat", label: "gel coat", each: "parts pulled", times: good, take: x.Gel, price: x.GelPrice, inputs: gel},
		{name: "gel_coat_band", label: "gel coat of accent bands", each: "bands sprayed", times: q.Bands[i], take: x.Band, price: x.GelPrice, inputs: append([]string{"money.gel_coat.band_area"}, gel...)},
		{name: "barrier_coat", label: "barrier coat", each: "parts pulled", times: good, take: x.Bar, price: p.Prices.Barrier, inputs: []string{"money.barrier"}},
		{name: "resin", label: "resin", each: "parts pulled", times: good, take: x.Resin, price: p.Prices.Resin, inputs: lay},
		{name: "glass", label: "glass", each: "parts pulled", times: good, take: x.Glass, price: p.Prices.Glass, inputs: glass},
		{name: "gel_coat_again", label: "gel coat sprayed again", each: "parts washed out", times: q.Resprayed[i], take: x.Gel, price: x.GelPrice, class: InternalFailure, inputs: gel},
		{name: "scrap_gel_coat", label: "gel coat in scrapped parts", each: "parts scrapped", times: q.Scrapped[i], take: x.Gel, price: x.GelPrice, class: InternalFailure, inputs: gel},
		{name: "scrap_barrier_coat", label: "barrier coat in scrapped parts", each: "parts scrapped", times: q.Scrapped[i], take: x.Bar, price: p.Prices.Barrier, class: InternalFailure, inputs: []string{"money.barrier"}},
		{name: "scrap_resin", label: "resin in scrapped parts", each: "parts scrapped", times: q.Scrapped[i], take: x.Resin, price: p.Prices.Resin, class: InternalFailure, inputs: lay},
		{name: "scrap_glass", label: "glass in scrapped parts", each: "parts scrapped", times: q.Scrapped[i], take: x.Glass, price: p.Prices.Glass, class: InternalFailure, inputs: glass},
		{name: "wax", label: "wax", each: "coats, those of strips included", times: coats, take: x.Coat, price: p.Prices.Wax, class: Prevention, inputs: []string{"money.wax"}},
		{name: "stripper", label: "stripper", each: "strips", times: strips, take: x.Light, price: p.Prices.Stripper, class: Prevention, inputs: []string{"money.stripper"}},
		{name: "compound", label: "strip compound", each: "full strips", times: q.Full[i], take: x.Full, price: p.Prices.Compound, class: Prevention, inputs: []string{"money.compound"}},
		{name: "resurfacing", label: "materials to resurface molds", each: "molds resurfaced, by area", times: q.Resurfaced[i], take: x.Area, per: 1e4, unit: "m²", price: p.Prices.Resurface, inputs: []string{"money.mold.resurface"}},
		{name: "mold_purchase", label: "molds bought for worn ones", each: "molds replaced", times: q.Renewed[i], take: 1, per: 1, unit: "mold", price: x.MoldPrice, kind: Purchase, inputs: []string{x.MoldFrom}},
	}
	for _, f := range []struct {
		word  string
		times int64
		lost  Flush
	}{{"pumped gun", q.PumpFlush[i], p.Plant.Pump}, {"pot gun", q.PotFlush[i], p.Plant.Pot}} {
		rows = append(rows,
			material{name: "solvent." + f.word, label: "solvent to flush a " + f.word, each: "changes of color", times: f.times, take: f.lost.Solvent,
				per: 1000, unit: "L", price: p.Prices.Solvent, inputs: []string{"money.solvent", "money.flush"}},
			material{name: "flush_gel_coat." + f.word, label: "gel coat lost in a flush of a " + f.word, each: "changes of color", times: f.times, take: f.lost.Gel,
				price: x.GelPrice, inputs: []string{x.GelFrom, "money.gel_coat.density", "money.flush"}})
	}
	if x.MoldLife > 0 {
		rows = append(rows, material{name: "mold_wear", label: "wear of molds", each: "turns", times: q.Pulled[i], take: 1, per: 1, unit: "turn",
			price: x.MoldPrice / x.MoldLife, kind: Wear, inputs: []string{x.MoldFrom, "life.turns", "life.resurfaces"}})
	}
	for _, m := range rows {
		p.material(i, m)
	}
	for which, class := range []Class{Work, InternalFailure} {
		p.hours(i, which, class)
	}
}

func (p *pricing) material(i int, m material) {
	if m.per == 0 {
		m.per, m.unit = gramsPerKilo, "kg"
	}
	x := &p.Plant.Parts[i]
	p.g.add(Line{Name: name(m.name, x.Name), Label: m.label + ", " + x.Name, Kind: m.kind, Class: m.class, Model: x.Model,
		Quantity: m.times * m.take, Per: m.per, Unit: m.unit, Price: m.price, Of: m.each, Each: m.take, Inputs: m.inputs})
}

// hours prices the materials of mold repair by its labor hours.
func (p *pricing) hours(i, which int, class Class) {
	x := &p.Plant.Parts[i]
	word, label := "routine", "materials of routine mold repair"
	if class == InternalFailure {
		word, label = "stuck", "materials of mold repair after sticking"
	}
	p.g.add(Line{Name: name("mold_repair", word, x.Name), Label: label + ", " + x.Name, Class: class, Model: x.Model,
		Quantity: p.q.RepairTime[which][i], Per: msPerHour, Unit: "h", Price: p.Prices.MoldRepair, Of: "labor hours of mold repair", Inputs: []string{"money.mold.repair"}})
}
