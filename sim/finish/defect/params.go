package defect

import "moldturn/sim/draw"

// Params is every number of the defects of one plant. The zero value is not
// usable; start from Default. A copy may be changed without changing the
// original.
type Params struct {
	Each      [Count]Law
	BreakIn   [3]float64 // chance to stick on each break-in turn
	MoldHours draw.Dist  // labor to repair the mold, h
}

// Law is the numbers of one defect.
type Law struct {
	Chance  float64 // at reference conditions
	Most    float64 // the chance never exceeds it
	Scrap   float64 // share of those found that cannot be saved
	Found   float64 // share that inspection sees
	Hours   draw.Dist
	Effects [maxEffects]Effect
}

// Default is the plant of the assumptions table: see Inputs for the marks. It
// makes a quantile table per law, which takes milliseconds: call it once.
func Default() Params {
	p := Numbers()
	p.MoldHours = pert(moldHours)
	for i, d := range all {
		p.Each[i].Hours = pert(d.hours)
	}
	return p
}

// Numbers is Default without the lengths of labor, which must be given with
// SetDist before use. It costs next to nothing.
func Numbers() Params {
	p := Params{BreakIn: breakIn}
	for i, d := range all {
		p.Each[i] = Law{Chance: d.chance, Most: d.most, Scrap: d.scrap, Found: d.found, Effects: d.effects}
	}
	return p
}

// pert makes a law of this package's own constants, which a test checks.
func pert(h [3]float64) draw.Dist {
	d, err := draw.PERT(h[0], h[1], h[2])
	if err != nil {
		panic(err)
	}
	return d
}
