package main

import (
	"moldturn/reports"
	"moldturn/reports/cells"
	"moldturn/scenarios"
)

// outputRow is one column or key of a result file.
type outputRow struct {
	File string `json:"file"`
	Name string `json:"name"`
	Doc  string `json:"doc"`
}

// outputs describes the files that compare and run write with --out; a test
// holds it against the files themselves.
func outputs() []outputRow {
	const csv, json = "results.csv", "results.json"
	return []outputRow{
		{csv, "alternative", "name of the way to run the plant; the base has its base_name"},
		{csv, "replication", "number of the run, from 1; the same number is the same luck in every alternative"},
		{csv, "metric", "name of a figure, see \"moldturn list metrics\""},
		{csv, "value", "the figure of that run, in full; a share is 0 to 1"},
		{csv, "unit", "its unit"},
		{json, "scenario", "name of the plant"},
		{json, "seed", "number all luck is drawn from"},
		{json, "replications", "runs of each alternative"},
		{json, "years", "simulated years counted in each run"},
		{json, "confidence", "of all intervals, 0 to 1"},
		{json, "alternatives", "list, the base first"},
		{json, "alternatives[].name", "name of the way to run the plant"},
		{json, "alternatives[].changes", "what differs from the base, as written"},
		{json, "alternatives[].metrics", "figures by name; null for one it does not have"},
		{json, "alternatives[].metrics.*.mean", "mean over replications"},
		{json, "alternatives[].metrics.*.low", "lower end of the interval; null without one"},
		{json, "alternatives[].metrics.*.high", "upper end of the interval; null without one"},
		{json, "alternatives[].metrics.*.n", "replications that have the figure"},
		{json, "alternatives[].metrics.*.unit", "its unit"},
		{json, "alternatives[].difference", "paired differences from the base by name of the figure; empty for the base"},
		{json, "alternatives[].difference.*.mean", "mean over replications"},
		{json, "alternatives[].difference.*.low", "lower end of the interval; null without one"},
		{json, "alternatives[].difference.*.high", "upper end of the interval; null without one"},
		{json, "alternatives[].difference.*.n", "replications that both have"},
		{json, "alternatives[].difference.*.clear", "whether the interval leaves out zero"},
		{json, "alternatives[].difference.*.narrower", "how many times as wide the interval would be with separate luck; null if not known"},
		{"results.jsonl.gz", "", "all outcomes in full, one a line, for \"moldturn report\" and for --add"},
		{"results.jsonl.gz", "", "all outcomes with the scenario they came from, for \"moldturn report\" and \"compare --add\"; only compare writes it"},
		{"report.html", "", "tables and charts of the same figures, one page that needs no network"},
	}
}

func listOutputs(*scenarios.Scenario) (*sheet, error) {
	t := cells.Table{Columns: columns("file", "column or key", "what it is")}
	for _, row := range allOutputs() {
		t.Rows = append(t.Rows, cells.Texts(row.File, row.Name, row.Doc))
	}
	return &sheet{tables: []cells.Table{t}, rows: allOutputs()}, nil
}

// allOutputs is outputs with the file that --facts adds.
func allOutputs() []outputRow {
	rows := outputs()
	for _, c := range reports.FactColumns {
		rows = append(rows, outputRow{"facts.csv", c[0], c[1]})
	}
	return rows
}
