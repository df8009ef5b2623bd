package policy

import "moldturn/sim/param"

const calibrate = "assumption of this model; calibrate with the plant's mold log"

// Inputs lists what a scenario may say about policies. It is a fresh list at
// every call.
func Inputs() []param.Row {
	var rows []param.Row
	for _, part := range [][]param.Row{stripInputs(), waxInputs(), breakInInputs(), chipInputs(), lifeInputs(), holdInputs(), releaseInputs(), seasonInputs()} {
		rows = append(rows, part...)
	}
	return rows
}

func stripInputs() []param.Row {
	return []param.Row{
		{Path: "strip.policy", Kind: param.Choice, Choices: []string{"never", "every", "seasonal", "by build-up", "by luster", "opportunistic"}, Default: "every",
			Doc: "how it is decided that a mold is due for a strip: every so many turns; by season; by build-up, when the next part would show too much haze; by luster, when parts read too low; opportunistic, every so many turns or one before when the mold is not missed", Mark: param.CommonPractice, Source: "careful plants strip more often in hot, humid months"},
		{Path: "strip.every", Kind: param.Count, Low: 1, High: 200, Default: "5",
			Doc: "turns between strips, the part just pulled included, with policy every or opportunistic; with by build-up and by luster about the interval expected, where molds stand at the start", Mark: param.CommonPractice, Source: "careful plants 3 to 5, others 7 to 12"},
		{Path: "strip.hot", Kind: param.Count, Low: 1, High: 200, Default: "3",
			Doc: "turns between strips in the hot season, with policy seasonal", Mark: param.CommonPractice, Source: "careful plants strip every 3 parts in hot months"},
		{Path: "strip.cool", Kind: param.Count, Low: 1, High: 200, Default: "5",
			Doc: "turns between strips in the cool season, with policy seasonal", Mark: param.CommonPractice, Source: "and every 5 in cool ones"},
		{Path: "strip.haze", Kind: param.Number, Low: 0, High: 25, Default: "0.6",
			Doc: "points of luster that the next part may lose to haze, with policy by build-up", Mark: param.Assumption, Source: calibrate},
		{Path: "strip.luster", Kind: param.Number, Low: 0, High: 100, Default: "97",
			Doc: "reading under which two parts in a row, or one more than a point under it, ask for a strip, with policy by luster; readings are taken at the pull and corrected to a dark part", Mark: param.Assumption, Source: calibrate},
		{Path: "strip.full_every", Kind: param.Count, Low: 0, High: 100, Default: "6",
			Doc: "every how many strips is a full one, compounded; 1 makes every strip a full one, 0 none by count", Mark: param.CommonPractice, Source: "no source"},
		{Path: "strip.full_at", Kind: param.Number, Low: 0, High: 20, Default: "0.3",
			Doc: "lasting loss of the mold's surface, in points of luster, above which the next strip is a full one; 0: not used", Mark: param.Assumption, Source: calibrate},
		{Path: "strip.light_coats", Kind: param.Count, Low: 0, High: 10, Default: "2", Doc: "coats of wax that a light strip leaves", Mark: param.CommonPractice, Source: "2 to 3 coats"},
		{Path: "strip.full_coats", Kind: param.Count, Low: 0, High: 10, Default: "3", Doc: "coats of wax that a full strip leaves", Mark: param.CommonPractice, Source: "3 to 5 coats"},
		{Path: "strip.light_loss", Kind: param.Number, Low: 0, High: 5, Default: "0.003", Doc: "lasting loss of surface that a light strip adds, points of luster", Mark: param.Assumption, Source: calibrate},
		{Path: "strip.full_loss", Kind: param.Number, Low: 0, High: 5, Default: "0.02", Doc: "lasting loss of surface that a full strip adds, points of luster", Mark: param.Assumption, Source: calibrate},
	}
}

func waxInputs() []param.Row {
	return []param.Row{
		{Path: "wax.every", Kind: param.Count, Low: 0, High: 50, Default: "1", Doc: "turns between waxings; 0: only at a strip", Mark: param.CommonPractice, Source: "every pull to every 6 pulls"},
		{Path: "wax.coats", Kind: param.Count, Low: 1, High: 10, Default: "1", Doc: "coats at each waxing", Mark: param.CommonPractice, Source: "no source"},
	}
}

func breakInInputs() []param.Row {
	return []param.Row{
		{Path: "break_in.coats", Kind: param.List, Low: 0, High: 10, Default: "[5, 2, 1]", Doc: "coats of wax before each of the first turns of a new or resurfaced mold", Mark: param.Published,
			Source: "pull 1: 3 – 4 or more coats, before pull 2: 2, before pull 3: 1: \"Use of mould polishes and cutting pastes for glassfibre moulds and plugs\", mould-shop supplier note"},
		{Path: "break_in.coats[]", Kind: param.Count, Low: 0, High: 12, Doc: "coats before one turn", Mark: param.CommonPractice, Source: "no source"},
		{Path: "break_in.hold", Kind: param.Duration, Low: 0, High: 240, Default: "24 h", Doc: "the least hold in the mold on those turns", Mark: param.CommonPractice, Source: "no source"},
	}
}

func chipInputs() []param.Row {
	return []param.Row{
		{Path: "chips.share", Kind: param.Share, Default: "25 %", Doc: "share of pulls after which a chip in the mold is repaired", Mark: param.CommonPractice, Source: "10 to 40 % of pulls, no source"},
		{Path: "chips.hours", Kind: param.Dist, High: 100, Default: "0.5 - 1 - 3 h", Doc: "labor of a chip repair", Mark: param.CommonPractice, Source: "no source"},
	}
}

func lifeInputs() []param.Row {
	return []param.Row{
		{Path: "life.turns", Kind: param.Count, Low: 0, High: 100000, Default: "300", Doc: "turns after which a mold is resurfaced, or replaced; 0: never", Mark: param.Memory, Source: "100 – 300 – 600 parts before a major refurbishment, not verified"},
		{Path: "life.resurfaces", Kind: param.Count, Low: 0, High: 20, Default: "2", Doc: "how often a mold is resurfaced before a new one takes its place", Mark: param.Assumption, Source: calibrate},
		{Path: "life.replacement", Kind: param.Duration, Low: 0, High: 20000, Default: "6 wk", Doc: "lead time of a new mold, in which the worn one is out of use; 0 wk: it was ordered ahead and stands ready", Mark: param.Memory, Source: "4 – 6 – 12 weeks off an existing master, not verified"},
		{Path: "life.surface_after", Kind: param.Number, Low: 0, High: 10, Default: "0.05", Doc: "lasting loss of surface after resurfacing, points of luster", Mark: param.Assumption, Source: calibrate},
		{Path: "life.surface_limit", Kind: param.Number, Low: 0, High: 20, Default: "0.4", Doc: "lasting loss of surface at which a mold is resurfaced, points of luster; 0: not used, and strip.full_at should then be 0 too", Mark: param.Assumption, Source: calibrate},
		{Path: "life.call_reserve_after", Kind: param.Duration, Low: 0, High: 1000, Default: "4 h", Doc: "labor of repair above which a reserve mold is called; full strips and resurfacing always call one", Mark: param.Assumption, Source: calibrate},
		{Path: "life.repair_coats", Kind: param.Count, Low: 0, High: 10, Default: "2", Doc: "coats of wax on a mold that is repaired after a part stuck in it", Mark: param.Assumption, Source: calibrate},
		{Path: "life.reserve_idle", Kind: param.Duration, Low: 0, High: 100000, Default: "30 d", Doc: "time in reserve after which a mold needs two coats instead of one", Mark: param.Assumption, Source: calibrate},
	}
}

func holdInputs() []param.Row {
	return []param.Row{
		{Path: "hold.clock", Kind: param.Duration, Low: 0, High: 1000, Default: "24 h", Doc: "clock hours a part stays in its mold after the last labor in it", Mark: param.CommonPractice, Source: "overnight, 12 to 24 h at 70 – 77 °F; class rules ask 48 h at 18 °C or more"},
		{Path: "hold.equivalent", Kind: param.Duration, Low: 0, High: 1000, Default: "0 h", Doc: "equivalent hours at 25 °C it stays at least", Mark: param.Assumption, Source: "not used unless given"},
		{Path: "hold.degree", Kind: param.Share, Low: 0, High: 0.97, Default: "0 %", Doc: "degree of cure it has at least; 0 %: not asked", Mark: param.Assumption, Source: "not used unless given"},
		{Path: "hold.barcol", Kind: param.Number, Low: 0, High: 60, Default: "0", Doc: "Barcol hardness it has at least; 0: not asked; 35 is a usual pull hardness", Mark: param.Assumption, Source: "not used unless given"},
		{Path: "hold.most", Kind: param.Duration, Low: 0, High: 2000, Default: "72 h", Doc: "clock hours after which a part that is not hard enough is brought to the warm place, if the plant has one, or pulled green; 0 h: no limit", Mark: param.Assumption, Source: calibrate},
	}
}

func releaseInputs() []param.Row {
	return []param.Row{
		{Path: "release.order", Kind: param.Choice, Choices: []string{"oldest", "due date", "color run"}, Default: "due date", Doc: "which waiting order a mold takes", Mark: param.CommonPractice, Source: "no source"},
		{Path: "release.run", Kind: param.Count, Low: 1, High: 100, Default: "4", Doc: "the longest run of one color, with color run", Mark: param.Assumption, Source: calibrate},
		{Path: "release.look", Kind: param.Count, Low: 1, High: 100, Default: "8", Doc: "how far down the list of orders a run looks for its color", Mark: param.Assumption, Source: calibrate},
		{Path: "release.dark_after_strip", Kind: param.Flag, Default: "false", Doc: "dark colors go to molds soon after a strip, light ones to molds late in their cycle", Mark: param.CommonPractice, Source: "no source"},
	}
}

func seasonInputs() []param.Row {
	return []param.Row{
		{Path: "season.by", Kind: param.Choice, Choices: []string{"none", "months", "heat index"}, Default: "months", Doc: "how the hot season is told from the cool one", Mark: param.CommonPractice, Source: "no source"},
		{Path: "season.hot_months", Kind: param.Months, Default: "May-Sep", Doc: "the hot months", Mark: param.User, Source: "depends on the coast"},
		{Path: "season.on", Kind: param.Temperature, Low: 0, High: 80, Default: "90 F", Doc: "7-day mean of the plant's daily peak heat index above which the hot season begins, by heat index; from there on absence is that of hot weeks", Mark: param.Assumption, Source: calibrate},
		{Path: "season.off", Kind: param.Temperature, Low: 0, High: 80, Default: "85 F", Doc: "and below which it ends; down to there absence falls to that of cool weeks", Mark: param.Assumption, Source: calibrate},
	}
}
