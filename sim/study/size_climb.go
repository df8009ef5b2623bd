package study

import "math"

// How many moves a step of the climb looks at: of those that work waits for
// most, and of which pairs when no single one gains.
const (
	climbLooks = 4
	climbPairs = 6
)

// leastGain is a gain of score too small to be told from luck.
const leastGain = 0.003

// How often a search that came to a stop begins anew, from how much more of
// everything each time: what it added first may stand in the way, such as molds of
// one model in that of the mix.
const (
	mostWider = 3
	wider     = 0.12
)

// rise climbs from a size, and where that stops short of what is asked, from more
// of everything than the first start in proportion. It gives what reaches it
// first, or else what came nearest.
func (s *sizing) rise(size []int, out *Sized) ([]int, error) {
	best, err := s.climb(size, out)
	for err == nil && !s.enough(s.at(best)) && s.wider < mostWider && !s.spent() {
		s.wider++
		start := make([]int, len(s.z.Moves))
		for i, m := range s.z.Moves {
			more := int(math.Ceil(float64(m.Start) * (1 + wider*float64(s.wider))))
			start[i] = min(max(more, m.Least), m.Most)
		}
		out.Climb = nil
		var next []int
		if next, err = s.climb(start, out); err == nil && s.score(s.at(next)) > s.score(s.at(best)) {
			best = next
		}
	}
	return best, err
}

// climb adds what gains most score for its price until the target is met,
// looking first where work waits longest. Where no single addition gains, two
// are made together, and where no two do, one of everything: several things
// limit alike then, and what was not needed is pruned later.
func (s *sizing) climb(size []int, out *Sized) ([]int, error) {
	ts, err := s.try([][]int{size})
	if err != nil {
		return nil, err
	}
	here := ts[0]
	if here, err = s.stride(here, out); err != nil {
		return nil, err
	}
	for !s.enough(&here.trial) && !s.spent() {
		next, err := s.ascend(&here)
		if err != nil || next == nil {
			return here.size, err
		}
		s.took(&here, next, out)
		here = *next
	}
	return here.size, nil
}

// far is the score below which the climb takes long strides: from there single
// steps are many and each tells little.
const far = 0.93

// stride climbs from far below in long strides: one more of each of the few
// things that work waits for most, or of each thing whose waits are not known,
// whichever gains more. What is not needed is pruned later. It ends near the
// target, or where a stride gains nothing.
func (s *sizing) stride(here tried, out *Sized) (tried, error) {
	for s.score(&here.trial) < far && here.trial.Waits != nil && !s.spent() {
		waited, unknown := map[int]int{}, map[int]int{}
		for _, i := range s.byWait(&here.trial) {
			switch {
			case here.size[i] >= s.z.Moves[i].Most:
			case s.rank(&here.trial, i) == 0:
				unknown[i] = 1
			case len(waited) < climbLooks:
				waited[i] = 1
			}
		}
		ts, err := s.try([][]int{with(here.size, waited), with(here.size, unknown)})
		if err != nil {
			return here, err
		}
		next := ts[0]
		if s.score(&ts[1].trial) > s.score(&next.trial) {
			next = ts[1]
		}
		if s.score(&next.trial) < s.score(&here.trial)+leastGain {
			return here, nil
		}
		s.took(&here, &next, out)
		here = next
	}
	return here, nil
}

// took notes what a step of the climb added.
func (s *sizing) took(here, next *tried, out *Sized) {
	for i := range here.size {
		if next.size[i] > here.size[i] {
			out.Climb = append(out.Climb, Step{Move: i, Trial: next.trial})
		}
	}
}

// ascend is the best step up; nil where none gains.
func (s *sizing) ascend(here *tried) (*tried, error) {
	for _, steps := range s.ways(here) {
		var sizes [][]int
		for _, step := range steps {
			sizes = append(sizes, with(here.size, step))
		}
		ts, err := s.try(sizes)
		if err != nil {
			return nil, err
		}
		if best := s.bestGain(here, ts); best != nil {
			return best, nil
		}
	}
	return nil, nil
}

// ways are the steps up, those first that are tried first.
func (s *sizing) ways(here *tried) [][]map[int]int {
	var first, rest, pairs []map[int]int
	var free []int
	all := map[int]int{}
	known := 0
	for _, i := range s.byWait(&here.trial) {
		if here.size[i] >= s.z.Moves[i].Most {
			continue
		}
		free, all[i] = append(free, i), 1
		if s.rank(&here.trial, i) > 0 {
			known++
		}
		if known <= climbLooks {
			first = append(first, map[int]int{i: 1})
		} else {
			rest = append(rest, map[int]int{i: 1})
		}
	}
	for a := range free[:min(len(free), climbPairs)] {
		for _, b := range free[a+1 : min(len(free), climbPairs)] {
			pairs = append(pairs, map[int]int{free[a]: 1, b: 1})
		}
	}
	return [][]map[int]int{first, rest, pairs, {all}}
}

// bestGain is the next size that gains most for its price; of sizes that meet
// the target, the cheapest gains most. Nil when none gains.
func (s *sizing) bestGain(here *tried, next []tried) *tried {
	var best *tried
	value := math.Inf(-1)
	for i := range next {
		t := &next[i]
		gain := min(s.score(&t.trial), 1) - s.score(&here.trial)
		if gain < leastGain && !s.enough(&t.trial) {
			continue
		}
		price := max(s.z.price(t.size)-s.z.price(here.size), 1e-9)
		if v := gain / price; v > value {
			best, value = t, v
		}
	}
	return best
}
