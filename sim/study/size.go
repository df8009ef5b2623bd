package study

import (
	"cmp"
	"fmt"
	"slices"
)

// Move is one number of the plant that Size may change.
type Move struct {
	Now   int     // what the plant has
	Start int     // where the search begins: what it cannot do without, on paper
	Least int     // never fewer
	Most  int     // never more
	Price float64 // of one, a year, more than 0
}

// Sizing is a search for the cheapest plant that meets a target.
type Sizing struct {
	Moves []Move

	// Try gives the trials of sizes of the plant over the first n replications of
	// one luck: 0 is that of the search, each higher number is fresh. Replications
	// that a size had before need not be run again.
	Try func(sizes [][]int, luck, n int) ([]Trial, error)

	Runs   int // replications of a size in the search, at least 2
	Budget int // sizes after which the search only takes away
}

// Sized is what a Sizing found.
type Sized struct {
	Size      []int
	Trial     Trial   // on the luck of the search
	Confirmed Trial   // on fresh luck
	Met       bool    // found to reach the target on fresh luck
	Price     float64 // of Size, a year
	Tried     int     // different sizes
	Held      int     // sizes held against fresh luck
	Rounds    int     // fresh lucks that took
	Most      int     // replications of one size under one of them, at most
	Climb     []Step  // how the target was reached
	Stairs    [][]Trial
	Around    [][]int // the sizes of Stairs: by move, from two below to two above
}

// Step is one addition of the climb.
type Step struct {
	Move  int
	Trial Trial
}

// mostLoops is how often a search climbs on after an answer that fresh luck did
// not bear out.
const mostLoops = 8

// Size starts from what the plant cannot do without on paper, adds where work
// waits longest for the price until the target is met, takes away again what is
// not needed and exchanges dear for cheap. Where it stops short it begins anew from
// more of everything. The answer, cheaper sizes that came
// near the target and sizes with one more of each are then held against fresh
// luck, and the cheapest that reaches the target there without doubt is chosen
// (Reach); where none does, the search climbs on. At the end it looks one and two
// steps around the answer, the staircase; a cheaper one that seems to reach the
// target too is held against fresh luck in its turn, and takes the answer's place
// if it does.
func (z *Sizing) Size() (*Sized, error) {
	s := &sizing{z: z, seen: map[string]int{}, said: map[string]Trial{}}
	size := make([]int, len(z.Moves))
	for i, m := range z.Moves {
		size[i] = min(max(m.Start, m.Least), m.Most)
	}
	out := &Sized{}
	for range mostLoops {
		var err error
		if size, err = s.rise(size, out); err != nil {
			return nil, err
		}
		if size, err = s.prune(size); err != nil {
			return nil, err
		}
		if err = s.confirm(size, out); err != nil {
			return nil, err
		}
		if out.Met || !s.enough(s.at(size)) || s.spent() {
			break
		}
		s.askMore(s.said[fmt.Sprint(size)])
	}
	if err := s.descend(out); err != nil {
		return nil, err
	}
	_, err := s.try([][]int{out.Size})
	out.Trial, out.Price, out.Tried = *s.at(out.Size), z.price(out.Size), len(s.all)
	return out, err
}

// sizing is a Size under way.
type sizing struct {
	z     *Sizing
	all   []tried
	seen  map[string]int   // index in all
	more  []float64        // how much more than is asked the search asks for, by part; nil at first
	wider int              // starts above the first that were climbed from
	looks int              // fresh lucks so far
	said  map[string]Trial // under fresh luck, by size; Sure where it was decided
}

// tried is a size with its trial.
type tried struct {
	size  []int
	trial Trial
}

func (z *Sizing) price(size []int) float64 {
	sum := 0.0
	for i, n := range size {
		sum += float64(n) * z.Moves[i].Price
	}
	return sum
}

func (s *sizing) spent() bool { return len(s.all) >= s.z.Budget }

// enough says whether a trial reaches what the search asks for.
func (s *sizing) enough(t *Trial) bool { return s.score(t) >= 1 }

// score is that of a trial against what the search asks for.
func (s *sizing) score(t *Trial) float64 {
	if s.more == nil {
		return t.Score
	}
	parts := slices.Clone(t.Parts)
	for i := range parts {
		parts[i] /= 1 + s.more[i]
	}
	return score(parts)
}

// clearly is what a part should be on fresh luck, so that it is found to reach
// what is asked before replications run out; leastMore is by how much more is
// asked for at least.
const (
	clearly   = 1.01
	leastMore = 0.005
)

// askMore makes the search ask for more of each part that came short of clearly on
// fresh luck, of the least one where none did: of nothing else, since there may be
// no more of it to have.
func (s *sizing) askMore(fresh Trial) {
	if s.more == nil {
		s.more = make([]float64, len(fresh.Parts))
	}
	least := 0
	for i, part := range fresh.Parts {
		if part < fresh.Parts[least] {
			least = i
		}
		if part < clearly {
			s.more[i] += max(leastMore, clearly-part)
		}
	}
	if len(fresh.Parts) > 0 && fresh.Parts[least] >= clearly {
		s.more[least] += leastMore
	}
}

// try gives the trials of sizes on the luck of the search, running only those
// not seen before.
func (s *sizing) try(sizes [][]int) ([]tried, error) {
	var fresh [][]int
	for _, size := range sizes {
		if _, ok := s.seen[fmt.Sprint(size)]; !ok {
			s.seen[fmt.Sprint(size)] = len(s.all) + len(fresh)
			fresh = append(fresh, size)
		}
	}
	if len(fresh) > 0 {
		ts, err := s.z.Try(fresh, 0, s.z.Runs)
		if err != nil {
			return nil, err
		}
		for i, size := range fresh {
			s.all = append(s.all, tried{size, ts[i]})
		}
	}
	out := make([]tried, len(sizes))
	for i, size := range sizes {
		out[i] = s.all[s.seen[fmt.Sprint(size)]]
	}
	return out, nil
}

// at is the trial of a size that was tried.
func (s *sizing) at(size []int) *Trial { return &s.all[s.seen[fmt.Sprint(size)]].trial }

// with is a size with some numbers changed.
func with(size []int, steps map[int]int) []int {
	out := slices.Clone(size)
	for i, n := range steps {
		out[i] += n
	}
	return out
}

// byWait orders moves by what is waited for them, hours a week for the price,
// most first. Moves whose waits are not known stand first.
func (s *sizing) byWait(t *Trial) []int {
	order := make([]int, len(s.z.Moves))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(s.rank(t, a), s.rank(t, b)) })
	return order
}

// rank is 0 for moves whose waits are not known, else above 0 and at most 1, less
// for longer waits for the price.
func (s *sizing) rank(t *Trial, i int) float64 {
	if t.Waits == nil || t.Waits[i] < 0 {
		return 0
	}
	return 1 / (1 + t.Waits[i]/s.z.Moves[i].Price)
}
