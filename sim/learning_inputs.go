package sim

import "moldturn/sim/param"

// LearningInputs lists what a scenario may say about learning, turnover and the
// launch of models. It is a fresh list at every call. All of it is off by
// default and then changes nothing.
func LearningInputs() []param.Row {
	return append(curveInputs(), launchInputs()...)
}

func curveInputs() []param.Row {
	const industry = "80 to 90 % per doubling in industry: \"Learning about learning\", ASPI 2014; for boats "
	return []param.Row{
		{Path: "learning.standard", Kind: param.Count, Low: 1, High: 1e6, Default: "100", Doc: "boat of a model from which on the hours in the scenario hold; earlier ones take longer where the model has a curve", Mark: param.Assumption, Source: guessed},
		{Path: "learning.most", Kind: param.Number, Low: 1, High: 10, Default: "3", Doc: "times those hours that the first boat takes at most", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.learning.gel", Kind: param.Share, Low: 0.7, High: 1, Default: "100 %", Doc: "hours of masking and gel coat at twice the number of boats; 100 %: nothing is learned", Mark: param.Assumption, Source: industry + "90 to 95 %, no source"},
		{Path: "models.*.learning.lamination", Kind: param.Share, Low: 0.7, High: 1, Default: "100 %", Doc: "the same of lamination", Mark: param.Assumption, Source: industry + "90 to 95 %, no source"},
		{Path: "models.*.learning.assembly", Kind: param.Share, Low: 0.7, High: 1, Default: "100 %", Doc: "the same of assembly", Mark: param.Assumption, Source: industry + "85 to 90 %, no source"},
		{Path: "models.*.learning.built", Kind: param.Count, Low: 0, High: 1e6, Default: "0", Doc: "boats of the model built before the first day", Mark: param.User, Source: yours},
		{Path: "crafts.*.turnover", Kind: param.Share, Low: 0, High: 5, Default: "0 %", Doc: "people who leave in a year, per place; each is replaced at once. Lamination 50 to 150 %", Mark: param.Memory, Source: "open lay-up loses most in hot months: \"Closed for improvements\", Boating Industry, May 2005; figures from memory"},
		{Path: "crafts.*.ramp", Kind: param.Duration, Low: 0, High: 8766, Default: "12 wk", Doc: "until a new person works at full speed", Mark: param.CommonPractice, Source: "8 to 16 weeks, no source"},
		{Path: "crafts.*.ramp_start", Kind: param.Share, Low: 0.1, High: 1, Default: "50 %", Doc: "speed of a new person", Mark: param.CommonPractice, Source: "40 to 60 %, no source"},
		{Path: "crafts.*.ramp_flaws", Kind: param.Number, Low: 1, High: 10, Default: "2", Doc: "chance of a flaw at the hands of a new person over the usual one", Mark: param.CommonPractice, Source: "1.5 to 3 times, no source"},
	}
}

func launchInputs() []param.Row {
	const part = "models.*.parts.*."
	return []param.Row{
		{Path: "models.*.orders_from", Kind: param.Date, Optional: true, Doc: "day of the first orders of the model; from the first day if left out", Mark: param.User, Source: yours},
		{Path: part + "mold_dates", Kind: param.List, High: 100, Optional: true, Doc: "days on which new molds come into rotation, on top of those that are there; they are broken in", Mark: param.User, Source: yours},
		{Path: part + "mold_dates[]", Kind: param.Date, Doc: "a day, in the simulated years", Mark: param.User, Source: yours},
		{Path: part + "on_master.count", Kind: param.Count, Low: 0, High: 100, Default: "0", Doc: "new molds made one after the other on the master", Mark: param.User, Source: yours},
		{Path: part + "on_master.from", Kind: param.Date, Optional: true, Doc: "day on which the first of them is begun", Mark: param.User, Source: yours},
		{Path: part + "on_master.time", Kind: param.Duration, Low: 1, High: 1e5, Default: "3 wk", Doc: "time of each on the master", Mark: param.Published, Source: "3 weeks on the plug before release: \"Fibreglass boats\" technical brief, Practical Action; Practical Boat Owner, May 2018"},
	}
}
