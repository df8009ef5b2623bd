package study

import (
	"context"
	"encoding/json"
	"fmt"

	"golang.org/x/sync/errgroup"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/money"
	"moldturn/sim/record"
	"moldturn/sim/state"
)

// PausedVersion is the version of the form of paused studies.
const PausedVersion = 1

// Paused is the runs of one alternative, all stopped at one instant, with what
// was counted in them so far.
type Paused struct {
	Version int        `json:"moldturn_paused"` // PausedVersion
	Head    Head       `json:"head"`            // what was run
	At      clock.Time `json:"at_ms"`
	Counted string     `json:"counted"` // fingerprint of the tables that count
	Runs    []Stopped  `json:"runs"`    // by replication
}

// Stopped is one replication that was stopped.
type Stopped struct {
	Capacity *StoppedRun `json:"capacity,omitempty"` // nil where not asked
	Dated    *StoppedRun `json:"dated,omitempty"`
}

// StoppedRun is a run that was stopped: its state and what was counted in it.
type StoppedRun struct {
	State  *sim.Snapshot   `json:"state"`
	Tally  json.RawMessage `json:"tally"`
	Ledger json.RawMessage `json:"ledger,omitempty"`
}

// notCounted are the fields of tables that count which are made anew.
var notCounted = state.Derived{"Book.plant"}

// countedLayout is the fingerprint of the tables that count.
func countedLayout() (string, error) {
	tally, err := state.Layout(&record.Tally{}, nil)
	if err != nil {
		return "", err
	}
	book, err := state.Layout(&money.Book{}, notCounted)
	return tally + book, err
}

// GoOn runs the first alternative of a setup from where it was paused, or from
// instant 0 with from nil, until an instant. What follows is bit for bit what
// would have followed without the pause. Outcomes are complete only when until
// is the length of the plans; before, their Outcome is empty.
func GoOn(ctx context.Context, s *Setup, from *Paused, until clock.Time) (Runs, *Paused, error) {
	counted, err := countedLayout()
	if err != nil {
		return Runs{}, nil, err
	}
	if err := from.fits(s, counted); err != nil {
		return Runs{}, nil, err
	}
	a := &s.Alternatives[0]
	runs := Runs{Name: a.Name, Changes: a.Changes, Outcomes: make([]Outcome, s.Replications)}
	to := &Paused{Version: PausedVersion, At: until, Counted: counted, Runs: make([]Stopped, s.Replications)}
	g, ctx := errgroup.WithContext(ctx)
	g.SetLimit(max(s.Workers, 1))
	for rep := range s.Replications {
		g.Go(func() error {
			var before Stopped
			if from != nil {
				before = from.Runs[rep]
			}
			if err := s.goOn(ctx, a, rep, before, until, &to.Runs[rep], &runs.Outcomes[rep]); err != nil {
				return fmt.Errorf("%s, replication %d: %w", a.Name, rep+1, err)
			}
			return nil
		})
	}
	if err := g.Wait(); err != nil {
		return Runs{}, nil, err
	}
	return runs, to, nil
}

// fits tells what keeps paused runs from being gone on with.
func (p *Paused) fits(s *Setup, counted string) error {
	switch {
	case p == nil:
		return nil
	case p.Version != PausedVersion:
		return fmt.Errorf("paused runs of version %d (allowed: %d)", p.Version, PausedVersion)
	case p.Counted != counted:
		return fmt.Errorf("paused runs of another version of the program, which counted differently")
	case len(p.Runs) != s.Replications:
		return fmt.Errorf("%d paused replications, not %d", len(p.Runs), s.Replications)
	}
	return nil
}

// goOn runs one replication.
func (s *Setup) goOn(ctx context.Context, a *Alternative, rep int, before Stopped, until clock.Time, after *Stopped, o *Outcome) error {
	air, err := a.Air(s.Seed, rep)
	if err != nil {
		return err
	}
	for _, want := range []struct {
		plan   *sim.Plan
		from   *StoppedRun
		to     **StoppedRun
		result **record.Result
		ledger **money.Ledger
	}{
		{a.Capacity, before.Capacity, &after.Capacity, &o.Capacity, &o.CapacityLedger},
		{a.Dated, before.Dated, &after.Dated, &o.Dated, &o.DatedLedger},
	} {
		if want.plan == nil {
			continue
		}
		if err := ctx.Err(); err != nil {
			return err
		}
		one := goingOn{tally: record.NewTally(a.Frame)}
		one.obs, one.book = a.observe(one.tally)
		if err := one.begin(want.plan, air, s.Seed, rep, want.from); err != nil {
			return err
		}
		if err := one.run.Until(until); err != nil {
			return err
		}
		if *want.to, err = one.stopped(); err != nil {
			return err
		}
		if until >= want.plan.Length {
			if err := one.run.Finish(); err != nil {
				return err
			}
			*want.result = one.tally.Result()
			if one.book != nil {
				*want.ledger = a.Money.Price(one.book.Quantities())
			}
		}
		if s.Done != nil {
			s.Done(1)
		}
	}
	return nil
}

// goingOn is one run with all that counts in it.
type goingOn struct {
	run   *sim.Run
	obs   record.Observer
	tally *record.Tally
	book  *money.Book // nil without prices
}

func (g *goingOn) begin(p *sim.Plan, air *sim.Air, seed uint64, rep int, from *StoppedRun) error {
	if from == nil {
		g.run = sim.Begin(p, air, seed, rep, g.obs)
		return nil
	}
	if from.State == nil || from.State.Seed != seed || from.State.Replication != rep {
		return fmt.Errorf("paused runs that are damaged")
	}
	var err error
	if g.run, err = sim.Resume(p, air, from.State, g.obs); err != nil {
		return err
	}
	if err := state.Read(from.Tally, g.tally, nil); err != nil {
		return err
	}
	if g.book == nil {
		return nil
	}
	return state.Read(from.Ledger, g.book, notCounted)
}

func (g *goingOn) stopped() (*StoppedRun, error) {
	s, err := g.run.Snapshot()
	if err != nil {
		return nil, err
	}
	out := &StoppedRun{State: s}
	if out.Tally, err = state.Write(g.tally, nil); err != nil {
		return nil, err
	}
	if g.book != nil {
		out.Ledger, err = state.Write(g.book, notCounted)
	}
	return out, err
}
