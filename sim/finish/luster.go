package finish

import "moldturn/sim/clock"

// Part is what the luster of one part depends on. The zero value is a part of
// the first grade and color from a perfect mold, but Noise must be drawn.
type Part struct {
	Grade, Color int     // indexes into Params.Grades and Params.Colors
	BuildUp      float64 // of the mold, before this part adds its own; pulls of a cool mold
	Green        float64 // degree of cure missing at the pull, 0 … 1
	Surface      float64 // lasting loss of the mold, points
	MissingCoats float64 // coats of wax the mold should have had
	ExcessCoats  float64 // coats beyond two without polish
	Noise        float64 // a uniform number strictly between 0 and 1; 0.5 is no noise

	Buffs int        // rounds of buffing done
	Since clock.Time // time since the first inspection; clock.Never for all that will ever show
}

// Term is one loss of luster.
type Term struct {
	Key    string                       // one word for tables and records
	Doc    string                       // one sentence: what it is
	Loss   func(*Params, *Part) float64 // points before any buffing
	Buffed bool                         // a round of buffing removes a share of it
	inputs []input
}

// Count is the number of terms.
const Count = len(terms)

// terms is every loss in the order of reports. A new one is a new file with
// its function and numbers, a row here, and its numbers in Params.
var terms = [...]Term{
	{"grade", "what the grade of gel coat cannot reach", gradeLoss, false, nil},
	{"haze", "build-up on the mold, as far as the color shows it", hazeLoss, true, hazeInputs},
	{"postcure", "waviness of a part pulled green, part of it weeks later", postcureLoss, false, postcureInputs},
	{"surface", "lasting wear of the mold's surface", surfaceLoss, true, nil},
	{"wax", "wax missing or in excess", waxLoss, true, waxInputs},
	{"noise", "what differs from part to part without a known cause", noiseLoss, false, noiseInputs},
}

// Terms lists every loss, in the order of Losses. The list is the caller's.
func Terms() []Term { return append([]Term(nil), terms[:]...) }

// Losses are the points lost to each of Terms, in the same order.
type Losses [Count]float64

// Explain gives the points a part has lost to each term, after its buffing.
// Noise may be negative; all others are not.
func Explain(p *Params, part *Part) Losses {
	var out Losses
	kept := p.Inspect.kept(part.Buffs)
	for i := range terms {
		out[i] = terms[i].Loss(p, part)
		if terms[i].Buffed {
			out[i] *= kept
		}
	}
	return out
}

// Luster is 100 less all losses, kept within 0 … 100. With Buffs 0 and Since 0
// it is the luster as pulled.
func Luster(p *Params, part *Part) float64 {
	sum := 0.0
	kept := p.Inspect.kept(part.Buffs)
	for i := range terms {
		loss := terms[i].Loss(p, part)
		if terms[i].Buffed {
			loss *= kept
		}
		sum += loss
	}
	return min(max(100-sum, 0), 100)
}
