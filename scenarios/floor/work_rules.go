package floor

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/sim"
)

// workRules takes out of the work on the floor what cannot be.
func (r *reader) workRules() {
	for i := range r.work {
		e := &r.work[i]
		r.findMold(e)
		r.sequence(e)
		r.stage(e)
	}
	r.sameWork()
	r.builtIn()
	r.sharedMolds()
	r.work = kept(r.work)
	for i := range r.work {
		r.window(&r.work[i])
	}
}

// findMold finds the mold of a part that is in one.
func (r *reader) findMold(e *entry[Work]) {
	s, c := e.l.text("mold")
	if !r.names.inMold(e.it.Part, e.it.Step) {
		return
	}
	missing := fmt.Sprintf("the run puts it into a mold for the %s that nothing else is in", r.partName(e.it.Part))
	if s == "" {
		if !isError(e.l.cells[c]) {
			e.l.note(Gap, "mold", "no mold", "a part that is still in its mold names none", missing)
		}
		return
	}
	id := idKey(r.names.meant(s))
	var ids []string
	for i := range r.molds {
		m := &r.molds[i].it
		ids = append(ids, m.ID)
		if r.molds[i].key != id {
			continue
		}
		if m.Part != e.it.Part {
			e.l.doubtful("mold", "mold of another part", fmt.Sprintf("mold %s is for the %s, and the part in it is the %s", m.ID, r.partName(m.Part), r.partName(e.it.Part)), "one of the two is written wrong",
				missing+fmt.Sprintf("; mold %s is taken as the mold log has it, or as ready", m.ID))
			return
		}
		e.it.Mold = i
		return
	}
	e.l.t.r.say(Notice{Place: e.l.place(c), Level: Doubt, Rule: "unknown mold", Found: s, Message: fmt.Sprintf("mold %q is not in the mold log", s), Allowed: listed(ids), Hint: hintFor(s, ids), Effect: missing})
}

// sequence takes out dates that run backwards.
func (r *reader) sequence(e *entry[Work]) {
	all := e.it.moments()
	for i := range all[:4] {
		for k := range i {
			if earlier, later := all[k], all[i]; earlier.at.After(*later.at) {
				e.l.doubtful(later.name, "impossible sequence", fmt.Sprintf("%s on %s, before it was %s on %s", later.name, later.at, earlier.name, earlier.at),
					"one of the two dates is wrong", "neither date is used")
				*earlier.at, *later.at = Moment{}, Moment{}
			}
		}
	}
	if e.it.Part == sim.None {
		return
	}
	s := stagesOf(&r.names.plan.Routes[e.it.Route])
	ends := []struct {
		step int16
		written
	}{{s.sprayed, all[0]}, {s.skinned, all[1]}, {s.laminated, all[2]}, {s.pulled, all[3]}}
	name := r.stepName(&e.it)
	for _, end := range ends {
		switch {
		case end.step == sim.None || end.at.IsZero():
		case e.it.Step > end.step && end.at.After(e.it.Started) && !e.it.Started.IsZero():
			e.l.doubtful("started", "impossible sequence", fmt.Sprintf("in %q since %s, before it was %s on %s", name, e.it.Started, end.name, end.at),
				"one of the two dates is wrong", "the step is taken as begun when it could be at the earliest")
			e.it.Started = *end.at
		case e.it.Step < end.step:
			e.l.doubtful(end.name, "step behind its dates", fmt.Sprintf("%s on %s, and its step is %q, which comes before", end.name, end.at, name),
				"was the step written on?", "the step is believed, the date is not used: if the date is right, the part is further on")
			*end.at = Moment{}
		}
	}
}

func (r *reader) stepName(w *Work) string { return r.names.plan.Routes[w.Route].Steps[w.Step].Name }

// stage fills in what a step tells of the dates: a wait begins when the work
// before it ends.
func (r *reader) stage(e *entry[Work]) {
	w := &e.it
	step := &r.names.plan.Routes[w.Route].Steps[w.Step]
	if step.Pace == sim.Labor || w.Part == sim.None {
		if w.Started.IsZero() && (w.Left > 0 || w.Done > 0) {
			e.l.note(Gap, "started", "begun without a date", "work of the step is done, and when it began is blank", "taken as begun this morning with the work that is left")
			w.Started = r.floor.Morning
		}
		return
	}
	s := stagesOf(&r.names.plan.Routes[w.Route])
	if w.Started.IsZero() {
		for _, end := range []struct {
			step int16
			at   Moment
		}{{s.laminated, w.Laminated}, {s.skinned, w.Skinned}, {s.sprayed, w.Sprayed}} {
			if w.Step > end.step && end.step != sim.None && w.Started.IsZero() {
				w.Started = end.at
			}
		}
	}
	if w.Started.IsZero() {
		e.l.note(Gap, "started", "wait without a date", fmt.Sprintf("since when it is in %q is not said", step.Name), "the wait is taken as begun this morning: it is ready later than in truth")
		w.Started = r.floor.Morning
		return
	}
	for _, end := range []Moment{w.Sprayed, w.Skinned, w.Laminated} {
		if end.Timed && !w.Started.Timed && end.Date == w.Started.Date {
			w.Started = end
		}
	}
	switch {
	case w.Step == s.sprayed+1 && s.sprayed != sim.None && w.Sprayed.IsZero():
		w.Sprayed = w.Started
	case w.Step == s.laminated+1 && s.laminated != sim.None && w.Laminated.IsZero():
		w.Laminated = w.Started
	}
}

// last is the newest moment of a row.
func (w *Work) last() Moment {
	var last Moment
	for _, m := range w.moments() {
		if m.at.Compare(last) > 0 {
			last = *m.at
		}
	}
	return last
}

// sameWork keeps the newest row of each part of a boat.
func (r *reader) sameWork() {
	for i := range r.work {
		for k := range r.work[:i] {
			a, b := &r.work[k], &r.work[i]
			switch {
			case a.l.bad || b.l.bad || a.key != b.key:
			case a.it.Model != b.it.Model:
				models := r.names.plan.Models
				b.l.drop(b.l.t.column("serial"), "serial of two models", fmt.Sprintf("serial %s is a %s in row %d and a %s here", b.it.Serial, models[a.it.Model].Name, a.l.row, models[b.it.Model].Name), "", "one of the serials is wrong")
			case a.it.Part == b.it.Part:
				older, newer := a, b
				if b.it.last().Compare(a.it.last()) < 0 {
					older, newer = b, a
				}
				older.l.drop(older.l.t.column("serial"), "part listed twice", fmt.Sprintf("serial %s has this part in row %d too, where it is newer", older.it.Serial, newer.l.row), "", "")
			}
		}
	}
}

// builtIn drops parts of boats that are in assembly already.
func (r *reader) builtIn() {
	for i := range r.work {
		boat := &r.work[i]
		if boat.l.bad || boat.it.Part != sim.None {
			continue
		}
		for k := range r.work {
			if part := &r.work[k]; !part.l.bad && part.it.Part != sim.None && part.key == boat.key {
				part.l.drop(part.l.t.column("step"), "part of a boat in assembly", fmt.Sprintf("boat %s is in assembly (row %d), and its %s is still in %q", boat.it.Serial, boat.l.row,
					r.names.plan.Parts[part.it.Part].Name, r.stepName(&part.it)), "", "one of the two rows is old")
			}
		}
	}
}

// sharedMolds keeps the newest part of those in one mold.
func (r *reader) sharedMolds() {
	for i := range r.work {
		for k := range r.work[:i] {
			a, b := &r.work[k], &r.work[i]
			if a.l.bad || b.l.bad || a.it.Mold == Unknown || a.it.Mold != b.it.Mold {
				continue
			}
			older, newer := a, b
			if b.it.last().Compare(a.it.last()) < 0 {
				older, newer = b, a
			}
			older.l.drop(older.l.t.column("mold"), "two parts in one mold", fmt.Sprintf("mold %s holds %s too (row %d), which is newer", r.molds[older.it.Mold].it.ID, newer.it.Serial, newer.l.row),
				"", "was the older part pulled? write its step on")
		}
	}
}

// window tells of gel coat that waits too long for its skin coat.
func (r *reader) window(e *entry[Work]) {
	w := &e.it
	if w.Part == sim.None || !r.names.inMold(w.Part, w.Step) {
		return
	}
	s := stagesOf(&r.names.plan.Routes[w.Route])
	if s.sprayed == sim.None || s.skinned == sim.None || w.Step <= s.sprayed || w.Step > s.skinned || w.Step == s.skinned && !w.Started.IsZero() {
		return
	}
	if w.Sprayed.IsZero() {
		e.l.note(Gap, "sprayed", "gel window not known", "it is sprayed and waits for its skin coat, and when it was sprayed is not said", "its gel window is taken to run since this morning: it may be over in truth")
		return
	}
	limit := r.names.plan.Window.Limit
	if limit <= 0 || !w.Sprayed.Timed && w.Sprayed.Date == r.floor.Morning.Date {
		return
	}
	hours := r.floor.Morning.Instant(w.Sprayed.Date) - w.Sprayed.Instant(w.Sprayed.Date)
	if over := hours.Hours() - limit; over > 0 {
		e.l.note(Told, "sprayed", "gel window over", fmt.Sprintf("its gel window of %s h was over %.0f h before the morning", plainNumber(limit), over), "the run scuffs it, or washes it out and sprays it again")
	}
}

// sameOrders drops an order that is listed twice, and tells of odd dates.
func (r *reader) sameOrders() {
	for i := range r.orders {
		b := &r.orders[i]
		if b.it.Number == 1 && !b.l.bad {
			r.orderDates(b)
		}
		if b.it.ID == "" || b.l.bad {
			continue
		}
		for k := range r.orders[:i] {
			if a := &r.orders[k]; !a.l.bad && a.l != b.l && a.key == b.key {
				b.l.drop(b.l.t.column("id"), "order listed twice", fmt.Sprintf("order %s is in row %d too", b.it.ID, a.l.row), "", "take the older row out")
				break
			}
		}
	}
	r.orders = kept(r.orders)
}

// farDue is how many days ahead a due date may be before it is doubted.
const farDue = 2 * 365

// orderDates tells of due dates that look like slips.
func (r *reader) orderDates(e *entry[Order]) {
	due, morning := e.it.Due, r.floor.Morning
	switch {
	case due.IsZero() || morning.IsZero():
	case e.it.Arrived.After(due):
		e.l.doubtful("due", "due before taken", fmt.Sprintf("due on %s, before it was taken on %s", due, e.it.Arrived), "one of the two dates is wrong", "the due date is used as it is")
	case due.Date.DaysSince(morning.Date) > farDue:
		e.l.doubtful("due", "due in years", fmt.Sprintf("due on %s, more than two years from the morning of %s", due, morning), "a slip of the pen?", "the due date is used as it is: the order comes last")
	case morning.Date.DaysSince(due.Date) > 0:
		e.l.note(Told, "due", "late already", fmt.Sprintf("due on %s: late by %s on the morning of %s", due, plural(morning.Date.DaysSince(due.Date), "day"), morning), "")
	}
}

// orderOf finds the order of work by its serial.
func (r *reader) orderOf(e *entry[Work]) int {
	for i := range r.orders {
		o := &r.orders[i]
		if o.it.ID == "" || o.key != e.key {
			continue
		}
		if o.it.Model != e.it.Model {
			e.l.doubtful("serial", "order of another model", fmt.Sprintf("order %s (%s) is for a %s", o.it.ID, o.it.Place, r.names.plan.Models[o.it.Model].Name),
				"", "the work is finished without an order, and the order is built anew")
			return Unknown
		}
		if o.it.Color >= 0 && e.it.Color >= 0 && o.it.Color != e.it.Color {
			e.l.doubtful("color", "color of another order", fmt.Sprintf("is %s, and its order (%s) says %s", r.names.plan.Colors[e.it.Color].Name, o.it.Place, r.names.plan.Colors[o.it.Color].Name),
				"", "the part keeps its color; parts that are not sprayed yet get that of the order")
		}
		if e.it.Color < 0 {
			e.it.Color = o.it.Color
		}
		return i
	}
	return Unknown
}

// link ties work to molds and orders, and holds the mold log against it.
func (r *reader) link() {
	for i := range r.work {
		e := &r.work[i]
		if e.it.Order = r.orderOf(e); e.it.Order != Unknown {
			r.orders[e.it.Order].it.Begun = true
		}
		if e.it.Mold == Unknown {
			continue
		}
		m := &r.molds[e.it.Mold]
		m.it.Work = i
		if m.it.State != Occupied && m.it.State != NotSaid {
			_, found := m.l.at("where")
			m.l.doubtful("where", "part in an empty mold", fmt.Sprintf("mold %s is %q, and %s (%s) is in it", m.it.ID, found, e.it.Serial, e.it.Place),
				"which of the two is newer?", "the work on the floor is believed: the mold has the part in it")
		}
		m.it.State, m.it.Step = Occupied, sim.None
	}
	for i := range r.molds {
		e := &r.molds[i]
		if e.it.State == Occupied && e.it.Work == Unknown && len(r.work) > 0 {
			e.l.doubtful("where", "part not listed", fmt.Sprintf("mold %s has a part in it, and no work on the floor is in this mold", e.it.ID), "list the part, or its mold",
				"the mold is taken as ready, and the boat is missing from the floor")
			e.it.State, e.it.When = NotSaid, Moment{}
		}
	}
	r.floor.Molds, r.floor.Work = things(r.molds), things(r.work)
}

// unusedAliases tells of aliases that nothing was found under.
func (r *reader) unusedAliases() {
	var unused []string
	var at *line
	for _, a := range r.aliasRows {
		if !r.names.used[idKey(a.old)] {
			unused = append(unused, fmt.Sprintf("%q", a.old))
			if at == nil {
				at = a.l
			}
		}
	}
	if at != nil {
		slices.Sort(unused)
		r.say(Notice{Place: at.place(-1), Level: Told, Rule: "aliases not needed", Message: "names that no file writes: " + strings.Join(unused, ", ")})
	}
}
