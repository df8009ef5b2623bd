package shift

import (
	"testing"
	"time"

	"moldturn/sim/clock"

	"pgregory.net/rapid"
)

// The calendar is held against minute-by-minute counting of the pattern's
// definition: who, of the shifts that started on this day or the one before, is
// at work in this minute.

// minutes marks, for each minute from start, the shift at work (its place in
// order of first work, from 1) and 0 if none.
func minutes(p Pattern, start Date, n int) []int {
	type worked struct {
		at       map[int]bool
		from, to int
	}
	var all []worked
	for day := -1; day*24*60 < n; day++ {
		date := start.AddDays(day)
		for _, s := range p.Shifts {
			if s.Days.Has(date.Weekday()) && !closedByHand(p.Exceptions, date) {
				at, from, to := workedByHand(s.Hours, day)
				all = append(all, worked{at, from, to})
			}
		}
		for _, x := range p.Exceptions.Extra {
			if x.Date.String() == date.String() {
				at, from, to := workedByHand(x.Hours, day)
				all = append(all, worked{at, from, to})
			}
		}
	}
	out := make([]int, n)
	for m := range out {
		first := -1
		for i, w := range all {
			if m >= w.from && m < w.to && (first < 0 || w.from < all[first].from) {
				first = i
			}
		}
		if first >= 0 && all[first].at[m] {
			out[m] = first + 1
		}
	}
	return out
}

func closedByHand(e Exceptions, d Date) bool {
	for _, h := range e.Holidays {
		if h.String() == d.String() {
			return true
		}
	}
	for _, s := range e.Shutdowns {
		from, to, day := s.From.String(), s.To.String(), d.String()
		if s.Yearly {
			from, to, day = from[5:], to[5:], day[5:]
		}
		if from <= day && day <= to || s.Yearly && from > to && (day >= from || day <= to) {
			return true
		}
	}
	return false
}

// workedByHand gives the minutes of work of the shift that starts on day, and
// the first and the one after the last.
func workedByHand(h Hours, day int) (at map[int]bool, from, to int) {
	minute := func(t clock.Time) int { return int(t / clock.Minute) }
	length := (minute(h.To) - minute(h.From) + 1439) % 1440 // last minute
	at = map[int]bool{}
	from = 1 << 40
	for k := 0; k <= length; k++ {
		if k < minute(h.StartUp) || k > length-minute(h.CleanUp) {
			continue
		}
		onBreak := false
		for _, b := range h.Breaks {
			off := (minute(b.From) - minute(h.From) + 1440) % 1440
			back := off + (minute(b.To)-minute(b.From)+1440)%1440
			onBreak = onBreak || k >= off && k < back
		}
		if !onBreak {
			m := day*1440 + minute(h.From) + k
			at[m] = true
			from, to = min(from, m), m+1
		}
	}
	return at, from, to
}

var quarters = rapid.IntRange(0, 95)

func quarter(t *rapid.T, label string) clock.Time {
	return 15 * clock.Minute * clock.Time(quarters.Draw(t, label))
}

func anyHours(t *rapid.T) Hours {
	for {
		h := Hours{
			From: quarter(t, "from"), To: quarter(t, "to"),
			StartUp: clock.Time(rapid.IntRange(0, 20).Draw(t, "start-up")) * clock.Minute,
			CleanUp: clock.Time(rapid.IntRange(0, 20).Draw(t, "clean-up")) * clock.Minute,
		}
		for range rapid.IntRange(0, 2).Draw(t, "breaks") {
			from := quarter(t, "break")
			h.Breaks = append(h.Breaks, Break{from, (from + 20*clock.Minute) % clock.Day})
		}
		var ps Problems
		if h.check("", &ps); ps == nil {
			return h
		}
	}
}

func anyPattern(t *rapid.T, start Date) Pattern {
	var p Pattern
	for range rapid.IntRange(0, 3).Draw(t, "shifts") {
		p.Shifts = append(p.Shifts, Shift{Days: Weekdays(rapid.IntRange(1, 127).Draw(t, "days")), Hours: anyHours(t)})
	}
	date := func() Date { return start.AddDays(rapid.IntRange(-1, 9).Draw(t, "day")) }
	if rapid.Bool().Draw(t, "holiday") {
		p.Exceptions.Holidays = []Date{date()}
	}
	if rapid.Bool().Draw(t, "shutdown") {
		s := Shutdown{From: date(), Yearly: rapid.Bool().Draw(t, "yearly")}
		s.To = s.From.AddDays(rapid.IntRange(0, 3).Draw(t, "length"))
		p.Exceptions.Shutdowns = []Shutdown{s}
	}
	if rapid.Bool().Draw(t, "extra") {
		p.Exceptions.Extra = []Extra{{Date: date(), Hours: anyHours(t)}}
	}
	return p
}

func anyStart(t *rapid.T) Date {
	return rapid.SampledFrom([]Date{monday, {2027, time.December, 29}, {2028, time.February, 26}, {2027, time.July, 3}}).Draw(t, "start")
}

const countedDays = 9

func TestCalendarAgainstCounting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start := anyStart(t)
		p := anyPattern(t, start)
		end := countedDays*clock.Day - clock.Time(rapid.IntRange(0, 1439).Draw(t, "cut"))*clock.Minute
		c, err := Compile(p, start, end)
		if err != nil {
			t.Fatal(err)
		}
		who := minutes(p, start, int(end/clock.Minute))
		sameAsCounted(t, c, who)
		changesAsCounted(t, c, who)
	})
}

// sameAsCounted compares everything that depends only on which minutes are
// worked, at random instants between the minutes.
func sameAsCounted(t *rapid.T, c *Calendar, who []int) {
	n := len(who)
	on := func(m int) bool { return m >= 0 && m < n && who[m] != 0 }
	for m := -2; m < n+2; m++ {
		if c.On(clock.Time(m)*clock.Minute) != on(m) {
			t.Fatalf("minute %d: on is not %v", m, on(m))
		}
	}
	for range 20 {
		m := rapid.IntRange(-60, n+60).Draw(t, "minute")
		ms := clock.Time(rapid.IntRange(0, 59999).Draw(t, "ms"))
		at := clock.Time(m)*clock.Minute + ms
		if m < 0 {
			ms = 0
		}
		next, rest := m, ms
		for next < n && !on(next) {
			next, rest = next+1, 0
		}
		want := clock.Never
		if next < n {
			want = clock.Time(next)*clock.Minute + rest
		}
		if got := c.NextOn(at); got != want {
			t.Fatalf("next on after %v: %v, counted %v", at, got, want)
		}
		finishAsCounted(t, c, at, next, rest, who)
	}
}

// finishAsCounted takes up work at rest past minute next, which is on or the
// end, and counts it off minute by minute.
func finishAsCounted(t *rapid.T, c *Calendar, at clock.Time, next int, rest clock.Time, who []int) {
	work := clock.Time(rapid.IntRange(1, 40*3600*1000).Draw(t, "work"))
	left, done := work, clock.Never
	for m, skip := next, rest; m < len(who); m, skip = m+1, 0 {
		if who[m] == 0 {
			continue
		}
		if left <= clock.Minute-skip {
			done = clock.Time(m)*clock.Minute + skip + left
			break
		}
		left -= clock.Minute - skip
	}
	got := c.Finish(at, work)
	if got != done {
		t.Fatalf("%v of work from %v done at %v, counted %v", work, at, got, done)
	}
	if done < clock.Never {
		if w := c.Worked(at, done); w != work {
			t.Fatalf("worked %v from %v to %v, counted %v", w, at, done, work)
		}
		if off := c.OffShift(at, done); off != done-at-work {
			t.Fatalf("off %v, counted %v", off, done-at-work)
		}
	}
}

// changesAsCounted compares changes, shifts and their ends.
func changesAsCounted(t *rapid.T, c *Calendar, who []int) {
	n := len(who)
	last := map[int]int{}
	for m, s := range who {
		last[s] = m + 1
	}
	change := clock.Never
	if n > 0 && who[n-1] != 0 {
		change = clock.Time(n) * clock.Minute
	}
	for m := n - 1; m >= 0; m-- {
		at := clock.Time(m) * clock.Minute
		if got := c.NextChange(at); got != change {
			t.Fatalf("change after %v: %v, counted %v", at, got, change)
		}
		if who[m] != 0 {
			end := clock.Time(last[who[m]]) * clock.Minute
			if got, ok := c.ShiftEnd(at); !ok || got != end {
				t.Fatalf("shift at %v ends %v, counted %v", at, got, end)
			}
			iv, ok := c.IntervalAt(at)
			if !ok || (iv.Ends == EndOfShift) != (iv.To == end) {
				t.Fatalf("interval at %v is %+v, its shift ends %v", at, iv, end)
			}
		}
		if m > 0 && who[m-1] != who[m] || m == 0 && who[0] != 0 {
			change = at
		}
	}
}

func TestUnionAgainstCounting(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		start := anyStart(t)
		var crews []*Calendar
		any := make([]int, countedDays*1440)
		for range rapid.IntRange(0, 3).Draw(t, "crews") {
			p := anyPattern(t, start)
			c, err := Compile(p, start, countedDays*clock.Day)
			if err != nil {
				t.Fatal(err)
			}
			crews = append(crews, c)
			for m, s := range minutes(p, start, len(any)) {
				any[m] |= s
			}
		}
		u := Union(crews...)
		if len(crews) == 0 {
			any = nil
		}
		sameAsCounted(t, u, any)
		for range 20 {
			at := clock.Time(rapid.IntRange(0, countedDays*1440-1).Draw(t, "minute")) * clock.Minute
			unionEnds(t, u, crews, at)
		}
	})
}

// unionEnds checks that the shift of the union at t is running exactly while
// one of the crews' is, and that its day ends with the last crew of that day.
func unionEnds(t *rapid.T, u *Calendar, crews []*Calendar, at clock.Time) {
	day := dayOf(at)
	want, running := at, false
	for grown := true; grown; {
		grown = false
		for _, c := range crews {
			r, ok := c.RunAt(want)
			if !ok && want > at { // one that ends just there goes on into nothing
				continue
			}
			if ok && r.To > want {
				want, running, grown = r.To, true, true
			}
		}
	}
	got, ok := u.ShiftEnd(at)
	if ok != running || ok && got != want {
		t.Fatalf("union's shift at %v ends %v %v, crews' %v %v", at, got, ok, want, running)
	}
	for _, c := range crews {
		if r, ok := c.RunAt(at); ok {
			day = min(day, r.Day)
		}
	}
	end, any := clock.Time(0), false
	for _, c := range crews {
		for _, r := range c.Runs() {
			if r.Day == day {
				end, any = max(end, r.To), true
			}
		}
	}
	if got, ok := u.DayEnd(at); ok != any || ok && got != end {
		t.Fatalf("day %d of the union ends %v %v, crews' %v %v", day, got, ok, end, any)
	}
}

// Repeating a cycle is the same as writing it out, and NextFit is the first
// minute from which the shift's own end is not passed.
func TestRepeatAndNextFit(t *testing.T) {
	cycle := []Interval{{From: 0, To: hm(3, 30), Ends: StartOfBreak}, {From: hm(4, 0), To: hm(7, 30)}}
	r, err := Repeat(cycle, hm(8, 0), 3*clock.Day)
	if err != nil {
		t.Fatal(err)
	}
	var all []Interval
	for k := clock.Time(0); k < 9; k++ {
		for _, iv := range cycle {
			all = append(all, Interval{From: iv.From + k*hm(8, 0), To: iv.To + k*hm(8, 0), Ends: iv.Ends})
		}
	}
	c, err := Custom(all, 3*clock.Day)
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		at := clock.Time(rapid.IntRange(0, 3*1440).Draw(t, "at")) * clock.Minute
		work := clock.Time(rapid.IntRange(1, 500).Draw(t, "work")) * clock.Minute
		if c.Finish(at, work) != r.Finish(at, work) {
			t.Fatal("repeated and written out differ")
		}
		want := clock.Never
		for s := at; s < 3*clock.Day; s += clock.Minute {
			if end, ok := c.ShiftEnd(s); ok && c.On(s) && c.Finish(s, work) <= end {
				want = s
				break
			}
		}
		if got := c.NextFit(at, work); got != want {
			t.Fatalf("%v of work fits from %v at %v, counted %v", work, at, got, want)
		}
	})
}

func TestCustomRefusesDisorder(t *testing.T) {
	for _, bad := range [][]Interval{
		{{From: -1, To: 5}}, {{From: 5, To: 5}}, {{From: 0, To: 5}, {From: 4, To: 6}}, {{From: 0, To: clock.Week + 1}},
	} {
		if _, err := Custom(bad, clock.Week); err == nil {
			t.Errorf("%v is taken", bad)
		}
		if _, err := Repeat(bad, clock.Week, 2*clock.Week); err == nil {
			t.Errorf("%v is repeated", bad)
		}
	}
	if _, err := Repeat(nil, 0, clock.Week); err == nil {
		t.Error("a cycle without length is repeated")
	}
}
