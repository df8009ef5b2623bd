package study

import (
	"cmp"
	"fmt"
	"slices"
)

// How sizes are held against fresh luck: how many cheaper ones that came so near
// the target, from how many replications on, how many at a time and at most, and
// how near the answer must come so that one more of each is looked at.
const (
	confirmCheaper = 8
	confirmNear    = 0.98
	confirmFirst   = 8
	confirmRound   = 4
	confirmMost    = 64
	confirmFar     = 0.97
)

// confirm holds the answer of a search, the cheaper sizes that came near the
// target and the sizes with one more of each against fresh luck. The cheapest
// that is found to reach the target is chosen; where none is, the answer stays,
// not met.
func (s *sizing) confirm(size []int, out *Sized) error {
	cheaper, dearer := s.cheaperNear(size), s.oneMore(size)
	check, luck, err := s.look(len(cheaper) + len(dearer))
	if err != nil {
		return err
	}
	out.Held += len(cheaper)
	best, err := s.sieve(cheaper, check, luck, out)
	if err == nil && best == nil && s.said[fmt.Sprint(size)].Score >= confirmFar {
		out.Held += len(dearer)
		best, err = s.sieve(dearer, check, luck, out)
	}
	if out.Met = best != nil; !out.Met {
		best = size
	}
	out.Size, out.Confirmed = best, s.said[fmt.Sprint(best)]
	return err
}

// look makes the check of the next fresh luck. The k-th may err with
// α/(k(k+1)), α = 1-Confidence: over all the chances add up to α at most.
func (s *sizing) look(sizes int) (*Reach, int, error) {
	s.looks++
	alpha := (1 - Confidence) / float64(s.looks*(s.looks+1))
	check, err := NewReach(max(sizes, 1), max(1, s.figures()), confirmFirst, alpha)
	return check, s.looks, err
}

// figures is how many things are asked for.
func (s *sizing) figures() int {
	for i := range s.all {
		if above := s.all[i].trial.Above; len(above) > 0 {
			return len(above[0])
		}
	}
	return 1
}

// sieve runs sizes, the cheapest first, under one fresh luck until the cheapest
// that reaches the target is known; nil where none does. Replications are added
// only to sizes that are undecided and cheaper than one that reaches it.
func (s *sizing) sieve(sizes [][]int, check *Reach, luck int, out *Sized) (best []int, err error) {
	slices.SortStableFunc(sizes, func(a, b []int) int { return cmp.Compare(s.z.price(a), s.z.price(b)) })
	out.Rounds = luck
	for n := confirmFirst; len(sizes) > 0 && n <= confirmMost; n += confirmRound {
		ts, err := s.z.Try(sizes, luck, n)
		if err != nil {
			return nil, err
		}
		out.Most = max(out.Most, n)
		var open [][]int
		for i, t := range ts {
			t.Sure = check.Decide(t.Above)
			s.said[fmt.Sprint(sizes[i])] = t
			if t.Sure > 0 {
				best = sizes[i]
				break // what follows is dearer
			}
			if t.Sure == 0 && len(t.Above) > 0 {
				open = append(open, sizes[i])
			}
		}
		sizes = open
	}
	return best, nil
}

// cheaperNear are a size and the cheaper ones that came near the target in the
// search and were not found to miss it before.
func (s *sizing) cheaperNear(size []int) [][]int {
	var near []tried
	for _, t := range s.all {
		if t.trial.Score >= confirmNear && s.z.price(t.size) < s.z.price(size) && s.said[fmt.Sprint(t.size)].Sure >= 0 {
			near = append(near, t)
		}
	}
	slices.SortStableFunc(near, func(a, b tried) int { return cmp.Compare(b.trial.Score, a.trial.Score) })
	out := [][]int{size}
	for _, t := range near[:min(len(near), confirmCheaper)] {
		out = append(out, t.size)
	}
	return out
}

// oneMore are the sizes with one more of one thing.
func (s *sizing) oneMore(size []int) [][]int {
	var out [][]int
	for i, m := range s.z.Moves {
		if size[i] < m.Most {
			out = append(out, with(size, map[int]int{i: 1}))
		}
	}
	return out
}
