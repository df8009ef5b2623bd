package money

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// Use implements record.Observer: paid and worked time of each craft. Pools
// after the crafts are places and cost nothing of their own.
func (b *Book) Use(u *record.Use) {
	if int(u.Pool) >= len(b.plant.Crafts) {
		return
	}
	from, to := b.clip(u.From, u.To)
	if from >= to {
		return
	}
	d := int64(to - from)
	within := min(u.Used, u.Capacity)
	b.q.Paid[u.Pool] += d * int64(u.Capacity)
	b.q.Worked[u.Pool] += d * int64(within)
	b.q.Over[u.Pool] += d * int64(u.Used-within)
}

// Span implements record.Observer.
func (b *Book) Span(s *record.Span) {
	from, to := b.clip(s.From, s.To)
	if s.Mold >= 0 && from < to {
		b.moldTime(s, int64(to-from))
	}
	if !s.Working {
		return
	}
	step := b.plant.step(s)
	b.band(s, step)
	if from >= to {
		return
	}
	if step.Booth {
		b.booth(from, to)
	}
	if s.Craft >= 0 && s.People > 0 {
		b.labor(s, step, int64(s.People)*int64(to-from))
	}
}

func (b *Book) moldTime(s *record.Span, d int64) {
	switch {
	case !s.Working:
		b.q.MoldTime[record.Doings] += d
	case s.Doing != record.OutOfUse:
		b.q.MoldTime[s.Doing] += d
	}
}

// band counts an accent band when its step is begun; a step that pauses is
// counted once.
func (b *Book) band(s *record.Span, step Step) {
	if !step.Band && len(b.last) == 0 {
		return
	}
	before, known := b.last[s.Job]
	switch {
	case step.Band && (!known || before != s.Step):
		b.last[s.Job] = s.Step
		if b.in(s.From) {
			b.q.Bands[s.Part]++
		}
	case !step.Band && known:
		delete(b.last, s.Job)
	}
}

// booth adds the time of a booth that moves air, by month.
func (b *Book) booth(from, to clock.Time) {
	for from < to {
		month, end := b.month.of(from)
		until := min(end, to)
		b.q.BoothTime[month] += int64(until - from)
		from = until
	}
}

// labor adds person time under its class, and remembers what goes into a part
// in case it is thrown away.
func (b *Book) labor(s *record.Span, step Step, time int64) {
	class := step.Class
	part := b.piece(s)
	switch {
	case step.Repair && b.stuck[s.Mold]:
		class = InternalFailure
	case part != nil && part.respray && class == Work && s.Doing == record.Spraying:
		class = InternalFailure
	}
	if k := b.plant.back(s.Route); k >= 0 {
		b.q.SmallTime[k] += time
	}
	model := b.modelOf(s.Part, s.Order)
	b.q.Labor[s.Craft][s.Doing][class][model] += time
	if step.Repair {
		which := 0
		if class == InternalFailure {
			which = 1
		}
		b.q.RepairTime[which][s.Part] += time
	}
	if step.Rework {
		b.q.ReworkTime[model] += time
	}
	if part != nil && class == Work {
		part.add(s.Craft, s.Doing, time)
	}
}

// piece is the record of a part of an order, nil for everything else.
func (b *Book) piece(s *record.Span) *piece {
	if s.Order < 0 || s.Part < 0 {
		return nil
	}
	return b.pieceOf(keyOf(s.Order, s.Part))
}

func (b *Book) pieceOf(key partKey) *piece {
	p := b.parts[key]
	if p == nil {
		if n := len(b.free); n > 0 {
			p, b.free = b.free[n-1], b.free[:n-1]
		} else {
			p = &piece{}
		}
		b.parts[key] = p
	}
	return p
}

func (p *piece) add(craft int16, doing record.Doing, time int64) {
	for i := range p.labor {
		if p.labor[i].craft == craft && p.labor[i].doing == doing {
			p.labor[i].time += time
			return
		}
	}
	p.labor = append(p.labor, bit{craft, doing, time})
}
