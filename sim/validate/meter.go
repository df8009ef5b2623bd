package validate

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// mostSeen is the highest number at the watched steps that is told apart.
const mostSeen = 15

// layout says where each sum stands in a row of sums. Steps of all routes are
// numbered through.
type layout struct {
	plan   *sim.Plan
	offset []int // of each route's steps
	steps  int
	marks  int
	firsts int
}

// Kinds of sums by step, each steps wide.
const (
	waitHours = iota // spent waiting at the step, in the batch
	workHours
	waitEnded // whole waits that ended in the batch
	visits    // spans of work begun: once per visit where nothing pauses
	waits     // waits that ended
	byStep    // how many kinds
)

// Kinds of sums by pool.
const (
	used   = iota
	over   // use beyond capacity
	byPool // how many kinds
)

// Single sums.
const (
	pulls = iota
	ships
	leadHours // of ships, from arrival
	lateStart // hours from arrival to the first mold
	notAtOnce // ships that waited for their first mold
	backlog   // hours of dated orders that waited for a mold
	mateHours // of finished parts that waited for their mates
	longWaits // waits at the watched steps over Case.Over.Wait
	longLeads // ships with a lead time over Case.Over.Lead
	singles   // how many
)

func newLayout(c *Case, p *sim.Plan) layout {
	l := layout{plan: p, marks: len(c.Marks), firsts: c.Firsts}
	for i := range p.Routes {
		l.offset = append(l.offset, l.steps)
		l.steps += len(p.Routes[i].Steps)
	}
	return l
}

func (l *layout) step(kind, k int) int { return kind*l.steps + k }
func (l *layout) pool(kind, p int) int {
	return byStep*l.steps + kind*(len(l.plan.Crafts)+len(l.plan.Places)) + p
}
func (l *layout) single(kind int) int   { return l.pool(byPool, 0) + kind }
func (l *layout) mark(m, n int) int     { return l.single(singles) + m*(mostSeen+4) + n }
func (l *layout) first(i int) int       { return l.mark(l.marks, 0) + i }
func (l *layout) width() int            { return l.first(l.firsts) }
func (l *layout) markSeen(m int) int    { return l.mark(m, mostSeen+1) }
func (l *layout) markNumber(m int) int  { return l.mark(m, mostSeen+2) }
func (l *layout) pulledUntil(m int) int { return l.mark(m, mostSeen+3) }

// all gives the steps with one of the names.
func (l *layout) all(names []string) []int {
	var out []int
	for r := range l.plan.Routes {
		for s := range l.plan.Routes[r].Steps {
			if slices.Contains(names, l.plan.Routes[r].Steps[s].Name) {
				out = append(out, l.offset[r]+s)
			}
		}
	}
	return out
}

// Sums is what was counted in one batch or run.
type Sums struct {
	layout *layout
	hours  float64
	v      []float64
}

// meter adds up the facts of a run by batches of equal length.
type meter struct {
	layout
	from, length clock.Time // of the first batch; of each
	rows         [][]float64
	watch        []bool
	overWait     clock.Time
	overLead     clock.Time
	marksAt      []clock.Time
	period       clock.Time
	seen         [][]uint16 // by mark and pass: how many at the watched steps
}

func newMeter(c *Case, p *sim.Plan, from, length clock.Time, parts int) *meter {
	m := &meter{layout: newLayout(c, p), from: from, length: length, period: clock.FromHours(c.Period),
		overWait: clock.FromHours(c.Over.Wait), overLead: clock.FromHours(c.Over.Lead)}
	for range parts {
		m.rows = append(m.rows, make([]float64, m.width()))
	}
	m.watch = make([]bool, m.steps)
	for _, k := range m.all(c.Watch) {
		m.watch[k] = true
	}
	end := from + clock.Time(parts)*length
	for _, at := range c.Marks {
		m.marksAt = append(m.marksAt, clock.FromHours(at))
		passes := 1
		if m.period > 0 {
			passes = int(end/m.period) + 1
		}
		m.seen = append(m.seen, make([]uint16, passes))
	}
	return m
}

// batch is the row of an instant, nil outside of what is counted.
func (m *meter) batch(t clock.Time) []float64 {
	if t < m.from {
		return nil
	}
	if i := int((t - m.from) / m.length); i < len(m.rows) {
		return m.rows[i]
	}
	return nil
}

// count adds to a sum at an instant.
func (m *meter) count(t clock.Time, column int, amount float64) {
	if row := m.batch(t); row != nil {
		row[column] += amount
	}
}

// spread adds hours times weight to the batches they lie in.
func (m *meter) spread(from, to clock.Time, column int, weight float64) {
	from = max(from, m.from)
	for i := int((from - m.from) / m.length); from < to && i < len(m.rows); i++ {
		until := min(to, m.from+clock.Time(i+1)*m.length)
		m.rows[i][column] += (until - from).Hours() * weight
		from = until
	}
}

// Span implements record.Observer.
func (m *meter) Span(f *record.Span) {
	switch {
	case f.Job == sim.None:
		if f.Cause.Reason == record.NoMold {
			m.spread(f.From, f.To, m.single(backlog), 1)
		}
		return
	case f.Step == sim.None:
		if f.Cause.Reason == record.MateMissing {
			m.spread(f.From, f.To, m.single(mateHours), 1)
		}
		return
	}
	k := m.offset[f.Route] + int(f.Step)
	if m.watch[k] {
		m.look(f.From, f.To)
	}
	if f.Working {
		m.spread(f.From, f.To, m.step(workHours, k), 1)
		m.count(f.From, m.step(visits, k), 1)
		return
	}
	m.spread(f.From, f.To, m.step(waitHours, k), 1)
	m.count(f.To, m.step(waitEnded, k), (f.To - f.From).Hours())
	m.count(f.To, m.step(waits, k), 1)
	if m.watch[k] && f.To-f.From > m.overWait {
		m.count(f.To, m.single(longWaits), 1)
	}
	if f.Step == 0 && f.Order >= 0 && int(f.Order) < m.firsts {
		m.rows[0][m.first(int(f.Order))] += (f.To - f.From).Hours()
	}
}

// look notes a stay after from and up to to at all marks in it.
func (m *meter) look(from, to clock.Time) {
	for i, at := range m.marksAt {
		if m.period == 0 {
			if from < at && at <= to {
				m.seen[i][0]++
			}
			continue
		}
		pass := clock.Time(0)
		if from >= at {
			pass = (from-at)/m.period + 1
		}
		for ; at+pass*m.period <= to && int(pass) < len(m.seen[i]); pass++ {
			m.seen[i][pass]++
		}
	}
}

// Use implements record.Observer.
func (m *meter) Use(f *record.Use) {
	m.spread(f.From, f.To, m.pool(used, int(f.Pool)), float64(f.Used))
	if f.Used > f.Capacity {
		m.spread(f.From, f.To, m.pool(over, int(f.Pool)), float64(f.Used-f.Capacity))
	}
}

// Pull implements record.Observer.
func (m *meter) Pull(f *record.Pull) {
	m.count(f.At, m.single(pulls), 1)
	if m.period == 0 {
		for i, at := range m.marksAt {
			if f.At <= at {
				m.rows[0][m.pulledUntil(i)]++
			}
		}
	}
}

// Ship implements record.Observer.
func (m *meter) Ship(f *record.Ship) {
	row := m.batch(f.At)
	if row == nil {
		return
	}
	row[m.single(ships)]++
	row[m.single(leadHours)] += (f.At - f.Arrived).Hours()
	if f.At-f.Arrived > m.overLead {
		row[m.single(longLeads)]++
	}
	row[m.single(lateStart)] += (f.Released - f.Arrived).Hours()
	if f.Released > f.Arrived {
		row[m.single(notAtOnce)]++
	}
}

// Note implements record.Observer.
func (m *meter) Note(*record.Note) {}

// sums gives what was counted, batch by batch.
func (m *meter) sums() []Sums {
	for i, at := range m.marksAt {
		for pass, n := range m.seen[i] {
			row := m.batch(at + clock.Time(pass)*m.period)
			if row == nil {
				continue
			}
			row[m.markSeen(i)]++
			row[m.markNumber(i)] += float64(n)
			row[m.mark(i, min(int(n), mostSeen))]++
		}
	}
	var out []Sums
	for _, row := range m.rows {
		out = append(out, Sums{&m.layout, m.length.Hours(), row})
	}
	return out
}
