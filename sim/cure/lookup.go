package cure

import "math"

// spot is where a value lies between the nodes of a table: the first of four
// nodes, and their weights in the cubic through them (Lagrange's form).
type spot struct {
	first  int
	weight [4]float64
}

// locate finds at, in steps between nodes, among n nodes.
func locate(at float64, n int) spot {
	i := min(max(int(at), 1), n-3)
	f := at - float64(i)
	return spot{i - 1, [4]float64{
		-f * (f - 1) * (f - 2) / 6,
		(f + 1) * (f - 1) * (f - 2) / 2,
		-(f + 1) * f * (f - 2) / 2,
		(f + 1) * f * (f - 1) / 6,
	}}
}

// place is s/(1+s) with s = √(v/half), in steps between nodes.
func place(v, half float64) spot {
	s := math.Sqrt(v / half)
	return locate(s/(1+s)*cells, cells+1)
}

// covers reports whether the plateau lies among the rows.
func (t *Table) covers(plateau float64) bool {
	return plateau >= t.low && plateau <= t.low+spacing*float64(len(t.rows)-1)
}

func (t *Table) row(plateau float64) spot {
	return locate((plateau-t.low)/spacing, len(t.rows))
}

// ageAt is the time that cure takes from nothing to w along the plateau of s.
func (t *Table) ageAt(s *scale, rows *spot, w float64) float64 {
	at := place(w, s.w0)
	sum := 0.0
	for i, weight := range rows.weight {
		n := (*[4]float64)(t.rows[rows.first+i].slow[at.first : at.first+4])
		sum += weight * (at.weight[0]*n[0] + at.weight[1]*n[1] + at.weight[2]*n[2] + at.weight[3]*n[3])
	}
	return w * sum
}

// wAt is the w reached after time from nothing; the inverse of ageAt.
func (t *Table) wAt(s *scale, rows *spot, time float64) float64 {
	at := place(time, s.t0)
	sum := 0.0
	for i, weight := range rows.weight {
		n := (*[4]float64)(t.rows[rows.first+i].fast[at.first : at.first+4])
		sum += weight * (at.weight[0]*n[0] + at.weight[1]*n[1] + at.weight[2]*n[2] + at.weight[3]*n[3])
	}
	return time * sum
}

// after is the degree that follows degree a after a length of time at 25 °C,
// thin laminate, toward the plateau of s. It never falls.
func (t *Table) after(s *scale, a, time float64) float64 {
	if a >= s.plateau || time <= 0 {
		return a
	}
	if !t.covers(s.plateau) {
		return t.p.At25(s.plateau).After(a, time)
	}
	rows := t.row(s.plateau)
	age := 0.0
	if a > 0 {
		age = t.ageAt(s, &rows, s.w(a))
	}
	return max(a, min(s.degree(t.wAt(s, &rows, age+time)), s.plateau))
}

// between is the time from degree a to degree b along the plateau of s; false
// when b is not below the plateau or the plateau lies outside the rows.
func (t *Table) between(s *scale, a, b float64) (time float64, ok bool) {
	if b >= s.plateau || !t.covers(s.plateau) {
		return 0, false
	}
	if b <= a {
		return 0, true
	}
	rows := t.row(s.plateau)
	time = t.ageAt(s, &rows, s.w(b))
	if a > 0 {
		time -= t.ageAt(s, &rows, s.w(a))
	}
	return max(time, 0), true
}

// search is between for what the rows do not cover, by halving; b is reached
// within most.
func (t *Table) search(s *scale, a, b, most float64) float64 {
	low := 0.0
	for range 50 {
		if mid := (low + most) / 2; t.after(s, a, mid) < b {
			low = mid
		} else {
			most = mid
		}
	}
	return most
}
