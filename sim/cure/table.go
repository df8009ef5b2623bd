package cure

import "math"

// Table answers questions about one resin at one temperature in a fraction of a
// microsecond: how long a thin laminate took to reach a degree along a plateau
// (age), and which degree follows after a while (after). Age is a function of
// plateau and degree alone, because the speed of an hour only stretches time;
// so one small table serves every temperature, any thick-shot factor, and
// lengths of time that are no whole hours.
//
// Both directions are kept as means that stay finite: with x what is left to
// the plateau P and w = (x^−r − P^−r)/r, r = N−1, cure obeys dw/dt = K1 +
// K2·α^M. The tables hold t/w over s/(1+s), s = √(w/w0), and w/t over the same
// of t/t0, which is smooth both where cure starts like a root and where it
// creeps to the plateau. Between nodes: cubic in both directions. Tests hold
// the error in degree below 1e-6 between −20 and 60 °C; it grows, to 1e-3, for a
// resin whose K1 is below a thousandth of its K2.
//
// A Table is read-only after NewTable and may be shared.
type Table struct {
	p      Params
	low    float64 // plateau of row 0
	rows   []row
	hourly hourly
}

// row is the tables along one plateau.
type row struct {
	slow [cells + 1]float64 // t/w at node i of the degree
	fast [cells + 1]float64 // w/t at node i of the age
}

const (
	cells   = 256  // per row, equal steps of s/(1+s)
	spacing = 0.02 // between the plateaus of two rows
	coldest = -20. // °C, the span of temperatures the rows cover
	hottest = 60.
)

// NewTable prepares the resin of p, whose N must be above 1 and K1 above 0.
func NewTable(p Params) *Table {
	low := max(p.Plateau(coldest), 0.3) - spacing
	high := p.Plateau(hottest) + spacing
	n := max(int(math.Ceil((high-low)/spacing))+1, 4)
	t := &Table{p: p, low: low, rows: make([]row, n)}
	for i := range t.rows {
		t.rows[i].fill(p.At25(low + spacing*float64(i)))
	}
	t.hourly = t.makeHourly(p.Thick)
	return t
}

// WithThick is t for parts with another thick-shot factor, above 0.
func (t *Table) WithThick(factor float64) *Table {
	out := *t
	out.p.Thick = factor
	out.hourly = t.makeHourly(factor)
	return &out
}

// scale holds what depends on the plateau only.
type scale struct {
	plateau, r float64
	w0, t0     float64 // where s is 1
	start, end float64 // dw/dt at degree 0 and at the plateau
}

func newScale(k Kinetics) scale {
	r := k.N - 1
	s := scale{plateau: k.Max, r: r, start: k.K1, end: k.K1 + k.K2*math.Pow(k.Max, k.M)}
	s.w0 = math.Pow(k.Max, -r) / r
	s.t0 = s.w0 / s.end
	return s
}

// degree is the degree of cure at w.
func (s *scale) degree(w float64) float64 {
	return s.plateau * (1 - math.Exp(-math.Log(1+w/s.w0)/s.r))
}

// w is the inverse of degree, for a below the plateau.
func (s *scale) w(a float64) float64 {
	return s.w0 * (math.Exp(-s.r*math.Log(1-a/s.plateau)) - 1)
}

// fill integrates the row: first age over the nodes of the degree, then, inside
// the cell that holds it, the w of each node of the age.
func (out *row) fill(k Kinetics) {
	s := newScale(k)
	var age [cells + 1]float64
	out.slow[0], out.slow[cells] = 1/s.start, 1/s.end
	for i := 1; i < cells; i++ {
		age[i] = age[i-1] + s.ageBetween(k, node(i-1), node(i))
		out.slow[i] = age[i] / (s.w0 * odds(node(i)))
	}
	out.fast[0], out.fast[cells] = s.start, s.end
	cell := 0
	for i := 1; i < cells; i++ {
		t := s.t0 * odds(node(i))
		for cell+1 < cells && age[cell+1] <= t {
			cell++
		}
		out.fast[i] = s.w0 * odds(s.solve(k, node(cell), t-age[cell])) / t
	}
}

func node(i int) float64 { return float64(i) / cells }

// odds turns a place v = s/(1+s) back into s² = w/w0.
func odds(v float64) float64 { return v * v / ((1 - v) * (1 - v)) }

// gauss are the nodes and weights of Gauss and Legendre's rule of 4 points on
// −1 … 1 (Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4).
var gauss = [2][2]float64{
	{0.339981043584856265, 0.652145154862546143},
	{0.861136311594052575, 0.347854845137453857},
}

// ageBetween is the time that cure takes from place v to place u.
func (s *scale) ageBetween(k Kinetics, v, u float64) float64 {
	mid, half := (u+v)/2, (u-v)/2
	sum := 0.0
	for _, g := range gauss {
		sum += g[1] * (s.pace(k, mid-half*g[0]) + s.pace(k, mid+half*g[0]))
	}
	return half * sum
}

// pace is dt/dv at place v.
func (s *scale) pace(k Kinetics, v float64) float64 {
	a := s.plateau * (1 - math.Pow(1+odds(v), -1/s.r))
	return s.w0 * 2 * v / ((1 - v) * (1 - v) * (1 - v)) / (k.K1 + k.K2*math.Pow(a, k.M))
}

// solve is the place that lies a length of time after place v, by Newton's
// method; time is convex in the place, so it comes down to it from above.
func (s *scale) solve(k Kinetics, v, time float64) float64 {
	u := v + 0.5/cells
	for range 50 {
		step := (time - s.ageBetween(k, v, u)) / s.pace(k, u)
		u = min(max(u+step, v), (u+1)/2)
		if math.Abs(step) < 1e-9 { // the next error is of the order of its square
			break
		}
	}
	return u
}
