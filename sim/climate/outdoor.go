package climate

import "moldturn/sim/shift"

// Outdoor is the outdoor air of a run, hour by hour from midnight of its start
// date. Both series are as long as each other; the dew point is never above the
// temperature.
type Outdoor struct {
	Start shift.Date
	AirC  []float64 // temperature, °C
	DewC  []float64 // dew point, °C
}

// newOutdoor makes room for hours of outdoor air, at least one.
func newOutdoor(start shift.Date, hours int) *Outdoor {
	hours = max(hours, 1)
	return &Outdoor{start, make([]float64, hours), make([]float64, hours)}
}
