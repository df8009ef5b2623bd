package scenarios

import (
	"moldturn/sim/money"
	"moldturn/sim/param/unit"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// Money is what a ledger of the plant's runs needs; nil when the scenario says
// nothing about money.
func (p *Plant) Money() *money.Setup { return p.money }

// Currency is the sign that amounts carry in outputs.
func (p *Plant) Currency() string { return p.Value.At("currency").Text() }

// Units is the family of units in which outputs are written.
func (p *Plant) Units() unit.System { return unitsOf(p.Value) }

func unitsOf(v *Value) unit.System {
	if v.At("units").Text() == "SI" {
		return unit.Metric
	}
	return unit.US
}

// Style is how values are written in outputs.
func (p *Plant) Style() unit.Style { return unit.Style{System: p.Units(), Currency: p.Currency()} }

// prices reads what things cost.
func (b *builder) prices(f *record.Frame) *money.Setup {
	m := b.v.At("money")
	if !m.Given() {
		return nil
	}
	s := &money.Setup{Plant: study.MoneyPlant(b.plan, f), Prices: b.priceList(m)}
	b.margins(s)
	b.materials(s, m)
	b.smallParts(s, m)
	x := m.At("flush")
	density := m.At("gel_coat.density").Number()
	flush := func(kind string) money.Flush {
		return money.Flush{Solvent: int64(x.At(kind+"_solvent").Liters()*1000 + 0.5), Gel: int64(x.At(kind+"_gel_coat").Liters()*density*1000 + 0.5)}
	}
	s.Plant.Pump, s.Plant.Pot = flush("pump"), flush("pot")
	a := m.At("booth")
	s.Plant.AirPerHour, s.Plant.Supply = a.At("air").Number(), a.At("supply").Celsius()
	switch {
	case a.At("outdoor").Given():
		months := twelveOf(a, "outdoor")
		s.Plant.Outdoor = &months
	case b.v.At("climate.weather").Text() == "normals":
		months := twelveOf(b.v.At("climate.normals"), "mean")
		s.Plant.Outdoor = &months
	}
	return s
}

func (b *builder) priceList(m *Value) money.Prices {
	dollars := func(path string) float64 { return m.At(path).Dollars() }
	p := money.Prices{Currency: b.v.At("currency").Text(),
		Loading: m.At("loading").Number(), Overtime: m.At("overtime").Number(), OffFloor: m.At("off_floor").Share(),
		Barrier: dollars("barrier.price"), Resin: dollars("resin"), Glass: dollars("glass"), Wax: dollars("wax.price"), Compound: dollars("compound.price"),
		Stripper: dollars("stripper.price"), Solvent: dollars("solvent"), MoldRepair: dollars("mold.repair"), Rework: dollars("rework"), Resurface: dollars("mold.resurface"),
		BoothAir: dollars("booth.fan"), BoothHeat: dollars("booth.heat"),
		FloorDay: dollars("floor.day"), Holding: m.At("floor.rate").Share(), FloorValue: dollars("floor.value"), LateDay: dollars("late_day"),
		Claim: dollars("warranty.claim"), ClaimChance: m.At("warranty.chance").Share(),
		ClaimFrom: m.At("warranty.from").Hours() / 168, ClaimTo: m.At("warranty.to").Hours() / 168, Training: dollars("training")}
	for range b.craftNames {
		p.Wages = append(p.Wages, dollars("wage"))
	}
	for name, wage := range m.Each("wages") {
		c, known := b.crafts[name]
		if !known {
			b.unknownName(wage, "craft", name, b.craftNames)
			continue
		}
		p.Wages[c] = wage.Dollars()
	}
	if p.ClaimTo < p.ClaimFrom {
		b.complain(m.At("warranty.to"), "money.warranty.to must not be before money.warranty.from", "", "")
	}
	return p
}

func (b *builder) margins(s *money.Setup) {
	i := 0
	for _, v := range b.v.Each("models") {
		if margin := v.At("margin"); margin.Given() {
			s.Plant.Models[i].Margin, s.Plant.Models[i].Known = margin.Dollars(), true
		}
		i++
	}
}

// materials says what one part of each type takes.
func (b *builder) materials(s *money.Setup, m *Value) {
	barrier := b.barriers()
	i := 0
	for _, model := range b.v.Each("models") {
		for _, v := range model.Each("parts") {
			b.material(&s.Plant.Parts[i], m, v, barrier[i])
			i++
		}
	}
}

func (b *builder) material(x *money.Part, m, v *Value, barrier bool) {
	area := v.At("area").SquareMeters()
	g, l := m.At("gel_coat"), m.At("laminate")
	density, transfer := g.At("density").Number(), g.At("transfer").Share()
	x.Gel = money.Mass(area, b.plan.Film, density, transfer)
	x.Band = money.Mass(area*g.At("band_area").Share(), b.plan.Film, density, transfer)
	if barrier {
		x.Bar = money.Mass(area, m.At("barrier.film").Millimeters(), density, transfer)
	}
	thick := l.At("thickness").Millimeters()
	x.ThickFrom = l.At("thickness").path
	if v.At("laminate").Given() {
		thick, x.ThickFrom = v.At("laminate").Millimeters(), v.At("laminate").path
	}
	kept := 1 - l.At("waste").Share()
	glass := l.At("glass").Share()
	x.Resin = money.Mass(area*(1-glass), thick, l.At("density").Number(), kept)
	x.Glass = money.Mass(area*glass, thick, l.At("density").Number(), kept)
	perArea := func(path string) int64 { return int64(area*m.At(path).Kilograms()*1000 + 0.5) }
	x.Coat, x.Light, x.Full = perArea("wax.per_coat"), perArea("stripper.per_strip"), perArea("compound.per_strip")
	x.MoldPrice, x.MoldFrom = area*m.At("mold.price").Dollars(), m.At("mold.price").path
	if v.At("mold_price").Given() {
		x.MoldPrice, x.MoldFrom = v.At("mold_price").Dollars(), v.At("mold_price").path
	}
	x.GelPrice, x.GelFrom = b.gelPrice(m, v.At("grade").Text())
}

// smallParts says what background work takes. Its glass is what the plant's
// laminate has with so much resin.
func (b *builder) smallParts(s *money.Setup, m *Value) {
	glass := m.At("laminate.glass").Share()
	grams := func(kg float64) int64 { return int64(1000*kg + 0.5) }
	k := 0
	for _, v := range b.v.Each("background") {
		x := &s.Plant.Small[k]
		k++
		resin := v.At("resin").Kilograms()
		x.Gel, x.Resin = grams(v.At("gel_coat").Kilograms()), grams(resin)
		if glass < 1 {
			x.Glass = grams(resin * glass / (1 - glass))
		}
		if x.Gel > 0 {
			x.GelPrice, x.GelFrom = b.gelPrice(m, v.At("grade").Text())
		}
	}
}

// gelPrice is the price of a kg of gel coat of a grade, which must have one, and
// the path of it.
func (b *builder) gelPrice(m *Value, grade string) (float64, string) {
	prices := m.At("gel_coat.price")
	price, known := prices.Item(grade)
	if !known {
		b.complain(prices, "no price for gel coat of grade "+quoted(grade), "money.gel_coat.price: {"+grade+": $7}", "")
		return 0, ""
	}
	return price.Dollars(), price.path
}

// barriers tells of each part type whether its route sprays a barrier coat: a
// step of that name.
func (b *builder) barriers() []bool {
	out := make([]bool, len(b.plan.Parts))
	for i := range b.plan.Parts {
		for _, s := range b.plan.Routes[b.plan.Parts[i].Route].Steps {
			out[i] = out[i] || s.Name == "barrier coat"
		}
	}
	return out
}
