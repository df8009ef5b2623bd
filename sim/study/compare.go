// Package study runs plans under shared luck and compares them. One unit of
// parallel work is one replication of all alternatives: they see the same
// weather, orders, people and failures. Results are kept by index and reduced
// in index order, so they do not depend on the number of workers.
package study

import (
	"context"
	"fmt"

	"golang.org/x/sync/errgroup"

	"moldturn/sim"
	"moldturn/sim/money"
	"moldturn/sim/record"
)

// Alternative is one way to run the plant.
type Alternative struct {
	Name     string
	Changes  []string  // what differs from the base, as written by the user
	Capacity *sim.Plan // with orders always waiting; nil: not asked
	Dated    *sim.Plan // with a dated order book; nil: not asked
	Frame    record.Frame
	Money    *money.Setup // prices of its ledger; nil: no ledger

	// Climate names the weather and the heating behind it; alternatives with
	// the same Climate share one Air per replication.
	Climate string
	Air     func(seed uint64, replication int) (*sim.Air, error)
}

// Setup is what to run.
type Setup struct {
	Alternatives []Alternative // the first is the base
	First        int           // replications are First, First+1, …; those before are left to others
	Replications int
	Seed         uint64
	Workers      int
	Done         func(runs int) // called after each run, from any goroutine; may be nil
}

// Outcome is one replication of one alternative.
type Outcome struct {
	Capacity, Dated             *record.Result // nil where not asked
	CapacityLedger, DatedLedger *money.Ledger  // of those runs; nil without prices
}

// Runs is the outcomes of one alternative, by replication.
type Runs struct {
	Name     string
	Changes  []string
	Outcomes []Outcome
}

// Total is the number of runs of the plant that Compare makes.
func (s *Setup) Total() int {
	n := 0
	for i := range s.Alternatives {
		if s.Alternatives[i].Capacity != nil {
			n++
		}
		if s.Alternatives[i].Dated != nil {
			n++
		}
	}
	return n * s.Replications
}

// Compare runs every alternative in every replication. It stops early with
// the context's error when ctx ends.
func Compare(ctx context.Context, s *Setup) ([]Runs, error) {
	out := make([]Runs, len(s.Alternatives))
	for i := range out {
		a := &s.Alternatives[i]
		out[i] = Runs{Name: a.Name, Changes: a.Changes, Outcomes: make([]Outcome, s.Replications)}
	}
	g, ctx := errgroup.WithContext(ctx)
	g.SetLimit(max(s.Workers, 1))
	for rep := range s.Replications {
		g.Go(func() error {
			airs := map[string]*sim.Air{}
			for i := range s.Alternatives {
				o, err := s.run(ctx, &s.Alternatives[i], s.First+rep, airs)
				if err != nil {
					return fmt.Errorf("%s, replication %d: %w", s.Alternatives[i].Name, s.First+rep+1, err)
				}
				out[i].Outcomes[rep] = o
			}
			return nil
		})
	}
	if err := g.Wait(); err != nil {
		return nil, err
	}
	return out, nil
}

func (s *Setup) run(ctx context.Context, a *Alternative, rep int, airs map[string]*sim.Air) (Outcome, error) {
	var o Outcome
	air := airs[a.Climate]
	if air == nil {
		var err error
		if air, err = a.Air(s.Seed, rep); err != nil {
			return o, err
		}
		airs[a.Climate] = air
	}
	for _, want := range []struct {
		plan   *sim.Plan
		to     **record.Result
		ledger **money.Ledger
	}{{a.Capacity, &o.Capacity, &o.CapacityLedger}, {a.Dated, &o.Dated, &o.DatedLedger}} {
		if want.plan == nil {
			continue
		}
		if err := ctx.Err(); err != nil {
			return o, err
		}
		tally := record.NewTally(a.Frame)
		obs, book := a.observe(tally)
		if err := sim.Simulate(want.plan, air, s.Seed, rep, obs); err != nil {
			return o, err
		}
		*want.to = tally.Result()
		if book != nil {
			*want.ledger = a.Money.Price(book.Quantities())
		}
		if s.Done != nil {
			s.Done(1)
		}
	}
	return o, nil
}
