package cure

import "math"

// hourly is what one whole hour does to a part, by temperature of the hour and
// degree at its start, for one thick-shot factor. It holds the share of the
// rest up to the plateau that is still left after the hour, over the square
// root of that rest: smooth down to the plateau, where the share is 1. It is
// some five times quicker than asking the ages.
type hourly struct {
	rows  []hourRow
	rough []bool // the plateau bends among the four rows used from row i on: ask the ages
}

type hourRow [hourCells + 1]float64

const (
	hourCells = 256
	perC      = 1   // rows per °C
	fastFrom  = 0.1 // below that degree cure starts too sharply for this table
)

func (t *Table) makeHourly(thick float64) hourly {
	n := int((hottest-coldest)*perC) + 1
	h := hourly{rows: make([]hourRow, n), rough: make([]bool, n)}
	for i := range h.rows {
		t.fillHour(&h.rows[i], rowC(i), thick)
		first := locate(float64(i), n).first
		h.rough[i] = t.p.bends(rowC(first+1)) || t.p.bends(rowC(first+2))
	}
	return h
}

// bends reports whether the plateau is no straight line in the rows beside
// tempC.
func (p *Params) bends(tempC float64) bool {
	const step = 1.0 / perC
	return math.Abs(p.Plateau(tempC-step)-2*p.Plateau(tempC)+p.Plateau(tempC+step)) > 1e-9
}

// rowC is the temperature of row i, °C.
func rowC(i int) float64 { return coldest + float64(i)/perC }

func (t *Table) fillHour(out *hourRow, tempC, thick float64) {
	s := newScale(t.p.At25(t.p.Plateau(tempC)))
	time := Speed(tempC, t.p.ActivationEnergy) / thick
	out[0] = 1
	for i := 1; i <= hourCells; i++ {
		left := s.plateau * float64(i*i) / (hourCells * hourCells)
		out[i] = (s.plateau - t.after(&s, s.plateau-left, time)) / left
	}
}

// covers reports whether the table holds for an hour of that temperature that
// starts at degree a.
func (h *hourly) covers(tempC, a float64) bool {
	return a >= fastFrom && tempC >= coldest && tempC < hottest && !h.rough[int((tempC-coldest)*perC)]
}

// after is the degree after a whole hour, for a below the plateau of the hour.
func (h *hourly) after(tempC, plateau, a float64) float64 {
	rows := locate((tempC-coldest)*perC, len(h.rows))
	left := plateau - a
	at := locate(math.Sqrt(left/plateau)*hourCells, hourCells+1)
	share := 0.0
	for i, weight := range rows.weight {
		n := (*[4]float64)(h.rows[rows.first+i][at.first : at.first+4])
		share += weight * (at.weight[0]*n[0] + at.weight[1]*n[1] + at.weight[2]*n[2] + at.weight[3]*n[3])
	}
	return plateau - left*min(share, 1)
}
