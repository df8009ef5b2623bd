package main

import (
	"moldturn/scenarios"
	"moldturn/scenarios/floor"
)

// checkedFloor is what check found in a scenario and a floor.
type checkedFloor struct {
	Complaints []scenarios.Complaint `json:"complaints"`
	Warnings   []warning             `json:"warnings"`
	Floor      floorReport           `json:"floor"`
}

// floorReport is a floor for machines; Morning is "" where there is none.
type floorReport struct {
	Morning string        `json:"morning"`
	Molds   int           `json:"molds"`
	Work    int           `json:"work"`
	Orders  int           `json:"orders"`
	Sheets  []floorSheet  `json:"sheets"`
	Notices []floorNotice `json:"notices"`
}

// floorSheet is a table of the folder with the rows that are not used.
type floorSheet struct {
	File    string     `json:"file"`
	Sheet   string     `json:"sheet,omitempty"`
	Kind    string     `json:"kind"`
	Rows    int        `json:"rows"`
	Used    int        `json:"used"`
	Older   int        `json:"older"`
	Skipped int        `json:"passed_over"`
	Dropped int        `json:"not_used"`
	Others  []floorRow `json:"rows_not_used"`
}

// floorRow is a row that is not used, and why.
type floorRow struct {
	Row  int    `json:"row"`
	Fate string `json:"fate"`
	Why  string `json:"why"`
}

// floorNotice is a floor.Notice for machines.
type floorNotice struct {
	Level   string `json:"level"`
	Rule    string `json:"rule"`
	File    string `json:"file"`
	Sheet   string `json:"sheet,omitempty"`
	Row     int    `json:"row"`
	Column  int    `json:"column"`
	Found   string `json:"found"`
	Message string `json:"message"`
	Allowed string `json:"allowed,omitempty"`
	Hint    string `json:"hint,omitempty"`
	Effect  string `json:"effect,omitempty"`
}

func floorReportOf(r *floor.Reading) floorReport {
	out := floorReport{Sheets: []floorSheet{}, Notices: []floorNotice{}}
	if f := r.Floor; f != nil {
		out.Morning, out.Molds, out.Work, out.Orders = f.Morning.String(), len(f.Molds), len(f.Work), len(f.Orders)
	}
	for i := range r.Sheets {
		s := &r.Sheets[i]
		sheet := floorSheet{File: s.Place.File, Sheet: s.Place.Sheet, Kind: s.Kind, Rows: len(s.Rows), Used: s.Count(floor.Used), Older: s.Count(floor.Older),
			Skipped: s.Count(floor.Skipped), Dropped: s.Count(floor.Dropped), Others: []floorRow{}}
		for _, row := range s.Rows {
			if row.Fate != floor.Used {
				sheet.Others = append(sheet.Others, floorRow{row.Row, row.Fate.String(), row.Why})
			}
		}
		out.Sheets = append(out.Sheets, sheet)
	}
	for _, n := range r.Notices {
		out.Notices = append(out.Notices, floorNotice{n.Level.String(), n.Rule, n.Place.File, n.Place.Sheet, n.Place.Row, n.Place.Column, n.Found, n.Message, n.Allowed, n.Hint, n.Effect})
	}
	return out
}
