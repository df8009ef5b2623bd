package cure

import (
	"strconv"

	"moldturn/sim/param"
)

// input ties a row to the field it sets. Scale is the size of one written unit
// in the unit of the field.
type input struct {
	row   param.Row
	scale float64
	field func(*Params) *float64
}

const (
	redox = "redox cure of polyester with MEKP and cobalt has 40 – 60 kJ/mol: J. Appl. Polym. Sci. 102 (2006) 1870"
	shop  = "fitted to plausible shop behavior, not published; calibrate on the plant's own Barcol log"
)

func inputs() []input {
	return []input{
		{param.Row{Path: "cure.activation_energy", Kind: param.Number, Low: 20, High: 100,
			Doc: "how strongly cure speeds up with temperature, in kJ/mol; 50 doubles the speed every 10 °C", Mark: param.Published, Source: redox},
			1000, func(p *Params) *float64 { return &p.ActivationEnergy }},
		{param.Row{Path: "cure.starting_rate", Kind: param.Number, Low: 0.01, High: 10,
			Doc: "rate of cure from nothing at 25 °C, per hour", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.K1 }},
		{param.Row{Path: "cure.growing_rate", Kind: param.Number, Low: 0.01, High: 100,
			Doc: "rate of cure at 25 °C that grows with the degree reached, per hour", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.K2 }},
		{param.Row{Path: "cure.reached_exponent", Kind: param.Number, Low: 0.2, High: 1.5,
			Doc: "exponent of the degree reached in the growing rate", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.M }},
		{param.Row{Path: "cure.left_exponent", Kind: param.Number, Low: 1.1, High: 3,
			Doc: "exponent of the degree left up to the plateau", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.N }},
		{param.Row{Path: "cure.induction", Kind: param.Duration, Low: 0, High: 24,
			Doc: "time at 25 °C before a thin laminate starts to cure, while inhibitor is used up", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.Induction }},
		{param.Row{Path: "cure.thick_shot_factor", Kind: param.Number, Low: 0.5, High: 5,
			Doc: "how much longer the last shot takes to cure than a thin laminate, for thickness and core", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.Thick }},
		{param.Row{Path: "cure.plateau_at_15c", Kind: param.Share, Low: 0.5, High: 0.99,
			Doc: "highest degree of cure that is reached at 15 °C however long one waits", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.PlateauAt15 }},
		{param.Row{Path: "cure.plateau_per_degree", Kind: param.Number, Low: 0, High: 0.02,
			Doc: "what the highest degree of cure gains per °C", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.PlateauPerC }},
		{param.Row{Path: "cure.plateau_most", Kind: param.Share, Low: 0.5, High: 1,
			Doc: "highest degree of cure that is reached at any shop temperature", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.PlateauMost }},
		{param.Row{Path: "cure.done_after", Kind: param.Duration, Low: 1, High: 1000,
			Doc: "hold at cure.done_at after which a part counts as pulled in good time; what it lacks of that degree of cure at its pull makes it green", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.DoneAfter }},
		{param.Row{Path: "cure.done_at", Kind: param.Temperature, Low: 5, High: 40,
			Doc: "mold temperature of that hold", Mark: param.Assumption, Source: shop},
			1, func(p *Params) *float64 { return &p.DoneC }},
	}
}

// Inputs lists what a scenario may say about cure, with the defaults of
// Default. It is a fresh list at every call.
func Inputs() []param.Row {
	d := Default()
	var rows []param.Row
	for _, in := range inputs() {
		in.row.Default = strconv.FormatFloat(*in.field(&d)/in.scale, 'g', -1, 64) + suffix(in.row.Kind)
		rows = append(rows, in.row)
	}
	return append(rows, barcolInputs()...)
}

// suffix is the unit a default is written with.
func suffix(k param.Kind) string {
	switch k {
	case param.Duration:
		return " h"
	case param.Temperature:
		return " C"
	}
	return ""
}

// Set gives the input of that path a value in the unit of its row (hours for a
// length of time, else as the row's Doc says). It reports false, and changes
// nothing, when no row of Inputs has the path or when
// it belongs to the list cure.barcol (see Barcol).
func (p *Params) Set(path string, value float64) bool {
	for _, in := range inputs() {
		if in.row.Path == path {
			*in.field(p) = value * in.scale
			return true
		}
	}
	return false
}
