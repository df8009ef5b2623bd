package finish

import (
	"slices"

	"moldturn/sim/param"
)

// Params is every number of the finish of one plant. The zero value is not
// usable; start from Default. A copy may be changed without changing the
// original.
type Params struct {
	Grades   []Grade
	Colors   []Color
	Haze     Haze
	PostCure PostCure
	Wax      Wax
	Noise    Noise
	Growth   Growth
	Inspect  Inspect
	Gloss    Scale    // of readings in gloss units
	Eye      []Visual // of grades given by eye
}

// Default is the plant of the assumptions table: see Inputs for the marks. It
// is fresh at every call.
func Default() Params {
	return Params{
		builtinGrades(), builtinColors(),
		defaultHaze(), defaultPostCure(), defaultWax(), defaultNoise(), defaultGrowth(), defaultInspect(),
		DefaultScale(), Visuals(),
	}
}

// Grade gives the index of the grade with that name; false when there is none.
func (p *Params) Grade(name string) (int, bool) {
	i := slices.IndexFunc(p.Grades, func(g Grade) bool { return g.Name == name })
	return i, i >= 0
}

// Color gives the index of the color with that name; false when there is none.
func (p *Params) Color(name string) (int, bool) {
	i := slices.IndexFunc(p.Colors, func(c Color) bool { return c.Name == name })
	return i, i >= 0
}

// AddGrade takes g in place of the grade of the same name, else as a new one,
// and gives its index. Other indexes do not change.
func (p *Params) AddGrade(g Grade) int {
	p.Grades = slices.Clone(p.Grades)
	i, ok := p.Grade(g.Name)
	if !ok {
		i = len(p.Grades)
		p.Grades = append(p.Grades, Grade{})
	}
	p.Grades[i] = g
	return i
}

// AddColor is AddGrade for colors.
func (p *Params) AddColor(c Color) int {
	p.Colors = slices.Clone(p.Colors)
	i, ok := p.Color(c.Name)
	if !ok {
		i = len(p.Colors)
		p.Colors = append(p.Colors, Color{})
	}
	p.Colors[i] = c
	return i
}

// input ties a row to the field it sets, in the base unit of the row's kind.
type input struct {
	row   param.Row
	field func(*Params) *float64
}

const (
	noLog     = "no published data; calibrate with the plant's gloss log"
	hoursVary = "no published data; calibrate with the plant's buffing hours"
)

// tables are the inputs that name grades and colors; see AddGrade, AddColor.
func tables() []param.Row {
	return []param.Row{
		{Path: "finish.grades", Kind: param.Map, Optional: true,
			Doc: "grades of gel coat beside entry, medium and premium, or in their place", Mark: param.Assumption, Source: noLog},
		{Path: "finish.grades.*.luster_lost", Kind: param.Number, Low: 0, High: 50,
			Doc:  "points of luster that the grade cannot reach: premium 1.9, medium 3, entry 5",
			Mark: param.Assumption, Source: noLog},
		{Path: "finish.grades.*.build_up", Kind: param.Number, Low: 0.01, High: 20, Default: "1",
			Doc:  "how fast the grade builds up on a mold against premium: premium 1, medium 1.25, entry 1.6",
			Mark: param.Assumption, Source: noLog},
		{Path: "finish.shades", Kind: param.Map, Optional: true,
			Doc: "how colors show flaws, beside dark, pastel and white, or in their place", Mark: param.Assumption, Source: noLog},
		{Path: "finish.shades.*.haze_seen", Kind: param.Share,
			Doc:  "share of the mold's haze that shows: dark 1, pastel 0.6, white 0.02",
			Mark: param.Assumption, Source: noLog},
		{Path: "finish.shades.*.waves_seen", Kind: param.Number, Low: 0, High: 10, Default: "1",
			Doc:  "how strongly waviness shows against a light color: dark 1.5",
			Mark: param.Assumption, Source: noLog},
		{Path: "finish.shades.*.white", Kind: param.Flag, Default: "false",
			Doc: "whether it takes parts late in the strip cycle unharmed", Mark: param.CommonPractice, Source: "haze does not show on solid white"},
	}
}

// fixed are the inputs with a field of their own.
func fixed() []input {
	var all []input
	for _, t := range terms {
		all = append(all, t.inputs...)
	}
	return append(append(all, growthInputs...), inspectInputs...)
}

// Inputs lists what a scenario may say about finish. It is a fresh list at
// every call.
func Inputs() []param.Row {
	rows := append(tables(), scaleInputs()...)
	for _, in := range fixed() {
		rows = append(rows, in.row)
	}
	return rows
}

// Set gives the input of that path a value in the base unit of its row's kind.
// It reports false, and changes nothing, when the path is not one of Inputs or
// belongs to a table or a list.
func (p *Params) Set(path string, value float64) bool {
	for _, in := range fixed() {
		if in.row.Path == path {
			*in.field(p) = value
			return true
		}
	}
	return false
}
