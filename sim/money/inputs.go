package money

import "moldturn/sim/param"

const (
	yours    = "the plant's own fact"
	guessed  = "assumption of this model, to be calibrated"
	practice = "no source"
	memory   = "from memory, not verified"
)

// Inputs lists what a scenario may say about money. It is a fresh list at every
// call. Without the group "money" no ledger is kept.
func Inputs() []param.Row {
	var rows []param.Row
	for _, part := range [][]param.Row{laborInputs(), gelInputs(), layInputs(), moldInputs(), shopInputs(), boatInputs(), investInputs()} {
		rows = append(rows, part...)
	}
	return rows
}

func price(path, value, doc string, mark param.Mark, source string) param.Row {
	return param.Row{Path: path, Kind: param.Money, Low: 0, High: 1e9, Default: value, Doc: doc, Mark: mark, Source: source}
}

func laborInputs() []param.Row {
	return []param.Row{
		{Path: "currency", Kind: param.Text, Default: "$", Doc: "sign put before amounts in all outputs; in a scenario amounts are written with it, or with the dollar sign whatever it is", Mark: param.User, Source: yours},
		{Path: "units", Kind: param.Choice, Choices: []string{"US", "SI"}, Default: "US", Doc: "units of outputs: US customary, or SI", Mark: param.User, Source: yours},
		{Path: "money", Kind: param.Group, Optional: true, Doc: "what things cost; without it no ledger is kept", Mark: param.User, Source: yours},
		price("money.wage", "$20.76", "wage of a regular hour of crafts that money.wages does not name", param.Published,
			"Fiberglass laminators and fabricators (51-2051), Minnesota: mean $20.76 an hour; Occupational Employment and Wage Statistics, apps.deed.state.mn.us"),
		{Path: "money.wages", Kind: param.Map, Optional: true, Doc: "wage of a regular hour by craft", Mark: param.User, Source: yours},
		{Path: "money.wages.*", Kind: param.Money, Low: 0, High: 1e6, Doc: "wage of a regular hour of a craft", Mark: param.User, Source: yours},
		{Path: "money.loading", Kind: param.Number, Low: 1, High: 5, Default: "1.3", Doc: "what an hour costs over its wage: taxes, insurance, paid leave", Mark: param.CommonPractice, Source: "1.25 to 1.40, no source"},
		{Path: "money.overtime", Kind: param.Number, Low: 1, High: 5, Default: "1.5", Doc: "wage of an hour beyond the shift over that of a regular one", Mark: param.Memory,
			Source: "one and one-half times beyond 40 hours a week, Fair Labor Standards Act, 29 U.S.C. 207; from memory. Here every hour beyond the shift counts"},
		{Path: "money.off_floor", Kind: param.Share, Low: 0, High: 1, Default: "6 %", Doc: "paid hours off the floor per hour on it: paid breaks, suits, clean-up", Mark: param.CommonPractice, Source: "1 to 2 h of 10 h paid are lost to breaks, clean-up and suits, of which the shift hours leave out a part; no source"},
		price("money.training", "$0", "training a year, a cost of prevention", param.User, yours),
	}
}

func gelInputs() []param.Row {
	return []param.Row{
		{Path: "money.gel_coat.price", Kind: param.Map, Default: "{entry: $5, medium: $7, premium: $11}", Doc: "gel coat per kg by grade, catalyst included", Mark: param.Memory, Source: "bulk gel coat $5 – $7 – $11 per kg; " + memory},
		{Path: "money.gel_coat.price.*", Kind: param.Money, Low: 0, High: 1e6, Doc: "price per kg of a grade", Mark: param.Memory, Source: memory},
		{Path: "background.*.grade", Kind: param.Text, Default: "medium", Doc: "grade of the gel coat that it takes, for its price", Mark: param.User, Source: yours},
		{Path: "money.gel_coat.density", Kind: param.Number, Low: 0.5, High: 3, Default: "1.2", Doc: "kg per L of gel coat", Mark: param.Memory, Source: "1.1 – 1.35; " + memory},
		{Path: "money.gel_coat.transfer", Kind: param.Share, Low: 0.05, High: 1, Default: "78 %", Doc: "share of sprayed gel coat that ends up on the mold", Mark: param.Memory, Source: "65 – 90 %; " + memory},
		{Path: "money.gel_coat.band_area", Kind: param.Share, Default: "8 %", Doc: "share of the part that an accent band covers", Mark: param.Assumption, Source: guessed},
		{Path: "money.barrier.film", Kind: param.Length, Low: 0.05, High: 3, Default: "20 mil", Doc: "wet film of barrier coat, on parts whose route sprays one", Mark: param.Memory, Source: "15 – 25 mil; " + memory},
		price("money.barrier.price", "$6.50", "barrier coat per kg", param.Memory, "vinyl ester $5 – $8 per kg; "+memory),
		price("money.solvent", "$2.50", "solvent per L", param.Assumption, guessed),
		{Path: "money.flush.pump_solvent", Kind: param.Volume, Low: 0, High: 100, Default: "2 gal", Doc: "solvent to flush a pumped gun", Mark: param.CommonPractice, Source: "1 to 3 gal, no source"},
		{Path: "money.flush.pump_gel_coat", Kind: param.Volume, Low: 0, High: 100, Default: "1 gal", Doc: "gel coat lost in that flush", Mark: param.CommonPractice, Source: "0.5 to 2 gal, no source"},
		{Path: "money.flush.pot_solvent", Kind: param.Volume, Low: 0, High: 100, Default: "0.25 gal", Doc: "solvent to flush a pot gun", Mark: param.CommonPractice, Source: "0.1 to 0.4 gal, no source"},
		{Path: "money.flush.pot_gel_coat", Kind: param.Volume, Low: 0, High: 100, Default: "0.05 gal", Doc: "gel coat lost in that flush", Mark: param.Assumption, Source: guessed},
	}
}

func layInputs() []param.Row {
	return []param.Row{
		price("money.resin", "$3.50", "laminating resin per kg, catalyst included", param.Memory, "bulk polyester $2.6 – $3.5 – $5 per kg; "+memory),
		price("money.glass", "$2.60", "glass per kg", param.Memory, "mat and chop roving $1.8 – $3.5 per kg; "+memory),
		{Path: "money.laminate.thickness", Kind: param.Length, Low: 0.1, High: 100, Default: "6.5 mm", Doc: "mean thickness of laminate", Mark: param.Memory, Source: "hull laminate of 280 – 430 kg on 34 m²; " + memory},
		{Path: "money.laminate.density", Kind: param.Number, Low: 0.5, High: 3, Default: "1.55", Doc: "kg per L of laminate", Mark: param.Memory, Source: "1.45 – 1.7; " + memory},
		{Path: "money.laminate.glass", Kind: param.Share, Default: "35 %", Doc: "share of glass in laminate, by mass", Mark: param.Memory, Source: "chop and mat 25 – 35 %, with woven roving 33 – 45 %; " + memory},
		{Path: "money.laminate.waste", Kind: param.Share, Low: 0, High: 0.9, Default: "5 %", Doc: "share of resin and glass that does not end up in the part", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.parts.*.laminate", Kind: param.Length, Low: 0, High: 100, Optional: true, Doc: "mean thickness of its laminate; money.laminate.thickness if left out", Mark: param.User, Source: yours},
	}
}

func moldInputs() []param.Row {
	return []param.Row{
		{Path: "money.wax.per_coat", Kind: param.Mass, Low: 0, High: 1, Default: "12 g", Doc: "wax of one coat on 1 m²", Mark: param.Assumption, Source: guessed},
		price("money.wax.price", "$30", "wax per kg", param.Assumption, guessed),
		{Path: "money.stripper.per_strip", Kind: param.Mass, Low: 0, High: 10, Default: "60 g", Doc: "stripper of a light or full strip on 1 m²", Mark: param.Assumption, Source: guessed},
		price("money.stripper.price", "$8", "stripper per kg", param.Assumption, guessed),
		{Path: "money.compound.per_strip", Kind: param.Mass, Low: 0, High: 10, Default: "70 g", Doc: "compound of a full strip on 1 m²", Mark: param.Assumption, Source: guessed},
		price("money.compound.price", "$25", "strip compound per kg", param.Assumption, guessed),
		price("money.mold.repair", "$8", "materials per labor hour of mold repair", param.Assumption, guessed),
		price("money.mold.resurface", "$15", "materials to resurface 1 m² of mold", param.Assumption, guessed),
		price("money.mold.price", "$1,180", "price of a new mold off an existing master, per m²", param.Memory, "$20k – $40k – $80k for a 24 ft hull of 34 m²; "+memory),
		{Path: "models.*.parts.*.mold_price", Kind: param.Money, Low: 0, High: 1e8, Optional: true, Doc: "price of one more of its molds; by area if left out", Mark: param.User, Source: yours},
		price("money.rework", "$6", "materials per labor hour of buffing and mending", param.Assumption, guessed),
	}
}

func shopInputs() []param.Row {
	return []param.Row{
		{Path: "money.booth.air", Kind: param.Number, Low: 0, High: 1e6, Default: "41000", Doc: "m³ per h that a booth moves while someone sprays", Mark: param.Published,
			Source: "100 ft/min at the open front of 20 × 12 ft, 24,000 ft³/min: velocity of spray booths in mechanical and fire codes, OSHA STD 01-05-010"},
		price("money.booth.fan", "$0.07", "fan power and filters per 1,000 m³", param.Assumption, guessed),
		price("money.booth.heat", "$0.05", "heat per kWh", param.Assumption, guessed),
		{Path: "money.booth.supply", Kind: param.Temperature, Low: -10, High: 40, Default: "70 F", Doc: "temperature to which the air of booths is heated", Mark: param.Published, Source: "60 – 80 °F, best 70 – 75 °F: \"Gelcoat application – thickness, initiator level, temperature\", supplier guide"},
		{Path: "money.booth.outdoor", Kind: param.List, Low: 12, High: 12, Optional: true, Doc: "mean outdoor temperature in working hours by month, January first; heat is not priced if left out", Mark: param.User, Source: yours},
		{Path: "money.booth.outdoor[]", Kind: param.Temperature, Low: -60, High: 60, Doc: "temperature of a month", Mark: param.User, Source: yours},
		price("money.floor.day", "$0", "floor and handling per boat and day", param.User, yours),
		{Path: "money.floor.rate", Kind: param.Share, Low: 0, High: 1, Default: "10 %", Doc: "interest a year on what is tied up in boats on the floor", Mark: param.Assumption, Source: guessed},
		price("money.floor.value", "$8k", "what is tied up in a boat on the floor, on average", param.Assumption, guessed),
		price("money.late_day", "$0", "penalty per boat and day late", param.User, yours),
		price("money.warranty.claim", "$900", "mean of a warranty claim; single claims differ, which changes no mean", param.Assumption, guessed),
		{Path: "money.warranty.chance", Kind: param.Share, Default: "25 %", Doc: "chance of a claim for a boat that is shipped with less luster than promised, or with a missed defect", Mark: param.Assumption, Source: guessed},
		{Path: "money.warranty.from", Kind: param.Duration, Low: 0, High: 1e5, Default: "2 wk", Doc: "shortest time from shipping to a claim", Mark: param.Assumption, Source: guessed},
		{Path: "money.warranty.to", Kind: param.Duration, Low: 0, High: 1e5, Default: "14 wk", Doc: "longest time from shipping to a claim", Mark: param.Assumption, Source: guessed},
	}
}

func boatInputs() []param.Row {
	return []param.Row{
		{Path: "models.*.margin", Kind: param.Money, Low: 0, High: 1e9, Optional: true, Doc: "price of the boat less purchased materials that the ledger does not have, such as the engine", Mark: param.User, Source: yours},
	}
}

func investInputs() []param.Row {
	return []param.Row{
		{Path: "money.discount", Kind: param.Share, Low: 0, High: 1, Default: "10 %", Doc: "discount rate a year for investments, before taxes", Mark: param.Assumption, Source: guessed},
		{Path: "investments", Kind: param.Map, Optional: true, Doc: "what alternatives cost to make, by name of the alternative", Mark: param.User, Source: yours},
		price("investments.*.purchase", "$0", "what is paid at the start; nothing with more molds than today: the price of those molds", param.User, yours),
		{Path: "investments.*.lead", Kind: param.Duration, Low: 0, High: 1e5, Default: "6 wk", Doc: "from payment to first use", Mark: param.Memory, Source: "a mold off an existing master takes 4 – 6 – 12 weeks; " + memory},
		{Path: "investments.*.life", Kind: param.Count, Low: 1, High: 100, Default: "5", Doc: "years of use", Mark: param.Published, Source: "five or more years from a working mold: \"How fiberglass boats are made\", boating supply article"},
		price("investments.*.residual", "$0", "worth at the end of its life", param.User, yours),
	}
}
