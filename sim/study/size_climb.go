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
	for !s.enough(&here.trial) && !s.spent() {
		next, err := s.ascend(&here)
		if err != nil || next == nil {
			return here.size, err
		}
		for i := range here.size {
			if next.size[i] > here.size[i] {
				out.Climb = append(out.Climb, Step{Move: i, Trial: next.trial})
			}
		}
		here = *next
	}
	return here.size, nil
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
		gain := min(t.trial.Score, 1+s.margin) - here.trial.Score
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
