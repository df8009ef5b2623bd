package study

// How many cheaper things are tried in exchange for one of a dear thing, and how
// near the target the plant must come without the dear one. Where waits are not
// known all are tried.
const (
	pruneSwaps = 2
	pruneNear  = 0.95
)

// prune takes away what is not needed, and exchanges one of a dear thing for one
// of a cheaper, until neither helps. A size that does not meet the target stays.
func (s *sizing) prune(size []int) ([]int, error) {
	for s.enough(s.at(size)) {
		next, err := s.cheaper(size)
		if err != nil || next == nil {
			return size, err
		}
		size = next
	}
	return size, nil
}

// cheaper is a cheaper size near this one that still meets the target; nil if
// there is none.
func (s *sizing) cheaper(size []int) ([]int, error) {
	var moves []int
	var sizes [][]int
	for i, m := range s.z.Moves {
		if size[i] > m.Least {
			moves, sizes = append(moves, i), append(sizes, with(size, map[int]int{i: -1}))
		}
	}
	ts, err := s.try(sizes)
	if err != nil {
		return nil, err
	}
	if together := s.together(size, moves, ts); together != nil {
		if _, err := s.try([][]int{together}); err != nil {
			return nil, err
		}
		if s.enough(s.at(together)) {
			return together, nil
		}
	}
	if best := s.cheapest(size, ts); best != nil {
		return best, nil
	}
	swaps, err := s.try(s.swaps(size, moves, ts))
	if err != nil {
		return nil, err
	}
	return s.cheapest(size, swaps), nil
}

// together is the size without one of each thing that can be spared alone; nil
// where there are not two.
func (s *sizing) together(size []int, moves []int, less []tried) []int {
	steps := map[int]int{}
	for k, i := range moves {
		if s.enough(&less[k].trial) {
			steps[i] = -1
		}
	}
	if len(steps) < 2 {
		return nil
	}
	return with(size, steps)
}

// swaps are sizes with one less of a thing and one more of a cheaper one: of
// those that work waits for most once the first is missing.
func (s *sizing) swaps(size []int, moves []int, less []tried) [][]int {
	var out [][]int
	for k, i := range moves {
		if less[k].trial.Waits != nil && s.score(&less[k].trial) < pruneNear {
			continue
		}
		n := 0
		for _, j := range s.byWait(&less[k].trial) {
			if j == i || size[j] >= s.z.Moves[j].Most || s.z.Moves[j].Price >= s.z.Moves[i].Price {
				continue
			}
			if n++; less[k].trial.Waits != nil && n > pruneSwaps {
				break
			}
			out = append(out, with(size, map[int]int{i: -1, j: 1}))
		}
	}
	return out
}

// cheapest is the cheapest of sizes that meets the target and costs less than
// size; nil when none does.
func (s *sizing) cheapest(size []int, ts []tried) []int {
	var best []int
	for i := range ts {
		price := s.z.price(ts[i].size)
		if s.enough(&ts[i].trial) && price < s.z.price(size) && (best == nil || price < s.z.price(best)) {
			best = ts[i].size
		}
	}
	return best
}
