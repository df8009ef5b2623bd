package permit

import "fmt"

// Steps is how far each lever is moved when levers are compared.
type Steps struct {
	ResinHAP float64 // points of weight percent off production resin
	GelHAP   float64 // points off gel coat
	Film     float64 // mm off the gel coat
	FilmText string  // the same in words: "1 mil"
	Transfer float64 // share on top of transfer
	Glass    float64 // share of glass on top
	Flushes  float64 // share of flushes that no longer happen, 0 … 1
}

// Lever is one change with the setup it makes. Counts stay what they are: the
// plant ships the same boats.
type Lever struct {
	Name  string
	Setup *Setup
}

// Levers are the changes that apply to the plant, each alone.
func (s *Setup) Levers() []Lever {
	var out []Lever
	add := func(name string, change func(*Setup) bool) {
		c := s.copied()
		if change(c) {
			out = append(out, Lever{name, c})
		}
	}
	x := &s.Steps
	add(fmt.Sprintf("production resin with %.3g points less HAP", x.ResinHAP), func(c *Setup) bool {
		return c.lessHAP(x.ResinHAP, func(o Operation) bool { return o == ProductionResin })
	})
	add(fmt.Sprintf("gel coat with %.3g points less HAP", x.GelHAP), func(c *Setup) bool {
		return c.lessHAP(x.GelHAP, func(o Operation) bool { return o == PigmentedGel || o == ClearGel })
	})
	add("resin put on nonatomized", (*Setup).calmResin)
	add("gel coat film thinner by "+x.FilmText, (*Setup).thinner)
	add(fmt.Sprintf("transfer better by %.3g points", 100*x.Transfer), (*Setup).landMore)
	add(fmt.Sprintf("%.3g points more glass in the laminate", 100*x.Glass), (*Setup).moreGlass)
	add(fmt.Sprintf("%.0f %% fewer gun flushes", 100*x.Flushes), (*Setup).fewerFlushes)
	return out
}

func (s *Setup) lessHAP(points float64, which func(Operation) bool) bool {
	any := false
	for i := range s.Materials {
		m := &s.Materials[i]
		if !which(m.Operation) || m.HAP <= 0 || points <= 0 {
			continue
		}
		less := max(m.HAP-points, 0)
		m.Styrene *= less / m.HAP
		m.HAP = less
		any = true
	}
	return any
}

func (s *Setup) calmResin() bool {
	any := false
	for i := range s.Materials {
		if m := &s.Materials[i]; m.Operation.Resin() && m.Method.Atomized() {
			m.Method = m.Method.Calmer()
			any = true
		}
	}
	return any
}

func (s *Setup) thinner() bool {
	any := false
	for i := range s.Plant.Parts {
		p := &s.Plant.Parts[i]
		any = any || p.Film > s.Steps.Film && s.Steps.Film > 0
		p.Film = max(p.Film-s.Steps.Film, 0)
	}
	return any
}

func (s *Setup) landMore() bool {
	a := &s.Amounts
	if s.Steps.Transfer <= 0 || a.Transfer <= 0 || a.Transfer >= 1 {
		return false
	}
	a.Transfer = min(a.Transfer+s.Steps.Transfer, 1)
	return true
}

func (s *Setup) moreGlass() bool {
	a := &s.Amounts
	if s.Steps.Glass <= 0 || a.Laminate <= 0 || a.Glass >= 1 {
		return false
	}
	a.Glass = min(a.Glass+s.Steps.Glass, 1)
	return true
}

func (s *Setup) fewerFlushes() bool {
	a, kept := &s.Amounts, 1-s.Steps.Flushes
	if s.Steps.Flushes <= 0 || a.PumpGel+a.PotGel+a.PumpSolvent+a.PotSolvent <= 0 {
		return false
	}
	a.PumpGel, a.PotGel, a.PumpSolvent, a.PotSolvent = a.PumpGel*kept, a.PotGel*kept, a.PumpSolvent*kept, a.PotSolvent*kept
	return true
}
