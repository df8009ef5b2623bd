package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
)

// guns is what the gun sets of all booths hold while a list is gone through.
type guns struct {
	setup *Setup
	holds [][][]int16 // by place, unit and gun: a color, unknown, or sim.None for clean
	used  [][][]int   // when last
	count int
}

// unknown is in a gun set of which nobody knows what it sprayed last: any color
// needs a flush.
const unknown = -2

func newGuns(s *Setup) *guns {
	g := &guns{setup: s}
	for p := range s.Plan.Places {
		var holds [][]int16
		var used [][]int
		for _, unit := range s.Plan.Places[p].Guns {
			row := make([]int16, len(unit))
			for i := range row {
				if row[i] = unknown; unit[i].Color != sim.None {
					row[i] = unit[i].Color
				}
			}
			holds, used = append(holds, row), append(used, make([]int, len(unit)))
		}
		g.holds, g.used = append(g.holds, holds), append(g.used, used)
	}
	return g
}

// sort puts the list of a booth into its order of colors: those that need no
// flush as the guns stand, then from light to dark, colors that are not known
// last. Parts of one color stay in the order of their time.
func (g *guns) sort(b *BoothDay) {
	plan := g.setup.Plan
	rank := func(s *Spray) float64 {
		if s.Color == sim.None {
			return 9
		}
		if i := g.choose(b, s.Color, false); i < 0 || g.holds[b.Place][b.Unit][i] == s.Color {
			return -1
		}
		return plan.Finish.Colors[plan.Colors[s.Color].Look].Haze
	}
	ranks := map[*Thing]float64{}
	for i := range b.Sprays {
		ranks[b.Sprays[i].Thing] = rank(&b.Sprays[i])
	}
	slices.SortStableFunc(b.Sprays, func(x, y Spray) int {
		return cmp.Or(cmp.Compare(ranks[x.Thing], ranks[y.Thing]), cmp.Compare(x.Color, y.Color), cmp.Compare(x.Accent, y.Accent))
	})
}

// all goes through the list of a booth and counts its flushes.
func (g *guns) all(b *BoothDay) (flushes int, time clock.Time) {
	for i := range b.Sprays {
		s := &b.Sprays[i]
		for _, t := range []clock.Time{g.load(b, s.Accent, true), g.load(b, s.Color, false)} {
			if t > 0 {
				flushes++
				time += t
			}
		}
	}
	return flushes, time
}

// load takes a color into a gun set and gives the time of the flush.
func (g *guns) load(b *BoothDay, color int16, accent bool) clock.Time {
	if color == sim.None {
		return 0
	}
	i := g.choose(b, color, accent)
	if i < 0 {
		return 0
	}
	g.count++
	before := g.holds[b.Place][b.Unit][i]
	g.holds[b.Place][b.Unit][i], g.used[b.Place][b.Unit][i] = color, g.count
	if before == color || before == sim.None {
		return 0
	}
	return g.setup.Plan.Places[b.Place].Guns[b.Unit][i].Flush
}

// choose is the gun set for a color, as the plant chooses it: the one kept for
// it, one that holds it, the one not used for longest. Bands go through a pot
// where there is one.
func (g *guns) choose(b *BoothDay, color int16, accent bool) int {
	if b.Place < 0 || int(b.Unit) >= len(g.holds[b.Place]) || b.Unit < 0 {
		return -1
	}
	best, bestRank := -1, 0
	for i, gun := range g.setup.Plan.Places[b.Place].Guns[b.Unit] {
		if gun.Pot != accent || gun.Color != sim.None && gun.Color != color {
			continue
		}
		rank := 1
		switch {
		case gun.Color == color:
			rank = 4
		case g.holds[b.Place][b.Unit][i] == color:
			rank = 3
		}
		if rank > bestRank || rank == 1 && bestRank == 1 && g.used[b.Place][b.Unit][i] < g.used[b.Place][b.Unit][best] {
			best, bestRank = i, rank
		}
	}
	if best < 0 && accent {
		return g.choose(b, color, false)
	}
	return best
}
