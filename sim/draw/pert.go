package draw

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// PERT is the smooth law of three guesses: a beta law from low to high with its
// peak at typical and mean (low + 4·typical + high)/6. Its variance is
// (mean-low)(high-mean)/7, not the often quoted ((high-low)/6)². All three equal
// give a Constant. Needs 0 ≤ low ≤ typical ≤ high ≤ 1e12.
//
// Source: Malcolm, Roseboom, Clark, Fazar, "Application of a Technique for
// Research and Development Program Evaluation", Operations Research 7, 1959, for
// the mean; the beta law with α + β = 6 that has it is the usual reading (title
// and place from memory).
func PERT(low, typical, high float64) (Dist, error) {
	if err := rising("pert", []string{"low", "typical", "high"}, low, typical, high); err != nil {
		return nil, err
	}
	if low == high {
		return always(low), nil
	}
	width := high - low
	alpha := 1 + 4*(typical-low)/width
	return &law{
		sampler: Sampler{kind: tabled, a: low, b: width, c: high, table: newTable(newBetaShape(alpha, 6-alpha))},
		mean:    low + width*alpha/6,
		// of a beta law: αβ / ((α+β)²(α+β+1))
		variance: width * width * alpha * (6 - alpha) / 252,
		low:      low, high: high,
		text: call("pert", low, typical, high),
	}, nil
}

// betaShape is the beta law on 0 to 1.
type betaShape struct {
	alpha, beta float64
	logBeta     float64 // ln B(α, β)
}

func newBetaShape(alpha, beta float64) *betaShape {
	return &betaShape{alpha, beta, mathext.Lbeta(alpha, beta)}
}

func (b *betaShape) lower(p float64) float64 { return mathext.InvRegIncBeta(b.alpha, b.beta, p) }

func (b *betaShape) upper(q float64) float64 { return 1 - mathext.InvRegIncBeta(b.beta, b.alpha, q) }

func (b *betaShape) density(y float64) (f, slope float64) {
	f = math.Exp((b.alpha-1)*math.Log(y) + (b.beta-1)*math.Log1p(-y) - b.logBeta)
	return f, (b.alpha-1)/y - (b.beta-1)/(1-y)
}
