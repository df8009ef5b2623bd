package study

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/permit"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// BoothRate is the styrene, or other largest HAP, that gel coat evaporates in an
// hour in which one booth is sprayed in, kg; 0 when none ever was.
func (p *Permits) BoothRate() float64 {
	kg, hours := 0.0, 0.0
	p.counted(func(m *permit.MonthCounts) {
		kg += p.Setup.One(m, permit.GelCoat, permit.Band)
		hours += float64(m.Spray) / float64(clock.Hour)
	})
	if hours == 0 {
		return 0
	}
	return kg / hours
}

// ShopRate is the same of resin in an hour in which laminators are at work, kg.
// perYear is the hours in which they are, see LayHours.
func (p *Permits) ShopRate(perYear float64) float64 {
	kg, months := 0.0, 0
	p.counted(func(m *permit.MonthCounts) {
		kg += p.Setup.One(m, permit.Skin, permit.Laminate, permit.SmallResin)
		months++
	})
	if months == 0 || perYear <= 0 {
		return 0
	}
	return kg * permit.Year / float64(months) / perYear
}

// counted visits the counted months of every replication.
func (p *Permits) counted(visit func(*permit.MonthCounts)) {
	first, end := p.Setup.Plant.First(), p.Setup.Plant.End()
	for _, c := range p.Counts {
		for n := first; n < min(end, len(c.Months)); n++ {
			visit(&c.Months[n])
		}
	}
}

// LayHours is the hours of a year in which some crew that laminates is at work,
// over the counted time.
func LayHours(p *sim.Plan, f *record.Frame) float64 {
	var all []*shift.Calendar
	for c := range p.Crafts {
		if lays(p, int16(c)) {
			for i := range p.Crafts[c].Crews {
				all = append(all, p.Crafts[c].Crews[i].Hours)
			}
		}
	}
	years := float64(f.To-f.From) / (365.25 * float64(clock.Day))
	if len(all) == 0 || years <= 0 {
		return 0
	}
	return shift.Union(all...).Worked(f.From, f.To).Hours() / years
}

// lays tells whether a craft lays up parts.
func lays(p *sim.Plan, craft int16) bool {
	for i := range p.Parts {
		for k := range p.Routes[p.Parts[i].Route].Steps {
			s := &p.Routes[p.Parts[i].Route].Steps[k]
			if s.Craft == craft && laid(s) > 0 {
				return true
			}
		}
	}
	return false
}
