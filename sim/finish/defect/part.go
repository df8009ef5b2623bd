package defect

import "moldturn/sim/param"

// Part is what happened to one part. Start from Reference: the zero value is a
// part without gel coat.
type Part struct {
	Film         float64 // mm of wet gel coat
	SprayC       float64 // °C of the mold when it was sprayed
	Humidity     float64 // 0 … 1, relative, when it was sprayed
	CureC        float64 // °C, highest mold temperature from skin coat to pull
	Window       float64 // clock hours from spraying to the skin coat
	Green        float64 // degree of cure missing at the pull, 0 … 1
	MissingCoats float64 // coats of wax the mold should have had
	BuildUp      float64 // of the mold, before this part adds its own
	PullC        float64 // °C of the mold at the pull
	AfterStrip   bool    // first part after a strip
	BreakIn      int     // turn of a new or resurfaced mold, 1 … 3; 0 for none
}

// Reference is a part made as it should be: 20 mil of gel coat at 75 °F and
// 50 % humidity, skinned and pulled in good time from a waxed mold.
//
// Source of the film: 18 ± 2 mil to 25 mil in suppliers' guides, among them
// "Laying it up", Sport Fishing, Oct 2007; of 70 – 75 °F: "Gelcoat application –
// thickness, initiator level, temperature", supplier guide.
func Reference() Part {
	return Part{Film: 0.51, SprayC: 24, Humidity: 0.5, CureC: 24, Window: 3, PullC: 24}
}

// Driver is one thing in Part that a defect may depend on.
type Driver uint8

// Drivers.
const (
	None Driver = iota
	Film
	SprayC
	Humidity
	CureC
	Window
	Green
	MissingCoats
	BuildUp
	PullC
	AfterStrip
)

// drivers holds the word of a driver in paths, the kind of its bound, what it
// is, and its unit in a sentence.
var drivers = [...]struct {
	key  string
	kind param.Kind
	unit string
	doc  string
	of   func(*Part) float64
}{
	None:         {of: func(*Part) float64 { return 0 }},
	Film:         {"film", param.Length, "mm", "wet film of gel coat", func(p *Part) float64 { return p.Film }},
	SprayC:       {"spray_temperature", param.Temperature, "°C", "mold temperature when sprayed", func(p *Part) float64 { return p.SprayC }},
	Humidity:     {"humidity", param.Share, "whole of the range 0 … 1", "relative humidity when sprayed", func(p *Part) float64 { return p.Humidity }},
	CureC:        {"cure_temperature", param.Temperature, "°C", "highest mold temperature from skin coat to pull", func(p *Part) float64 { return p.CureC }},
	Window:       {"window", param.Duration, "h", "time from spraying to the skin coat", func(p *Part) float64 { return p.Window }},
	Green:        {"green", param.Share, "whole degree of cure", "degree of cure missing at the pull", func(p *Part) float64 { return p.Green }},
	MissingCoats: {"missing_coats", param.Number, "coat", "coats of wax missing", func(p *Part) float64 { return p.MissingCoats }},
	BuildUp:      {"build_up", param.Number, "pull of a cool mold", "build-up on the mold", func(p *Part) float64 { return p.BuildUp }},
	PullC:        {"mold_temperature", param.Temperature, "°C", "mold temperature at the pull", func(p *Part) float64 { return p.PullC }},
	AfterStrip: {"after_strip", param.Flag, "", "first part after a strip", func(p *Part) float64 {
		if p.AfterStrip {
			return 1
		}
		return 0
	}},
}

// String is the driver's word in paths, "film".
func (d Driver) String() string { return drivers[d].key }
