package money

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// Plant is what a Book must know of the plant: names, materials per part and
// what the steps of its routes are for.
type Plant struct {
	Start    shift.Date // day of instant 0
	From, To clock.Time // what is counted
	Open     int        // weeks that are counted and not shut down

	Crafts []string
	Models []Model
	Parts  []Part
	Routes [][]Step // by route and step
	Small  []Small  // kinds of background work
	Back   []int    // by route: the kind of background work, -1 for none

	LightCoats, FullCoats int64     // of wax that a strip leaves
	PotFlush, PumpFlush   []float64 // minutes of a flush, by kind of gun
	Pot, Pump             Flush

	AirPerHour float64      // m³ that a booth moves while spraying
	Outdoor    *[12]float64 // °C by month, the air that is heated; nil: not known
	Supply     float64      // °C of the air in the booth
}

// Model is a boat with its margin.
type Model struct {
	Name   string
	Margin float64 // price less purchased materials that no line of the ledger has
	Known  bool    // the margin is given
}

// Part is a part type with what one of it takes. Masses are whole grams.
type Part struct {
	Name  string
	Model int
	Gel   int64 // gel coat sprayed on one part, overspray included
	Band  int64 // gel coat of one accent band
	Bar   int64 // barrier coat; 0 for parts without
	Resin int64
	Glass int64
	Coat  int64 // wax of one coat
	Light int64 // stripper of a light strip
	Full  int64 // compound of a full strip
	Area  int64 // square centimeters of mold

	GelPrice  float64 // per kg, of its grade
	MoldPrice float64
	MoldLife  float64 // turns, resurfacing included; 0: without end

	GelFrom, MoldFrom, ThickFrom string // paths of the inputs behind both prices and the laminate; empty: not told
}

// Small is a kind of background work, such as small parts, with what a labor
// hour of it takes, in whole grams.
type Small struct {
	Name              string
	Gel, Resin, Glass int64
	GelPrice          float64 // per kg, of its grade
	GelFrom           string  // path of the input behind it
}

// Step is what the ledger must know of a step of a route.
type Step struct {
	Class  Class
	Repair bool // mold repair: a failure when a part has stuck
	Band   bool // sprays an accent band
	Booth  bool // the booth moves air
	Rework bool // takes rework materials
}

// Flush is what a change of color loses.
type Flush struct {
	Solvent int64 // milliliters
	Gel     int64 // grams
}

// Setup is a plant with its prices.
type Setup struct {
	Plant  Plant
	Prices Prices
}

// step looks a step up; the zero Step for none.
func (p *Plant) step(s *record.Span) Step {
	if s.Route < 0 || s.Step < 0 || int(s.Route) >= len(p.Routes) || int(s.Step) >= len(p.Routes[s.Route]) {
		return Step{}
	}
	return p.Routes[s.Route][s.Step]
}

// back is the kind of background work of a route, -1 for none.
func (p *Plant) back(route int16) int {
	if route < 0 || int(route) >= len(p.Back) {
		return -1
	}
	return p.Back[route]
}

// Years is how long the counted time is, in years of 365.25 days.
func (p *Plant) Years() float64 { return float64(p.To-p.From) / (365.25 * float64(clock.Day)) }

// Mass is the grams of a layer: area in m², film in mm, density in kg/L, and
// the share of it that ends up on the mold. 1 mm on 1 m² is 1 L.
func Mass(area, film, density, transfer float64) int64 {
	if transfer <= 0 {
		return 0
	}
	return int64(area*film*density/transfer*1000 + 0.5)
}
