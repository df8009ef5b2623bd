package climate

import (
	"testing"
	"time"

	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// Cooling without drying brings molds near dew point; cooling with drying, mild
// cooling in dry air, and no cooling do not.
func TestDamp(t *testing.T) {
	steady := func(airC, dewC float64) Normals {
		n := Normals{PeakHour: 15}
		for m := range n.Months {
			n.Months[m] = Normal{MeanC: airC, DewC: dewC}
		}
		return n
	}
	area := func(cool, mostRH float64) Area {
		a := OpenArea("booth")
		a.GainK, a.Day.Cool, a.Night.Cool, a.MostRH, a.LagHours = 0, cool, cool, mostRH, 0
		return a
	}
	const hours = 100
	for _, c := range []struct {
		name                             string
		airC, dewC, cool, mostRH, margin float64
		want                             Damp
	}{
		{"humid coast, cooled to just above dew point", 30, 22, 24, 1, 3, Damp{hours, hours}},
		{"the same, dried", 30, 22, 24, 0.6, 3, Damp{hours, 0}},
		{"dry air", 30, 10, 24, 1, 3, Damp{hours, 0}},
		{"cooled to the margin exactly", 30, 20, 23.01, 1, 3, Damp{hours, 0}},
		{"and below it", 30, 20, 22.9, 1, 3, Damp{hours, hours}},
		{"near dew point without cooling too", 30, 28, 29, 1, 3, Damp{hours, 0}},
		{"never as warm as that", 30, 22, 35, 1, 3, Damp{}},
		{"not cooled", 30, 22, Uncooled(), 1, 3, Damp{}},
	} {
		climate := Climate{Normals: steady(c.airC, c.dewC), Areas: []Area{area(c.cool, c.mostRH)}}
		got := climate.Damp(draw.Root(1, 0), shift.DateOf(2027, time.July, 5), hours, c.margin)
		if len(got) != 1 || got[0] != c.want {
			t.Errorf("%s: %+v, want %+v", c.name, got, c.want)
		}
	}
}
