package scenarios

import (
	"bytes"
	"errors"
	"fmt"
	"path"
	"slices"
	"strings"
	"sync"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
)

// weather is where the air of a plant comes from.
type weather struct {
	climate climate.Climate
	warm    []float64 // °C of the areas of warm places, after those of the climate
}

// resinOf makes the table of a resin when it is first asked for.
func resinOf(p cure.Params) func() *cure.Table {
	return sync.OnceValue(func() *cure.Table { return cure.NewTable(p) })
}

// Air makes the conditions of one replication.
func (p *Plant) Air(seed uint64, replication int) (*sim.Air, error) {
	return p.air(&p.weather.climate, draw.Root(seed, replication)), nil
}

// Forecast is the air to be expected: the weather of the normals without the
// ups and downs of the days, or of the first year of a file.
func (p *Plant) Forecast() *sim.Air {
	c := p.weather.climate
	for i := range c.Normals.Months {
		c.Normals.Months[i].SpreadK, c.Normals.Months[i].DewSpreadK = 0, 0
	}
	return p.air(&c, draw.Root(0, 0))
}

func (p *Plant) air(c *climate.Climate, key draw.Key) *sim.Air {
	plan := p.Plan()
	path := c.Path(key, plan.Start, int(plan.Length/clock.Hour)+24*60)
	for _, tempC := range p.weather.warm {
		path.AddWarm(tempC)
	}
	return sim.AirOf(path, p.resin())
}

// climateKey is the same for plants whose air and cure are the same.
func (b *builder) climateKey() string {
	key := fmt.Sprintf("%v %v %+v %v", b.plan.Start, b.plan.Length, b.plan.Cure, b.weather.warm)
	b.v.At("climate").leaves(false, func(leaf *Value, _ bool) {
		if leaf.Given() {
			key += fmt.Sprintf(" %s=%s/%v", leaf.path, leaf.text, leaf.number)
		}
	})
	return key
}

// climate reads the weather and the areas.
func (b *builder) climate(files func(string) ([]byte, error)) {
	v := b.v.At("climate")
	c := &b.weather.climate
	b.areas = map[string]int{}
	for name, a := range v.Each("areas") {
		b.areas[name] = len(c.Areas)
		b.plan.Areas = append(b.plan.Areas, name)
		c.Areas = append(c.Areas, areaFrom(name, a))
	}
	c.Normals = normalsFrom(v.At("normals"))
	switch v.At("weather").Text() {
	case "months":
		c.Months = monthsFrom(v.At("months"))
	case "file":
		c.File = b.weatherFile(v, files)
	}
	if err := c.Check(); err != nil {
		b.complain(v, err.Error(), "", "")
	}
}

func areaFrom(name string, v *Value) climate.Area {
	a := climate.OpenArea(name).Heated(v.At("heat").Celsius())
	a.GainK, a.MostRH, a.LagHours = v.At("gain").Kelvins(), v.At("most_humidity").Share(), v.At("mold_lag").Hours()
	if v.At("cool").Given() {
		a.Day.Cool = v.At("cool").Celsius()
	}
	a.Night = a.Day
	n := v.At("night")
	if n.At("heat").Given() {
		a.Night.Heat = n.At("heat").Celsius()
	}
	if n.At("cool").Given() {
		a.Night.Cool = n.At("cool").Celsius()
	}
	a.From, a.To, a.Weekend = n.At("from").Minutes(), n.At("to").Minutes(), n.At("weekend").Flag()
	return a
}

func normalsFrom(v *Value) climate.Normals {
	n := climate.Normals{PeakHour: float64(v.At("warmest_time").Minutes()) / 60, Persistence: v.At("persistence").Number()}
	for _, l := range []struct {
		list  string
		field func(*climate.Normal) *float64
	}{
		{"mean", func(m *climate.Normal) *float64 { return &m.MeanC }},
		{"daily_range", func(m *climate.Normal) *float64 { return &m.RangeK }},
		{"spread", func(m *climate.Normal) *float64 { return &m.SpreadK }},
		{"dew_point", func(m *climate.Normal) *float64 { return &m.DewC }},
		{"dew_spread", func(m *climate.Normal) *float64 { return &m.DewSpreadK }},
		{"dew_tie", func(m *climate.Normal) *float64 { return &m.DewTie }},
	} {
		for i, x := range twelveOf(v, l.list) {
			*l.field(&n.Months[i]) = x
		}
	}
	return n
}

func monthsFrom(v *Value) *climate.Months {
	rh := twelveOf(v, "humidity")
	m := climate.Months{PlantC: twelveOf(v, "plant"), HeatIndexF: twelveOf(v, "heat_index"), RH: &rh, Stepped: v.At("stepped").Flag()}
	for i := range m.HeatIndexF {
		m.HeatIndexF[i] = fahrenheit(m.HeatIndexF[i])
	}
	return &m
}

// twelveOf reads a list of months in the base unit of its items.
func twelveOf(v *Value, list string) (out [12]float64) {
	i := 0
	for _, m := range v.Each(list) {
		out[i] = m.Base()
		i++
	}
	return out
}

// weatherFile reads the weather file that the scenario names.
func (b *builder) weatherFile(v *Value, files func(string) ([]byte, error)) *climate.Weather {
	at := v.At("file")
	if !at.Given() {
		b.complain(v.At("weather"), "climate.weather is file and climate.file is not given", "climate.file: name of an EPW or CSV file", "")
		return nil
	}
	name := at.Text()
	if files == nil {
		b.complain(at, "no file can be opened here", "", "")
		return nil
	}
	data, err := files(name)
	if err != nil {
		b.complain(at, fmt.Sprintf("weather file %s: %v", quoted(name), err), "", "")
		return nil
	}
	read := climate.ReadEPW
	if strings.EqualFold(path.Ext(name), ".csv") {
		read = climate.ReadCSV
	}
	w, err := read(bytes.NewReader(data), name, int(v.At("longest_gap").Hours()))
	if err != nil {
		b.weatherFaults(at, err)
		return nil
	}
	return w
}

// weatherFaults adds the complaints about a weather file, each at its place in
// that file.
func (b *builder) weatherFaults(at *Value, err error) {
	var faults *climate.Complaints
	if !errors.As(err, &faults) {
		b.complain(at, err.Error(), "", "")
		return
	}
	for i, f := range faults.List {
		found := f.Found
		if i == len(faults.List)-1 && faults.More > 0 {
			found += fmt.Sprintf("; and %d more mistakes in this file", faults.More)
		}
		b.complaints = append(b.complaints, Complaint{File: f.File, Line: f.Line, Column: max(f.Column, min(f.Line, 1)), Path: at.path,
			Message: found, Allowed: f.Allowed, Hint: f.Hint})
	}
}

// areaOf is the number of the area a value names, or otherwise.
func (b *builder) areaOf(v *Value, otherwise int) int {
	if !v.Given() {
		return otherwise
	}
	return b.areas[v.Text()]
}

// warmArea is the number of the area of warm places of a temperature.
func (b *builder) warmArea(tempC float64) int {
	first := len(b.weather.climate.Areas)
	i := slices.Index(b.weather.warm, tempC)
	if i < 0 {
		i = len(b.weather.warm)
		b.weather.warm = append(b.weather.warm, tempC)
		b.plan.Areas = append(b.plan.Areas, fmt.Sprintf("warm place at %g °C", tempC))
	}
	return first + i
}

// stepAreas gives every step the area it happens in: that of the place taken
// last of those the job stands in, else that of its craft. A wait happens where
// the step before it did. Holds get their meaning.
func (b *builder) stepAreas() {
	for i := range b.plan.Routes {
		area := 0
		var stands []int16
		steps := b.plan.Routes[i].Steps
		for k := range steps {
			s := &steps[k]
			if s.Pace == sim.ByPolicy && s.Verb == sim.NoVerb {
				s.Verb = sim.Held
			}
			stands = without(stands, s.Swap)
			stands = append(without(stands, s.Take), s.Take...)
			if s.Craft != sim.None {
				area = b.plan.Crafts[s.Craft].Area
			}
			for _, p := range stands {
				if a := b.plan.Places[p].Area; a != sim.None {
					area = a
				}
			}
			s.Area = area
			stands = without(stands, s.Free)
		}
	}
	for i := range b.plan.Places {
		b.plan.Places[i].Area = max(b.plan.Places[i].Area, 0)
	}
}

// warms says whether one of some places is warm.
func (b *builder) warms(places []int16) bool {
	return slices.ContainsFunc(places, func(p int16) bool { return b.plan.Places[p].Area >= len(b.weather.climate.Areas) })
}

// without is list less the places of some.
func without(list, some []int16) []int16 {
	return slices.DeleteFunc(list, func(p int16) bool { return slices.Contains(some, p) })
}

// usualHardness is the Barcol hardness at which parts are pulled where nothing
// else is said, an assumption.
const usualHardness = 35

// HoldCard gives what the plant's hold card is made from.
func (p *Plant) HoldCard() cure.Hold {
	h := p.Plan().Hold
	card := cure.Hold{Resin: p.resin(), Barcol: p.barcol, Hardness: usualHardness, Clock: clock.FromHours(h.Clock), Most: clock.Never}
	if h.Degree > 0 {
		card.Hardness = p.barcol.At(h.Degree)
	}
	if h.Most > 0 {
		card.Most = clock.FromHours(h.Most)
	}
	return card
}
