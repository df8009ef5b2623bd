package record

import (
	"slices"

	"moldturn/sim/clock"
)

// MostRecorded is how many facts a Recorder without a number of its own keeps.
const MostRecorded = 2_000_000

// Recorder is an Observer that keeps the facts of one run that touch a stretch
// of time: spans that overlap it, and pulls, shipments and notes within it. It is
// for one replication that is run again; figures come from a Tally. The zero
// value keeps nothing; see NewRecorder.
type Recorder struct {
	Nothing
	From, To clock.Time
	Most     int // facts kept at most; later ones are counted in Dropped
	Spans    []Span
	Pulls    []Pull
	Ships    []Ship
	Notes    []Note
	Dropped  int         // facts beyond Most: what is kept is then not the whole
	Limits   FloorLimits // to tell who fills the floor

	held   []Hold  // what Spans[].Held point into
	boats  []boat  // on the floor during the stretch
	models []int16 // by order, as it came
}

// NewRecorder keeps facts from from to before to, MostRecorded at most.
func NewRecorder(from, to clock.Time) *Recorder {
	return &Recorder{From: from, To: to, Most: MostRecorded}
}

// Span implements Observer. Spans are kept whole, also where they reach over
// the ends of the stretch.
func (r *Recorder) Span(s *Span) {
	if s.To <= r.From || s.From >= r.To || r.full() {
		return
	}
	kept := *s
	kept.Held = r.keep(s.Held)
	r.Spans = append(r.Spans, kept)
}

// Pull implements Observer.
func (r *Recorder) Pull(p *Pull) {
	if r.within(p.At) && !r.full() {
		r.Pulls = append(r.Pulls, *p)
	}
}

// Ship implements Observer.
func (r *Recorder) Ship(s *Ship) {
	r.leaveFloor(s)
	if r.within(s.At) && !r.full() {
		r.Ships = append(r.Ships, *s)
	}
}

// Note implements Observer.
func (r *Recorder) Note(n *Note) {
	r.noteFloor(n)
	if r.within(n.At) && !r.full() {
		r.Notes = append(r.Notes, *n)
	}
}

func (r *Recorder) within(t clock.Time) bool { return t >= r.From && t < r.To }

// full counts a fact that finds no room.
func (r *Recorder) full() bool {
	if len(r.Spans)+len(r.Pulls)+len(r.Ships)+len(r.Notes) < r.Most {
		return false
	}
	r.Dropped++
	return true
}

// keep copies what a span holds into one large block, many spans to a block.
func (r *Recorder) keep(held []Hold) []Hold {
	if len(held) == 0 {
		return nil
	}
	if len(r.held)+len(held) > cap(r.held) {
		r.held = make([]Hold, 0, max(4096, len(held)))
	}
	n := len(r.held)
	r.held = append(r.held, held...)
	return slices.Clip(r.held[n:])
}

// clipped is the part of a span that lies in the stretch.
func (r *Recorder) clipped(s *Span) Span {
	c := *s
	c.From, c.To = max(s.From, r.From), min(s.To, r.To)
	return c
}
