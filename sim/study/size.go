package study

import (
	"fmt"
	"math"
	"slices"
)

// Move is one number of the plant that Size may change.
type Move struct {
	Now   int     // where the search begins
	Least int     // never fewer
	Most  int     // never more
	Price float64 // of one, a year
}

// Trial is how one size of the plant did.
type Trial struct {
	Score float64 // how far it came: 1 or more meets the target
	Boats float64 // a week, mean
	Year  float64 // share of weeks that reach the target
	Worst float64 // the same in the worst month
	Month int     // which that is, 0 … 11
}

// Meets says whether the trial reaches the target.
func (t Trial) Meets() bool { return t.Score >= 1 }

// Sizing is a search for the cheapest plant that meets a target.
type Sizing struct {
	Moves []Move

	// Try runs sizes of the plant under shared luck, more of the same luck with
	// fresh. It may be asked for the same size again.
	Try func(sizes [][]int, fresh bool) ([]Trial, error)

	Budget int // sizes tried at most
}

// Sized is what a Sizing found.
type Sized struct {
	Size      []int
	Trial     Trial // on the luck of the search
	Confirmed Trial // on fresh luck
	Met       bool  // confirmed on fresh luck
	Price     float64
	Tried     int    // different sizes
	Climb     []Step // how the target was reached
	Stairs    [][]Trial
	Around    [][]int // the sizes of Stairs: by move, from two below to two above
}

// Step is one addition of the climb.
type Step struct {
	Move  int
	Trial Trial
}

// Size adds, one by one, what brings most for its price until the target is
// met, takes away again what is not needed, exchanges dear for cheap, and holds
// the result against fresh luck; where it fails there, it climbs on from it. At
// the end it looks one and two steps around the answer, the staircase.
func (z *Sizing) Size() (*Sized, error) {
	s := &sizing{z: z, seen: map[string]Trial{}}
	size := make([]int, len(z.Moves))
	for i, m := range z.Moves {
		size[i] = min(max(m.Now, m.Least), m.Most)
	}
	out := &Sized{}
	for {
		var err error
		if size, err = s.climb(size, out); err != nil {
			return nil, err
		}
		t, err := s.one(size)
		if err != nil {
			return nil, err
		}
		if t.Meets() {
			if size, err = s.prune(size); err != nil {
				return nil, err
			}
		}
		out.Size, out.Price = size, z.price(size)
		if out.Trial, err = s.one(size); err != nil {
			return nil, err
		}
		fresh, err := z.Try([][]int{size}, true)
		if err != nil {
			return nil, err
		}
		out.Confirmed, out.Met = fresh[0], fresh[0].Meets()
		if out.Met || !out.Trial.Meets() || s.spent() {
			break
		}
		s.margin *= 1 + (1 - fresh[0].Score) // fell short on fresh luck: ask for more
		s.margin += 0.005
	}
	out.Tried = len(s.seen)
	return out, s.stairs(out)
}

// sizing is a Size under way. margin is how much more than the target the
// search asks for, 0 at first.
type sizing struct {
	z      *Sizing
	seen   map[string]Trial
	margin float64
}

func (z *Sizing) price(size []int) float64 {
	sum := 0.0
	for i, n := range size {
		sum += float64(n) * z.Moves[i].Price
	}
	return sum
}

func (s *sizing) spent() bool { return len(s.seen) >= s.z.Budget }

// enough is the score the search asks for.
func (s *sizing) enough(t Trial) bool { return t.Score >= 1+s.margin }

// try gives the trials of sizes, running only those not seen before.
func (s *sizing) try(sizes [][]int) ([]Trial, error) {
	var fresh [][]int
	for _, size := range sizes {
		if _, ok := s.seen[fmt.Sprint(size)]; !ok {
			fresh = append(fresh, size)
		}
	}
	if len(fresh) > 0 {
		ts, err := s.z.Try(fresh, false)
		if err != nil {
			return nil, err
		}
		for i, size := range fresh {
			s.seen[fmt.Sprint(size)] = ts[i]
		}
	}
	out := make([]Trial, len(sizes))
	for i, size := range sizes {
		out[i] = s.seen[fmt.Sprint(size)]
	}
	return out, nil
}

func (s *sizing) one(size []int) (Trial, error) {
	ts, err := s.try([][]int{size})
	if err != nil {
		return Trial{}, err
	}
	return ts[0], nil
}

// climb adds what gains most score for its price until the target is met. Where
// no single addition gains, two different ones are added together, and where
// no two do, one of everything: several things limit alike then, and what was
// not needed is pruned later.
func (s *sizing) climb(size []int, out *Sized) ([]int, error) {
	for {
		here, err := s.one(size)
		if err != nil || s.enough(here) || s.spent() {
			return size, err
		}
		next, err := s.steps(size, s.singles(size))
		if err != nil {
			return nil, err
		}
		best := s.bestGain(here, size, next)
		for _, moves := range [][][]int{s.pairs(size), {slices.Concat(s.singles(size)...)}} {
			if best != nil {
				break
			}
			if next, err = s.steps(size, moves); err != nil {
				return nil, err
			}
			best = s.bestGain(here, size, next)
		}
		if best == nil {
			return size, nil // nothing that may be moved helps
		}
		for i := range size {
			if best.size[i] > size[i] {
				out.Climb = append(out.Climb, Step{Move: i, Trial: best.trial})
			}
		}
		size = best.size
	}
}

// tried is a size with its trial.
type tried struct {
	size  []int
	trial Trial
}

func (s *sizing) steps(size []int, moves [][]int) ([]tried, error) {
	var sizes [][]int
	for _, m := range moves {
		next := slices.Clone(size)
		for _, i := range m {
			next[i]++
		}
		sizes = append(sizes, next)
	}
	ts, err := s.try(sizes)
	if err != nil {
		return nil, err
	}
	out := make([]tried, len(sizes))
	for i := range sizes {
		out[i] = tried{sizes[i], ts[i]}
	}
	return out, nil
}

func (s *sizing) singles(size []int) (moves [][]int) {
	for i, m := range s.z.Moves {
		if size[i] < m.Most {
			moves = append(moves, []int{i})
		}
	}
	return moves
}

func (s *sizing) pairs(size []int) (moves [][]int) {
	for i := range s.z.Moves {
		for k := i + 1; k < len(s.z.Moves); k++ {
			if size[i] < s.z.Moves[i].Most && size[k] < s.z.Moves[k].Most {
				moves = append(moves, []int{i, k})
			}
		}
	}
	return moves
}

// leastGain is a gain of score too small to be told from luck.
const leastGain = 0.002

// bestGain is the next size that gains most for its price; of sizes that meet
// the target, the cheapest. Nil when none gains.
func (s *sizing) bestGain(here Trial, size []int, next []tried) *tried {
	var best *tried
	value := math.Inf(-1)
	for i := range next {
		gain := min(next[i].trial.Score, 1+s.margin) - here.Score
		if gain < leastGain && !s.enough(next[i].trial) {
			continue
		}
		price := max(s.z.price(next[i].size)-s.z.price(size), 1e-9)
		if v := gain / price; v > value {
			best, value = &next[i], v
		}
	}
	return best
}

// prune takes away, dearest first, what is not needed, and exchanges one of a
// dear thing for one of a cheaper, until neither helps.
func (s *sizing) prune(size []int) ([]int, error) {
	for {
		next, err := s.cheaper(size)
		if err != nil || next == nil || s.spent() {
			return size, err
		}
		size = next
	}
}

// cheaper is the cheapest neighbor that still meets the target: one less of
// something, or one less of something and one more of something cheaper.
func (s *sizing) cheaper(size []int) ([]int, error) {
	var sizes [][]int
	for i, m := range s.z.Moves {
		if size[i] <= m.Least {
			continue
		}
		less := slices.Clone(size)
		less[i]--
		sizes = append(sizes, less)
	}
	found, err := s.cheapest(size, sizes)
	if err != nil || found != nil {
		return found, err
	}
	sizes = sizes[:0]
	for i, m := range s.z.Moves {
		for k, o := range s.z.Moves {
			if i == k || size[i] <= m.Least || size[k] >= o.Most || o.Price >= m.Price {
				continue
			}
			swap := slices.Clone(size)
			swap[i]--
			swap[k]++
			sizes = append(sizes, swap)
		}
	}
	return s.cheapest(size, sizes)
}

// cheapest is the cheapest of sizes that meets the target and costs less than
// size; nil when none does.
func (s *sizing) cheapest(size []int, sizes [][]int) ([]int, error) {
	ts, err := s.try(sizes)
	if err != nil {
		return nil, err
	}
	var best []int
	for i := range sizes {
		if s.enough(ts[i]) && s.z.price(sizes[i]) < s.z.price(size) && (best == nil || s.z.price(sizes[i]) < s.z.price(best)) {
			best = sizes[i]
		}
	}
	return best, nil
}

// stairs looks around the answer: what each number does from two below to two
// above, as far as it may go.
func (s *sizing) stairs(out *Sized) error {
	for i, m := range s.z.Moves {
		var sizes [][]int
		var at []int
		for n := max(out.Size[i]-2, m.Least); n <= min(out.Size[i]+2, m.Most); n++ {
			next := slices.Clone(out.Size)
			next[i] = n
			sizes, at = append(sizes, next), append(at, n)
		}
		ts, err := s.try(sizes)
		if err != nil {
			return err
		}
		out.Stairs, out.Around = append(out.Stairs, ts), append(out.Around, at)
	}
	return nil
}
