package sim

import "moldturn/sim/param"

// madeInputs are the rows of where things stand and of how parts are made, as
// far as air and flaws go.
func madeInputs() []param.Row {
	return []param.Row{
		{Path: "crafts.*.area", Kind: param.Ref, RefTo: "climate.areas", Optional: true, Doc: "area of climate.areas it works in, for the heat and for work outside of any place; the first if left out", Mark: param.User, Source: yours},
		{Path: "places.*.area", Kind: param.Ref, RefTo: "climate.areas", Optional: true, Doc: "area of climate.areas it stands in; what stands in a place has its air", Mark: param.User, Source: yours},
		{Path: "places.*.warm", Kind: param.Temperature, Low: 10, High: 70, Optional: true, Doc: "molds in it are kept at this temperature; the part route takes a place named warm place for parts that need heat", Mark: param.User, Source: yours},
		{Path: "quality.flaws", Kind: param.Flag, Default: "true", Doc: "parts may have flaws beside a loss of luster, see defects, and may stick in their molds", Mark: param.Assumption, Source: "every plant has them"},
		{Path: "quality.target_gloss", Kind: param.Number, Low: 0, High: 200, Optional: true, Doc: "the luster that is promised as gloss units at 60°, by finish.gloss_scale; takes the place of quality.target", Mark: param.User, Source: yours},
		{Path: "quality.target_by_eye", Kind: param.Text, Optional: true, Doc: "the luster that is promised as a grade by eye, by finish.by_eye; takes the place of quality.target", Mark: param.User, Source: yours},
		{Path: "gel_coat.film", Kind: param.Length, Low: 0.1, High: 2, Default: "0.51 mm", Doc: "wet film of gel coat", Mark: param.Published, Source: "18 ± 2 mil to 25 mil in suppliers' guides, among them \"Laying it up\", Sport Fishing, Oct 2007"},
	}
}
