package ahead

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Future is what happens in one future, in the order in which it is over.
// Orders that the start lists have the same number in every future; those that
// are made later need not.
type Future struct {
	Tasks []Task
	Pulls []record.Pull
	Ships []record.Ship
	Notes []record.Note
	Short [][]clock.Time // by craft and day after the morning: time that work waited for people of the craft who were at work
	Free  [][]clock.Time // the same: time of people who were at work without any
	There [][]clock.Time // the same: time of people who were at work at all
	Over  [][]clock.Time // the same: time of people who stayed on after their shift
}

// Task is one thing that is done to a mold, a part or a boat.
type Task struct {
	Doing       record.Doing
	Order, Mold int32 // -1 for none
	Part        int16 // -1 for a boat
	Color       int16 // of the part or boat; -1 for none
	Route, Step int16
	Craft       int16      // -1 for none
	People      int16      // the most at once
	Place, Unit int16      // it stands in; -1 for none
	Ready       clock.Time // when it could have begun, for all that went before: of a pull the end of the hold
	Began       clock.Time // clock.Never: not in the time looked at
	End         clock.Time // of work so far
	Worked      clock.Time // time of work, nights and waits left out
	Over        bool       // done before the end of the time looked at
}

// Kept says whether tasks of a kind are kept.
func Kept(d record.Doing) bool {
	switch d {
	case record.Stripping, record.Masking, record.Spraying, record.Laminating, record.Curing, record.Pulling, record.Assembling, record.Finishing:
		return true
	}
	return false
}

// keeper is an observer that keeps a Future.
type keeper struct {
	f       *Future
	from    clock.Time
	open    map[int32]int   // job: its task that is not over
	repeats map[int32]int32 // job: how often it had gone back then
}

func newKeeper(f *Future, from clock.Time, crafts, days int) *keeper {
	for _, to := range []*[][]clock.Time{&f.Short, &f.Free, &f.There, &f.Over} {
		*to = make([][]clock.Time, crafts)
		for c := range *to {
			(*to)[c] = make([]clock.Time, days)
		}
	}
	return &keeper{f: f, from: from, open: map[int32]int{}, repeats: map[int32]int32{}}
}

// Span implements record.Observer.
func (k *keeper) Span(s *record.Span) {
	if !s.Working && s.Cause.Reason == record.NoCrew {
		k.spread(k.f.Short[s.Cause.Of], s.From, s.To, 1)
	}
	if s.Job < 0 {
		return
	}
	i, ok := k.open[s.Job]
	if ok {
		t := &k.f.Tasks[i]
		if t.Step != s.Step || t.Route != s.Route || k.repeats[s.Job] != s.Repeat {
			t.Over = true
			delete(k.open, s.Job)
			ok = false
		}
	}
	if !Kept(s.Doing) {
		return
	}
	if !ok {
		i = len(k.f.Tasks)
		k.open[s.Job], k.repeats[s.Job] = i, s.Repeat
		k.f.Tasks = append(k.f.Tasks, Task{Doing: s.Doing, Order: s.Order, Mold: s.Mold, Part: s.Part, Color: s.Color, Route: s.Route, Step: s.Step,
			Craft: -1, Place: -1, Unit: -1, Ready: s.From, Began: clock.Never, End: clock.Never})
	}
	t := &k.f.Tasks[i]
	if s.Working {
		t.Began = min(t.Began, s.From)
		t.Worked += s.To - s.From
		t.End, t.Craft, t.Place, t.Unit = s.To, s.Craft, s.Place, s.Unit
		t.People = max(t.People, s.People)
	}
}

// spread adds a stretch of time, times n, to the days it lies in.
func (k *keeper) spread(days []clock.Time, from, to, n clock.Time) {
	for t := max(from, k.from); t < to; {
		day := int((t - k.from) / clock.Day)
		if day >= len(days) {
			return
		}
		until := min(to, k.from+clock.Time(day+1)*clock.Day)
		days[day] += n * (until - t)
		t = until
	}
}

// Use implements record.Observer.
func (k *keeper) Use(u *record.Use) {
	if int(u.Pool) >= len(k.f.There) {
		return
	}
	if u.Used > u.Capacity {
		k.spread(k.f.Over[u.Pool], u.From, u.To, clock.Time(u.Used-u.Capacity))
	}
	if u.Capacity > 0 {
		k.spread(k.f.There[u.Pool], u.From, u.To, clock.Time(u.Capacity))
		k.spread(k.f.Free[u.Pool], u.From, u.To, clock.Time(max(u.Capacity-u.Used, 0)))
	}
}

// Pull implements record.Observer.
func (k *keeper) Pull(p *record.Pull) { k.f.Pulls = append(k.f.Pulls, *p) }

// Ship implements record.Observer.
func (k *keeper) Ship(s *record.Ship) { k.f.Ships = append(k.f.Ships, *s) }

// Note implements record.Observer.
func (k *keeper) Note(n *record.Note) {
	switch n.Kind {
	case record.LightStrip, record.FullStrip, record.WindowMiss, record.Resprayed, record.Flushed, record.Stuck, record.Scrapped, record.OrderCancelled, record.ReserveIn:
		k.f.Notes = append(k.f.Notes, *n)
	}
}
