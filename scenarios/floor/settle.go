package floor

import (
	"fmt"
	"slices"

	"moldturn/sim"
)

// settle holds the rows of all files against each other and against the plan,
// and makes the Floor of those that stand.
func (r *reader) settle(o Options) {
	r.otherPlant()
	r.morning(o)
	r.future()
	r.newest()
	r.counters()
	r.matchPlan()
	r.sameOrders()
	r.past()
	r.tooMany()
	r.workRules()
	r.link()
	r.weeks()
	r.unusedAliases()
	for _, t := range r.tables {
		t.tellGaps()
	}
	r.floor.Orders, r.floor.Out = things(r.orders), things(r.out)
	r.floor.Down, r.floor.Calendar = things(r.down), things(r.calendar)
	if len(r.floor.Molds)+len(r.floor.Work)+len(r.floor.Orders) == 0 && !r.fatal() {
		r.say(Notice{Level: Fatal, Rule: "nothing on the floor", Message: "no row of molds, work or orders can be used"})
	}
}

// stamp is a moment that has passed, and where it is written.
type stamp struct {
	at    Moment
	place Place
}

// stamps are the moments of molds and work.
func (r *reader) stamps() []stamp {
	var all []stamp
	for _, e := range r.molds {
		all = append(all, stamp{e.it.When, e.l.place(e.l.t.column("since"))})
	}
	for i := range r.work {
		w := &r.work[i]
		for _, m := range w.it.moments() {
			all = append(all, stamp{*m.at, w.l.place(w.l.t.column(m.name))})
		}
	}
	all = slices.DeleteFunc(all, func(s stamp) bool { return s.at.IsZero() })
	slices.SortStableFunc(all, func(a, b stamp) int { return a.at.Compare(b.at) })
	return all
}

// farAhead is how many days a last entry may be ahead of the one before; one
// that is further ahead is taken as a slip of the pen, and told as a date in the
// future.
const farAhead = 4

// morning finds the moment that the floor is of: as the caller says, else the
// day after the last entry.
func (r *reader) morning(o Options) {
	all := r.stamps()
	if len(all) > 0 {
		r.first, r.last = all[0].at, all[len(all)-1].at
	}
	if !o.Morning.IsZero() {
		if len(all) > 0 {
			r.early = all[len(all)/2].at.After(o.Morning)
			r.stale(all, o.Morning)
		}
		return
	}
	for len(all) > 1 && all[len(all)-1].at.Date.DaysSince(all[len(all)-2].at.Date) > farAhead {
		all = all[:len(all)-1]
	}
	if len(all) == 0 && r.fatal() {
		return
	}
	if len(all) == 0 {
		r.say(Notice{Level: Fatal, Rule: "no morning", Message: "no row of molds or work is dated, so the files do not say which morning this is", Hint: "say it with --morning 2027-03-08"})
		return
	}
	last := all[len(all)-1]
	r.floor.Morning = Moment{Date: last.at.Date.AddDays(1)}
	r.say(Notice{Place: last.place, Level: Told, Rule: "the morning", Found: last.at.String(),
		Message: fmt.Sprintf("the morning is %s, the day after the last entry", r.floor.Morning), Hint: "--morning says another"})
}

// stale tells that the last entry is old.
func (r *reader) stale(all []stamp, morning Moment) {
	for i := len(all) - 1; i >= 0; i-- {
		if all[i].at.After(morning) {
			continue
		}
		if days := morning.Date.DaysSince(all[i].at.Date); days > 4 {
			r.say(Notice{Place: all[i].place, Level: Gap, Rule: "old entries", Found: all[i].at.String(), Message: fmt.Sprintf("the last entry is %d days before the morning of %s", days, morning),
				Effect: "what happened since is missing: parts are further on than the board shows"})
		}
		return
	}
}

// written is a moment of a row with the name of its column.
type written struct {
	name string
	at   *Moment
}

// moments of work, in the order in which they come to pass; started last.
func (w *Work) moments() []written {
	return []written{{"sprayed", &w.Sprayed}, {"skinned", &w.Skinned}, {"laminated", &w.Laminated}, {"pulled", &w.Unmolded}, {"started", &w.Started}}
}

// future takes out what is dated after the morning.
func (r *reader) future() {
	morning := r.floor.Morning
	out := func(l *line, name string, m *Moment, effect string) bool {
		if !m.After(morning) {
			return false
		}
		l.doubtful(name, "date in the future", fmt.Sprintf("%s %s is after the morning of %s", name, m, morning), "a slip of the pen, or an entry of later that day: --morning takes a time too", effect)
		*m = Moment{}
		return true
	}
	for i := range r.molds {
		e := &r.molds[i]
		out(e.l, "since", &e.it.When, "what the mold does is taken as just begun")
		if b := &e.it.Back; !b.IsZero() && b.Compare(morning) < 0 && e.it.State == OutOfUse {
			e.l.doubtful("back", "back already", fmt.Sprintf("back on %s, before the morning, and still out", b), "", "the mold is out until somebody says when it comes back")
			*b = Moment{}
		}
	}
	for i := range r.work {
		e := &r.work[i]
		for _, m := range e.it.moments() {
			if out(e.l, m.name, m.at, "the cell is not used") && m.name == "started" {
				e.it.Started = morning
			}
		}
	}
	for i := range r.orders {
		e := &r.orders[i]
		out(e.l, "arrived", &e.it.Arrived, "the order is taken as there since before the morning")
	}
}

// newest keeps the last row of each mold.
func (r *reader) newest() {
	for i := range r.molds {
		for k := range r.molds[:i] {
			a, b := &r.molds[k], &r.molds[i]
			if a.l.bad || b.l.bad || a.key != b.key {
				continue
			}
			if a.it.Part != b.it.Part {
				b.l.drop(b.l.t.column("id"), "mold of two parts", fmt.Sprintf("mold %q is a mold of another part in row %d", b.it.ID, a.l.row), "", "a slip, or two molds of one name")
				continue
			}
			older, newer := a, b
			if b.it.When.Compare(a.it.When) < 0 {
				older, newer = b, a
			}
			r.falling(&older.it, newer)
			older.l.retire(Older, fmt.Sprintf("row %d is newer", newer.l.row))
			r.history = append(r.history, stamp{older.it.When, older.l.place(older.l.t.column("since"))})
		}
	}
	r.molds = kept(r.molds)
}

// falling tells of a total that falls from one row to a newer one.
func (r *reader) falling(older *Mold, newer *entry[Mold]) {
	if older.Turns != Unknown && newer.it.Turns != Unknown && newer.it.Turns < older.Turns {
		newer.l.doubtful("turns total", "falling total", fmt.Sprintf("turns total of mold %s falls from %d (%s) to %d", newer.it.ID, older.Turns, older.Place, newer.it.Turns),
			"a mold renewed keeps its id?", "the newer number is used")
	}
}

// fewMolds is from how many molds on like counters are suspicious.
const fewMolds = 3

// counters takes out counters that cannot be.
func (r *reader) counters() {
	since, zero, total, fresh := 0, 0, 0, 0
	for i := range r.molds {
		e := &r.molds[i]
		if m := &e.it; m.Since != Unknown && m.Turns != Unknown && m.Since > m.Turns {
			e.l.doubtful("turns since strip", "since strip over total", fmt.Sprintf("mold %s has %d turns since its strip and %d in all", m.ID, m.Since, m.Turns),
				"are the two columns the wrong way round?", "its counter is spread over the strip interval: its next strip is a guess")
			m.Since = Unknown
		}
		if e.it.Since != Unknown {
			since++
		}
		if e.it.Since == 0 {
			zero++
		}
		if e.it.Turns != Unknown {
			total++
		}
		if e.it.Turns == 0 {
			fresh++
		}
	}
	if zero >= fewMolds && 4*zero >= 3*since {
		r.zeros("turns since strip", zero, since, func(m *Mold) *int { return &m.Since },
			"molds that all count from 0 would all be stripped in the same days: a strip wave that the shop will not see; counters at 0 are spread over the strip interval instead")
	}
	if fresh >= fewMolds && 4*fresh >= 3*total {
		r.zeros("turns total", fresh, total, func(m *Mold) *int { return &m.Turns },
			"molds that are all new would all stick more and be broken in at once; totals of 0 are spread over the life of a mold instead")
	}
}

// zeros forgets counters that stand at 0.
func (r *reader) zeros(name string, zero, all int, counter func(m *Mold) *int, effect string) {
	told := false
	for i := range r.molds {
		e := &r.molds[i]
		if n := counter(&e.it); *n == 0 {
			*n = Unknown
			if !told {
				e.l.doubtful(name, "counters all at zero", fmt.Sprintf("%s is 0 for %d of %d molds", name, zero, all), "was the column ever filled in?", effect)
			}
			told = true
		}
	}
}

// matchPlan finds the mold of the plan for each mold of the log: by name, else
// the next one of its part, reserve for reserve.
func (r *reader) matchPlan() {
	if len(r.molds) == 0 {
		return
	}
	plan := r.names.plan
	taken := make([]bool, len(plan.Molds))
	take := func(m *Mold, fits func(p *sim.Mold) bool) {
		for i := range plan.Molds {
			if p := &plan.Molds[i]; m.Plan == sim.None && !taken[i] && p.Part == m.Part && fits(p) {
				m.Plan, taken[i] = int16(i), true
			}
		}
	}
	for _, fits := range []func(m *Mold, p *sim.Mold) bool{
		func(m *Mold, p *sim.Mold) bool { return key(p.Name) == key(m.ID) },
		func(m *Mold, p *sim.Mold) bool { return p.Arrives == 0 && p.Reserve == (m.State == Reserve) },
		func(_ *Mold, p *sim.Mold) bool { return p.Arrives == 0 },
		func(*Mold, *sim.Mold) bool { return true },
	} {
		for i := range r.molds {
			m := &r.molds[i].it
			take(m, func(p *sim.Mold) bool { return fits(m, p) })
		}
	}
	for i := range r.molds {
		if e := &r.molds[i]; e.it.Plan == sim.None {
			e.l.doubtful("id", "more molds than planned", fmt.Sprintf("mold %s is one more than the scenario has for the %s", e.it.ID, r.partName(e.it.Part)),
				"set its number of molds in the scenario", "the run does without it: fewer turns than the shop can make")
		}
	}
	r.missingMolds(taken)
}

// missingMolds tells of parts with fewer molds in the log than in the plan.
func (r *reader) missingMolds(taken []bool) {
	plan := r.names.plan
	for p := range plan.Parts {
		missing, all := 0, 0
		for i := range plan.Molds {
			if plan.Molds[i].Part == int16(p) && plan.Molds[i].Arrives == 0 {
				all++
				if !taken[i] {
					missing++
				}
			}
		}
		if missing > 0 {
			r.say(Notice{Place: r.molds[0].l.t.place(0, 0), Level: Gap, Rule: "molds missing", Message: fmt.Sprintf("%d of the %d molds that the scenario has for the %s are not in the log", missing, all, r.partName(int16(p))),
				Effect: "they are taken as ready with counters spread over the strip interval: more turns than in truth, should they not exist"})
		}
	}
}

// partName is "Rush 23 hull".
func (r *reader) partName(part int16) string {
	p := &r.names.plan.Parts[part]
	return r.names.plan.Models[p.Model].Name + " " + p.Name
}
