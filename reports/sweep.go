package reports

import (
	"fmt"
	"io"
	"math"
	"strings"

	"moldturn/reports/csv"
	"moldturn/reports/page"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// SweepText writes a sweep for a terminal: what was found, the settings, what no
// other setting beats, and how well the figures are known.
func SweepText(w io.Writer, s *view.Sweep, style table.Style) error {
	var b strings.Builder
	for _, line := range s.Findings() {
		b.WriteString(table.Wrap(line, style))
	}
	if _, err := fmt.Fprintf(w, "%s\n", b.String()); err != nil {
		return err
	}
	if t, ok := s.Effects(); ok {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	f, ok := s.Frontier()
	if !ok {
		return table.Write(w, s.Screen(), style)
	}
	if err := spaced(w, s.Screen(), style); err != nil {
		return err
	}
	if err := table.Write(w, f.Table(), style); err != nil {
		return err
	}
	_, err := fmt.Fprintf(w, "\n%s", table.Wrap(f.Finding(), style))
	return err
}

// SweepHTML writes a sweep as one page that needs nothing else.
func SweepHTML(w io.Writer, s *view.Sweep) error {
	p, err := s.Page()
	if err != nil {
		return err
	}
	return page.Write(w, p)
}

// SweepCSV writes every figure of every replication of every setting, one a row,
// in full. Figures that a replication does not have are left out.
func SweepCSV(w io.Writer, s *view.Sweep) error {
	out, err := csv.New(w, "setting", "replication", "metric", "value", "unit")
	if err != nil {
		return err
	}
	for _, f := range append([]study.Figures{s.Base}, s.Points...) {
		for r := range f.N() {
			for _, m := range study.Metrics() {
				v := f.Values[m.Name]
				if r >= len(v) || math.IsNaN(v[r]) {
					continue
				}
				if err := out.Row(csv.Text(f.Name), csv.Int(int64(r+1)), csv.Text(m.Name), csv.Number(v[r]), csv.Text(s.UnitOf(&m))); err != nil {
					return err
				}
			}
		}
	}
	return out.Flush()
}

// sweepDocument is a sweep as JSON.
type sweepDocument struct {
	Scenario     string         `json:"scenario"`
	Seed         uint64         `json:"seed"`
	Replications int            `json:"replications"`
	Years        int            `json:"years"`
	Confidence   float64        `json:"confidence"`
	Form         study.Form     `json:"form"`
	Over         []string       `json:"over"`
	Findings     []string       `json:"findings"`
	Settings     []setting      `json:"settings"`
	Frontier     *frontierLines `json:"frontier"`
}

// setting is one point; the first is the base. Figures it does not have are
// null.
type setting struct {
	Name       string            `json:"name"`
	Values     map[string]string `json:"values"`
	Metrics    map[string]*level `json:"metrics"`
	Difference map[string]*gain  `json:"difference"`
}

// frontierLines is how the settings stand against each other in two figures.
type frontierLines struct {
	Figures     [2]string `json:"figures"`
	Undominated []bool    `json:"undominated"`
	Confidence  []float64 `json:"confidence"`
}

// SweepJSON writes every figure of every setting with its interval, the
// differences from the base, which hold together for all settings, and the
// frontier.
func SweepJSON(w io.Writer, s *view.Sweep) error {
	d := sweepDocument{Scenario: s.Scenario, Seed: s.Seed, Replications: s.Replications, Years: s.Years, Confidence: study.Confidence,
		Form: s.Design.Form, Findings: s.Findings()}
	for i := range s.Design.Factors {
		d.Over = append(d.Over, s.Design.Factors[i].Path)
	}
	d.Settings = append(d.Settings, settingOf(s, &s.Base, nil))
	for i := range s.Points {
		d.Settings = append(d.Settings, settingOf(s, &s.Points[i], s.Design.Points[i].Values))
	}
	if f, ok := s.Frontier(); ok {
		d.Frontier = &frontierLines{[2]string{f.X.Name, f.Y.Name}, f.Undominated, f.Confidence}
	}
	return Document(w, d)
}

func settingOf(s *view.Sweep, f *study.Figures, values []string) setting {
	out := setting{Name: f.Name, Values: map[string]string{}, Metrics: map[string]*level{}, Difference: map[string]*gain{}}
	for k, v := range values {
		if v != "" {
			out.Values[s.Design.Factors[k].Path] = v
		}
	}
	for _, m := range study.Metrics() {
		x, ok := f.Summary(&m)
		if !ok {
			continue
		}
		low, high := ends(x)
		out.Metrics[m.Name] = &level{Mean: x.Mean, Low: low, High: high, N: x.N, Unit: s.UnitOf(&m)}
		if d, ok := f.Difference(&s.Base, &m, len(s.Points)); ok && values != nil {
			out.Difference[m.Name] = gainOf(d)
		}
	}
	return out
}

func gainOf(d stats.Difference) *gain {
	low, high := ends(d.Summary)
	g := &gain{Mean: d.Mean, Low: low, High: high, N: d.N, Clear: d.Clear}
	if d.Narrower > 0 {
		g.Narrower = &d.Narrower
	}
	return g
}
