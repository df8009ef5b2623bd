package climate

import (
	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// Damp is what cooling does to the molds of one area. Cooling alone takes no
// moisture out of the air, so it brings the air nearer to its dew point.
type Damp struct {
	Cooled int // hours in which the air is lowered
	Near   int // of them, hours in which molds are nearer to dew point than the margin and would not be without cooling
}

// noticed is by how many K air is lowered at least to count as cooled: what
// float32 holds is 2e-6 K.
const noticed = 0.01

// Damp holds every area against the same without cooling, hour by hour, for a
// margin between molds and dew point in K. Arguments are those of Path.
func (c *Climate) Damp(replication draw.Key, start shift.Date, hours int, margin float64) []Damp {
	open := *c
	open.Areas = append([]Area(nil), c.Areas...)
	for i := range open.Areas {
		open.Areas[i].Day.Cool, open.Areas[i].Night.Cool = Uncooled(), Uncooled()
	}
	with, without := c.Path(replication, start, hours), open.Path(replication, start, hours)
	out := make([]Damp, with.Areas())
	for i := range out {
		a, b := &with.areas[i], &without.areas[i]
		for h := range a.air {
			if a.air[h] > b.air[h]-noticed {
				continue
			}
			out[i].Cooled++
			if a.mold[h]-float64(a.dew[h]) < margin && b.mold[h]-float64(b.dew[h]) >= margin {
				out[i].Near++
			}
		}
	}
	return out
}
