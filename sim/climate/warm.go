package climate

// AddWarm adds an area, after the others, in which molds are kept at a
// temperature in °C: a warm place in the first area, whose moisture its air
// has. It gives the area's number, and must be called before the Path is read
// by others.
func (p *Path) AddWarm(tempC float64) int {
	first := p.area(0)
	p.areas = append(p.areas, newPath(1, p.hours).areas[0])
	s := &p.areas[len(p.areas)-1]
	for h := range s.mold {
		dew := min(float64(first.dew[h]), tempC)
		rh := RHFromDew(tempC, dew)
		s.mold[h], s.air[h] = tempC, float32(tempC)
		s.dew[h], s.rh[h] = float32(dew), float32(rh)
		s.heat[h] = float32(HeatIndexF(Fahrenheit(tempC), rh))
	}
	p.finish()
	return len(p.areas) - 1
}
