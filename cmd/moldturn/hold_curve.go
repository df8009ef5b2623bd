package main

import (
	"fmt"
	"sync/atomic"

	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/study"
)

// holdCurve runs the base at other clock hours in the mold, for the picture in
// the report: few replications, of the runs with orders always waiting only. It
// gives nil where no report is written, and where the plant has no such runs.
func holdCurve(c *Context, o *common, op *opened) (*study.HoldCurve, error) {
	if o.Out == "" || op.Base.Capacity == nil {
		return nil, nil
	}
	hours := study.HoldHours()
	setup := &study.Setup{Replications: study.HoldReplications, Seed: op.seed(o), Workers: o.workers()}
	for _, h := range hours {
		a, err := held(op, h)
		if err != nil {
			return nil, err
		}
		setup.Alternatives = append(setup.Alternatives, a)
	}
	told := newProgress(c, fmt.Sprintf("simulating %d holds", len(hours)), o.Quiet)
	var done atomic.Int64
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), setup.Total()) }
	runs, err := study.Compare(c.Ctx, setup)
	told.Close()
	if err != nil {
		return nil, err
	}
	out := &study.HoldCurve{Hours: hours, Base: op.Base.Plan().Hold.Clock}
	for i := range runs {
		out.Points = append(out.Points, runs[i].Figures())
	}
	return out, nil
}

// held is the base with another hold.
func held(op *opened, hours int) (study.Alternative, error) {
	change, complaints := scenarios.ParseChange("--set", fmt.Sprintf("hold.clock = %d h", hours))
	if len(complaints) > 0 {
		return study.Alternative{}, complaints
	}
	a, complaints := op.With(study.HoldName(hours), change)
	if len(complaints) > 0 {
		return study.Alternative{}, complaints
	}
	p := a.Plant
	return study.Alternative{Name: a.Name, Changes: a.Changes, Capacity: p.Capacity, Frame: p.Frame, Climate: p.Climate, Air: p.Air}, nil
}

// keepHolds adds a curve to a book, for reports made again.
func keepHolds(book *study.Book, curve *study.HoldCurve) {
	if curve == nil {
		return
	}
	for i := range curve.Points {
		p := &curve.Points[i]
		book.Add(&study.Entry{Key: p.Name, Names: []string{p.Name}, Changes: p.Changes, Values: p.Values})
	}
}

// keptHolds is the curve in a book; nil where one of its points is missing.
func keptHolds(book *study.Book, op *opened) *study.HoldCurve {
	out := &study.HoldCurve{Hours: study.HoldHours(), Base: op.Base.Plan().Hold.Clock}
	for _, h := range out.Hours {
		values := book.Figures(study.HoldName(h), study.HoldReplications)
		if len(values) == 0 {
			return nil
		}
		out.Points = append(out.Points, study.Figures{Name: study.HoldName(h), Values: values})
	}
	return out
}

// tellAir gives a report the card for the wall, and what is to be known of the
// air of the base.
func tellAir(v *view.Study, s *scenarios.Scenario) {
	card := s.Base.HoldCard()
	v.Card = &card
	for _, w := range s.Base.AirWarnings() {
		v.Air = append(v.Air, w.Text)
	}
}
