package scenarios

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
)

// Air makes the conditions of one replication.
func (p *Plant) Air(replication int) (*sim.Air, error) {
	v := p.Value.At("climate.months")
	var m climate.Months
	i := 0
	for _, t := range v.Each("plant") {
		m.PlantC[i] = t.Celsius()
		i++
	}
	i = 0
	for _, t := range v.Each("heat_index") {
		m.HeatIndexF[i] = fahrenheit(t.Celsius())
		i++
	}
	plan := p.Plan()
	hours := int(plan.Length/clock.Hour) + 24*60
	return sim.NewAir(m.Path(plan.Start, hours), plan.Cure), nil
}

// climateKey is the same for plants whose air and cure are the same.
func (b *builder) climateKey() string {
	key := fmt.Sprintf("%v %v %+v", b.plan.Start, b.plan.Length, b.plan.Cure)
	for _, list := range []string{"climate.months.plant", "climate.months.heat_index"} {
		for _, t := range b.v.Each(list) {
			key += fmt.Sprintf(" %v", t.Base())
		}
	}
	return key
}
