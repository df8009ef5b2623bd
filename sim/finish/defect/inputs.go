package defect

import (
	"strconv"

	"moldturn/sim/draw"
	"moldturn/sim/param"
)

// input ties a row to the field it sets; one of number and dist is given.
type input struct {
	row    param.Row
	number func(*Params) *float64
	dist   func(*Params) *draw.Dist
}

const (
	noRates  = "no published rates; set so that at reference conditions 75 % of parts need touch-up, 8 % over 4 h, 0.4 % are scrapped"
	noHours  = "common practice for a 24 ft boat, no source"
	noDegree = "the cause is published, how strongly it acts is not"
)

func inputs() []input {
	var out []input
	for i, d := range all {
		out = append(out, lawInputs(i, d)...)
		for k, e := range d.effects {
			if e.Driver != None {
				out = append(out, effectInputs(i, k, d, e)...)
			}
		}
	}
	return append(out, breakInInputs()...)
}

func lawInputs(i int, d *Defect) []input {
	at := "defects." + d.Key
	return []input{
		{row: param.Row{Path: at + ".chance", Kind: param.Share, Default: percent(d.chance), Mark: param.Assumption, Source: noRates,
			Doc: "share of parts with " + d.Key + " at reference conditions: " + d.Doc},
			number: func(p *Params) *float64 { return &p.Each[i].Chance }},
		{row: param.Row{Path: at + ".most", Kind: param.Share, Default: percent(d.most), Mark: param.Assumption, Source: noRates,
			Doc: "the highest chance under any conditions"},
			number: func(p *Params) *float64 { return &p.Each[i].Most }},
		{row: param.Row{Path: at + ".found", Kind: param.Share, Default: percent(d.found), Mark: param.Assumption, Source: "no published data",
			Doc: "share that inspection sees before shipping"},
			number: func(p *Params) *float64 { return &p.Each[i].Found }},
		{row: param.Row{Path: at + ".scrapped", Kind: param.Share, Default: percent(d.scrap), Mark: param.Assumption, Source: noRates,
			Doc: "share of those found that cannot be saved"},
			number: func(p *Params) *float64 { return &p.Each[i].Scrap }},
		{row: param.Row{Path: at + ".hours", Kind: param.Dist, Low: 0, High: 1000, Default: written(d.hours), Mark: param.CommonPractice, Source: noHours,
			Doc: "labor to put one right"},
			dist: func(p *Params) *draw.Dist { return &p.Each[i].Hours }},
	}
}

func effectInputs(i, k int, d *Defect, e Effect) []input {
	by := drivers[e.Driver]
	at := "defects." + d.Key + "." + by.key
	gain := input{row: param.Row{Path: at + ".gain", Kind: param.Number, Low: 0, High: 1000, Default: number(e.Gain), Mark: param.Assumption, Source: noDegree + "; " + d.Source,
		Doc: gainDoc(e)},
		number: func(p *Params) *float64 { return &p.Each[i].Effects[k].Gain }}
	if e.Shape >= Step {
		gain.row.Low = 1
	}
	if e.Shape == Power || by.kind == param.Flag {
		return []input{gain}
	}
	low, high := bounds(by.kind)
	return []input{{row: param.Row{Path: at + ".from", Kind: by.kind, Low: low, High: high, Default: bound(by.kind, e.From), Mark: param.Assumption, Source: noDegree + "; " + d.Source,
		Doc: "the " + by.doc + " from which it matters"},
		number: func(p *Params) *float64 { return &p.Each[i].Effects[k].From }}, gain}
}

func gainDoc(e Effect) string {
	by := drivers[e.Driver]
	switch e.Shape {
	case Above:
		return "what each " + by.unit + " of " + by.doc + " above that adds to a factor of 1"
	case Below:
		return "what each " + by.unit + " of " + by.doc + " below that adds to a factor of 1"
	case Step:
		return "factor beyond that: " + by.doc
	}
	return "factor for each of: " + by.doc
}

func breakInInputs() []input {
	var out []input
	for i, word := range []string{"first", "second", "third"} {
		out = append(out, input{row: param.Row{Path: "defects.sticking.break_in." + word, Kind: param.Share, Default: percent(breakIn[i]),
			Mark: param.Published, Source: "13 – 15 % of new molds stick one of the first three parts: R. Lacovara, \"Why Molds Stick\", Fabrication News, Feb 1991; the split is an assumption",
			Doc: "chance to stick on the " + word + " turn of a new or resurfaced mold"},
			number: func(p *Params) *float64 { return &p.BreakIn[i] }})
	}
	return append(out, input{row: param.Row{Path: "defects.sticking.mold_hours", Kind: param.Dist, Low: 0, High: 1000, Default: written(moldHours),
		Mark: param.CommonPractice, Source: noHours, Doc: "labor to repair the mold that a part stuck in"},
		dist: func(p *Params) *draw.Dist { return &p.MoldHours }})
}

// Inputs lists what a scenario may say about defects. It is a fresh list at
// every call.
func Inputs() []param.Row {
	var rows []param.Row
	for _, in := range inputs() {
		rows = append(rows, in.row)
	}
	return rows
}

// Set gives the input of that path a value in the base unit of its row's kind.
// It reports false, and changes nothing, for a path of no number.
func (p *Params) Set(path string, value float64) bool {
	for _, in := range inputs() {
		if in.row.Path == path && in.number != nil {
			*in.number(p) = value
			return true
		}
	}
	return false
}

// SetDist is Set for lengths of labor, in hours.
func (p *Params) SetDist(path string, d draw.Dist) bool {
	for _, in := range inputs() {
		if in.row.Path == path && in.dist != nil {
			*in.dist(p) = d
			return true
		}
	}
	return false
}

func number(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

func percent(v float64) string {
	return strconv.FormatFloat(v*100, 'g', 10, 64) + " %"
}

func written(h [3]float64) string {
	return "pert(" + number(h[0]) + " h, " + number(h[1]) + " h, " + number(h[2]) + " h)"
}

// bound writes a bound with the unit of its kind.
func bound(k param.Kind, v float64) string {
	if k == param.Share {
		return percent(v)
	}
	if k.Unit() == "" {
		return number(v)
	}
	return number(v) + " " + k.Unit()
}

// bounds are wide limits of a bound of that kind.
func bounds(k param.Kind) (low, high float64) {
	switch k {
	case param.Length:
		return 0.01, 10
	case param.Temperature:
		return -40, 80
	case param.Duration:
		return 0, 1000
	case param.Number:
		return 0, 1000
	}
	return 0, 1
}
