package reports

import (
	"fmt"
	"io"

	"moldturn/reports/csv"
	"moldturn/reports/page"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/study"
)

// LaunchText writes a launch for a terminal.
func LaunchText(w io.Writer, l *view.Launch, style table.Style) error {
	if _, err := fmt.Fprintln(w, table.Wrap(l.Headline(), style)); err != nil {
		return err
	}
	for _, t := range l.Tables() {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	return nil
}

// LaunchHTML writes a launch as one page.
func LaunchHTML(w io.Writer, l *view.Launch) error {
	p, err := l.Page()
	if err != nil {
		return err
	}
	return page.Write(w, p)
}

// LaunchCSV writes boats by repeat, week and model, with the launch and without;
// weeks are counted from that of the first new mold, which is 1; 0 is the week
// before.
func LaunchCSV(w io.Writer, l *view.Launch) error {
	out, err := csv.New(w, "repeat", "week", "model", "boats_with", "boats_without")
	if err != nil {
		return err
	}
	x := l.Launch
	for r := range x.With {
		for week := range x.Weeks {
			for m := range x.Plan.Models {
				if err := out.Row(csv.Int(int64(r+1)), csv.Int(int64(week-x.First+1)), csv.Text(x.Plan.Models[m].Name),
					csv.Int(int64(x.With[r].Boats[week][m])), csv.Int(int64(x.Without[r].Boats[week][m]))); err != nil {
					return err
				}
			}
		}
	}
	return out.Flush()
}

type launchDocument struct {
	Scenario string       `json:"scenario"`
	Name     string       `json:"alternative"`
	Seed     uint64       `json:"seed"`
	Repeats  int          `json:"replications"`
	Launched []string     `json:"launched"`
	Spans    []launchSpan `json:"spans"`
	Weeks    []launchWeek `json:"weeks"`
}

type launchSpan struct {
	From   int               `json:"from_week"` // 1 is the week of the first new mold, 0 the week before
	To     int               `json:"to_week"`   // the last, included
	Models []launchModelRate `json:"models"`
}

type launchModelRate struct {
	Model  string `json:"model"`
	Boats  *level `json:"boats_per_week"`
	Change *gain  `json:"change"`
}

type launchWeek struct {
	Week     int     `json:"week"`
	NewMolds int     `json:"new_molds"`
	BreakIns float64 `json:"break_in_turns"`
	Shut     bool    `json:"shut"`
}

// LaunchJSON writes a launch in full.
func LaunchJSON(w io.Writer, l *view.Launch) error {
	x := l.Launch
	d := launchDocument{Scenario: l.Study.Scenario, Name: l.Study.Base().Name, Seed: l.Study.Seed, Repeats: l.Study.Replications}
	for _, m := range x.Models {
		d.Launched = append(d.Launched, x.Plan.Models[m].Name)
	}
	for _, s := range x.Spans() {
		d.Spans = append(d.Spans, launchSpanOf(x, s))
	}
	for week := -x.First; week < x.Weeks-x.First; week++ {
		d.Weeks = append(d.Weeks, launchWeek{week + 1, x.Arrivals(week), x.BreakIns(week), x.Closed(week)})
	}
	return Document(w, d)
}

func launchSpanOf(x *study.Launch, s study.Span) launchSpan {
	out := launchSpan{From: s.From + 1, To: s.To}
	for m := range x.Plan.Models {
		row := launchModelRate{Model: x.Plan.Models[m].Name}
		if with, change, ok := x.Rate(s, m); ok {
			low, high := ends(change.Summary)
			row.Boats = levelOf(with, "boats/week")
			row.Change = &gain{Mean: change.Mean, Low: low, High: high, N: change.N, Clear: change.Clear}
		}
		out.Models = append(out.Models, row)
	}
	return out
}
