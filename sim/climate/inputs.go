package climate

import (
	"fmt"
	"strconv"
	"strings"

	"moldturn/sim/param"
)

const (
	yours   = "the plant's own fact"
	guessed = "assumption of this model, to be calibrated"
	coastal = "invented: a warm, humid coast"
)

// DefaultGap is the longest gap of a weather file, in hours, that is filled.
const DefaultGap = 6

// Inputs lists what a scenario may say about weather and plant air. It is a
// fresh list at every call; the defaults of the normals are those of Coast.
func Inputs() []param.Row {
	rows := []param.Row{{Path: "climate.weather", Kind: param.Choice, Choices: []string{"months", "normals", "file"}, Default: "months", Mark: param.Assumption, Source: guessed,
		Doc: "months: a table of what it is like in the plant; normals: weather made from monthly means; file: hourly weather from a file"}}
	rows = append(rows, monthInputs()...)
	rows = append(rows, normalInputs()...)
	rows = append(rows, fileInputs()...)
	return append(rows, areaInputs()...)
}

// perMonth is a list of twelve values and its items.
func perMonth(list, item param.Row) []param.Row {
	list.Kind, list.Low, list.High = param.List, 12, 12
	list.Doc = item.Doc + ", January first"
	list.Mark, list.Source = item.Mark, item.Source
	item.Path = list.Path + "[]"
	return []param.Row{list, item}
}

// twelve writes a default for a list of months.
func twelve(unit string, value func(month int) float64) string {
	words := make([]string, 12)
	for i := range words {
		words[i] = strconv.FormatFloat(value(i), 'g', -1, 64) + unit
	}
	return "[" + strings.Join(words, ", ") + "]"
}

func monthInputs() []param.Row {
	same := func(v float64) func(int) float64 { return func(int) float64 { return v } }
	var rows []param.Row
	for _, r := range [][]param.Row{
		perMonth(param.Row{Path: "climate.months.plant", Default: twelve(" C", same(21))},
			param.Row{Kind: param.Temperature, Low: -30, High: 60, Doc: "plant temperature by month", Mark: param.User, Source: yours}),
		perMonth(param.Row{Path: "climate.months.heat_index", Default: twelve(" F", same(70))},
			param.Row{Kind: param.Temperature, Low: -30, High: 80, Doc: "heat index in working hours by month", Mark: param.User, Source: yours}),
		perMonth(param.Row{Path: "climate.months.humidity", Default: twelve(" %", same(100*DefaultRH))},
			param.Row{Kind: param.Share, Doc: "relative humidity in the plant by month", Mark: param.Assumption, Source: guessed}),
		{{Path: "climate.months.stepped", Kind: param.Flag, Default: "false", Mark: param.Assumption, Source: guessed,
			Doc: "true: a month's values hold to its last day; false: they run in straight lines from mid-month to mid-month"}},
	} {
		rows = append(rows, r...)
	}
	return rows
}

// normalInputs are the monthly lists of normals, in the order of the fields of
// Normal, and what holds for all months.
func normalInputs() []param.Row {
	coast := Coast()
	var rows []param.Row
	for _, l := range []struct {
		path, unit, doc string
		kind            param.Kind
		low, high       float64
		value           func(Normal) float64
	}{
		{"mean", " C", "mean outdoor temperature by month", param.Temperature, -50, 50, func(n Normal) float64 { return n.MeanC }},
		{"daily_range", " C", "mean difference of a day's highest and lowest temperature by month", param.Difference, 0, 40, func(n Normal) float64 { return n.RangeK }},
		{"spread", " C", "standard deviation of the days' mean temperatures by month", param.Difference, 0, 20, func(n Normal) float64 { return n.SpreadK }},
		{"dew_point", " C", "mean outdoor dew point by month", param.Temperature, -60, 35, func(n Normal) float64 { return n.DewC }},
		{"dew_spread", " C", "standard deviation of the days' mean dew points by month", param.Difference, 0, 20, func(n Normal) float64 { return n.DewSpreadK }},
		{"dew_tie", "", "correlation of the days' mean dew points and temperatures by month", param.Number, -1, 1, func(n Normal) float64 { return n.DewTie }},
	} {
		rows = append(rows, perMonth(
			param.Row{Path: "climate.normals." + l.path, Default: twelve(l.unit, func(m int) float64 { return l.value(coast.Months[m]) })},
			param.Row{Kind: l.kind, Low: l.low, High: l.high, Doc: l.doc, Mark: param.Assumption, Source: coastal})...)
	}
	return append(rows,
		param.Row{Path: "climate.normals.warmest_time", Kind: param.ClockTime, Default: fmt.Sprintf("%02d:00", DefaultPeakHour), Mark: param.Assumption, Source: guessed,
			Doc: "time of the day's highest temperature"},
		param.Row{Path: "climate.normals.persistence", Kind: param.Number, Low: 0, High: 0.99, Default: fmt.Sprint(DefaultPersistence), Mark: param.Assumption,
			Source: "0.69 fits the open daily record of Chicago 2001 – 2008 (R package modeldata)",
			Doc:    "how much a warm or cold day carries over to the next: correlation of their mean temperatures"})
}

func fileInputs() []param.Row {
	return []param.Row{
		{Path: "climate.file", Kind: param.Text, Optional: true, Mark: param.User, Source: yours,
			Doc: "hourly outdoor weather: an EPW file, or CSV with time, dry bulb and RH and their units in the header"},
		{Path: "climate.longest_gap", Kind: param.Duration, Low: 0, High: 48, Default: fmt.Sprintf("%d h", DefaultGap), Mark: param.Assumption, Source: guessed,
			Doc: "gaps of the file up to this are filled in a straight line; longer ones are errors"},
	}
}
