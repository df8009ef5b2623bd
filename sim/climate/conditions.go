// Package climate is the air and the molds through a run: outdoor weather from
// a file or made from monthly normals, plant air per area behind heating and
// cooling, mold temperature with its lag, and what follows from them (dew
// point, relative humidity, heat index).
//
// The world model. Time is cut into hours. Each hour of each area has one set
// of values that hold from its first millisecond to its last, the means of that
// hour: a sum over hours is then an exact integral, and a reader who adds up
// hourly cure gets what a reader of single instants gets. Weather is made once
// per replication and shared by all alternatives; it depends on the replication
// and on nothing that happens in the plant.
//
// Units: °C for temperatures, °F for heat index (as its published tables), K
// for differences, 0 … 1 for relative humidity, Pa for pressures. Hours and
// days count from midnight of the scenario's start date.
package climate

import "moldturn/sim/clock"

// Conditions is the state of the air and the molds through one replication. A
// plant is divided into areas, numbered from 0 in the scenario's order. Every
// method is a pure function of its arguments and safe for concurrent use; any
// area and any time is allowed (see Path for what lies outside).
type Conditions interface {
	MoldC(area int, t clock.Time) float64      // mold temperature, °C
	AirC(area int, t clock.Time) float64       // plant air, °C
	HeatIndexF(area int, t clock.Time) float64 // heat index of the plant air, °F
	DewMargin(area int, t clock.Time) float64  // mold temperature minus dew point of the air, K
	RH(area int, t clock.Time) float64         // relative humidity of the air, 0 … 1
}
