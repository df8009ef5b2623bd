package permit

import (
	"fmt"
	"math"
	"slices"
)

// Setup is a plant with its materials and what its permit asks.
type Setup struct {
	Plant     Plant
	Amounts   Amounts
	Materials []Material
	Cap       float64 // kg of organic HAP in twelve months that the permit allows; 0: none given
	Steps     Steps
}

// Fault is what is wrong with a material of a Setup.
type Fault struct {
	Material int
	Text     string
}

// Faults are contradictions in the materials: a material that cannot serve its
// use, and uses whose materials do not add up to the whole. A use that no
// material serves is not in the ledger and no fault.
func (s *Setup) Faults() []Fault {
	var out []Fault
	for i := range s.Materials {
		if text := s.Materials[i].fault(); text != "" {
			out = append(out, Fault{i, text})
		}
	}
	for u := NoUse + 1; u < Uses; u++ {
		sum, last := 0.0, -1
		for i := range s.Materials {
			if slices.Contains(s.Materials[i].For, u) {
				sum, last = sum+s.Materials[i].Share, i
			}
		}
		if last >= 0 && math.Abs(sum-1) > 1e-6 {
			out = append(out, Fault{last, fmt.Sprintf("the shares of all materials for %v add up to %.4g %%, not 100 %%", u, 100*sum)})
		}
	}
	known := 0
	for i := range s.Materials {
		if s.Materials[i].Before != nil {
			known++
		}
	}
	if known > 0 && known < len(s.Materials) {
		i := slices.IndexFunc(s.Materials, func(m Material) bool { return m.Before == nil })
		out = append(out, Fault{i, "last year's use is given for other materials and not for this one; 0 kg is a use"})
	}
	return out
}

// Grams is what one month takes of each material, in whole grams. Everything in
// a ledger is a sum of these.
func (s *Setup) Grams(m *MonthCounts) []int64 {
	kg := s.Amounts.Used(&s.Plant, m)
	out := make([]int64, len(s.Materials))
	for i := range s.Materials {
		for _, u := range s.Materials[i].For {
			out[i] += int64(math.Round(1000 * kg[u] * s.Materials[i].Share))
		}
	}
	return out
}

// copied is a Setup whose materials can be changed without changing s.
func (s *Setup) copied() *Setup {
	c := *s
	c.Materials = slices.Clone(s.Materials)
	c.Plant.Parts = slices.Clone(s.Plant.Parts)
	return &c
}

// One is the estimate of the largest single HAP of each material that some uses
// of a month put into the air, kg.
func (s *Setup) One(m *MonthCounts, uses ...Use) float64 {
	kg := s.Amounts.Used(&s.Plant, m)
	sum := 0.0
	for i := range s.Materials {
		x := &s.Materials[i]
		for _, u := range uses {
			if slices.Contains(x.For, u) {
				sum += x.Emitted(kg[u]*x.Share) * x.largest()
			}
		}
	}
	return sum
}
