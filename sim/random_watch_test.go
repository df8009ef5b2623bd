package sim

import (
	"fmt"
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// life is what is known of one job from the tables, to be held against facts.
type life struct {
	born, died clock.Time // died is clock.Never while it lives
	until      clock.Time // end of its last span
	spans      int
	kind       jobKind
	worked     clock.Time
	waits      [record.Reasons]clock.Time
}

// watcher runs a plant, takes its facts and looks at its tables after every
// instant. Faults are kept as text, at most a few.
type watcher struct {
	r       *Run
	faults  []string
	sum     uint64     // of all facts in their order
	now     clock.Time // the last instant that is over
	lives   []life     // by serial
	molds   []clock.Time
	pools   []clock.Time
	notes   [record.NoteKinds]int
	noteAt  clock.Time
	pulls   int
	broken  int // parts thrown away
	shipped int
	over    bool // the run ended with an error
	joined  int  // parts of boats shipped
	molded  int  // those of them that came from molds
	look    int
	seen    []int // by serial: the last look it was alive at
	level
}

func (w *watcher) fault(format string, args ...any) {
	if len(w.faults) < 8 {
		w.faults = append(w.faults, fmt.Sprintf("%v: ", w.r.clk.Now())+fmt.Sprintf(format, args...))
	}
}

// watch runs a plan under observation.
func watch(p *Plan, air *Air, seed uint64) (*watcher, error) {
	w := &watcher{}
	w.molds = make([]clock.Time, len(p.Molds))
	w.pools = make([]clock.Time, len(p.Crafts)+len(p.Places))
	w.level = newLevel(p)
	w.r = &Run{plan: p, air: air, obs: w, clk: clock.New(), root: draw.Root(seed, 0), verbs: &verbs}
	w.r.start()
	err := w.r.pass(w)
	if err != nil {
		w.over = true
		return w, err
	}
	w.tables()
	w.stand(p.Length - w.now)
	w.r.close()
	w.closing()
	return w, nil
}

// Handle implements clock.Handler: when time has passed, the instant before is
// over and its tables are looked at.
func (w *watcher) Handle(kind clock.Kind, id int32) {
	if now := w.r.clk.Now(); now > w.now {
		w.tables()
		w.stand(now - w.now)
		w.now = now
	}
	w.r.Handle(kind, id)
	w.births()
}

// Turn implements clock.Handler.
func (w *watcher) Turn(class clock.Class) {
	w.r.Turn(class)
	w.births()
}

// births notes jobs that came or went since the last look.
func (w *watcher) births() {
	r := w.r
	for len(w.lives) <= int(r.serial) {
		w.lives = append(w.lives, life{kind: backgroundJob, born: r.clk.Now(), until: r.clk.Now(), died: r.clk.Now()})
		w.seen = append(w.seen, 0)
	}
	w.look++
	for j := range r.jobs {
		b := &r.jobs[j]
		l := &w.lives[b.serial]
		l.kind = b.kind // also of those that came and went at once
		if b.state != unused {
			l.died = clock.Never
			w.seen[b.serial] = w.look
		}
	}
	for s := range w.lives {
		if l := &w.lives[s]; l.died == clock.Never && w.seen[s] != w.look {
			l.died = r.clk.Now()
		}
	}
}

// add takes numbers into the sum over facts (FNV-1a over words).
func (w *watcher) add(values ...int64) {
	for _, v := range values {
		w.sum = (w.sum ^ uint64(v)) * 0x100000001b3
		w.sum ^= w.sum >> 29
	}
}

func bit(b bool) int64 {
	if b {
		return 1
	}
	return 0
}

func bits(f float64) int64 { return int64(math.Float64bits(f)) }

func (w *watcher) addSpan(s *record.Span) {
	w.add(1, int64(s.Job), int64(s.Order), int64(s.Mold), int64(s.Route), int64(s.Step), int64(s.Part), int64(s.Doing), bit(s.Working), int64(s.People), int64(s.Craft), int64(s.Place), int64(s.Unit), int64(s.Cause.Reason), int64(s.Cause.Of), int64(s.From), int64(s.To))
}

func (w *watcher) addPull(p *record.Pull) {
	w.add(3, int64(p.At), int64(p.Order), int64(p.Mold), int64(p.Model), int64(p.Part), int64(p.Color), int64(p.Turns), bits(p.Luster), bits(p.Green), bit(p.Stuck), bit(p.Scrapped), int64(p.Cycle), bits(p.HeatIndex), int64(p.Sprayed), int64(p.Laminated), int64(p.Hold))
}

func (w *watcher) addShip(s *record.Ship) {
	w.add(4, int64(s.At), int64(s.Arrived), int64(s.Released), int64(s.Due), int64(s.Order), int64(s.Model), int64(s.Color), bits(s.Luster), bit(s.Conceded))
}

func (w *watcher) addNote(n *record.Note) {
	w.add(5, int64(n.At), int64(n.Kind), int64(n.Order), int64(n.Mold), int64(n.Model), int64(n.Part), int64(n.Place), bits(n.Value))
}

// Span implements record.Observer.
func (w *watcher) Span(s *record.Span) {
	w.addSpan(s)
	if s.To <= s.From {
		w.fault("span from %v to %v", s.From, s.To)
	}
	if s.Mold >= 0 {
		if w.molds[s.Mold] != s.From {
			w.fault("mold %d: span from %v, the last one ended %v", s.Mold, s.From, w.molds[s.Mold])
		}
		w.molds[s.Mold] = s.To
	}
	if !s.Working && s.Cause.Reason == record.NoReason {
		w.fault("job %d of route %d waits at step %d without a reason, %v to %v", s.Job, s.Route, s.Step, s.From, s.To)
	}
	if s.Job < 0 {
		return
	}
	w.visit(s)
	l := &w.lives[s.Job]
	if l.until != s.From {
		w.fault("job %d: span from %v, the last one ended %v", s.Job, s.From, l.until)
	}
	l.until = s.To
	l.spans++
	if s.Working {
		l.worked += s.To - s.From
	} else {
		l.waits[s.Cause.Reason] += s.To - s.From
	}
}

// Use implements record.Observer.
func (w *watcher) Use(u *record.Use) {
	w.add(2, int64(u.Pool), int64(u.Used), int64(u.Capacity), int64(u.From), int64(u.To))
	if w.pools[u.Pool] != u.From || u.To <= u.From {
		w.fault("pool %d: use from %v to %v, the last one ended %v", u.Pool, u.From, u.To, w.pools[u.Pool])
	}
	w.pools[u.Pool] = u.To
	w.used[u.Pool] += clock.Time(u.Used) * (u.To - u.From)
	crafts := len(w.r.plan.Crafts)
	if u.Used < 0 || u.Capacity < 0 {
		w.fault("pool %d: used %d of %d", u.Pool, u.Used, u.Capacity)
	}
	if k := int(u.Pool) - crafts; k >= 0 && w.r.plan.Places[k].Count >= 0 && (u.Used > u.Capacity || int(u.Capacity) > w.r.plan.Places[k].Count) {
		w.fault("%s: used %d of %d", w.r.plan.Places[k].Name, u.Used, u.Capacity)
	}
}

// Pull implements record.Observer.
func (w *watcher) Pull(p *record.Pull) {
	w.addPull(p)
	w.pulls++
	if p.At != w.r.clk.Now() || p.Hold < 0 || p.Cycle < 0 || p.Luster < 0 || p.Luster > 100 {
		w.fault("pull %+v", *p)
	}
}

// Ship implements record.Observer.
func (w *watcher) Ship(s *record.Ship) {
	w.addShip(s)
	w.shipped++
	for _, p := range w.r.plan.Models[s.Model].Parts {
		w.joined++
		w.molded += int(bit(w.r.plan.Parts[p].Care != None))
	}
	if s.At != w.r.clk.Now() || s.Arrived > s.Released || s.Released > s.At {
		w.fault("ship %+v", *s)
	}
}

// Note implements record.Observer.
func (w *watcher) Note(n *record.Note) {
	w.addNote(n)
	w.notes[n.Kind]++
	if n.Kind == record.Scrapped {
		w.broken++
	}
	if n.At < w.noteAt || n.At != w.r.clk.Now() {
		w.fault("note %+v after %v", *n, w.noteAt)
	}
	w.noteAt = n.At
}

// closing holds the facts of the whole run against each other.
func (w *watcher) closing() {
	r := w.r
	w.births()
	end := r.plan.Length
	for i, at := range w.molds {
		if at != end {
			w.fault("mold %d: spans end at %v", i, at)
		}
	}
	for i, at := range w.pools {
		if at != end {
			w.fault("pool %d: uses end at %v", i, at)
		}
	}
	for s := 1; s < len(w.lives); s++ {
		l := &w.lives[s]
		last := min(l.died, end)
		waited := clock.Time(0)
		for _, d := range l.waits {
			waited += d
		}
		if l.until != last || waited != last-l.born-l.worked {
			w.fault("job %d lives %v to %v: spans end at %v, worked %v, waited %v", s, l.born, last, l.until, l.worked, waited)
		}
	}
	open, floor := 0, 0
	for i := range r.orders {
		switch o := &r.orders[i]; {
		case o.ended:
		case o.onFloor:
			floor++
		default:
			open++
		}
	}
	if arrived := w.notes[record.OrderArrived]; arrived != w.shipped+w.notes[record.OrderCancelled]+open+floor {
		w.fault("%d orders arrived, %d shipped, %d cancelled, %d open, %d on the floor", arrived, w.shipped, w.notes[record.OrderCancelled], open, floor)
	}
	if begun := w.notes[record.BoatBegun]; begun != w.shipped+floor || floor != r.onFloor {
		w.fault("%d boats begun, %d shipped, %d on the floor, counted %d", begun, w.shipped, floor, r.onFloor)
	}
	w.parts()
	w.little()
}

// parts checks that every part pulled is in finishing, stored, joined or
// thrown away, and that every start is one of these or still in its mold.
func (w *watcher) parts() {
	r := w.r
	starts, ended, alive, after := 0, 0, 0, 0
	for i := range w.lives {
		if l := &w.lives[i]; l.kind == partJob && i > 0 {
			starts++
			ended += int(bit(l.died < clock.Never))
		}
	}
	joined, molded := w.joined, w.molded
	for j := range r.jobs {
		b := &r.jobs[j]
		switch {
		case b.state == unused:
		case b.kind == partJob:
			alive++
			after += int(bit(b.mold == None && r.plan.Parts[b.part].Care != None))
		case b.kind == boatJob:
			for _, p := range r.plan.Models[r.orders[b.order].model].Parts {
				joined++
				molded += int(bit(r.plan.Parts[p].Care != None))
			}
		}
	}
	if starts != alive+ended || ended != joined+w.broken {
		w.fault("%d parts started: %d alive, %d ended; %d joined, %d thrown away", starts, alive, ended, joined, w.broken)
	}
	if w.pulls != after+molded+w.broken {
		w.fault("%d parts pulled: %d in finishing or stored, %d joined, %d thrown away", w.pulls, after, molded, w.broken)
	}
}
