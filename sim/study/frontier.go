package study

import (
	"cmp"
	"math/rand/v2"
	"slices"
)

// Frontier is the points that no other beats in two figures at once.
//
// A point is undominated if no other is at least as good in both means and
// better in one. How sure that is comes from the bootstrap: replications are
// drawn again with replacement, the same ones for all points, so that shared
// luck stays shared; the share of draws in which a point is undominated is its
// confidence (Efron and Tibshirani 1993, An Introduction to the Bootstrap;
// bootstrap confidence levels after Efron, Halloran and Holmes 1996, PNAS
// 93:13429–13434). Draws from few replications vary too little, by (n-1)/n.
type Frontier struct {
	X, Y        Metric
	Undominated []bool
	Confidence  []float64 // 0 … 1
	Draws       int
}

// frontierDraws is how many times replications are drawn; a share is then known
// to ± 0.03.
const frontierDraws = 1000

// Sure is the confidence from which on a point is called sure to be undominated;
// below 1-Sure it is sure to be dominated.
const Sure = 0.9

// FrontierOf holds points against each other by two figures, of each of which
// more or less is better. ok is false if a figure has no better side, or a
// point lacks one of them in some replication of the common first ones.
func FrontierOf(points []Figures, x, y *Metric) (f Frontier, ok bool) {
	if x.Better == 0 || y.Better == 0 || len(points) == 0 {
		return Frontier{}, false
	}
	n := len(points[0].Values[x.Name])
	for i := range points {
		n = min(n, len(points[i].known(x)), len(points[i].known(y)))
		if len(points[i].known(x)) != len(points[i].Values[x.Name]) || len(points[i].known(y)) != len(points[i].Values[y.Name]) {
			return Frontier{}, false
		}
	}
	if n == 0 {
		return Frontier{}, false
	}
	f = Frontier{X: *x, Y: *y, Confidence: make([]float64, len(points)), Draws: frontierDraws}
	plane := &plane{points: points, x: x, y: y, weights: make([]float64, n)}
	for r := range plane.weights {
		plane.weights[r] = 1
	}
	f.Undominated = plane.undominated()
	rng := rand.New(rand.NewPCG(uint64(n), uint64(len(points))))
	for range f.Draws {
		clear(plane.weights)
		for range n {
			plane.weights[rng.IntN(n)]++
		}
		for i, free := range plane.undominated() {
			if free {
				f.Confidence[i] += 1 / float64(f.Draws)
			}
		}
	}
	for i := range f.Confidence {
		f.Confidence[i] = min(f.Confidence[i], 1)
	}
	return f, true
}

// plane is points with how often each replication counts.
type plane struct {
	points  []Figures
	x, y    *Metric
	weights []float64
	at      []place
	free    []bool
}

// place is one point's worth in both figures, more is better.
type place struct {
	x, y float64
	i    int
}

// undominated tells of each point whether no other beats it: from the best x
// down, a point is beaten if some point with more x has at least its y, or one
// with the same x more. The result is good until the next call.
func (p *plane) undominated() []bool {
	if p.at == nil {
		p.at, p.free = make([]place, len(p.points)), make([]bool, len(p.points))
	}
	for i := range p.points {
		p.at[i] = place{p.worth(i, p.x), p.worth(i, p.y), i}
	}
	slices.SortFunc(p.at, func(a, b place) int {
		return cmp.Or(cmp.Compare(b.x, a.x), cmp.Compare(b.y, a.y), cmp.Compare(a.i, b.i))
	})
	top := 0 // first of those with the most y so far
	for k, a := range p.at {
		if k > 0 && a.y > p.at[top].y {
			top = k
		}
		p.free[a.i] = top == k || a.x == p.at[top].x && a.y == p.at[top].y
	}
	return slices.Clone(p.free)
}

func (p *plane) worth(i int, m *Metric) float64 {
	sum := 0.0
	for r, v := range p.points[i].Values[m.Name][:len(p.weights)] {
		sum += p.weights[r] * v
	}
	return float64(m.Better) * sum
}
