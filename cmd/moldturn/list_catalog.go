package main

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/scenarios"
	"moldturn/sim/study"
)

// bundledRow is a scenario that comes with the program.
type bundledRow struct {
	Name         string `json:"name"`
	Plant        string `json:"plant"`
	Note         string `json:"note"`
	Models       int    `json:"models"`
	Alternatives int    `json:"alternatives"` // the base not counted
}

func listScenarios(*scenarios.Scenario) (*sheet, error) {
	rows := []bundledRow{}
	t := cells.Table{Columns: columns("name", ">models", ">alternatives", "what it is")}
	for _, name := range scenarios.Bundled() {
		s, err := loadScenario(name, &common{})
		if err != nil {
			return nil, err
		}
		v := s.Base.Value
		row := bundledRow{Name: name, Plant: v.At("name").Text(), Models: v.At("models").Len(), Alternatives: v.At("alternatives").Len()}
		if note := v.At("note"); note.Given() {
			row.Note = note.Text()
		}
		rows = append(rows, row)
		t.Rows = append(t.Rows, cells.Texts(name, fmt.Sprint(row.Models), fmt.Sprint(row.Alternatives), row.Note))
	}
	return &sheet{tables: []cells.Table{t}, rows: rows}, nil
}

// metricRow is a figure of results.
type metricRow struct {
	Name   string `json:"name"`
	Label  string `json:"label"`
	Unit   string `json:"unit"`
	Better string `json:"better"` // more, less, or empty for neither
	Doc    string `json:"doc"`
}

func metricRowOf(m study.Metric) metricRow {
	better := map[int]string{1: "more", -1: "less"}[m.Better]
	return metricRow{m.Name, m.Label, m.Unit, better, m.Doc}
}

func listMetrics(*scenarios.Scenario) (*sheet, error) {
	rows := []metricRow{}
	t := cells.Table{Columns: columns("name", "unit", "better", "what it is")}
	for _, m := range study.Metrics() {
		row := metricRowOf(m)
		rows = append(rows, row)
		t.Rows = append(t.Rows, cells.Texts(row.Name, row.Unit, row.Better, row.Doc))
	}
	return &sheet{tables: []cells.Table{t}, rows: rows}, nil
}
