// Package whole puts the report of a comparison together: the sections of the
// page in their order. A section is a row of a table, so that a new one costs
// its own package and one row here.
package whole

import (
	"fmt"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/reports/view/assume"
	"moldturn/reports/view/compared"
	"moldturn/reports/view/decision"
	"moldturn/reports/view/floor"
	"moldturn/reports/view/heat"
	"moldturn/reports/view/weekly"
	"moldturn/sim"
	"moldturn/sim/study"
)

// section makes one part of the page. ok is false where the study has nothing
// to show in it; the section is then left out.
type section struct {
	name string // for errors and tests; the reader sees the heading
	make func(*view.Study) (s page.Section, ok bool, err error)
}

// sections are the parts of the page in the order of reading: the answer first,
// then what happens in the plant, then what it rests on.
var sections = [...]section{
	// 1: the decision, on one sheet.
	{"decision", decision.Section},
	// 2: throughput, luster and cost.
	{"compared", compared.Section},
	// 3: molds by the day, one typical run.
	{"molds", ofTypical(floor.Molds)},
	// 4: booths, bays, stalls and crews by the week.
	{"limits by week", ofRuns(weekly.Limits)},
	// 5: where a mold-hour goes.
	{"mold hours", (*view.Study).MoldHoursSection},
	// 6: boats by the week, and the demand.
	{"weeks", (*view.Study).WeeksSection},
	// 7: luster by turns and season; build-up and hold through the year.
	{"luster between strips", heat.TurnsSection},
	{"heat through the year", heat.YearSection},
	{"hours in the mold", heat.HoldSection},
	{"hold card", heat.CardSection},
	// 8: waits by reason; the floor by the hour beside them.
	{"waits in boats", ofRuns(weekly.Waits)},
	{"waits", (*view.Study).WaitsSection},
	{"floor diary", ofTypical(floor.Diary)},
	// 9: cost of quality and ledger.
	{"money", (*view.Study).LedgerSection},
	// 10: permit.
	{"permit", (*view.Study).PermitSection},
	// 11: assumptions.
	{"assumptions", assume.Section},
	// 12: how it was computed.
	{"computed", (*view.Study).ComputedSection},
}

// ofTypical makes a section of the typical replication of the base.
func ofTypical(of func(t *study.Typical, name string) (page.Section, bool, error)) func(*view.Study) (page.Section, bool, error) {
	return func(s *view.Study) (page.Section, bool, error) {
		if s.Typical == nil {
			return page.Section{}, false, nil
		}
		t, err := s.Typical()
		if err != nil {
			return page.Section{}, false, err
		}
		return of(t, s.Base().Name)
	}
}

// ofRuns makes a section of all runs of the base.
func ofRuns(of func(r *study.Runs, p *sim.Plan, years int) (page.Section, bool, error)) func(*view.Study) (page.Section, bool, error) {
	return func(s *view.Study) (page.Section, bool, error) {
		return of(&s.Base().Runs, s.Base().Plan, s.SimulatedYears())
	}
}

// Page is the whole report of a study.
func Page(s *view.Study) (page.Page, error) {
	p := page.Page{Title: decision.Question(s), Lead: s.Headline(), Foot: []string{view.Caution}}
	for _, part := range sections {
		x, ok, err := part.make(s)
		if err != nil {
			return page.Page{}, fmt.Errorf("%s: %w", part.name, err)
		}
		if ok {
			p.Sections = append(p.Sections, x)
		}
	}
	return p, nil
}
