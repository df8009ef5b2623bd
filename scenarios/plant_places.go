package scenarios

import (
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
)

// colorList makes the colors.
func (b *builder) colorList() {
	b.colors = map[string]int16{}
	for name, v := range b.v.Each("colors") {
		look := b.look(v.At("look"))
		b.colors[name] = int16(len(b.plan.Colors))
		b.colorNames = append(b.colorNames, name)
		b.plan.Colors = append(b.plan.Colors, sim.Color{Name: name, Look: look, Dark: b.plan.Finish.Colors[look].Haze >= 0.9})
	}
}

// look finds how a color shows haze.
func (b *builder) look(v *Value) int {
	if i, ok := b.plan.Finish.Color(v.Text()); ok {
		return i
	}
	var names []string
	for _, c := range b.plan.Finish.Colors {
		names = append(names, c.Name)
	}
	b.unknownName(v, "look", v.Text(), names)
	return 0
}

// placeList makes the places with their guns and failures.
func (b *builder) placeList() {
	b.places = map[string]int16{}
	for name, v := range b.v.Each("places") {
		i := int16(len(b.plan.Places))
		b.places[name] = i
		b.placeNames = append(b.placeNames, name)
		p := sim.Place{Name: name, Count: -1, Kind: map[string]sim.PlaceKind{"place": sim.Bay, "booth": sim.Booth, "hoist": sim.Hoist}[v.At("kind").Text()]}
		if v.At("count").Given() {
			p.Count = v.At("count").Count()
		}
		p.Area = b.areaOf(v.At("area"), sim.None)
		if v.At("warm").Given() {
			p.Area = b.warmArea(v.At("warm").Celsius())
		}
		if v.At("guns").Len() > 0 && (p.Count < 0 || p.Kind != sim.Booth) {
			b.complain(v.At("guns"), "gun sets need a booth with a count", "kind: booth, count: 1 or more", "")
		} else {
			for u := range max(p.Count, 0) {
				p.Guns = append(p.Guns, b.guns(v, i, int16(u)))
			}
		}
		b.failures(v, i, sim.None, p.Count)
		b.plan.Places = append(b.plan.Places, p)
	}
}

// guns are the gun sets of one booth, each booth of a place with its own.
func (b *builder) guns(place *Value, p, u int16) []sim.Gun {
	var out []sim.Gun
	for _, v := range place.Each("guns") {
		g := sim.Gun{Name: v.At("name").Text(), Pot: v.At("pot").Flag(), Color: sim.None, Flush: 15 * clock.Minute}
		if g.Pot {
			g.Flush = 5 * clock.Minute
		}
		if v.At("flush").Given() {
			g.Flush = clock.FromHours(v.At("flush").Hours())
		}
		if v.At("color").Given() {
			g.Color = b.colors[v.At("color").Text()]
		}
		if v.At("fails_after").Given() && v.At("repair").Given() {
			b.plan.Failures = append(b.plan.Failures, sim.Failure{Place: p, Unit: u, Gun: int16(len(out)),
				Up: draw.Compile(v.At("fails_after").Dist()), Repair: draw.Compile(v.At("repair").Dist()), WhileWorking: true})
		}
		out = append(out, g)
	}
	return out
}

// failures says how each unit of a place breaks down.
func (b *builder) failures(v *Value, p, gun int16, count int) {
	every, repair := v.At("fails_after"), v.At("repair")
	switch {
	case !every.Given() && !repair.Given():
		return
	case !every.Given() || !repair.Given():
		b.complain(v, "a place that fails needs both fails_after and repair", "", "")
		return
	case count < 0:
		b.complain(every, "places without limit cannot fail", "a place with a count", "")
		return
	}
	for u := range count {
		b.plan.Failures = append(b.plan.Failures, sim.Failure{Place: p, Unit: int16(u), Gun: gun,
			Up: draw.Compile(every.Dist()), Repair: draw.Compile(repair.Dist()), WhileWorking: v.At("fails_in_use").Flag()})
	}
}
