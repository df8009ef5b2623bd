package ahead

import (
	"cmp"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
)

// guns is what the gun sets of all booths hold while lists are gone through.
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

func (g *guns) copy() *guns {
	c := &guns{setup: g.setup, count: g.count}
	for p := range g.holds {
		var holds [][]int16
		var used [][]int
		for u := range g.holds[p] {
			holds, used = append(holds, slices.Clone(g.holds[p][u])), append(used, slices.Clone(g.used[p][u]))
		}
		c.holds, c.used = append(c.holds, holds), append(c.used, used)
	}
	return c
}

// sort puts a list into the order of colors: those that need no flush as the
// guns of some booth stand, then from light to dark, colors that are not known
// last. Parts of one color stay in the order of their time.
func (g *guns) sort(d *BoothDay, list []Spray) {
	plan := g.setup.Plan
	ranks := map[*Thing]float64{}
	for i := range list {
		s := &list[i]
		switch {
		case s.Color == sim.None:
			ranks[s.Thing] = 9
		case slices.ContainsFunc(d.Units, func(u int16) bool { return g.flush(d.Place, u, s.Color, false) == 0 }):
			ranks[s.Thing] = -1
		default:
			ranks[s.Thing] = plan.Finish.Colors[plan.Colors[s.Color].Look].Haze
		}
	}
	slices.SortStableFunc(list, func(x, y Spray) int {
		return cmp.Or(cmp.Compare(ranks[x.Thing], ranks[y.Thing]), cmp.Compare(x.Color, y.Color), cmp.Compare(x.Accent, y.Accent))
	})
}

// muchWork stands for a flush where flushes are to be avoided.
const muchWork = clock.Week

// all goes through a list, gives each part to the booth that is done with it
// first, or that needs no flush, and counts flushes.
func (g *guns) all(d *BoothDay, list []Spray, avoid bool) (lists [][]Spray, flushes int, time clock.Time) {
	lists = make([][]Spray, len(d.Units))
	busy := make([]clock.Time, len(d.Units))
	for i := range list {
		s := &list[i]
		done, cost := make([]clock.Time, len(d.Units)), make([]clock.Time, len(d.Units))
		for k, u := range d.Units {
			flush := g.flush(d.Place, u, s.Accent, true) + g.flush(d.Place, u, s.Color, false)
			done[k] = busy[k] + flush + s.Mean(func(t *Task) clock.Time { return t.Worked })
			if cost[k] = done[k]; avoid && flush > 0 {
				cost[k] += muchWork
			}
		}
		k := soonest(cost)
		busy[k] = done[k]
		lists[k] = append(lists[k], *s)
		for _, t := range []clock.Time{g.load(d.Place, d.Units[k], s.Accent, true), g.load(d.Place, d.Units[k], s.Color, false)} {
			if t > 0 {
				flushes++
				time += t
			}
		}
	}
	return lists, flushes, time
}

// load takes a color into a gun set and gives the time of the flush.
func (g *guns) load(place, unit, color int16, accent bool) clock.Time {
	i := g.choose(place, unit, color, accent)
	if i < 0 {
		return 0
	}
	t := g.flush(place, unit, color, accent)
	g.count++
	g.holds[place][unit][i], g.used[place][unit][i] = color, g.count
	return t
}

// flush is the time to get a color into a gun set of a booth.
func (g *guns) flush(place, unit, color int16, accent bool) clock.Time {
	i := g.choose(place, unit, color, accent)
	if i < 0 {
		return 0
	}
	if before := g.holds[place][unit][i]; before == color || before == sim.None {
		return 0
	}
	return g.setup.Plan.Places[place].Guns[unit][i].Flush
}

// choose is the gun set for a color, as the plant chooses it: the one kept for
// it, one that holds it, the one not used for longest. Bands go through a pot
// where there is one. -1 for none.
func (g *guns) choose(place, unit, color int16, accent bool) int {
	if color == sim.None || int(unit) >= len(g.holds[place]) {
		return -1
	}
	best, bestRank := -1, 0
	for i, gun := range g.setup.Plan.Places[place].Guns[unit] {
		if gun.Pot != accent || gun.Color != sim.None && gun.Color != color {
			continue
		}
		rank := 1
		switch {
		case gun.Color == color:
			rank = 4
		case g.holds[place][unit][i] == color:
			rank = 3
		}
		if rank > bestRank || rank == 1 && bestRank == 1 && g.used[place][unit][i] < g.used[place][unit][best] {
			best, bestRank = i, rank
		}
	}
	if best < 0 && accent {
		return g.choose(place, unit, color, false)
	}
	return best
}
