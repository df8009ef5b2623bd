package scenarios

import (
	"errors"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/money"
	"moldturn/sim/param"
	"moldturn/sim/param/unit"
	"moldturn/sim/permit"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Plant is a scenario as plans that can be run, with the names its indices
// stand for.
type Plant struct {
	Value    *Value
	Capacity *sim.Plan // with orders always waiting; nil if not asked for
	Dated    *sim.Plan // with a dated order book; nil if not asked for
	Frame    record.Frame
	Climate  string // the same for plants under the same climate and heating
	Warm     int    // years
	Years    int

	money   *money.Setup  // nil without prices
	permit  *permit.Setup // nil without the group "permit"
	weather weather
	resin   func() *cure.Table // made when it is first asked for
	barcol  cure.Barcol
}

// Plan is one of the plans, the one figures of capacity are taken from.
func (p *Plant) Plan() *sim.Plan {
	if p.Capacity != nil {
		return p.Capacity
	}
	return p.Dated
}

// builder turns bound values into a plan and collects what rows cannot say.
type builder struct {
	v          *Value
	standard   *Value // the standard routes
	laws       laws
	plan       *sim.Plan
	complaints Complaints
	horizon    clock.Time
	crafts     map[string]int16
	craftNames []string
	places     map[string]int16
	placeNames []string
	colors     map[string]int16
	colorNames []string
	shifts     map[string]*shift.Calendar
	shiftNames []string
	exceptions shift.Exceptions
	barcol     cure.Barcol
	areas      map[string]int
	weather    weather
}

// build makes a plan of a scenario bound by t.
func (t *Tree) build(v, standard *Value, o Options) (*Plant, Complaints) {
	years, warm := o.Years, v.At("run.warm_up").Count()
	if years < 0 {
		years = v.At("run.years").Count()
	}
	b := &builder{v: v, standard: standard, laws: t.laws, plan: &sim.Plan{Name: v.At("name").Text()}}
	start := v.At("start").Date()
	b.plan.Start = shift.DateOf(start.Year(), start.Month(), start.Day())
	from := shift.Midnight(b.plan.Start, shift.DateOf(b.plan.Start.Year+warm, b.plan.Start.Month, b.plan.Start.Day))
	b.plan.Length = shift.Midnight(b.plan.Start, shift.DateOf(b.plan.Start.Year+warm+years, b.plan.Start.Month, b.plan.Start.Day))
	b.horizon = b.plan.Length + 60*clock.Day
	b.climate(o.Files)
	b.physics()
	b.calendars()
	b.people()
	b.colorList()
	b.placeList()
	b.policies()
	b.models()
	b.background()
	b.learning()
	b.stepAreas()
	p := &Plant{Value: v, Warm: warm, Years: years, weather: b.weather, resin: resinOf(b.plan.Cure), barcol: b.barcol}
	b.demand(p, o.Files)
	if len(b.complaints) == 0 {
		for _, plan := range []*sim.Plan{p.Capacity, p.Dated} {
			if plan == nil {
				continue
			}
			for _, fault := range plan.Check() {
				b.complaints = append(b.complaints, v.At("models").Complain(fault, "", ""))
			}
		}
	}
	if len(b.complaints) > 0 {
		return nil, b.complaints.sorted()
	}
	p.Frame = b.frame(from, p.Plan())
	if p.money = b.prices(&p.Frame); len(b.complaints) > 0 {
		return nil, b.complaints.sorted()
	}
	if p.permit = b.permits(&p.Frame); len(b.complaints) > 0 {
		return nil, b.complaints.sorted()
	}
	p.Climate = b.climateKey()
	return p, nil
}

// frame is what a tally must know.
func (b *builder) frame(from clock.Time, plan *sim.Plan) record.Frame {
	f := record.Frame{
		Start: plan.Start, From: from, To: plan.Length, Target: plan.Rework.Target,
		Crafts: len(plan.Crafts), Pools: len(plan.Crafts) + len(plan.Places),
		Parts: len(plan.Parts), Models: len(plan.Models), Molds: len(plan.Molds),
	}
	for i := range plan.Parts {
		f.InUse = append(f.InUse, plan.Parts[i].InUse)
	}
	monday := plan.Start.Monday()
	for w := range int(plan.Length/clock.Week) + 2 {
		first := monday.AddDays(7 * w)
		f.Shut = append(f.Shut, b.shutWeek(first))
	}
	return f
}

// shutWeek says whether no day from Monday to Friday of a week is worked
// because of a shutdown.
func (b *builder) shutWeek(monday shift.Date) bool {
	for d := range 5 {
		if !b.exceptions.Shut(monday.AddDays(d)) {
			return false
		}
	}
	return true
}

// complain adds a complaint about a value.
func (b *builder) complain(v *Value, message, allowed, hint string) {
	b.complaints = append(b.complaints, v.Complain(message, allowed, hint))
}

// problem adds a complaint of an error that may know more.
func (b *builder) problem(v *Value, err error) {
	var p *unit.Problem
	if errors.As(err, &p) {
		b.complain(v, p.Error(), p.Allowed, p.Hint)
		return
	}
	b.complain(v, err.Error(), "", "")
}

// unknownName adds a complaint about a name that is none of names: the value of
// v, or what v itself is called.
func (b *builder) unknownName(v *Value, noun, name string, names []string) {
	if v.text != name && v.named.line > 0 {
		v = &Value{path: v.path, at: v.named, text: name}
	}
	b.complain(v, "unknown "+noun+" "+quoted(name), short(names), didYouMean(name, names))
}

// base gives the physics packages their inputs by path.
func (b *builder) set(rows []param.Row, set func(path string, value float64) bool) {
	for _, row := range rows {
		if row.Kind.Container() || !isNumber(row.Kind) {
			continue
		}
		if v, ok := b.v.plainAt(row.Path); ok && v.Given() {
			set(row.Path, v.Base())
		}
	}
}
