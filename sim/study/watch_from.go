package study

import (
	"context"
	"fmt"

	"golang.org/x/sync/errgroup"

	"moldturn/sim"
	"moldturn/sim/record"
)

// WatchFrom is Watch for runs that all begin from one floor: what is still to
// come differs from replication to replication, the floor does not. plan is one
// of a's, laid out around the moment of start.
func WatchFrom[O record.Observer](ctx context.Context, s *Setup, a *Alternative, plan *sim.Plan, start *sim.Start, observer func() O) ([]O, error) {
	out := make([]O, s.Replications)
	g, ctx := errgroup.WithContext(ctx)
	g.SetLimit(max(s.Workers, 1))
	for rep := range s.Replications {
		g.Go(func() error {
			if err := ctx.Err(); err != nil {
				return err
			}
			air, err := a.Air(s.Seed, s.First+rep)
			if err != nil {
				return err
			}
			o := observer()
			if err := sim.SimulateFrom(plan, air, start, s.Seed, s.First+rep, o); err != nil {
				return fmt.Errorf("%s, replication %d: %w", a.Name, s.First+rep+1, err)
			}
			out[rep] = o
			if s.Done != nil {
				s.Done(1)
			}
			return nil
		})
	}
	if err := g.Wait(); err != nil {
		return nil, err
	}
	return out, nil
}
