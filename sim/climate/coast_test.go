package climate

import (
	"testing"

	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// season runs the seasonal switch over a year of a path: on above 90 °F, off
// below 85 °F. It gives the first and last hot day, the hot days and how often
// the switch went on.
func season(p *Path, area, from, days int) (first, last, hot, times int) {
	on := false
	first = -1
	for d := from; d < from+days; d++ {
		x := p.PeakMean7(area, d)
		if !on && x > 90 {
			on = true
			times++
		} else if on && x < 85 {
			on = false
		}
		if on {
			hot++
			last = d - from
			if first < 0 {
				first = d - from
			}
		}
	}
	return first, last, hot, times
}

func TestCoastSeason(t *testing.T) {
	area := OpenArea("plant").Heated(21)
	area.GainK = DefaultGainK
	const years = 200
	var hot, first, last, times float64
	for r := range years {
		p := Plant(Coast().Outdoor(draw.Root(1, r), shift.DateOf(2027, 1, 1), 8760), []Area{area})
		f, l, h, n := season(p, 0, 0, 365)
		first += float64(f) / years
		last += float64(l) / years
		hot += float64(h) / years
		times += float64(n) / years
		if f < 80 {
			t.Logf("year %d: hot from day %d", r, f)
		}
	}
	t.Logf("hot from %v to %v, %.1f weeks, switched on %.2f times a year", shift.DateOf(2027, 1, 1).AddDays(int(first)), shift.DateOf(2027, 1, 1).AddDays(int(last)), hot/7, times)
	t.Fail()
}
