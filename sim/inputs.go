package sim

import (
	"math"

	"moldturn/sim/param"
	"moldturn/sim/record"
)

const (
	yours    = "the plant's own fact"
	guessed  = "assumption of this model, to be calibrated"
	practice = "no source"
)

var inf = math.Inf(1)

// Inputs lists what a scenario may say about the plant itself. It is a fresh
// list at every call.
func Inputs() []param.Row {
	var rows []param.Row
	for _, part := range [][]param.Row{runInputs(), calendarInputs(), craftInputs(), placeInputs(), modelInputs(), routeInputs(), demandInputs(), limitInputs(), madeInputs()} {
		rows = append(rows, part...)
	}
	return rows
}

func runInputs() []param.Row {
	return []param.Row{
		{Path: "name", Kind: param.Text, Doc: "name of the plant", Mark: param.User, Source: yours},
		{Path: "note", Kind: param.Text, Optional: true, Doc: "a sentence for the report", Mark: param.User, Source: yours},
		{Path: "start", Kind: param.Date, Default: "2027-01-04", Doc: "first day of the runs; best a Monday", Mark: param.Assumption, Source: "a Monday"},
		{Path: "run.years", Kind: param.Count, Low: 1, High: 50, Default: "2", Doc: "simulated years counted in each run", Mark: param.Assumption, Source: "enough for seasons to repeat"},
		{Path: "run.warm_up", Kind: param.Count, Low: 0, High: 20, Default: "1", Doc: "simulated years at the start of each run that are not counted", Mark: param.Assumption, Source: "whole years, so that seasons stay in step"},
		{Path: "run.replications", Kind: param.Count, Low: 1, High: 10000, Default: "10", Doc: "runs with different luck", Mark: param.Assumption, Source: "enough for an interval"},
		{Path: "run.seed", Kind: param.Count, Low: 0, High: 1e15, Default: "1", Doc: "number that fixes the luck of all runs", Mark: param.Assumption, Source: "any"},
		{Path: "alternatives", Kind: param.Map, Optional: true, Doc: "ways to run the plant that are compared with it", Mark: param.User, Source: yours},
		{Path: "alternatives.*", Kind: param.Changes, Doc: "what is different: paths of inputs with their values", Mark: param.User, Source: yours},
		{Path: "base_name", Kind: param.Text, Default: "as it is", Doc: "what the plant without changes is called in comparisons", Mark: param.User, Source: yours},
	}
}

func calendarInputs() []param.Row {
	return []param.Row{
		{Path: "shifts", Kind: param.Map, Low: 1, High: 20, Default: "{day: {days: Mon-Fri, from: 06:00, to: 14:30, breaks: [{from: 10:00, to: 10:30}]}}", Doc: "shifts by name", Mark: param.User, Source: yours},
		{Path: "shifts.*.days", Kind: param.Weekdays, Default: "Mon-Fri", Doc: "days on which it starts", Mark: param.User, Source: yours},
		{Path: "shifts.*.from", Kind: param.ClockTime, Doc: "start of the shift", Mark: param.User, Source: yours},
		{Path: "shifts.*.to", Kind: param.ClockTime, Doc: "end of the shift; before the start: on the next day; the same: round the clock", Mark: param.User, Source: yours},
		{Path: "shifts.*.breaks", Kind: param.List, Optional: true, Doc: "breaks", Mark: param.User, Source: yours},
		{Path: "shifts.*.breaks[].from", Kind: param.ClockTime, Doc: "start of a break", Mark: param.User, Source: yours},
		{Path: "shifts.*.breaks[].to", Kind: param.ClockTime, Doc: "end of a break", Mark: param.User, Source: yours},
		{Path: "shifts.*.start_up", Kind: param.Duration, Low: 0, High: 12, Default: "0 h", Doc: "time lost at the start: suits, gun calibration", Mark: param.CommonPractice, Source: "10 to 20 min per gun, no source"},
		{Path: "shifts.*.clean_up", Kind: param.Duration, Low: 0, High: 12, Default: "0 h", Doc: "time lost at the end", Mark: param.CommonPractice, Source: practice},
		{Path: "calendar.holidays", Kind: param.List, Optional: true, Doc: "days of every year on which no shift starts", Mark: param.User, Source: yours},
		{Path: "calendar.holidays[]", Kind: param.DayMonth, Doc: "a holiday", Mark: param.User, Source: yours},
		{Path: "calendar.shutdowns", Kind: param.List, Optional: true, Doc: "weeks of every year in which the plant is shut", Mark: param.CommonPractice, Source: "early July and late December, no source"},
		{Path: "calendar.shutdowns[].from", Kind: param.DayMonth, Doc: "first day", Mark: param.User, Source: yours},
		{Path: "calendar.shutdowns[].to", Kind: param.DayMonth, Doc: "last day", Mark: param.User, Source: yours},
		{Path: "calendar.extra_days", Kind: param.List, Optional: true, Doc: "days worked on top, such as a Saturday", Mark: param.User, Source: yours},
		{Path: "calendar.extra_days[].date", Kind: param.Date, Doc: "the day", Mark: param.User, Source: yours},
		{Path: "calendar.extra_days[].from", Kind: param.ClockTime, Doc: "start", Mark: param.User, Source: yours},
		{Path: "calendar.extra_days[].to", Kind: param.ClockTime, Doc: "end", Mark: param.User, Source: yours},
	}
}

func craftInputs() []param.Row {
	return []param.Row{
		{Path: "crafts", Kind: param.Map, Low: 1, High: 50, Doc: "people by craft", Mark: param.User, Source: yours},
		{Path: "crafts.*.people", Kind: param.Map, Low: 1, High: 20, Doc: "people by shift", Mark: param.User, Source: yours},
		{Path: "crafts.*.people.*", Kind: param.Count, Low: 0, High: 1000, Doc: "people planned on that shift", Mark: param.User, Source: yours},
		{Path: "crafts.*.absence", Kind: param.Share, Low: 0, High: 0.9, Default: "6 %", Doc: "chance that a person is absent on a day", Mark: param.CommonPractice, Source: "3 to 12 %, no source"},
		{Path: "crafts.*.absence_hot", Kind: param.Share, Low: 0, High: 0.9, Optional: true, Doc: "the same in the hot season; as absence if left out", Mark: param.CommonPractice, Source: "1 to 3 points more in hot weeks, no source"},
		{Path: "crafts.*.helps", Kind: param.List, Optional: true, Doc: "crafts it helps when nothing of its own waits", Mark: param.User, Source: yours},
		{Path: "crafts.*.helps[]", Kind: param.Ref, RefTo: "crafts", Doc: "a craft", Mark: param.User, Source: yours},
		{Path: "crafts.*.late", Kind: param.Duration, Low: 0, High: inf, Default: "30 min", Doc: "how long after the day's last shift a task that finishes may be expected to end when it begins", Mark: param.Assumption, Source: guessed},
		{Path: "crafts.*.overtime", Kind: param.Duration, Low: 0, High: inf, Default: "2 h", Doc: "the most such a task runs on after the shift", Mark: param.Assumption, Source: guessed},
		{Path: "crafts.*.slower_when_hot", Kind: param.Share, Low: 0, High: 0.6, Default: "0 %", Doc: "share of speed lost at a heat index of 109 °F, in proportion from 80 °F; 14 % for laminators", Mark: param.Assumption, Source: guessed},
	}
}

func placeInputs() []param.Row {
	return []param.Row{
		{Path: "places", Kind: param.Map, Optional: true, Doc: "booths, bays, cure positions, stalls, hoists; what is not listed is without limit", Mark: param.User, Source: yours},
		{Path: "places.*.kind", Kind: param.Choice, Choices: []string{"place", "booth", "hoist"}, Default: "place", Doc: "what it is", Mark: param.User, Source: yours},
		{Path: "places.*.count", Kind: param.Count, Low: 0, High: 10000, Optional: true, Doc: "how many; without limit if left out", Mark: param.User, Source: yours},
		{Path: "places.*.guns", Kind: param.List, Optional: true, Doc: "gun sets of each booth", Mark: param.User, Source: yours},
		{Path: "places.*.guns[].name", Kind: param.Text, Default: "gun set", Doc: "its name", Mark: param.User, Source: yours},
		{Path: "places.*.guns[].pot", Kind: param.Flag, Default: "false", Doc: "a pot gun for accents instead of a pumped set", Mark: param.User, Source: yours},
		{Path: "places.*.guns[].color", Kind: param.Ref, RefTo: "colors", Optional: true, Doc: "the only color it is used for", Mark: param.User, Source: yours},
		{Path: "places.*.guns[].flush", Kind: param.Duration, Low: 0, High: 10, Optional: true, Doc: "time to change its color: 15 min pumped, 5 min pot if left out", Mark: param.CommonPractice, Source: "pumped 10 to 30 min, pot 3 to 10 min, no source"},
		{Path: "places.*.guns[].fails_after", Kind: param.Dist, High: 100000, Optional: true, Doc: "hours of use between failures", Mark: param.Memory, Source: "40 to 120 h, not verified"},
		{Path: "places.*.guns[].repair", Kind: param.Dist, High: 10000, Optional: true, Doc: "hours to repair it", Mark: param.Memory, Source: "0.5 to 2 h, not verified"},
		{Path: "places.*.fails_after", Kind: param.Dist, High: 100000, Optional: true, Doc: "hours between failures of each", Mark: param.User, Source: yours},
		{Path: "places.*.repair", Kind: param.Dist, High: 10000, Optional: true, Doc: "hours to repair it", Mark: param.User, Source: yours},
		{Path: "places.*.fails_in_use", Kind: param.Flag, Default: "true", Doc: "the hours between failures run only while it is used", Mark: param.Assumption, Source: guessed},
		{Path: "colors", Kind: param.Map, Low: 1, High: 200, Default: "{white: {look: white}}", Doc: "gel coat colors", Mark: param.User, Source: yours},
		{Path: "colors.*.look", Kind: param.Text, Default: "pastel", Doc: "how it shows haze: dark, pastel, white, or a shade of finish.shades", Mark: param.User, Source: yours},
	}
}

func modelInputs() []param.Row {
	return []param.Row{
		{Path: "models", Kind: param.Map, Low: 1, High: 500, Doc: "boats", Mark: param.User, Source: yours},
		{Path: "models.*.orders", Kind: param.Rate, Low: 0, High: 10000, Default: "0/week", Doc: "mean orders over the year, for the dated order book", Mark: param.User, Source: yours},
		{Path: "models.*.due", Kind: param.Dist, High: 20000, Default: "8 - 10 - 14 wk", Doc: "from the order to its due date", Mark: param.CommonPractice, Source: "4 to 16 weeks of order book is normal, no source"},
		{Path: "models.*.colors", Kind: param.Map, Optional: true, Doc: "weights of hull colors", Mark: param.User, Source: yours},
		{Path: "models.*.colors.*", Kind: param.Number, Low: 0, High: 1e6, Doc: "weight of a color", Mark: param.User, Source: yours},
		{Path: "models.*.bands", Kind: param.Map, Optional: true, Doc: "weights of the colors of accent bands", Mark: param.User, Source: yours},
		{Path: "models.*.bands.*", Kind: param.Number, Low: 0, High: 1e6, Doc: "weight of a color", Mark: param.User, Source: yours},
		{Path: "models.*.floor_limit", Kind: param.Count, Low: 0, High: 10000, Default: "0", Doc: "boats of the model on the floor at most; 0: no limit of its own", Mark: param.User, Source: yours},
		{Path: "models.*.boat", Kind: param.Text, Default: "boat", Doc: "route of the boat once its parts are finished", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.work", Kind: param.Map, Optional: true, Doc: "people and hours of the steps of that route, such as assembly: 4 x 14 h", Mark: param.User, Source: yours},
		{Path: "models.*.work.*", Kind: param.Text, Doc: "people x hours, \"4 x 14 h\", \"2 (1) x 1 - 1.5 - 3 h\" with the least people in brackets, or none", Mark: param.User, Source: yours},
		{Path: "models.*.parts", Kind: param.Map, Low: 1, High: mostParts, Doc: "what the boat is made of: hull, deck, liner", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.area", Kind: param.Area, Low: 0.01, High: 1000, Doc: "area of its mold", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.molds", Kind: param.Count, Low: 0, High: 1000, Doc: "molds in rotation", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.reserve", Kind: param.Count, Low: 0, High: 1000, Default: "0", Doc: "molds in reserve", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.new_molds", Kind: param.Count, Low: 0, High: 1000, Default: "0", Doc: "how many of those in rotation are new at the start and must be broken in", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.surface", Kind: param.Number, Low: 0, High: 20, Default: "0.1", Doc: "lasting loss of surface of its molds at the start, points of luster", Mark: param.Assumption, Source: "0.05 to 0.2; calibrate with a gloss log"},
		{Path: "models.*.parts.*.shape", Kind: param.Choice, Choices: []string{"hull", "deck", "liner"}, Default: "hull", Doc: "how fast build-up grows: smooth hull, textured deck, liner", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.parts.*.color", Kind: param.Ref, RefTo: "colors", Optional: true, Doc: "its color; the boat's color if left out", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.band_share", Kind: param.Share, Default: "0 %", Doc: "share of these parts that carry an accent band", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.visible", Kind: param.Flag, Default: "true", Doc: "whether its luster counts for the boat's", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.grade", Kind: param.Text, Default: "premium", Doc: "grade of gel coat: entry, medium, premium, or one of finish.grades", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.route", Kind: param.Text, Default: "part", Doc: "route from the waxed mold to the finished part", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.parts.*.care", Kind: param.Text, Default: "mold care", Doc: "route of the mold after a pull; none for parts without a mold", Mark: param.Assumption, Source: guessed},
		{Path: "models.*.parts.*.work", Kind: param.Map, Optional: true, Doc: "people and hours of the steps of its routes", Mark: param.User, Source: yours},
		{Path: "models.*.parts.*.work.*", Kind: param.Text, Doc: "people x hours, \"4 x 3.75 h\", \"4 (3) x 3 - 3.75 - 6 h\" with the least people in brackets; for a wait only the hours; none leaves the step out", Mark: param.User, Source: yours},
		{Path: "background", Kind: param.Map, Optional: true, Doc: "work that loads people without being followed part by part", Mark: param.User, Source: yours},
		{Path: "background.*.craft", Kind: param.Ref, RefTo: "crafts", Doc: "who does it", Mark: param.User, Source: yours},
		{Path: "background.*.per_week", Kind: param.Duration, Low: 0, High: 1e5, Default: "0 h", Doc: "labor a week", Mark: param.User, Source: yours},
		{Path: "background.*.per_boat", Kind: param.Duration, Low: 0, High: 1e5, Default: "0 h", Doc: "labor per shipped boat, on top", Mark: param.User, Source: yours},
		{Path: "background.*.piece", Kind: param.Duration, Low: 0.01, High: 1000, Default: "2 h", Doc: "labor of one piece of it", Mark: param.Assumption, Source: guessed},
		{Path: "background.*.people", Kind: param.Count, Low: 1, High: 20, Default: "1", Doc: "people on one piece", Mark: param.User, Source: yours},
		{Path: "background.*.place", Kind: param.Ref, RefTo: "places", Optional: true, Doc: "place it needs", Mark: param.User, Source: yours},
		{Path: "variation", Kind: param.Share, Low: 0, High: 2, Default: "15 %", Doc: "standard deviation over mean of labor times that are given as one number", Mark: param.Assumption, Source: guessed},
	}
}

func routeInputs() []param.Row {
	doing := make([]string, 0, record.Doings)
	for d := record.Idle + 1; d < record.Doings; d++ {
		doing = append(doing, d.String())
	}
	step := func(name string, row param.Row) param.Row {
		row.Path = "routes.*.steps[]." + name
		row.Mark, row.Source = param.Assumption, guessed
		return row
	}
	return []param.Row{
		{Path: "routes", Kind: param.Map, Optional: true, Doc: "lives of parts, molds in care and boats as lists of steps; those not listed are the standard ones", Mark: param.Assumption, Source: guessed},
		{Path: "routes.*.steps", Kind: param.List, Low: 0, High: 100, Doc: "its steps in order", Mark: param.Assumption, Source: guessed},
		step("step", param.Row{Kind: param.Text, Doc: "name of the step"}),
		step("does", param.Row{Kind: param.Choice, Choices: doing, Default: "other work", Doc: "what it is"}),
		step("when", param.Row{Kind: param.Choice, Choices: CondNames(), Default: "always", Doc: "left out unless this holds"}),
		step("means", param.Row{Kind: param.Choice, Choices: VerbNames(), Optional: true, Doc: "what its end means to the plant"}),
		step("time", param.Row{Kind: param.Choice, Choices: []string{"labor", "clock", "cure", "hold"}, Default: "labor", Doc: "how its time runs: people at work, clock hours, equivalent hours at 25 °C, the hold policy"}),
		step("hours", param.Row{Kind: param.Dist, High: 10000, Optional: true, Doc: "its time with the people wanted; without hours here and in the part's work, a step of labor is left out"}),
		step("per", param.Row{Kind: param.Area, Low: 0.01, High: 1000, Optional: true, Doc: "the hours are for a part of this area, and go in proportion"}),
		step("craft", param.Row{Kind: param.Text, Optional: true, Doc: "who does it"}),
		step("people", param.Row{Kind: param.Count, Low: 1, High: 100, Default: "1", Doc: "people wanted"}),
		step("least", param.Row{Kind: param.Count, Low: 1, High: 100, Optional: true, Doc: "people it can run with, slower; one less than wanted if left out"}),
		step("slower", param.Row{Kind: param.Number, Low: 0, High: 3, Default: "1", Doc: "with fewer people time grows with (wanted / present) to this power"}),
		step("end", param.Row{Kind: param.Choice, Choices: []string{"pause", "finish", "fit"}, Default: "pause", Doc: "at the end of a shift: pauses; is finished, and begins only if it should end with the day; begins only if it fits into the shift and never pauses"}),
		step("first", param.Row{Kind: param.Count, Low: 0, High: 100, Default: "0", Doc: "higher goes first among work that waits"}),
		step("takes", param.Row{Kind: param.List, Optional: true, Doc: "places it takes and keeps"}),
		step("takes[]", param.Row{Kind: param.Text, Doc: "a place"}),
		step("swaps", param.Row{Kind: param.List, Optional: true, Doc: "places given back when it begins"}),
		step("swaps[]", param.Row{Kind: param.Text, Doc: "a place"}),
		step("uses", param.Row{Kind: param.List, Optional: true, Doc: "places it needs while it runs, such as a hoist"}),
		step("uses[]", param.Row{Kind: param.Text, Doc: "a place"}),
		step("frees", param.Row{Kind: param.List, Optional: true, Doc: "places given back when it ends"}),
		step("frees[]", param.Row{Kind: param.Text, Doc: "a place"}),
		step("sprays", param.Row{Kind: param.Choice, Choices: []string{"base", "band"}, Optional: true, Doc: "needs a gun set for the base color, or for the band"}),
		step("air", param.Row{Kind: param.Choice, Choices: []string{"any", "dry", "dry and warm"}, Default: "any", Doc: "air it waits for: above dew point, warm enough for gel coat"}),
		step("opens_window", param.Row{Kind: param.Flag, Default: "false", Doc: "begins only when the skin coat can follow within the gel window"}),
		step("extra", param.Row{Kind: param.Choice, Choices: ExtraNames(), Optional: true, Doc: "hours on top that depend on the state of things"}),
		step("back_to", param.Row{Kind: param.Text, Optional: true, Doc: "step to go back to at the end"}),
		step("while", param.Row{Kind: param.Choice, Choices: CondNames(), Default: "always", Doc: "as long as this holds"}),
	}
}

func demandInputs() []param.Row {
	return []param.Row{
		{Path: "demand.book", Kind: param.Choice, Choices: []string{"both", "full", "orders"}, Default: "both", Doc: "orders always waiting, for what the plant can do; a dated order book, for dates; or both in turn", Mark: param.Assumption, Source: guessed},
		{Path: "demand.floor_limit", Kind: param.Count, Low: 0, High: 100000, Default: "0", Doc: "boats on the floor at most; 0: no limit", Mark: param.User, Source: yours},
		{Path: "demand.mate_lead", Kind: param.Count, Low: 0, High: 1000, Default: "2", Doc: "a part type starts at most this many ahead of its slowest mate; 0: no limit", Mark: param.Assumption, Source: guessed},
		{Path: "demand.mates", Kind: param.Choice, Choices: []string{"same order", "any"}, Default: "same order", Doc: "whether a boat takes the parts begun for its order, or those finished first, as when all are of one color", Mark: param.Assumption, Source: guessed},
		{Path: "demand.months", Kind: param.List, Low: 12, High: 12, Default: "[8, 9, 10, 10, 10, 9, 8, 8, 8, 8, 7, 5]", Doc: "weights of orders by month, January first", Mark: param.CommonPractice, Source: "plants build to wholesale, which is flatter than retail: quarters 27 / 29 / 23 / 21 %, no source"},
		{Path: "demand.months[]", Kind: param.Number, Low: 0, High: 1e6, Doc: "weight of a month", Mark: param.CommonPractice, Source: practice},
		{Path: "demand.even", Kind: param.Flag, Default: "false", Doc: "orders come evenly instead of at random", Mark: param.Assumption, Source: guessed},
		{Path: "demand.cancel_after", Kind: param.Duration, Low: 0, High: 1e6, Default: "12 wk", Doc: "a dated order that is not begun this long after its due date is lost; 0 h: never", Mark: param.Assumption, Source: guessed},
		{Path: "demand.file", Kind: param.Text, Optional: true, Doc: "order book as CSV beside the scenario: model, color, arrives, due, band, priority", Mark: param.User, Source: yours},
		{Path: "quality.target", Kind: param.Number, Low: 0, High: 100, Default: "97", Doc: "luster that is promised, on the 100-point scale", Mark: param.User, Source: yours},
		{Path: "quality.slack", Kind: param.Number, Low: 0, High: 20, Default: "0.5", Doc: "points of luster under the target, once all post-cure has come out, that a customer does not mind; a boat further under has escaped", Mark: param.Assumption, Source: guessed},
		{Path: "quality.rounds", Kind: param.Count, Low: 0, High: 10, Default: "2", Doc: "rounds of buffing before a part is conceded", Mark: param.Assumption, Source: guessed},
	}
}

func limitInputs() []param.Row {
	return []param.Row{
		{Path: "window.limit", Kind: param.Duration, Low: 0, High: 1000, Default: "8 h", Doc: "from spraying to the skin coat; 0 h: no window", Mark: param.CommonPractice, Source: "same shift preferred, 4 to 16 h, no source"},
		{Path: "window.wash_after", Kind: param.Duration, Low: 0, High: 1000, Default: "16 h", Doc: "after this the gel coat is washed out and sprayed again", Mark: param.CommonPractice, Source: practice},
		{Path: "window.scuff", Kind: param.Number, Low: 0, High: 10, Default: "0.03", Doc: "labor hours per m² to scuff gel coat between the two", Mark: param.CommonPractice, Source: practice},
		{Path: "window.slots", Kind: param.Count, Low: 0, High: 1000, Default: "0", Doc: "sprayed parts without a skin coat at most; 0: as many as come", Mark: param.Assumption, Source: guessed},
		{Path: "window.craft", Kind: param.Text, Default: "lamination", Doc: "who lays the skin coat", Mark: param.User, Source: yours},
		{Path: "air.dew_margin", Kind: param.Difference, Low: 0, High: 20, Default: "3 C", Doc: "how far a mold must be above dew point for wax and gel coat", Mark: param.Published, Source: "surface 3 °C above dew point: DIN EN ISO 12944 practice for coatings"},
		{Path: "air.most_humidity", Kind: param.Share, Low: 0, High: 1, Default: "0 %", Doc: "the highest relative humidity for wax and gel coat; 0: no limit", Mark: param.Published, Source: "80 % in class rules: Rules for Classification of FRP Ships, moulding section"},
		{Path: "air.least_temperature", Kind: param.Temperature, Low: -10, High: 40, Default: "16 C", Doc: "the lowest mold temperature for gel coat", Mark: param.Published, Source: "60 – 80 °F: \"Gelcoat application – thickness, initiator level, temperature\", supplier guide"},
	}
}
