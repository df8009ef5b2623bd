package main

import (
	"compress/gzip"
	"fmt"
	"io"

	"moldturn/sim/study"
)

// compareKey is the key of an alternative's results in a comparison.
func compareKey(op *opened, i int) string {
	return op.Alternatives[i].Plant.Fingerprint(op.files) + " " + op.Alternatives[i].Name
}

// comparedRuns are the runs of a comparison that a book holds: the replications
// that it has of every alternative.
func comparedRuns(book *study.Book, op *opened) ([]study.Runs, error) {
	runs := make([]study.Runs, len(op.Alternatives))
	n := 0
	for i, a := range op.Alternatives {
		outcomes, err := book.Outcomes(compareKey(op, i), a.Plant.Frame)
		if err != nil {
			return nil, err
		}
		if len(outcomes) == 0 {
			return nil, fmt.Errorf("there are no results of %q", a.Name)
		}
		if i == 0 || len(outcomes) < n {
			n = len(outcomes)
		}
		runs[i] = study.Runs{Name: a.Name, Changes: a.Changes, Outcomes: outcomes}
	}
	for i := range runs {
		runs[i].Outcomes = runs[i].Outcomes[:n]
	}
	return runs, nil
}

// keptComparison is the file of a whole comparison, compressed, so that it can be
// reported on and added to.
func keptComparison(op *opened, h study.Head, runs []study.Runs, curve *study.HoldCurve) resultFile {
	book := study.NewBook(h)
	keys := make([]string, len(runs))
	for i := range runs {
		keys[i] = compareKey(op, i)
		book.Add(study.NewEntry(keys[i], &runs[i], 0))
	}
	keepHolds(book, curve)
	return resultFile{resultNames[1], func(w io.Writer) error {
		z := gzip.NewWriter(w)
		if err := book.Write(z, keys); err != nil {
			return err
		}
		return z.Close()
	}}
}
