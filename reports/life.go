package reports

import (
	"fmt"
	"io"

	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

// LifeText writes the life of an order or mold for a terminal.
func LifeText(w io.Writer, s *study.Story, style table.Style) error {
	l := view.LifeOf(s)
	if _, err := fmt.Fprint(w, table.Wrap(l.Title, style)); err != nil {
		return err
	}
	for _, line := range l.Lines {
		if _, err := fmt.Fprint(w, table.Wrap(line, style)); err != nil {
			return err
		}
	}
	if err := spaced(w, l.Sums, style); err != nil {
		return err
	}
	for _, t := range l.Tables {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	if _, err := fmt.Fprintln(w); err != nil {
		return err
	}
	for _, n := range l.Notes {
		if _, err := fmt.Fprint(w, table.Wrap("- "+n, style)); err != nil {
			return err
		}
	}
	return nil
}

// LifeRun says which run of which plant a life is from.
type LifeRun struct {
	Scenario    string `json:"scenario"`
	Alternative string `json:"alternative"`
	Seed        uint64 `json:"seed"`
	Replication int    `json:"replication"` // from 1
	Waiting     bool   `json:"orders_always_waiting"`
}

// life is an order or mold as JSON; lengths of time are whole milliseconds, so
// that they add up.
type life struct {
	LifeRun
	Order int32      `json:"order,omitempty"` // from 1
	Mold  int32      `json:"mold,omitempty"`  // from 1
	Name  string     `json:"name"`            // of the model, or of the mold
	From  string     `json:"from"`
	To    string     `json:"to"`
	Ms    clock.Time `json:"ms"`
	Ended string     `json:"ended,omitempty"` // of an order: "shipped", "given up", "open"
	Lives []partLife `json:"lives"`
}

type partLife struct {
	Part  string     `json:"part"`
	Sums  []lifeSum  `json:"sums"` // add up to ms
	Steps []lifeStep `json:"steps"`
}

type lifeSum struct {
	What   string     `json:"what"` // work of a kind, or "wait"
	Reason string     `json:"reason,omitempty"`
	Ms     clock.Time `json:"ms"`
}

type lifeStep struct {
	Route  string     `json:"route,omitempty"`
	Step   string     `json:"step,omitempty"`
	Doing  string     `json:"doing"`
	From   string     `json:"from"`
	To     string     `json:"to"`
	Worked clock.Time `json:"worked_ms"`
	People int16      `json:"people"`
	Waits  []lifeWait `json:"waits"`
}

type lifeWait struct {
	Reason string       `json:"reason"`
	Ms     clock.Time   `json:"ms"`
	Held   []lifeHolder `json:"held_by"`
}

type lifeHolder struct {
	Who   string     `json:"who"`
	Order int32      `json:"order,omitempty"` // from 1
	Mold  int32      `json:"mold,omitempty"`  // from 1
	Ms    clock.Time `json:"ms"`
}

// LifeJSON writes the same as JSON.
func LifeJSON(w io.Writer, s *study.Story, run LifeRun) error {
	p := s.Plan
	l := life{LifeRun: run, From: instant(p.Start, s.From), To: instant(p.Start, s.To), Ms: s.To - s.From}
	if f := s.Fate; f != nil {
		l.Order, l.Name, l.Ended = f.Order+1, p.Models[f.Model].Name, "open"
		if f.Shipped {
			l.Ended = "shipped"
		} else if f.Cancelled {
			l.Ended = "given up"
		}
	} else {
		l.Mold, l.Name = s.Mold+1, p.Molds[s.Mold].Name
	}
	for i := range s.Lives {
		l.Lives = append(l.Lives, partLifeOf(s, &s.Lives[i]))
	}
	return Document(w, l)
}

func partLifeOf(s *study.Story, of *record.Life) partLife {
	p := s.Plan
	x := partLife{Sums: []lifeSum{}, Steps: []lifeStep{}}
	if of.Part >= 0 {
		x.Part = p.Parts[of.Part].Name
	}
	for _, y := range view.SpentIn(of) {
		if y.Work != "" {
			x.Sums = append(x.Sums, lifeSum{What: y.Work, Ms: y.For})
		} else {
			x.Sums = append(x.Sums, lifeSum{What: "wait", Reason: view.CauseName(p, y.Cause), Ms: y.For})
		}
	}
	for i := range of.Passages {
		v := &of.Passages[i]
		step := lifeStep{Step: view.StepName(p, v.Route, v.Step), Doing: v.Doing.String(), From: instant(p.Start, v.Asked),
			To: instant(p.Start, v.End), Worked: v.Worked, People: v.People, Waits: []lifeWait{}}
		if v.Route >= 0 {
			step.Route = p.Routes[v.Route].Name
		}
		for k, w := range v.Waits {
			wait := lifeWait{Reason: view.CauseName(p, w.Cause), Ms: w.For, Held: []lifeHolder{}}
			for _, h := range view.Holders(v.Held[k], w.Cause) {
				wait.Held = append(wait.Held, lifeHolder{view.HolderName(p, &h, v.Order), h.Order + 1, h.Mold + 1, h.For})
			}
			step.Waits = append(step.Waits, wait)
		}
		x.Steps = append(x.Steps, step)
	}
	return x
}

// instant is local time as in ISO 8601, to the millisecond.
func instant(start shift.Date, t clock.Time) string {
	d := shift.DateAt(start, t)
	rest := t - shift.Midnight(start, d)
	return fmt.Sprintf("%04d-%02d-%02dT%02d:%02d:%02d.%03d", d.Year, d.Month, d.Day,
		rest/clock.Hour, rest%clock.Hour/clock.Minute, rest%clock.Minute/clock.Second, rest%clock.Second)
}
