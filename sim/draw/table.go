package draw

import "math"

// shape is a smooth law in standard form whose quantile has no closed form. It
// is asked when a table is made and for draws in the far tails.
type shape interface {
	// lower is the value that is not reached with probability p.
	lower(p float64) float64
	// upper is the value that is exceeded with probability q.
	upper(q float64) float64
	// density is the density f at y and its logarithmic slope f′/f.
	density(y float64) (f, slope float64)
}

// table is the quantile function of a shape as polynomials. The axis is the
// probability v of the nearer tail, cut into octaves and each octave into equal
// cells, so cells shrink in proportion to v and a power or a logarithm of v, as
// quantile functions have near their ends, is met equally well in each. Position
// and cell come straight from the bits of v. Beyond the last octave, at one draw
// in 32,768, the exact quantile is taken.
type table struct {
	shape shape
	cells []quintic // lower tail from the end inwards, then the upper tail
	side  uint64    // cells of one tail
	shift uint64    // low bits of v that lie within a cell
	first uint64    // number of the outermost cell before counting from 0
}

// quintic holds the coefficients of a polynomial over a cell, position 0 to 1.
type quintic [6]float64

const (
	octaves  = 15      // from 2^-16 to a half
	tail     = 0x1p-16 // where the table ends
	mantissa = 1<<52 - 1
	oneBits  = 0x3ff0000000000000 // of the float64 1

	// tableError is the relative error a table must reach in the middle of a
	// cell, where it is largest, and tinyValue the part of the mean below which
	// values count as this value.
	tableError = 1e-8
	tinyValue  = 1e-12
)

// newTable makes a table with 8 to 64 cells an octave, as many as tableError
// asks for.
func newTable(s shape) *table {
	for cellBits := uint64(3); ; cellBits++ {
		t := emptyTable(s, cellBits)
		if worst := t.fill(); worst <= tableError || cellBits == 6 {
			return t
		}
	}
}

func emptyTable(s shape, cellBits uint64) *table {
	side := uint64(octaves) << cellBits
	shift := 52 - cellBits
	first := math.Float64bits(tail) >> shift
	return &table{s, make([]quintic, 2*side), side, shift, first}
}

// fill sets all cells and gives the largest relative error found.
func (t *table) fill() float64 {
	lower := t.fillTail(t.cells[:t.side], t.shape.lower, 1)
	upper := t.fillTail(t.cells[t.side:], t.shape.upper, -1)
	return max(lower, upper)
}

// fillTail sets the cells of one tail. Errors are looked for in the first cell
// of each octave, the widest in proportion to v. sign is that of dy/dv.
func (t *table) fillTail(cells []quintic, quantile func(float64) float64, sign float64) (worst float64) {
	v0 := t.edge(0)
	n0 := t.node(v0, quantile, sign)
	for i := range cells {
		v1 := t.edge(uint64(i) + 1)
		n1 := t.node(v1, quantile, sign)
		cells[i] = newQuintic(n0, n1, v1-v0)
		if i%(len(cells)/octaves) == 0 {
			worst = max(worst, mismatch(cells[i].at(0.5), quantile((v0+v1)/2)))
		}
		v0, n0 = v1, n1
	}
	return worst
}

// edge is the inner v at which cell i of a tail begins.
func (t *table) edge(i uint64) float64 { return math.Float64frombits((t.first + i) << t.shift) }

func mismatch(got, want float64) float64 {
	return math.Abs(got-want) / max(want, tinyValue)
}

// node is a quantile with its first and second derivative by v.
type node struct{ y, d1, d2 float64 }

// node differentiates the inverse of a distribution function whose density is
// known: y′ = ±1/f and y″ = -f′/f³.
func (t *table) node(v float64, quantile func(float64) float64, sign float64) node {
	y := quantile(v)
	if y == 0 {
		return node{} // below the smallest float64
	}
	f, slope := t.shape.density(y)
	return node{y, sign / f, -slope / f / f}
}

// newQuintic is the Hermite interpolation of two nodes a width apart: it meets
// value, slope and curvature at both. Any text on numerical analysis has it.
func newQuintic(a, b node, width float64) quintic {
	rise := b.y - a.y
	a1, b1 := a.d1*width, b.d1*width
	a2, b2 := a.d2*width*width, b.d2*width*width
	return quintic{
		a.y, a1, a2 / 2,
		10*rise - 6*a1 - 4*b1 - 1.5*a2 + 0.5*b2,
		-15*rise + 8*a1 + 7*b1 + 1.5*a2 - b2,
		6*rise - 3*a1 - 3*b1 - 0.5*a2 + 0.5*b2,
	}
}

// at is the polynomial at x, in the order of Estrin: short chains of
// multiplications that the processor works on at the same time.
func (c *quintic) at(x float64) float64 {
	xx := x * x
	return (c[0] + c[1]*x) + xx*((c[2]+c[3]*x)+xx*(c[4]+c[5]*x))
}

// at is the quantile at u, strictly between 0 and 1. It has no branch on the
// side of the median, which a processor could not foresee.
func (t *table) at(u float64) float64 {
	d := u - 0.5
	v := math.Float64bits(0.5 - math.Abs(d))
	i := v>>(t.shift&63) - t.first
	if i >= t.side {
		return t.exact(u)
	}
	isLower := uint64(int64(math.Float64bits(d)) >> 63) // all bits or none
	x := math.Float64frombits(v<<((52-t.shift)&63)&mantissa|oneBits) - 1
	return t.cells[i+t.side&^isLower].at(x)
}

// exact is the quantile without the table.
func (t *table) exact(u float64) float64 {
	if u < 0.5 {
		return t.shape.lower(u)
	}
	return t.shape.upper(1 - u)
}
