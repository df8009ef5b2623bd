package reports

import (
	"io"

	"moldturn/reports/view"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// document is a comparison as JSON. Keys have a fixed order: those of the
// structs as written here, those of metrics by name.
type document struct {
	Scenario     string        `json:"scenario"`
	Seed         uint64        `json:"seed"`
	Replications int           `json:"replications"`
	Years        int           `json:"years"`
	Confidence   float64       `json:"confidence"`
	Alternatives []alternative `json:"alternatives"`
}

type alternative struct {
	Name       string            `json:"name"`
	Changes    []string          `json:"changes"`
	Metrics    map[string]*level `json:"metrics"` // null for a figure it does not have
	Difference map[string]*gain  `json:"difference"`
}

// level is a figure; without an interval Low and High are null.
type level struct {
	Mean float64  `json:"mean"`
	Low  *float64 `json:"low"`
	High *float64 `json:"high"`
	N    int      `json:"n"`
	Unit string   `json:"unit"`
}

// gain is a paired difference from the first alternative. Intervals hold together
// for all alternatives, figure by figure.
type gain struct {
	Mean  float64  `json:"mean"`
	Low   *float64 `json:"low"`
	High  *float64 `json:"high"`
	N     int      `json:"n"`
	Clear bool     `json:"clear"`

	// Narrower is how many times as wide the interval would be with separate
	// luck; null where it is not known.
	Narrower *float64 `json:"narrower"`
}

// JSON writes every figure of every alternative with its interval, and the
// differences from the first, in full. No number is ever NaN: what is not known
// is null.
func JSON(w io.Writer, s *view.Study) error {
	d := document{Scenario: s.Scenario, Seed: s.Seed, Replications: s.Replications, Years: s.Years, Confidence: study.Confidence}
	for i := range s.Alternatives {
		d.Alternatives = append(d.Alternatives, alternativeOf(s, i))
	}
	return Document(w, d)
}

func alternativeOf(s *view.Study, i int) alternative {
	a := &s.Alternatives[i]
	out := alternative{Name: a.Name, Changes: append([]string{}, a.Changes...), Metrics: map[string]*level{}, Difference: map[string]*gain{}}
	for _, m := range study.Metrics() {
		out.Metrics[m.Name] = nil
		if x, ok := a.Summary(&m); ok {
			low, high := ends(x)
			out.Metrics[m.Name] = &level{Mean: x.Mean, Low: low, High: high, N: x.N, Unit: a.UnitOf(&m)}
		}
		if i == 0 {
			continue
		}
		out.Difference[m.Name] = nil
		if d, ok := a.Together(&s.Base().Runs, &m, max(1, len(s.Alternatives)-1)); ok {
			out.Difference[m.Name] = gainOf(d)
		}
	}
	return out
}

// ends are the ends of an interval, nil where there is none.
func ends(x stats.Summary) (low, high *float64) {
	if !x.Known() {
		return nil, nil
	}
	return &x.Low, &x.High
}
