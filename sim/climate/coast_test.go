package climate

import (
	"testing"

	"moldturn/sim/draw"
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

// The invented coast has what its scenario says of it: some 22 hot weeks within
// May to October by the mean of the daily peaks, and winters of 9 – 12 °C. (No
// outside source: the coast is invented.)
func TestCoastSeason(t *testing.T) {
	area := OpenArea("plant").Heated(21)
	area.GainK = DefaultGainK
	const years = 200
	var hot, first, last, times, winter float64
	for r := range years {
		p := Plant(Coast().Outdoor(draw.Root(1, r), newYear, 8760), []Area{area})
		f, l, h, n := season(p, 0, 0, 365)
		if f < 90 {
			winter++
		}
		first += float64(f) / years
		last += float64(l) / years
		hot += float64(h) / years
		times += float64(n) / years
	}
	t.Logf("hot from %v to %v on average, %.1f weeks, switched on %.2f times a year, in %.0f of %d years before April",
		newYear.AddDays(int(first)), newYear.AddDays(int(last)), hot/7, times, winter, years)
	within(t, "hot weeks", hot/7, 22, 1)
	within(t, "first hot day, about mid-May", first, 130, 10)
	within(t, "last hot day, about mid-October", last, 285, 10)
	within(t, "years with a hot spell before April", winter/years, 0, .02)
	for _, m := range []int{11, 0, 1} {
		within(t, "winter mean", Coast().Months[m].MeanC, 10.5, 1.5)
	}
}
