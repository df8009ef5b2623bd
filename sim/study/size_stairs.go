package study

import (
	"fmt"

	"moldturn/sim/stats"
)

// descend looks around the answer and holds cheaper neighbors that seem to reach
// the target against fresh luck, until none takes the answer's place.
func (s *sizing) descend(out *Sized) error {
	for {
		if err := s.stairs(out); err != nil || !out.Met {
			return err
		}
		doubtful := s.doubtful(out)
		if len(doubtful) == 0 {
			return nil
		}
		check, luck, err := s.look(len(doubtful))
		if err != nil {
			return err
		}
		out.Held += len(doubtful)
		best, err := s.sieve(doubtful, check, luck, out)
		if err != nil {
			return err
		}
		if best != nil {
			out.Size, out.Confirmed = best, s.said[fmt.Sprint(best)]
		}
	}
}

// doubtful are the cheaper sizes of the staircase that came near the target under
// its luck and were not held against fresh luck yet.
func (s *sizing) doubtful(out *Sized) [][]int {
	var sizes [][]int
	for i, around := range out.Around {
		for k, n := range around {
			size := with(out.Size, map[int]int{i: n - out.Size[i]})
			if _, held := s.said[fmt.Sprint(size)]; n < out.Size[i] && !held && out.Stairs[i][k].Score >= confirmNear {
				sizes = append(sizes, size)
			}
		}
	}
	return sizes
}

// stairs looks around the answer: what each number does from two below to two
// above, as far as it may go, all under the fresh luck that was used last.
func (s *sizing) stairs(out *Sized) error {
	out.Stairs, out.Around = nil, nil
	for i, m := range s.z.Moves {
		var sizes [][]int
		var at []int
		for n := max(out.Size[i]-2, m.Least); n <= min(out.Size[i]+2, m.Most); n++ {
			sizes, at = append(sizes, with(out.Size, map[int]int{i: n - out.Size[i]})), append(at, n)
		}
		ts, err := s.z.Try(sizes, s.looks, confirmFirst)
		if err != nil {
			return err
		}
		for k := range ts {
			ts[k].Sure = s.said[fmt.Sprint(sizes[k])].Sure
		}
		out.Stairs, out.Around = append(out.Stairs, ts), append(out.Around, at)
	}
	return nil
}

// Adds is what one more of a move brings in boats a week where the staircase has
// n-1 and n of it; ok is false where it does not.
func (z *Sized) Adds(move, n int) (d stats.Difference, ok bool) {
	for k := 1; k < len(z.Around[move]); k++ {
		if z.Around[move][k] == n {
			return stats.Paired(z.Stairs[move][k].ByRun, z.Stairs[move][k-1].ByRun, Confidence), true
		}
	}
	return d, false
}
