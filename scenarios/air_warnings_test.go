package scenarios

import (
	"fmt"
	"strings"
	"testing"

	"moldturn/sim/draw"
)

// Cooling is warned of when it leaves molds near dew point in more than one
// cooled hour of twenty, and not otherwise; both happen on the invented coast.
func TestAirWarnings(t *testing.T) {
	warned, quiet := 0, 0
	for cool := 22; cool <= 40; cool += 2 {
		s := fenwater(t, 1, fmt.Sprintf("climate.areas.plant.cool = %d C", cool))
		c, plan := &s.Base.weather.climate, s.Base.Plan()
		d := c.Damp(draw.Root(1, 0), plan.Start, hoursOfYear, plan.Limits.DewMargin)[0]
		var texts []string
		for _, w := range s.Base.AirWarnings() {
			texts = append(texts, w.Text)
		}
		says := strings.Contains(strings.Join(texts, "; "), "is cooled and not dried enough")
		if want := float64(d.Near) > 0.05*float64(d.Cooled); says != want {
			t.Errorf("cooled to %d °C, %+v: %q", cool, d, texts)
		}
		if says {
			warned++
		} else {
			quiet++
		}
	}
	if warned == 0 || quiet == 0 {
		t.Errorf("warned %d times, quiet %d times", warned, quiet)
	}
	if w := fenwater(t, 1, "climate.areas.plant.cool = 24 C", "climate.areas.plant.most_humidity = 55 %").Base.AirWarnings(); len(w) > 0 {
		t.Errorf("dried: %q", w[0].Text)
	}
}

// A shop hotter than the chart of the heat index is told so.
func TestAirWarningsBeyondTheChart(t *testing.T) {
	if w := fenwater(t, 1).Base.AirWarnings(); len(w) > 0 {
		t.Errorf("the demo: %q", w[0].Text)
	}
	w := fenwater(t, 1, "climate.areas.plant.gain = 18 C").Base.AirWarnings()
	if len(w) != 1 || !strings.Contains(w[0].Text, "above its published chart") {
		t.Errorf("%+v", w)
	}
}
