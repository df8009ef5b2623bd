package defect

import "moldturn/sim/draw"

// Defect is one kind of flaw.
type Defect struct {
	Key    string // its word in paths and tables
	Doc    string // one sentence: what one sees
	Source string // published causes

	chance, most, scrap, found float64
	hours                      [3]float64 // labor to rework, h: low, typical, high
	effects                    [maxEffects]Effect
}

const maxEffects = 4

// Index of each defect in All and in Params.Each.
const (
	Porosity = iota
	PreRelease
	Alligatoring
	Sag
	PrintThrough
	Sticking

	Count
)

// all is every defect in the order of reports. A new one is a new file, an
// index and a row here.
var all = [Count]*Defect{
	Porosity:     &porosity,
	PreRelease:   &preRelease,
	Alligatoring: &alligatoring,
	Sag:          &sag,
	PrintThrough: &printThrough,
	Sticking:     &sticking,
}

// All lists every defect, in the order of Params.Each. The list is the
// caller's.
func All() []Defect {
	out := make([]Defect, Count)
	for i, d := range all {
		out[i] = *d
	}
	return out
}

// Chance is the probability that part has defect i, 0 … Law.Most.
func Chance(p *Params, i int, part *Part) float64 {
	if i == Sticking && part.BreakIn >= 1 && part.BreakIn <= len(p.BreakIn) {
		return p.BreakIn[part.BreakIn-1]
	}
	law := &p.Each[i]
	chance := law.Chance
	for k := range law.Effects {
		chance *= law.Effects[k].Factor(part)
	}
	return min(chance, law.Most)
}

// Outcome is what came of one defect on one part.
type Outcome struct {
	Has   bool    // the part has it
	Found bool    // inspection sees it; false when it has none
	Scrap bool    // found, and the part cannot be saved
	Hours float64 // labor to rework it, when found and not scrapped
	Mold  float64 // labor to repair the mold, for a part that stuck
}

// Has draws whether part has defect i. Luck is the part's own stream for that
// defect; its number 0 is used.
func Has(p *Params, i int, part *Part, luck draw.Key) bool {
	return luck.U(0) < Chance(p, i, part)
}

// Look draws what comes of defect i on a part that has it, by the same luck,
// of which the numbers 1 … 4 are used.
func Look(p *Params, i int, luck draw.Key) Outcome {
	law := &p.Each[i]
	out := Outcome{Has: true, Found: luck.U(1) < law.Found}
	if i == Sticking {
		out.Mold = p.MoldHours.Quantile(luck.U(4))
	}
	if !out.Found {
		return out
	}
	if out.Scrap = luck.U(2) < law.Scrap; !out.Scrap {
		out.Hours = law.Hours.Quantile(luck.U(3))
	}
	return out
}

// Try is Has and Look at once.
func Try(p *Params, i int, part *Part, luck draw.Key) Outcome {
	if !Has(p, i, part, luck) {
		return Outcome{}
	}
	return Look(p, i, luck)
}
