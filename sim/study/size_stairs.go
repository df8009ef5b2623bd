package study

import (
	"moldturn/sim/stats"
)

// stairs looks around the answer: what each number does from two below to two
// above, as far as it may go.
func (s *sizing) stairs(out *Sized) error {
	for i, m := range s.z.Moves {
		var sizes [][]int
		var at []int
		for n := max(out.Size[i]-2, m.Least); n <= min(out.Size[i]+2, m.Most); n++ {
			sizes, at = append(sizes, with(out.Size, map[int]int{i: n - out.Size[i]})), append(at, n)
		}
		ts, err := s.try(sizes)
		if err != nil {
			return err
		}
		var trials []Trial
		for _, t := range ts {
			trials = append(trials, t.trial)
		}
		out.Stairs, out.Around = append(out.Stairs, trials), append(out.Around, at)
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
