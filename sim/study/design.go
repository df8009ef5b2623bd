package study

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distmv"
	"gonum.org/v1/gonum/stat/samplemv"
)

// Form is how a sweep puts the values of its factors together.
type Form string

// The forms.
const (
	Grid  Form = "grid"  // every value of a factor with every value of the others
	Latin Form = "latin" // a Latin hypercube: each factor's range in as many slices as points, each used once
	Each  Form = "each"  // one factor changed at a time, the others as in the base
)

// Design is the points of a sweep. The base, without any change, is not among
// them.
type Design struct {
	Form    Form
	Factors []Factor
	Points  []Point
}

// Point is a value of each factor.
type Point struct {
	Values []string // "" leaves the base as it is
	Level  []int    // index in Factor.Levels of a Grid and of Each; -1 for none
}

// MostPoints is the largest number of points of a sweep.
const MostPoints = 10_000

// NewGrid puts every value with every value, the last factor changing fastest.
func NewGrid(factors []Factor) (*Design, error) {
	d := &Design{Form: Grid, Factors: factors}
	n := 1
	for i := range factors {
		f := &factors[i]
		if len(f.Levels) == 0 {
			return nil, fmt.Errorf("%s: the range %s to %s has no step (allowed: %s..%s/step, or a Latin hypercube)",
				f.Path, f.text(f.low), f.text(f.high), f.text(f.low), f.text(f.high))
		}
		if n *= len(f.Levels); n > MostPoints {
			return nil, fmt.Errorf("more than %d points (allowed: fewer values, or a Latin hypercube of some of them)", MostPoints)
		}
	}
	for i := range n {
		p := Point{Values: make([]string, len(factors)), Level: make([]int, len(factors))}
		for k := len(factors) - 1; k >= 0; k-- {
			p.Level[k] = i % len(factors[k].Levels)
			p.Values[k] = factors[k].Levels[p.Level[k]]
			i /= len(factors[k].Levels)
		}
		d.Points = append(d.Points, p)
	}
	return d, nil
}

// NewEach changes one factor at a time: to each of its values, or to the ends
// of a range that was written without a step.
func NewEach(factors []Factor) (*Design, error) {
	factors = slices.Clone(factors)
	d := &Design{Form: Each, Factors: factors}
	for k := range factors {
		f := &factors[k]
		if f.ranged && !f.stepped {
			f.Levels = f.Ends()
			f.readNumbers()
		}
		for l, v := range f.Levels {
			p := Point{Values: make([]string, len(factors)), Level: make([]int, len(factors))}
			for i := range p.Level {
				p.Level[i] = -1
			}
			p.Values[k], p.Level[k] = v, l
			d.Points = append(d.Points, p)
		}
	}
	if len(d.Points) > MostPoints {
		return nil, fmt.Errorf("%d points (allowed: %d)", len(d.Points), MostPoints)
	}
	return d, nil
}

// NewLatin spreads n points over the ranges and lists: of n equal slices of
// each factor, every slice is used once (McKay, Beckman and Conover 1979,
// Technometrics 21:239–245). Points that round to the same values are kept
// once, so that there may be fewer than n. The same seed gives the same points.
func NewLatin(factors []Factor, n int, seed uint64) (*Design, error) {
	if n < 2 || n > MostPoints {
		return nil, fmt.Errorf("%d points (allowed: 2 to %d)", n, MostPoints)
	}
	d := &Design{Form: Latin, Factors: factors}
	source := rand.NewPCG(seed, 0x6c6174696e) // a stream of its own: no run draws from it
	shares := mat.NewDense(n, len(factors), nil)
	samplemv.LatinHypercube{Q: distmv.NewUnitUniform(len(factors), source), Src: source}.Sample(shares)
	seen := map[string]bool{}
	for i := range n {
		p := Point{Values: make([]string, len(factors)), Level: make([]int, len(factors))}
		for k := range factors {
			p.Values[k], p.Level[k] = factors[k].at(shares.At(i, k)), -1
		}
		if key := fmt.Sprintf("%q", p.Values); !seen[key] {
			seen[key] = true
			d.Points = append(d.Points, p)
		}
	}
	return d, nil
}

// Name is a point in words, "strip.every 3, hold.clock 16 h".
func (d *Design) Name(i int) string {
	name := ""
	for k, v := range d.Points[i].Values {
		if v == "" {
			continue
		}
		if name != "" {
			name += ", "
		}
		name += d.Factors[k].Path + " " + v
	}
	return name
}

// Number is the value of a factor at a point as a number in the factor's unit;
// false if it is not one.
func (d *Design) Number(i, factor int) (float64, bool) {
	a, err := parseAmount(d.Points[i].Values[factor])
	return a.value, err == nil && a.unit == d.Factors[factor].Unit
}
