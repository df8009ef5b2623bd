package permit

import "moldturn/sim/param"

const (
	yours    = "the plant's own fact"
	guessed  = "assumption of this model, to be calibrated"
	practice = "no source"
	memory   = "from memory, not verified"
	sheet    = "the highest contents of 40 CFR 63 Subpart VVVV, Table 2, stand in for the products' data sheets"
)

// standard are the materials of a plant that names none.
const standard = "{gel coat: {operation: pigmented gel coat, hap: 33 %, method: atomized, for: [gel coat, accent band, small parts gel coat, gel coat flushed]}, " +
	"barrier coat: {operation: production resin, hap: 28 %, method: atomized, for: [barrier coat]}, " +
	"laminating resin: {operation: production resin, hap: 35 %, method: nonatomized, for: [skin coat, laminate, small parts resin]}, " +
	"tooling gel coat: {operation: tooling gel coat, hap: 40 %, method: atomized, for: [mold gel coat]}, " +
	"tooling resin: {operation: tooling resin, hap: 39 %, method: nonatomized, for: [mold resin]}, " +
	"acetone: {operation: solvent, hap: 0 %, for: [gun flush, tool cleaning]}}"

// Inputs lists what a scenario may say about materials and the air permit. It is
// a fresh list at every call. Without the group "permit" the defaults hold.
func Inputs() []param.Row {
	var rows []param.Row
	for _, part := range [][]param.Row{materialInputs(), amountInputs(), stepInputs()} {
		rows = append(rows, part...)
	}
	return rows
}

func materialInputs() []param.Row {
	const m = "permit.materials.*."
	return []param.Row{
		{Path: "permit", Kind: param.Group, Optional: true, Doc: "materials and the air permit, for the permit ledger; its defaults hold without it", Mark: param.User, Source: yours},
		{Path: "permit.cap", Kind: param.Mass, Low: 0, High: 1e9, Optional: true, Doc: "organic HAP that the air permit allows in any twelve months, as in 9 short tons; 0: no cap", Mark: param.User, Source: yours},
		{Path: "permit.materials", Kind: param.Map, Low: 1, High: 100, Default: standard, Doc: "products that are sprayed, laid up or used for cleaning", Mark: param.Assumption, Source: sheet},
		{Path: m + "operation", Kind: param.Choice, Choices: OperationNames(), Doc: "the group of 40 CFR 63 Subpart VVVV it belongs to; solvent for cleaning", Mark: param.User, Source: yours},
		{Path: m + "hap", Kind: param.Share, Doc: "organic HAP by weight in the product, without filler", Mark: param.User, Source: yours},
		{Path: m + "styrene", Kind: param.Share, Optional: true, Doc: "its largest single HAP by weight; all of hap if left out", Mark: param.User, Source: yours},
		{Path: m + "filler", Kind: param.Share, Default: "0 %", Doc: "filler by weight in a resin as applied", Mark: param.User, Source: yours},
		{Path: m + "method", Kind: param.Choice, Choices: MethodNames(), Default: "nonatomized", Doc: "how it is put on", Mark: param.User, Source: yours},
		{Path: m + "suppressant", Kind: param.Share, Default: "0 %", Doc: "vapor suppressant effectiveness of a resin", Mark: param.User, Source: yours},
		{Path: m + "evaporates", Kind: param.Share, Default: "100 %", Doc: "share of the HAP of a solvent that goes into the air", Mark: param.Assumption, Source: guessed},
		{Path: m + "averaged", Kind: param.Flag, Default: "true", Doc: "takes part in the averaging of Subpart VVVV; otherwise judged by its content", Mark: param.User, Source: yours},
		{Path: m + "for", Kind: param.List, Low: 1, High: float64(Uses), Doc: "what it is used for", Mark: param.User, Source: yours},
		{Path: m + "for[]", Kind: param.Choice, Choices: UseNames(), Doc: "a use", Mark: param.User, Source: yours},
		{Path: m + "share", Kind: param.Share, Default: "100 %", Doc: "its share of each of its uses; all materials of a use add up to 100 %", Mark: param.User, Source: yours},
		{Path: m + "last_year", Kind: param.List, Low: Year, High: Year, Optional: true, Doc: "use in each of the twelve months before the counted time, oldest first", Mark: param.User, Source: yours},
		{Path: m + "last_year[]", Kind: param.Mass, Low: 0, High: 1e9, Doc: "use in a month", Mark: param.User, Source: yours},
	}
}

func amountInputs() []param.Row {
	return []param.Row{
		{Path: "background.*.gel_coat", Kind: param.Mass, Low: 0, High: 1000, Default: "0 kg", Doc: "gel coat that a labor hour of it takes, for the ledgers", Mark: param.User, Source: yours},
		{Path: "background.*.resin", Kind: param.Mass, Low: 0, High: 1000, Default: "0 kg", Doc: "resin that a labor hour of it takes, for the ledgers", Mark: param.User, Source: yours},
		{Path: "permit.molds.here", Kind: param.Flag, Default: "true", Doc: "new molds are made in this plant", Mark: param.User, Source: yours},
		{Path: "permit.molds.film", Kind: param.Length, Low: 0, High: 5, Default: "36 mil", Doc: "wet tooling gel coat of a new mold, all coats", Mark: param.Published, Source: "two coats of 18 ± 2 mil: \"Matters needing attention in mold gel coat operation\", resin maker 2020"},
		{Path: "permit.molds.resurfacing", Kind: param.Length, Low: 0, High: 5, Default: "0 mil", Doc: "wet tooling gel coat of a mold that is resurfaced; sanding and polishing take none", Mark: param.Assumption, Source: guessed},
		{Path: "permit.molds.thickness", Kind: param.Length, Low: 0, High: 100, Default: "13 mm", Doc: "laminate of a new mold", Mark: param.Published, Source: "at least twice the thickness of the hull: \"Fibreglass boats\" technical brief, Practical Action"},
		{Path: "permit.molds.glass", Kind: param.Share, Default: "30 %", Doc: "glass in it, by mass", Mark: param.Published, Source: "30 % glass, 70 % resin: \"Guidelines for laminating a good, solid mold\", mold repair guide, section 14"},
		{Path: "permit.solvent.density", Kind: param.Number, Low: 0.5, High: 2, Default: "0.79", Doc: "kg per L of solvent", Mark: param.Memory, Source: "acetone; " + memory},
		{Path: "permit.solvent.per_hour", Kind: param.Volume, Low: 0, High: 10, Default: "0.1 L", Doc: "solvent to clean tools and rollers, per labor hour of laminating", Mark: param.Assumption, Source: guessed},
	}
}

func stepInputs() []param.Row {
	const l = "permit.levers."
	return []param.Row{
		{Path: l + "resin_hap", Kind: param.Share, Low: 0, High: 0.5, Default: "3 %", Doc: "points of HAP that a leaner production resin has less", Mark: param.Assumption, Source: guessed},
		{Path: l + "gel_hap", Kind: param.Share, Low: 0, High: 0.5, Default: "3 %", Doc: "points of HAP that a leaner gel coat has less", Mark: param.Assumption, Source: guessed},
		{Path: l + "film", Kind: param.Length, Low: 0, High: 1, Default: "1 mil", Doc: "how much thinner gel coat is sprayed", Mark: param.Assumption, Source: guessed},
		{Path: l + "transfer", Kind: param.Share, Low: 0, High: 0.5, Default: "5 %", Doc: "points of transfer that sprayers gain", Mark: param.Assumption, Source: guessed},
		{Path: l + "glass", Kind: param.Share, Low: 0, High: 0.5, Default: "3 %", Doc: "points of glass more in the laminate", Mark: param.Assumption, Source: guessed},
		{Path: l + "flushes", Kind: param.Share, Default: "50 %", Doc: "share of gun flushes saved by more gun sets or color runs", Mark: param.Assumption, Source: guessed},
	}
}
