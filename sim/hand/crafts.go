package hand

import "slices"

// crafts sets labor there is against labor a boat takes.
func (h *paper) crafts(t *Table) {
	for i := range h.plan.Crafts {
		craft := &h.plan.Crafts[i]
		c := Craft{Name: craft.Name}
		absent := 0.0
		for _, crew := range craft.Crews {
			hours := crew.Hours.Worked(h.frame.From, h.frame.To).Hours() / h.weeks
			c.Crews = append(c.Crews, Crew{crew.People, hours})
			c.Planned += float64(crew.People) * hours
			absent += float64(crew.People) * hours * (crew.Absence*(1-h.hot) + crew.AbsenceHot*h.hot)
		}
		if c.Planned > 0 {
			c.Absence = absent / c.Planned
		}
		extra := 0.0
		for _, b := range h.plan.Background {
			if int(b.Craft) == i {
				c.Background += b.PerWeek
				extra += b.PerBoat
			}
		}
		c.Available = max(c.Planned-absent-c.Background, 0)
		for m := range h.lines {
			c.PerModel = append(c.PerModel, h.lines[m].labor[i]+extra)
		}
		if c.PerBoat = t.mean(c.PerModel); c.PerBoat > 0 {
			c.Boats = c.Available / c.PerBoat
		}
		t.Crafts = append(t.Crafts, c)
	}
	h.help(t)
}

// help counts the people of helpers and their own work together with those
// they help, where that gives more boats: the hours there are of all of them
// over the hours a boat takes of all of them.
func (h *paper) help(t *Table) {
	for i := range t.Crafts {
		c := &t.Crafts[i]
		there, perBoat := c.Available, c.PerBoat
		for k := range h.plan.Crafts {
			if slices.Contains(h.plan.Crafts[k].Helps, int16(i)) {
				c.Helpers = append(c.Helpers, t.Crafts[k].Name)
				there += t.Crafts[k].Available
				perBoat += t.Crafts[k].PerBoat
			}
		}
		if c.PerBoat > 0 {
			c.Boats = max(c.Boats, there/perBoat)
		}
	}
}
