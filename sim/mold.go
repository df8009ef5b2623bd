package sim

import (
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// moldState is where a mold stands in its loop.
type moldState uint8

const (
	inUse   moldState = iota // with a part, or in care
	ready                    // waxed, waits for an order
	resting                  // in reserve
	gone                     // retired
)

// mold is one mold. It is plain data.
type mold struct {
	part     int16
	state    moldState
	reserve  bool // kept in reserve when not called
	called   bool // a reserve mold in rotation
	goBack   bool // goes back to reserve after its next pull
	out      bool // in a strip, repair or renewal: its place in rotation may be lent
	master   bool
	turns    int32 // since new
	since    int32 // since strip
	strips   int32
	renewals int32
	coats    int32 // of wax on it; below 0 when some are missing
	waxed    int32 // turns since waxed
	breakIn  int8  // turns of break-in left
	stripped bool  // no part pulled since the strip
	worn     bool
	due      policy.Care
	coatsDue int32
	repair   float64 // labor hours of repair due
	buildUp  float64
	reading  float64 // of the last part, as if it were dark; by-luster strips only
	low      int8    // parts in a row that read under the limit
	surface  float64
	lastPull clock.Time // 0: none
	readyAt  clock.Time // since when it waits for an order
	at       clock.Time // since when it is in this state
	cause    record.Cause
	nr       int32 // its number
	replaced int32 // how often a new one took its place after a wait
}

func (r *Run) moldOf(j int32) *mold { return &r.molds[r.jobs[j].mold] }

// startMolds sets every mold where it stands at instant 0, spread over its
// strip cycle and its life where the plan says so, and puts it in its place.
func (r *Run) startMolds() {
	for i := range r.plan.Molds {
		m := &r.plan.Molds[i]
		r.molds = append(r.molds, r.planned(i))
		if r.awaits(i) {
			continue
		}
		if m.Reserve {
			r.molds[i].state = resting
			continue
		}
		r.parts[m.Part].inRotation++
		r.moldReady(int32(i))
	}
}

// planned is a mold as the plan says that it is at the start of a run.
func (r *Run) planned(i int) mold {
	m := &r.plan.Molds[i]
	key := r.moldKey(i)
	x := mold{part: m.Part, reserve: m.Reserve, master: m.Master, nr: int32(i), surface: m.Surface, coats: 1, at: r.from, cause: record.Cause{Of: None}}
	x.turns, x.since = int32(m.Turns), int32(m.Since)
	if m.Turns < 0 {
		x.turns = r.spread(key, 0, r.plan.Life.Limit)
	}
	if m.Since < 0 {
		x.since = r.spread(key, 1, r.plan.Strip.Interval(r.hot))
	}
	if m.New {
		x.turns, x.since, x.breakIn = 0, 0, int8(r.plan.BreakIn.Turns())
		x.coats = int32(r.coatsFor(&x))
	}
	x.stripped = x.since == 0
	x.buildUp = float64(x.since) * r.growth(m.Part, 70, 0)
	return x
}

// moldKey is the luck of a mold: its number among those of its part.
func (r *Run) moldKey(i int) draw.Key {
	return r.root.At2(luckMold, uint64(r.plan.Molds[i].Part), uint64(r.nth(i)))
}

// nth is the number of a mold among those of its part.
func (r *Run) nth(i int) int {
	n := 0
	for k := range i {
		if r.plan.Molds[k].Part == r.plan.Molds[i].Part {
			n++
		}
	}
	return n
}

// spread draws a whole number from 0 to below n; 0 for n below 1.
func (r *Run) spread(key draw.Key, number uint64, n int) int32 {
	if n < 1 {
		return 0
	}
	return int32(key.U(number) * float64(n))
}

// moldSpan reports what a mold that is with no job did until now.
func (r *Run) moldSpan(m *mold) {
	now := r.clk.Now()
	if now > m.at {
		f := &r.fact.span
		*f = record.Span{Job: None, Order: None, Mold: m.nr, Route: None, Step: None, Part: m.part, Craft: None, Place: None, Unit: None, Color: None, Cause: m.cause, From: m.at, To: now}
		if m.state == resting || m.state == gone {
			f.Doing, f.Working, f.Cause = record.OutOfUse, true, record.Cause{Of: None}
		}
		r.obs.Span(f)
	}
	m.at = now
}

// moldReady puts a waxed mold where orders can take it.
func (r *Run) moldReady(i int32) {
	m := &r.molds[i]
	r.moldSpan(m)
	m.state, m.out = ready, false
	m.readyAt = r.clk.Now()
	m.cause = record.Cause{Reason: record.NoOrder, Of: None}
	p := &r.parts[m.part]
	p.ready = append(p.ready, i)
	r.rematch(m.part)
}

// care begins the care of a mold: the job that takes it from a pull, or from
// reserve, to the next part.
func (r *Run) care(i int32, key draw.Key, from int16) {
	m := &r.molds[i]
	r.moldSpan(m)
	m.state = inUse
	j := r.newJob(careJob, r.plan.Parts[m.part].Care, key)
	b := &r.jobs[j]
	b.mold, b.part, b.step = i, m.part, from
	r.advance(j)
}

// careDone is the end of the care route.
func (r *Run) careDone(j int32) {
	i := r.jobs[j].mold
	r.releaseAll(j)
	r.endJob(j)
	m := &r.molds[i]
	m.at = r.clk.Now()
	m.due, m.coatsDue, m.repair = policy.NoStrip, 0, 0
	if m.out {
		r.backInRotation(i)
		return
	}
	r.moldReady(i)
}

// releaseAll gives back every place a job holds.
func (r *Run) releaseAll(j int32) {
	for len(r.jobs[j].held) > 0 {
		b := &r.jobs[j]
		r.release(b, b.held[len(b.held)-1].place)
	}
}

// coatsFor is how many coats of wax a mold needs before its next part.
func (r *Run) coatsFor(m *mold) int {
	if k := r.plan.BreakIn.Turns(); m.breakIn > 0 && int(m.breakIn) <= k {
		return r.plan.BreakIn.Coats[k-int(m.breakIn)]
	}
	return r.plan.Wax.Due(int(m.waxed))
}

// verbChecked decides, at the end of the mold check, what a mold gets before
// its next part. A strip that is due replaces the wax and gives its own coats.
func (r *Run) verbChecked(j int32) bool {
	m := r.moldOf(j)
	l := &r.plan.Life
	m.worn = l.Limit > 0 && int(m.turns) >= l.Limit*int(m.renewals+1) || l.SurfaceHigh > 0 && m.surface >= l.SurfaceHigh
	m.due = policy.NoStrip
	if !m.worn && m.breakIn == 0 {
		m.due = r.plan.Strip.After(r.lookAt(m))
	}
	m.coatsDue = 0
	if m.due == policy.NoStrip && !m.worn {
		m.coatsDue = int32(r.coatsFor(m))
	}
	if chance := r.plan.Parts[m.part].Chips; m.repair == 0 && chance > 0 && r.jobs[j].key.U(luckChip) < chance {
		m.repair = r.plan.Chip.Quantile(r.jobs[j].key.U(luckChipHours))
	}
	if m.due == policy.Full || m.worn || m.repair > l.CallAfter && l.CallAfter > 0 {
		r.outOfRotation(j)
	}
	return true
}

func (r *Run) verbLightStrip(j int32) bool { return r.stripped(j, policy.Light) }
func (r *Run) verbFullStrip(j int32) bool  { return r.stripped(j, policy.Full) }

func (r *Run) stripped(j int32, kind policy.Care) bool {
	m := r.moldOf(j)
	s := &r.plan.Strip
	loss, coats, note := s.LightLoss, s.LightCoats, record.LightStrip
	if kind == policy.Full {
		loss, coats, note = s.FullLoss, s.FullCoats, record.FullStrip
	}
	m.surface += loss
	m.buildUp, m.since, m.waxed, m.low = 0, 0, 0, 0
	m.coats = int32(min(coats, 2)) // coats beyond two are polished in a strip
	m.strips++
	m.stripped, m.due = true, policy.NoStrip
	r.note(record.Note{Kind: note, Order: None, Mold: m.nr, Part: m.part, Place: None})
	return true
}

func (r *Run) verbWaxed(j int32) bool {
	m := r.moldOf(j)
	m.coats++
	m.coatsDue--
	m.waxed = 0
	r.note(record.Note{Kind: record.WaxCoat, Order: None, Mold: m.nr, Part: m.part, Place: None})
	return true
}

func (r *Run) verbRepaired(j int32) bool {
	r.moldOf(j).repair = 0
	return true
}

// verbRenewed gives back a mold with a new surface: resurfaced as often as its
// life allows, then a new one off the master, which may take its time to come.
// Either is broken in again.
func (r *Run) verbRenewed(j int32) bool {
	m := r.moldOf(j)
	l := &r.plan.Life
	kind := record.Resurfaced
	m.renewals++
	if int(m.renewals) > l.Resurfaces {
		kind = record.Retired
		m.renewals, m.turns = 0, 0
	}
	m.worn = false
	m.surface, m.buildUp, m.since, m.strips, m.waxed, m.coats, m.low = l.Surface, 0, 0, 0, 0, 0, 0
	m.breakIn, m.stripped = int8(r.plan.BreakIn.Turns()), true
	m.coatsDue = int32(r.coatsFor(m))
	r.note(record.Note{Kind: kind, Order: None, Mold: m.nr, Part: m.part, Place: None})
	if kind == record.Retired && l.Replacement > 0 {
		r.replaced(j)
		return false
	}
	return true
}
