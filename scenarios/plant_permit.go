package scenarios

import (
	"moldturn/sim/param"
	"moldturn/sim/param/unit"
	"moldturn/sim/permit"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// Permit is what a permit ledger of the plant's runs needs; nil when the
// scenario has no group "permit", see PermitDefaults.
func (p *Plant) Permit() *permit.Setup { return p.permit }

// PermitDefaults is the change that has a scenario without the group "permit"
// take its defaults.
func PermitDefaults() (Change, Complaints) { return ParseChange("--set", "permit={}") }

// permits reads materials and what the permit asks.
func (b *builder) permits(f *record.Frame) *permit.Setup {
	v := b.v.At("permit")
	if !v.Given() {
		return nil
	}
	s := &permit.Setup{Plant: study.PermitPlant(b.plan, f), Amounts: b.amounts(v)}
	thick := b.money("laminate.thickness").Millimeters()
	i := 0
	for _, model := range b.v.Each("models") {
		for _, part := range model.Each("parts") {
			s.Plant.Parts[i].Film, s.Plant.Parts[i].Thick = b.plan.Film, thick
			if t := part.At("laminate"); t.Given() {
				s.Plant.Parts[i].Thick = t.Millimeters()
			}
			i++
		}
	}
	if c := v.At("cap"); c.Given() {
		s.Cap = c.Kilograms()
	}
	l := v.At("levers")
	s.Steps = permit.Steps{ResinHAP: 100 * l.At("resin_hap").Share(), GelHAP: 100 * l.At("gel_hap").Share(), Film: l.At("film").Millimeters(), FilmText: unit.Format(param.Length, l.At("film").Millimeters(), unitsOf(b.v)),
		Transfer: l.At("transfer").Share(), Glass: l.At("glass").Share(), Flushes: l.At("flushes").Share()}
	var places []*Value
	for name, m := range v.Each("materials") {
		s.Materials = append(s.Materials, materialOf(name, m))
		places = append(places, m)
	}
	for _, fault := range s.Faults() {
		b.complain(places[fault.Material], s.Materials[fault.Material].Name+": "+fault.Text, "", "")
	}
	return s
}

func materialOf(name string, v *Value) permit.Material {
	m := permit.Material{Name: name, HAP: 100 * v.At("hap").Share(), Filler: 100 * v.At("filler").Share(), Suppressed: v.At("suppressant").Share(),
		Evaporates: v.At("evaporates").Share(), Averaged: v.At("averaged").Flag(), Share: v.At("share").Share()}
	m.Operation, _ = permit.OperationNamed(v.At("operation").Text())
	m.Method, _ = permit.MethodNamed(v.At("method").Text())
	m.Styrene = m.HAP
	if s := v.At("styrene"); s.Given() {
		m.Styrene = 100 * s.Share()
	}
	for _, u := range v.Each("for") {
		if use, ok := permit.UseNamed(u.Text()); ok {
			m.For = append(m.For, use)
		}
	}
	if last := v.At("last_year"); last.Given() {
		m.Before = new([permit.Year]float64)
		k := 0
		for _, kg := range last.Each("") {
			m.Before[k] = kg.Kilograms()
			k++
		}
	}
	return m
}

// amounts says how much of each material things take. What the money ledger
// takes too is read from its inputs.
func (b *builder) amounts(v *Value) permit.Amounts {
	density := b.money("gel_coat.density").Number()
	solvent := v.At("solvent.density").Number()
	kg := func(path string, density float64) float64 { return b.money(path).Liters() * density }
	a := permit.Amounts{
		Density: density, Transfer: b.money("gel_coat.transfer").Share(), BandArea: b.money("gel_coat.band_area").Share(), Barrier: b.money("barrier.film").Millimeters(),
		Laminate: b.money("laminate.density").Number(), Glass: b.money("laminate.glass").Share(), Waste: b.money("laminate.waste").Share(),
		MoldFilm: v.At("molds.film").Millimeters(), RenewFilm: v.At("molds.resurfacing").Millimeters(), MoldThick: v.At("molds.thickness").Millimeters(),
		MoldGlass: v.At("molds.glass").Share(), MoldsElsewhere: !v.At("molds.here").Flag(),
		PumpGel: kg("flush.pump_gel_coat", density), PotGel: kg("flush.pot_gel_coat", density),
		PumpSolvent: kg("flush.pump_solvent", solvent), PotSolvent: kg("flush.pot_solvent", solvent),
		CleaningPerHour: v.At("solvent.per_hour").Liters() * solvent,
	}
	for _, g := range b.v.Each("background") {
		a.SmallGel = append(a.SmallGel, g.At("gel_coat").Kilograms())
		a.SmallResin = append(a.SmallResin, g.At("resin").Kilograms())
	}
	return a
}

// money is an input of the group "money", its default where the scenario has no
// such group.
func (b *builder) money(path string) *Value { return orDefault(b.v.At("money." + path)) }

// orDefault is v, or the default of its row when v was left out with its group.
func orDefault(v *Value) *Value {
	if v.given || v.branch.row.Default == "" || v.branch.row.Kind == param.Group {
		return v
	}
	d := &Value{path: v.path, at: v.at}
	(&binder{standard: true}).bind(v.branch, v.branch.defaultNode(v.at), d)
	return d
}

// Names reports whether a scenario file has an input of this name at its top. A
// file that cannot be read has none.
func Names(name string, data []byte, input string) bool {
	doc, complaints := Read(name, data)
	return len(complaints) == 0 && doc.root.find(input) >= 0
}
