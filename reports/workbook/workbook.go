// Package workbook writes a finished comparison as a spreadsheet for the desk:
// the answer with a drawing, every figure of every alternative, weeks and
// months, molds, waits, costs, the assumptions, and every figure of every run.
//
// Numbers are stored as numbers in full; formats only show fewer digits. Texts
// are stored as texts: nothing in the file is a formula, whatever a name starts
// with, and there are no macros and no links. The same Study gives the same
// bytes: times and order inside the file are fixed (see pack.go).
package workbook

import (
	"io"

	"github.com/xuri/excelize/v2"

	"moldturn/reports/cells"
	"moldturn/reports/view"
)

// Sheet names one sheet of the workbook and says what is on it.
type Sheet struct{ Name, Doc string }

// Sheets lists the sheets in their order.
func Sheets() []Sheet {
	return []Sheet{
		{decisionSheet, "the answer, key figures of each alternative, what limits the plant, how it was computed; charts of boats by alternative and by month"},
		{"Alternatives", "every figure of every alternative with its interval and its difference from the base"},
		{weeksSheet, "boats shipped by week of the year with the band of 8 years in 10; on the right, by month"},
		{"Molds", "of each part type: molds, pulls, cycle, luster, and where the hours of a mold week go"},
		{"Waits", "hours a week that boats, parts and molds wait, by craft, place and reason, over the year and by month"},
		{"Costs", "every line of the ledger, mean a year; a sentence when the scenario has no prices"},
		{"Assumptions", "every value behind the results with what it is known from"},
		{"Data", "the rows of results.csv"},
	}
}

// Write writes the workbook of a comparison.
func Write(w io.Writer, s *view.Study) error {
	b := &book{file: excelize.NewFile(), study: s, formats: map[look]int{}}
	defer b.file.Close()
	if err := b.fill(); err != nil {
		return err
	}
	return pack(w, b.file, b.bars)
}

// book is a workbook that is being made.
type book struct {
	file    *excelize.File
	study   *view.Study
	formats map[look]int // styles that the file has already
	bars    []errorBars
}

// fill makes all sheets. The first is made last, since its charts are of cells
// of others.
func (b *book) fill() error {
	if err := b.properties(); err != nil {
		return err
	}
	for i, s := range Sheets() {
		if i == 0 {
			if err := b.file.SetSheetName("Sheet1", s.Name); err != nil {
				return err
			}
			continue
		}
		if _, err := b.file.NewSheet(s.Name); err != nil {
			return err
		}
	}
	weeks, months := b.weeks()
	for _, t := range []*table{b.alternatives(), weeks, b.molds(), b.waits(), b.costs(), b.assumptions(), b.data(mostRows)} {
		if err := b.put(t); err != nil {
			return err
		}
	}
	return b.decision(months)
}

// properties are fixed, so that the file does not tell when and where it was made.
func (b *book) properties() error {
	const epoch = "2000-01-01T00:00:00Z"
	if err := b.file.SetDocProps(&excelize.DocProperties{Title: cells.OneLine(b.study.Scenario), Creator: "moldturn", LastModifiedBy: "moldturn",
		Created: epoch, Modified: epoch}); err != nil {
		return err
	}
	return b.file.SetAppProps(&excelize.AppProperties{Application: "moldturn"})
}
