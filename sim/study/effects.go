package study

import (
	"math"

	"gonum.org/v1/gonum/mat"

	"moldturn/sim/stats"
)

// Effect is what one factor does to a figure, from one end of its values to the
// other, averaged over the values of the others.
type Effect struct {
	Factor int
	Low    string // the values it is between
	High   string
	Change stats.Difference // figure at High less figure at Low
}

// Effects of all factors on one figure, largest first is up to the reader.
type Effects struct {
	All []Effect

	// Linear is the share of the spread of the points that straight lines
	// explain, 0 … 1; 0 for Each. Well below 1 the effects are rough: there are
	// curves or factors that change one another's effect.
	Linear float64
}

// EffectsOf holds the ends of every factor against each other. Of a design of
// Each they are the points themselves. Of any other, straight lines are put
// through the points by least squares, one fit for each replication, so that
// shared luck stays shared and the interval is that of Student's t over the
// replications' slopes. Intervals hold together for all factors (Bonferroni).
// Factors whose values are words have no slope and are left out. ok is false
// where points are too few or too alike to tell.
func EffectsOf(d *Design, points []Figures, m *Metric) (e Effects, ok bool) {
	if len(points) != len(d.Points) || len(points) == 0 {
		return Effects{}, false
	}
	if d.Form == Each {
		return oneAtATime(d, points, m)
	}
	return slopes(d, points, m)
}

func oneAtATime(d *Design, points []Figures, m *Metric) (e Effects, ok bool) {
	for k := range d.Factors {
		low, high := -1, -1
		for i := range d.Points {
			switch d.Points[i].Level[k] {
			case 0:
				low = i
			case len(d.Factors[k].Levels) - 1:
				high = i
			}
		}
		if low < 0 || high < 0 {
			continue
		}
		diff, has := points[high].Difference(&points[low], m, len(d.Factors))
		if !has {
			return Effects{}, false
		}
		e.All = append(e.All, Effect{k, d.Points[low].Values[k], d.Points[high].Values[k], diff})
	}
	return e, len(e.All) > 0
}

// slopes fits figure = a + Σ bₖ·uₖ, where uₖ runs from 0 at the least to 1 at
// the greatest value of factor k.
func slopes(d *Design, points []Figures, m *Metric) (e Effects, ok bool) {
	x, factors := scaled(d)
	n, p := x.Dims()
	reps := math.MaxInt
	for i := range points {
		if len(points[i].known(m)) != len(points[i].Values[m.Name]) {
			return Effects{}, false
		}
		reps = min(reps, len(points[i].Values[m.Name]))
	}
	if reps == 0 || n < p+1 {
		return Effects{}, false
	}
	y := mat.NewDense(n, reps, nil)
	for i := range points {
		y.SetRow(i, points[i].Values[m.Name][:reps])
	}
	var qr mat.QR
	qr.Factorize(x)
	var b mat.Dense
	if err := qr.SolveTo(&b, false, y); err != nil {
		return Effects{}, false // columns too alike: a mat.Condition
	}
	for j, k := range factors {
		at := mat.Row(nil, j+1, &b)
		low, high := d.lowHigh(k)
		e.All = append(e.All, Effect{k, low, high, stats.Paired(at, make([]float64, reps), stats.Bonferroni(Confidence, len(factors)))})
	}
	e.Linear = explained(x, &b, y)
	return e, len(e.All) > 0
}

// scaled is the matrix of the fit and the factors behind its columns.
func scaled(d *Design) (*mat.Dense, []int) {
	var factors []int
	columns := [][]float64{make([]float64, len(d.Points))}
	for i := range d.Points {
		columns[0][i] = 1
	}
	for k := range d.Factors {
		column, low, high := make([]float64, len(d.Points)), math.Inf(1), math.Inf(-1)
		all := true
		for i := range d.Points {
			v, ok := d.Number(i, k)
			column[i], all = v, all && ok
			low, high = min(low, v), max(high, v)
		}
		if !all || low == high {
			continue
		}
		for i := range column {
			column[i] = (column[i] - low) / (high - low)
		}
		columns, factors = append(columns, column), append(factors, k)
	}
	x := mat.NewDense(len(d.Points), len(columns), nil)
	for j, c := range columns {
		x.SetCol(j, c)
	}
	return x, factors
}

// lowHigh gives the least and the greatest value of a factor among the points.
func (d *Design) lowHigh(k int) (low, high string) {
	least, most := math.Inf(1), math.Inf(-1)
	for i := range d.Points {
		v, ok := d.Number(i, k)
		if ok && v < least {
			least, low = v, d.Points[i].Values[k]
		}
		if ok && v > most {
			most, high = v, d.Points[i].Values[k]
		}
	}
	return low, high
}

// explained is R² of the fit to the means over replications.
func explained(x, b, y *mat.Dense) float64 {
	var fit mat.Dense
	fit.Mul(x, b)
	n, _ := y.Dims()
	means, left := make([]float64, n), make([]float64, n)
	for i := range n {
		means[i] = stats.Mean(mat.Row(nil, i, y))
		left[i] = means[i] - stats.Mean(mat.Row(nil, i, &fit))
	}
	all := stats.Variance(means)
	if all == 0 {
		return 0
	}
	return max(0, 1-stats.Variance(left)/all)
}
