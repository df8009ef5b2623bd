package weekly

import (
	"cmp"
	"fmt"
	"slices"

	"moldturn/reports/cells"
	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// LostID is the id of the figure of waits.
const LostID = "boats-lost-to-waits"

// year is what figures per year are per.
const year = 365 * clock.Day

// Lost is what the waits of molds are worth.
type Lost struct {
	Causes  []Loss  // the largest first
	Boats   float64 // shipped a year
	PerBoat float64 // mold-hours that a boat takes, waits included
}

// Loss is one cause of waits: its mold-hours over the mold-hours that a boat
// takes, in boats a year.
type Loss struct {
	Name  string
	Hours float64 // of all molds, a year
	Boats float64
}

// Total is boats a year over all causes.
func (l *Lost) Total() float64 {
	sum := 0.0
	for _, c := range l.Causes {
		sum += c.Boats
	}
	return sum
}

// LostOf sums the waits of molds in rotation over all replications. Hours of
// molds in reserve or without a place in rotation count for nothing. ok is false
// without boats or molds, or where runs do not know the causes.
func LostOf(r *study.Runs, p *sim.Plan) (l Lost, ok bool) {
	var hours []float64
	var boats, rotation, years float64
	for i := range r.Outcomes {
		x := r.Outcomes[i].Capacity
		if x == nil {
			x = r.Outcomes[i].Dated
		}
		if hours == nil {
			hours = make([]float64, len(x.MoldWaits))
		}
		for k, h := range x.MoldWaits {
			if k != x.ReasonWait(record.RotationFull) {
				hours[k] += h.Hours()
			}
		}
		for m := range x.Models {
			boats += float64(x.Models[m].Shipped)
		}
		rotation += inRotation(x)
		years += float64(x.Frame.To-x.Frame.From) / float64(year)
	}
	if len(hours) == 0 || boats == 0 || rotation == 0 {
		return l, false
	}
	l.Boats, l.PerBoat = boats/years, rotation/boats
	for k, h := range hours {
		if h > 0 {
			l.Causes = append(l.Causes, Loss{Name: causeName(p, k), Hours: h / years, Boats: h / years / l.PerBoat})
		}
	}
	slices.SortStableFunc(l.Causes, func(a, b Loss) int { return cmp.Compare(b.Hours, a.Hours) })
	return l, true
}

// inRotation is the hours of molds in rotation.
func inRotation(x *record.Result) float64 {
	var sum clock.Time
	for part := range x.MoldHours {
		for month := range x.MoldHours[part] {
			for state, h := range x.MoldHours[part][month] {
				if state != int(record.OutOfUse) && state != int(record.Doings)+int(record.RotationFull) {
					sum += h
				}
			}
		}
	}
	return sum.Hours()
}

// causeName is a cause of waits, an index as record.Result.Waits has them.
func causeName(p *sim.Plan, k int) string {
	pools := len(p.Crafts) + len(p.Places)
	switch {
	case k < len(p.Crafts):
		return view.CrewName(p.Crafts[k].Name)
	case k < pools:
		return "a free " + p.Places[k-len(p.Crafts)].Name
	}
	switch x := record.Reason(k - pools); x {
	case record.OffShift:
		return "the next shift"
	case record.ShiftEnds:
		return "too little of the shift left"
	case record.NoReason:
		return "cause not recorded"
	default:
		return x.String()
	}
}

// mostCauses is how many causes have a bar of their own.
const mostCauses = 9

// rest is what the causes behind the first ones are called together.
func (l *Lost) rest() string { return fmt.Sprintf("%d others", len(l.Causes)-mostCauses) }

// few joins the causes behind the first ones.
func (l *Lost) few() []Loss {
	if len(l.Causes) <= mostCauses+1 {
		return l.Causes
	}
	rest := Loss{Name: l.rest()}
	for _, c := range l.Causes[mostCauses:] {
		rest.Hours, rest.Boats = rest.Hours+c.Hours, rest.Boats+c.Boats
	}
	return append(slices.Clone(l.Causes[:mostCauses]), rest)
}

// Waits is the section with waits of molds by cause, in boats a year. ok is
// false where LostOf is, and when no mold ever waits.
func Waits(r *study.Runs, p *sim.Plan, years int) (s page.Section, ok bool, err error) {
	l, ok := LostOf(r, p)
	if !ok || l.Total() == 0 {
		return s, false, nil
	}
	f := chart.Pareto{Figure: chart.Figure{ID: LostID, Finding: lostFinding(&l),
		Caption: fmt.Sprintf("“%s”, %s. A boat takes %.0f mold-hours, waits included; hours that molds wait for one cause, over that, are boats a year. It is what the hours are worth, not a promise: when one wait goes, part of it turns into another.",
			cells.OneLine(r.Name), simulated(years), l.PerBoat),
		Alt: fmt.Sprintf("Bars of %d causes for which molds wait, in boats a year, and their running sum.", len(l.few()))},
		Of: chart.Axis{Name: "mold waits", Unit: "boats a year", Digits: 0}, Amounts: true, Rest: l.rest()}
	for _, c := range l.few() {
		f.Causes = append(f.Causes, chart.Cause{Name: c.Name, Amount: c.Boats})
	}
	if l.Causes[0].Boats < 20 {
		f.Of.Digits = 1
	}
	c, err := f.Build()
	if err != nil {
		return s, false, err
	}
	return page.Section{Heading: "What waits cost in boats", Blocks: []page.Block{c}}, true, nil
}
