package record

import (
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Tally is an Observer that makes a Result of the facts of one run.
type Tally struct {
	Nothing
	r     Result
	frame Frame
	use   []months // by pool: facts of one pool come in order of time
	span  months
	hot   bool

	useWeek  []weeks // as use
	waitWeek weeks

	floor int
	first int
}

// NewTally starts counting; Result ends it.
func NewTally(f Frame) *Tally {
	t := &Tally{frame: f, span: months{start: f.Start}}
	t.r = Result{Frame: f}
	t.r.Models = make([]Model, f.Models)
	t.r.Parts = make([]Part, f.Parts)
	for p := range min(len(f.InUse), f.Parts) {
		t.r.Parts[p].Molds = f.InUse[p]
	}
	t.r.Load = make([][12]Load, f.Pools)
	t.r.MoldHours = make([][12][States]clock.Time, f.Parts)
	for m := range t.r.Waits {
		t.r.Waits[m] = make([]clock.Time, f.Pools+int(Reasons))
	}
	t.r.ByWeek = make([]ByWeek, f.Pools)
	t.r.MoldWaits = make([]clock.Time, f.Pools+int(Reasons))
	t.useWeek = make([]weeks, f.Pools)
	t.use = make([]months, f.Pools)
	for i := range t.use {
		t.use[i].start = f.Start
	}
	t.r.RunShips = make([]int, shift.WeekAt(f.Start, f.To)+1)
	t.first = f.firstWeek()
	for w := t.first; w < f.lastWeek(); w++ {
		thursday := shift.DateAt(f.Start, shift.WeekStart(f.Start, w)).AddDays(3)
		open := !f.shut(w)
		t.r.WeekShips = append(t.r.WeekShips, 0)
		t.r.WeekOpen = append(t.r.WeekOpen, open)
		t.r.WeekYear = append(t.r.WeekYear, f.WeekYear(w))
		if open {
			t.r.MonthOpen[thursday.Month-1]++
		}
	}
	return t
}

// Result gives what was counted. The Tally must not be used afterwards.
func (t *Tally) Result() *Result {
	slices.Sort(t.r.Lusters)
	t.r.OnFloor = t.floor
	return &t.r
}

// Use implements Observer.
func (t *Tally) Use(u *Use) {
	from, to := max(u.From, t.frame.From), min(u.To, t.frame.To)
	t.useByWeek(u, from, to)
	for from < to {
		month, end := t.use[u.Pool].of(from)
		until := min(end, to)
		t.r.Load[u.Pool][month].add(u, until-from)
		from = until
	}
}

// Span implements Observer.
func (t *Tally) Span(s *Span) {
	if s.Mold < 0 && s.Working {
		return
	}
	from, to := max(s.From, t.frame.From), min(s.To, t.frame.To)
	if !s.Working && from < to {
		t.wait(s, from, to)
	}
	for from < to {
		month, end := t.span.of(from)
		until := min(end, to)
		d := until - from
		if s.Mold >= 0 {
			state := int(s.Doing)
			if !s.Working {
				state = int(Doings) + int(s.Cause.Reason)
			}
			t.r.MoldHours[s.Part][month][state] += d
		}
		if !s.Working && s.waitsInWork() {
			t.r.Waits[month][t.waitIndex(s.Cause)] += d
		}
		from = until
	}
}

// wait counts a wait beside the months; from and to lie in the frame.
func (t *Tally) wait(s *Span, from, to clock.Time) {
	at := t.waitIndex(s.Cause)
	if s.Mold >= 0 {
		t.r.MoldWaits[at] += to - from
	}
	if at < t.frame.Pools && s.waitsInWork() {
		t.waitByWeek(at, from, to)
	}
}

// waitsInWork is true for a wait of a boat, a part or a mold in work.
func (s *Span) waitsInWork() bool { return s.Job >= 0 && (s.Order >= 0 || s.Mold >= 0) }

// waitIndex is the pool a cause is about, or the reason where it is about none.
func (t *Tally) waitIndex(c Cause) int {
	switch c.Reason {
	case NoCrew:
		return int(c.Of)
	case NoPlace, NoHoist:
		return t.frame.Crafts + int(c.Of)
	}
	return t.r.ReasonWait(c.Reason)
}

// Pull implements Observer.
func (t *Tally) Pull(p *Pull) {
	if p.At < t.frame.From || p.At >= t.frame.To {
		return
	}
	x := &t.r.Parts[p.Part]
	x.Pulls++
	if p.Cycle > 0 {
		x.Cycles++
		x.CycleSum += p.Cycle
	}
	x.HoldSum += p.Hold
	x.Luster.add(p.Luster, t.frame.Target)
	if p.Dark {
		t.r.Dark.add(p.Luster, t.frame.Target)
	}
	t.r.Lusters = append(t.r.Lusters, p.Luster)
	season := 0
	if t.hot {
		season = 1
	}
	t.r.ByTurn[season][min(int(p.Turns), MostTurns)].add(p.Luster, t.frame.Target)
	month, _ := t.span.of(p.At)
	t.r.ByMonth[month].add(p.Luster, t.frame.Target)
	t.heatOf(p.At).pull(p)
}

// Ship implements Observer.
func (t *Tally) Ship(s *Ship) {
	t.floor--
	if w := shift.WeekAt(t.frame.Start, s.At); w < len(t.r.RunShips) {
		t.r.RunShips[w]++
	}
	if s.At < t.frame.From || s.At >= t.frame.To {
		return
	}
	m := &t.r.Models[s.Model]
	m.Shipped++
	m.LeadSum += s.At - s.Released
	if s.Due < clock.Never {
		m.Dated++
		if s.At <= s.Due {
			m.OnTime++
		} else {
			m.LateSum += s.At - s.Due
		}
	}
	if s.Conceded {
		m.Conceded++
	}
	if s.Luster >= t.frame.Target {
		m.AtTarget++
	}
	t.r.Boats.add(s.Luster, t.frame.Target)
	if w := shift.WeekAt(t.frame.Start, s.At) - t.first; w >= 0 && w < len(t.r.WeekShips) {
		t.r.WeekShips[w]++
		if t.r.WeekOpen[w] {
			t.r.Shipped++
			thursday := shift.DateAt(t.frame.Start, shift.WeekStart(t.frame.Start, w+t.first)).AddDays(3)
			t.r.MonthShip[thursday.Month-1]++
		}
	}
}

// Note implements Observer.
func (t *Tally) Note(n *Note) {
	switch n.Kind {
	case Season:
		t.hot = n.Value > 0
	case BoatBegun:
		t.floor++
	}
	if n.At < t.frame.From || n.At >= t.frame.To {
		return
	}
	t.flaw(n)
	t.heat(n)
	t.r.Notes[n.Kind]++
	t.r.Values[n.Kind] += n.Value
}

// flaw counts what inspection finds by defect.
func (t *Tally) flaw(n *Note) {
	switch n.Kind {
	case FlawFound:
		t.r.Flaws[n.Of].Found++
		t.r.Flaws[n.Of].Hours += n.Value
	case FlawMissed:
		t.r.Flaws[n.Of].Missed++
	}
}
