package climate

import (
	"fmt"
	"math"
)

// SetPoints are the temperatures in °C between which an area is left alone: it
// is heated up to Heat and cooled down to Cool. Unheated and Uncooled switch
// one off.
type SetPoints struct{ Heat, Cool float64 }

// Unheated is a heating set point that is never reached.
func Unheated() float64 { return math.Inf(-1) }

// Uncooled is a cooling set point that is never reached.
func Uncooled() float64 { return math.Inf(1) }

// Area is a part of the plant with air of its own. Start from OpenArea; the
// zero value is heated and cooled to 0 °C.
type Area struct {
	Name     string
	GainK    float64   // how much warmer than outdoors the air is left alone, K: people, machines, sun on the roof
	Day      SetPoints // outside the night
	Night    SetPoints // night set-back
	From, To int       // the night in minutes after midnight; it runs over midnight when From > To; none when equal
	Weekend  bool      // Saturday and Sunday are night all day
	MostRH   float64   // dehumidified to this relative humidity, 0 … 1; 1: never
	LagHours float64   // time constant of the molds behind the air, h; 0: none
}

// DefaultLagHours is the time constant of a mold of fiberglass on a steel
// frame, an assumption within 0.5 … 3 h.
const DefaultLagHours = 1.0

// DefaultGainK is how much warmer than outdoors a plant is left alone, in K, an
// assumption.
const DefaultGainK = 2.0

// OpenArea is an area as warm and moist as outdoors, without heating or cooling.
func OpenArea(name string) Area {
	open := SetPoints{Unheated(), Uncooled()}
	return Area{Name: name, Day: open, Night: open, MostRH: 1, LagHours: DefaultLagHours}
}

// Heated is a with a heating set point in °C for day and night.
func (a Area) Heated(c float64) Area {
	a.Day.Heat, a.Night.Heat = c, c
	return a
}

// Check reports set points that contradict each other.
func (a Area) Check() error {
	for _, s := range []struct {
		when string
		SetPoints
	}{{"day", a.Day}, {"night", a.Night}} {
		if s.Heat > s.Cool {
			return fmt.Errorf("area %q: by %s it is heated to %.1f C and cooled to %.1f C; allowed: heating at or below cooling", a.Name, s.when, s.Heat, s.Cool)
		}
	}
	return nil
}

// at gives the set points of an hour of a day. An hour is part of the night if
// its middle is.
func (a *Area) at(weekend bool, hour int) SetPoints {
	middle := hour*60 + 30
	night := a.From <= middle && middle < a.To
	if a.From > a.To {
		night = a.From <= middle || middle < a.To
	}
	if night || weekend && a.Weekend {
		return a.Night
	}
	return a.Day
}

// week is the set points of every hour of a week that begins on Monday.
func (a *Area) week() (w [7 * hoursPerDay]SetPoints) {
	for h := range w {
		w[h] = a.at(h/hoursPerDay >= 5, h%hoursPerDay)
	}
	return w
}
