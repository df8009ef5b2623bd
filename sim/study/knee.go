package study

import (
	"math"

	"moldturn/sim/stats"
)

// NineTenths is the share of the whole gain at which a knee is found.
const NineTenths = 0.9

// Shape is what the points of a grid show in one figure. The rule:
//
//   - The worst and the best point are those with the least and the greatest
//     mean; the whole gain lies between them. If it is not clear (paired, with
//     Bonferroni for the pairs of points), there is nothing to find.
//   - The knee is the point with the fewest steps from the worst that brings at
//     least NineTenths of the whole gain; of equally many steps the better.
//   - Two factors have a ridge if the best value of one lies inside its range,
//     not at an end, for every value of the other. Where that holds for both
//     factors, the ridge runs along the one with fewer values.
//   - As good as the best are the points that are not clearly worse than it.
type Shape struct {
	Clear             bool // false: no point is clearly better than another
	Best, Worst, Knee int  // indices of points
	Inside            bool // the best is at no end of any factor
	AsGood            []int
	Ridge             []int // by value of the factor Along: the point that is best there; nil for none
	Along             int   // index of the factor
	Gain              stats.Difference
	Points            int
}

// ShapeOf finds the shape of one figure over the points of a grid with one or
// two factors. ok is false for other designs, for a figure of which neither more
// nor less is better, and where a point does not have the figure.
func ShapeOf(d *Design, points []Figures, m *Metric) (s Shape, ok bool) {
	if d.Form != Grid || len(d.Factors) > 2 || m.Better == 0 || len(points) != len(d.Points) || len(points) < 2 {
		return Shape{}, false
	}
	worth := make([]float64, len(points))
	for i := range points {
		x, has := points[i].Mean(m)
		if !has {
			return Shape{}, false
		}
		worth[i] = float64(m.Better) * x
		if worth[i] > worth[s.Best] {
			s.Best = i
		}
		if worth[i] < worth[s.Worst] {
			s.Worst = i
		}
	}
	n := len(points)
	s.Points = n
	s.Gain, _ = points[s.Best].Difference(&points[s.Worst], m, n*(n-1)/2)
	s.Clear = s.Gain.Clear
	s.knee(d, worth)
	s.asGood(points, m)
	s.Inside = inside(d, s.Best)
	if len(d.Factors) == 2 {
		s.ridge(d, worth)
	}
	return s, true
}

func (s *Shape) knee(d *Design, worth []float64) {
	need := worth[s.Worst] + NineTenths*(worth[s.Best]-worth[s.Worst])
	s.Knee = s.Best
	fewest := steps(d, s.Best, s.Worst)
	for i, w := range worth {
		if w < need {
			continue
		}
		if n := steps(d, i, s.Worst); n < fewest || n == fewest && w > worth[s.Knee] {
			s.Knee, fewest = i, n
		}
	}
}

// steps is how many steps of values lie between two points.
func steps(d *Design, i, j int) int {
	n := 0
	for k := range d.Factors {
		n += int(math.Abs(float64(d.Points[i].Level[k] - d.Points[j].Level[k])))
	}
	return n
}

func (s *Shape) asGood(points []Figures, m *Metric) {
	for i := range points {
		if i == s.Best {
			continue
		}
		if diff, ok := points[i].Difference(&points[s.Best], m, len(points)-1); ok && diff.Known() && !diff.Clear {
			s.AsGood = append(s.AsGood, i)
		}
	}
}

// inside tells whether a point is at no end of any factor that has an inside.
func inside(d *Design, i int) bool {
	for k := range d.Factors {
		if l := d.Points[i].Level[k]; l == 0 || l == len(d.Factors[k].Levels)-1 {
			return false
		}
	}
	return true
}

func (s *Shape) ridge(d *Design, worth []float64) {
	order := []int{0, 1}
	if len(d.Factors[1].Levels) < len(d.Factors[0].Levels) {
		order = []int{1, 0}
	}
	for _, along := range order {
		if r := ridgeAlong(d, worth, along); r != nil {
			s.Ridge, s.Along = r, along
			return
		}
	}
}

// ridgeAlong gives the best point for each value of a factor, nil unless each
// lies inside the other's range.
func ridgeAlong(d *Design, worth []float64, along int) []int {
	across := 1 - along
	best := make([]int, len(d.Factors[along].Levels))
	for i := range best {
		best[i] = -1
	}
	for i := range d.Points {
		at := &best[d.Points[i].Level[along]]
		if *at < 0 || worth[i] > worth[*at] {
			*at = i
		}
	}
	for _, i := range best {
		if l := d.Points[i].Level[across]; l == 0 || l == len(d.Factors[across].Levels)-1 {
			return nil
		}
	}
	return best
}
