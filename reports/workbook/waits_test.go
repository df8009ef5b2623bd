package workbook_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"testing"

	"moldturn/sim"
	"moldturn/sim/study"
)

// poolOf names a craft or a place of a plan.
func poolOf(p *sim.Plan, i int) string {
	if i < len(p.Crafts) {
		return p.Crafts[i].Name
	}
	return p.Places[i-len(p.Crafts)].Name
}

// waitsOf is the row of the sheet of waits about a craft or place.
func waitsOf(t *testing.T, rows [][]string, alternative, name string) (out [18]float64) {
	t.Helper()
	for _, row := range rows {
		if len(row) < 7 || row[0] != alternative || row[1] != name {
			continue
		}
		for i := 3; i < min(len(row), len(out)); i++ {
			out[i], _ = strconv.ParseFloat(row[i], 64)
		}
		return out
	}
	t.Fatalf("%q has no row for %q", alternative, name)
	return out
}

// The sheet of waits has the hours that the report ranks limits by, over the year
// and month by month, for every craft and place of every alternative.
func TestWaitsAreTheReports(t *testing.T) {
	s := compared()
	rows := values(t, opened(t, written(t, s)), "Waits")
	agree := func(got, want float64, what string) {
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: the sheet has %v, the report %v", what, got, want)
		}
	}
	waiting := 0
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		of := func(column int, limits []study.Limit) {
			for _, l := range limits {
				name := poolOf(a.Plan, l.Pool)
				row := waitsOf(t, rows, a.Name, name)
				agree(row[column], l.Wait, fmt.Sprintf("%s, %s, column %d", a.Name, name, column+1))
				if column == 5 {
					agree(row[3], l.Load, name+", busy")
				}
				if l.Wait > 0 {
					waiting++
				}
			}
		}
		of(5, a.Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11))
		for m := range 12 {
			of(6+m, a.Limits(m))
		}
	}
	if waiting < 12*len(s.Alternatives) {
		t.Errorf("only %d waits of any length were compared", waiting)
	}
}

// The sentences of the report about January and July have the hours of the sheet,
// rounded.
func TestSentencesAboutLimitsHaveTheHoursOfTheSheet(t *testing.T) {
	s := compared()
	rows := values(t, opened(t, written(t, s)), "Waits")
	sentence := regexp.MustCompile(`^(January|July): ([^;]+); work waits ([0-9.]+)[ \x{00A0}]h`)
	said := 0
	for _, line := range s.Limits() {
		m := sentence.FindStringSubmatch(line)
		if m == nil {
			continue
		}
		said++
		column := map[string]int{"January": 6, "July": 12}[m[1]]
		row := waitsOf(t, rows, s.Alternatives[0].Name, m[2])
		if hours, _ := strconv.ParseFloat(m[3], 64); math.Abs(hours-row[column]) > 0.5 {
			t.Errorf("%s, and the sheet has %v h", line, row[column])
		}
	}
	if said == 0 {
		t.Errorf("no sentence tells a wait: %q", s.Limits())
	}
}
