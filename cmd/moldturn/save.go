package main

import (
	"fmt"
	"io"
	"path/filepath"

	"moldturn/reports"
	resultfiles "moldturn/reports/files"
	"moldturn/reports/view"
	"moldturn/reports/workbook"
)

// resultFile is a file of a result folder.
type resultFile struct {
	name  string
	write func(io.Writer) error
}

// resultOf is a file that shows v.
func resultOf[T any](name string, v T, write func(io.Writer, T) error) resultFile {
	return resultFile{name, func(w io.Writer) error { return write(w, v) }}
}

// saveAs writes files into a folder, all or none; nothing without a folder.
func saveAs(c *Context, folder string, list []resultFile) error {
	if folder == "" {
		return nil
	}
	var set []resultfiles.File
	for _, f := range list {
		set = append(set, resultfiles.File{Path: filepath.Join(folder, f.name), Write: f.write})
	}
	if err := resultfiles.WriteAll(c.Ctx, set); err != nil {
		return err
	}
	for _, f := range set {
		c.Wrote(f.Path)
	}
	fmt.Fprintf(c.Stderr, "results are in %s\n", folder)
	return nil
}

// save writes the results of a comparison into a folder, with what else belongs
// to them; nothing without a folder.
func save(c *Context, folder string, s *view.Study, more ...resultFile) error {
	return saveAs(c, folder, append([]resultFile{
		resultOf("results.csv", s, reports.CSV),
		resultOf("results.json", s, reports.JSON),
		resultOf("report.html", s, reports.HTML),
		resultOf("results.xlsx", s, workbook.Write),
	}, more...))
}
