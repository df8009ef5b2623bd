package finish

import "moldturn/sim/param"

// Growth holds the numbers of build-up on molds.
type Growth struct {
	HotFrom  float64 // °C of heat index where heat begins to matter
	HotSpan  float64 // K of heat index that add HotGain
	HotGain  float64 // what one span of heat adds to the rate
	HotMost  float64 // spans that count at most
	PerGreen float64 // what a missing degree of cure (0 … 1) adds to the rate
}

func defaultGrowth() Growth {
	return Growth{HotFrom: (75 - 32) / 1.8, HotSpan: 30 / 1.8, HotGain: 2.0 / 3, HotMost: 1.5, PerGreen: 20}
}

// Pull is what one pull adds to the build-up of its mold.
type Pull struct {
	Grade      int     // index into Params.Grades
	Shape      float64 // 1 for a smooth hull; see Shapes
	HeatIndexF float64 // mean heat index of the plant from spraying to the last shot, °F
	Green      float64 // degree of cure missing at the pull, 0 … 1
}

// Grow is the build-up that a pull adds, in pulls of a cool smooth hull of
// premium grade pulled in time; never negative.
//
// Heat stands for two things at once: it softens wax and drives styrene out.
// That careful plants strip more often in hot months is common practice, no
// source; that a soft part sheds more likewise. The numbers are assumptions.
func Grow(p *Params, pull Pull) float64 {
	return p.Grades[pull.Grade].BuildUp * pull.Shape * p.Growth.Hot(pull.HeatIndexF) * (1 + p.Growth.PerGreen*max(pull.Green, 0))
}

// Hot is the factor on build-up of a plant with that heat index, 1 when cool.
func (g *Growth) Hot(heatIndexF float64) float64 {
	spans := ((heatIndexF-32)/1.8 - g.HotFrom) / g.HotSpan
	return 1 + g.HotGain*min(max(spans, 0), g.HotMost)
}

// Shape is how much faster a kind of part builds up on its mold than a smooth
// hull does.
type Shape struct {
	Name    string
	BuildUp float64
}

// Shapes lists the kinds of parts. That heavy styrene build-up is found in
// non-skid first: "Importance of clean molds", composites supplier note. The
// numbers are assumptions. The list is the caller's.
func Shapes() []Shape {
	return []Shape{{"hull", 1}, {"liner", 1.2}, {"deck", 1.5}}
}

var growthInputs = []input{
	{param.Row{Path: "finish.build_up.hot_from", Kind: param.Temperature, Low: -20, High: 60, Default: "75 F",
		Doc:  "heat index of the plant from which build-up grows faster",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Growth.HotFrom }},
	{param.Row{Path: "finish.build_up.hot_span", Kind: param.Difference, Low: 1, High: 60, Default: "30 F",
		Doc:  "rise of heat index that adds one hot_gain to the rate of build-up",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Growth.HotSpan }},
	{param.Row{Path: "finish.build_up.hot_gain", Kind: param.Number, Low: 0, High: 10, Default: "0.6666666666666666",
		Doc:  "what one hot_span adds to the rate of build-up of 1",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Growth.HotGain }},
	{param.Row{Path: "finish.build_up.hot_most", Kind: param.Number, Low: 0, High: 10, Default: "1.5",
		Doc:  "the most hot_spans that count",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Growth.HotMost }},
	{param.Row{Path: "finish.build_up.per_green", Kind: param.Number, Low: 0, High: 1000, Default: "20",
		Doc:  "what a degree of cure (0 … 1) missing at the pull adds to the rate of build-up of 1",
		Mark: param.Assumption, Source: noLog}, func(p *Params) *float64 { return &p.Growth.PerGreen }},
}
