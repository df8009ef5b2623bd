package study

import (
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/stats"
)

// Launch is a plant into which new molds come, against the same plant under the
// same luck into which they never do.
type Launch struct {
	Plan          *sim.Plan
	Models        []int // those that get molds
	First         int   // week in which the first mold comes, as shift.WeekAt counts
	Weeks         int   // whole weeks of the run
	Shut          []bool
	With, Without []*WeekBook // by replication
}

// FirstArrival is when the first new mold of a plan comes; ok is false for a
// plan without any, or if none comes within its length.
func FirstArrival(p *sim.Plan) (t clock.Time, ok bool) {
	t = clock.Never
	for i := range p.Molds {
		if a := p.Molds[i].Arrives; a > 0 {
			t = min(t, a)
		}
	}
	return t, t < p.Length
}

// WithoutLaunch is the plan with molds that never come. Their places in the
// list stay, so that no luck moves; a model that is left with a part without any
// mold has no orders.
func WithoutLaunch(p *sim.Plan) *sim.Plan {
	out := *p
	out.Molds = slices.Clone(p.Molds)
	has := make([]bool, len(p.Parts))
	for i := range out.Molds {
		if out.Molds[i].Arrives > 0 {
			out.Molds[i].Arrives = p.Length + clock.Day
		} else {
			has[out.Molds[i].Part] = true
		}
	}
	out.Demand.Models = slices.Clone(p.Demand.Models)
	for i := range p.Parts {
		if m := p.Parts[i].Model; p.Parts[i].Care != sim.None && !has[i] && int(m) < len(out.Demand.Models) {
			out.Demand.Models[m].PerWeek = 0
		}
	}
	return &out
}

// Launched are the models that get new molds, in order.
func Launched(p *sim.Plan) []int {
	var out []int
	for i := range p.Molds {
		if m := int(p.Parts[p.Molds[i].Part].Model); p.Molds[i].Arrives > 0 && !slices.Contains(out, m) {
			out = append(out, m)
		}
	}
	slices.Sort(out)
	return out
}

// NewLaunch joins the weeks of both plants.
func NewLaunch(p *sim.Plan, f *record.Frame, with, without []*WeekBook) *Launch {
	t, _ := FirstArrival(p)
	_, end := f.WholeWeeks()
	return &Launch{Plan: p, Models: Launched(p), First: shift.WeekAt(p.Start, t), Weeks: end, Shut: f.Shut, With: with, Without: without}
}

// WeekBook is an observer that counts boats shipped by week and model, and turns
// of molds that came during the run while they are broken in.
type WeekBook struct {
	record.Nothing
	plan    *sim.Plan
	Boats   [][]int // by week and model
	BreakIn []int   // by week
	turns   []int   // by mold
}

// NewWeekBook starts counting.
func NewWeekBook(p *sim.Plan) *WeekBook {
	b := &WeekBook{plan: p, turns: make([]int, len(p.Molds))}
	weeks := shift.WeekAt(p.Start, p.Length) + 1
	for range weeks {
		b.Boats = append(b.Boats, make([]int, len(p.Models)))
	}
	b.BreakIn = make([]int, weeks)
	return b
}

// Ship implements record.Observer.
func (b *WeekBook) Ship(s *record.Ship) { b.Boats[shift.WeekAt(b.plan.Start, s.At)][s.Model]++ }

// Pull implements record.Observer.
func (b *WeekBook) Pull(p *record.Pull) {
	if p.Mold < 0 || b.plan.Molds[p.Mold].Arrives <= 0 {
		return
	}
	if b.turns[p.Mold]++; b.turns[p.Mold] <= b.plan.BreakIn.Turns() {
		b.BreakIn[shift.WeekAt(b.plan.Start, p.At)]++
	}
}

// Span is weeks relative to that of the first mold: From up to To, To left out.
type Span struct{ From, To int }

// Spans are the stretches in which a launch is summed up, as far as the run
// goes: the eight weeks before, the two months of the break-in, and what
// follows.
func (l *Launch) Spans() []Span {
	var out []Span
	for _, s := range []Span{{-8, 0}, {0, 4}, {4, 8}, {8, 12}, {12, 26}, {26, 52}} {
		s.From, s.To = max(s.From, -l.First), min(s.To, l.Weeks-l.First)
		if s.From < s.To {
			out = append(out, s)
		}
	}
	return out
}

// Rate is boats a week of a model over open weeks of a span, with the launch,
// over replications; and how that differs from the plant without it. ok is false
// when no week of the span is open.
func (l *Launch) Rate(s Span, models ...int) (with stats.Summary, change stats.Difference, ok bool) {
	var a, b []float64
	for r := range l.With {
		x, open := l.boats(l.With[r], s, models)
		y, _ := l.boats(l.Without[r], s, models)
		if open > 0 {
			a, b = append(a, x/float64(open)), append(b, y/float64(open))
		}
	}
	if len(a) == 0 {
		return with, change, false
	}
	return stats.TInterval(a, Confidence), stats.Paired(a, b, Confidence), true
}

func (l *Launch) boats(b *WeekBook, s Span, models []int) (boats float64, open int) {
	for w := l.First + s.From; w < l.First+s.To; w++ {
		if w < len(l.Shut) && l.Shut[w] {
			continue
		}
		open++
		for _, m := range models {
			boats += float64(b.Boats[w][m])
		}
	}
	return boats, open
}

// Others are the models that get no new molds.
func (l *Launch) Others() []int {
	var out []int
	for m := range l.Plan.Models {
		if !slices.Contains(l.Models, m) {
			out = append(out, m)
		}
	}
	return out
}

// BreakIns is the mean number of break-in turns in a week.
func (l *Launch) BreakIns(week int) float64 {
	sum := 0
	for _, b := range l.With {
		sum += b.BreakIn[l.First+week]
	}
	return float64(sum) / float64(len(l.With))
}

// Arrivals is how many molds come in a week.
func (l *Launch) Arrivals(week int) int {
	n := 0
	for i := range l.Plan.Molds {
		if a := l.Plan.Molds[i].Arrives; a > 0 && shift.WeekAt(l.Plan.Start, a) == l.First+week {
			n++
		}
	}
	return n
}

// Closed tells whether a week is shut down.
func (l *Launch) Closed(week int) bool {
	w := l.First + week
	return w >= 0 && w < len(l.Shut) && l.Shut[w]
}
