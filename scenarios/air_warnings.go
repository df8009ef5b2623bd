package scenarios

import (
	"fmt"
	"strings"

	"moldturn/sim/climate"
	"moldturn/sim/draw"
)

// AirWarning is something about the air of a plant that is allowed and that its
// user should know. At is the value it is about.
type AirWarning struct {
	At   *Value
	Text string
}

const (
	// dampShare is the share of cooled hours near dew point from which cooling
	// is warned of. Assumption, no source.
	dampShare   = 0.05
	hoursOfYear = 8760
)

// AirWarnings looks at a year of weather: were gaps of its file filled; does
// cooling without drying leave molds near dew point, so that waxing and spraying
// wait; is the heat index beyond its published chart.
func (p *Plant) AirWarnings() []AirWarning {
	var out []AirWarning
	c, plan := &p.weather.climate, p.Plan()
	margin := plan.Limits.DewMargin
	key := draw.Root(1, 0)
	damp := c.Damp(key, plan.Start, hoursOfYear, margin)
	path := c.Path(key, plan.Start, hoursOfYear)
	if c.File != nil && len(c.File.Repairs) > 0 {
		out = append(out, AirWarning{p.Value.At("climate.file"), filled(c.File)})
	}
	i := 0
	for name, area := range p.Value.Each("climate.areas") {
		if d := damp[i]; float64(d.Near) > dampShare*float64(d.Cooled) {
			out = append(out, AirWarning{area.At(p.coolerOf(area)), fmt.Sprintf(
				"area %q is cooled and not dried enough: in %d of %d cooled hours of a year molds come within %g °C of dew point, where waxing and spraying wait; most_humidity dries the air",
				name, d.Near, d.Cooled, margin)})
		}
		if beyond := path.BeyondChart(i); beyond > 0 {
			out = append(out, AirWarning{area, fmt.Sprintf(
				"area %q: the heat index is above its published chart in %d of %d hours of a year; what depends on it is a guess there", name, beyond, hoursOfYear)})
		}
		i++
	}
	return out
}

// filled tells of the gaps of a weather file that were filled.
func filled(w *climate.Weather) string {
	hours := map[string]int{} // by what is missing: one hour may lack both
	var kinds []string
	for _, r := range w.Repairs {
		if hours[r.What] == 0 {
			kinds = append(kinds, r.What)
		}
		hours[r.What] += r.Hours
	}
	for i, what := range kinds {
		kinds[i] = fmt.Sprintf("%d hours of %s", hours[what], what)
	}
	return fmt.Sprintf("weather file %s: %s are missing and filled in straight lines, first %s", quoted(w.Name), strings.Join(kinds, " and "), w.Repairs[0])
}

// coolerOf is the input that cools an area.
func (p *Plant) coolerOf(area *Value) string {
	if area.At("cool").Given() {
		return "cool"
	}
	return "night.cool"
}
