package climate

import (
	"fmt"

	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// Climate is one of the three ways to say what the air is like: a table of
// months inside the plant, a weather file, or weather made from normals.
type Climate struct {
	Months  *Months  // holds inside all areas, if not nil
	File    *Weather // outdoor weather from a file, if not nil and there are no Months
	Normals Normals  // else made from these
	Areas   []Area   // of the plant; with Months only their number counts; none means one open area
}

// Path makes the conditions of a replication, whose key is given, for a run of
// hours from midnight of the start date. A file of several years begins with
// one drawn for the replication; a file of one year, and Months, are the same
// in every replication.
func (c *Climate) Path(replication draw.Key, start shift.Date, hours int) *Path {
	switch {
	case c.Months != nil:
		p := c.Months.Path(start, hours)
		for len(p.areas) < len(c.Areas) {
			p.areas = append(p.areas, p.areas[0])
		}
		return p
	case c.File != nil:
		turn := int(replication.At0(luckYear).U(0) * float64(c.File.Years()))
		return Plant(c.File.Outdoor(start, hours, turn), c.Areas)
	}
	return Plant(c.Normals.Outdoor(replication, start, hours), c.Areas)
}

// Check reports what the parts of a climate contradict each other in: set
// points, and monthly dew points above the mean temperature.
func (c *Climate) Check() error {
	for _, a := range c.Areas {
		if err := a.Check(); err != nil {
			return err
		}
	}
	if c.Months != nil || c.File != nil {
		return nil
	}
	return c.Normals.Check()
}

// Check reports the first month whose mean dew point is above its mean
// temperature.
func (n Normals) Check() error {
	for i, m := range n.Months {
		if m.DewC > m.MeanC {
			return fmt.Errorf("month %d: mean dew point %.1f C above the mean temperature %.1f C; allowed: at or below it", i+1, m.DewC, m.MeanC)
		}
	}
	return nil
}

// Warnings are what a reader of results should know of the conditions; empty
// when there is nothing.
func (p *Path) Warnings() []string {
	var warnings []string
	for i := range p.areas {
		beyond := p.BeyondChart(i)
		if beyond > 0 {
			warnings = append(warnings, fmt.Sprintf("area %d: the heat index is above %d °F, beyond its published chart, in %d of %d hours",
				i+1, hottestCharted, beyond, p.hours))
		}
	}
	return warnings
}

// BeyondChart is the number of hours in which the heat index of an area is above
// its published chart, where the formula is not checked by anyone.
func (p *Path) BeyondChart(area int) int {
	beyond := 0
	for _, heat := range p.area(area).heat {
		if heat > hottestCharted {
			beyond++
		}
	}
	return beyond
}
