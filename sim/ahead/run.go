package ahead

import (
	"context"
	"fmt"

	"golang.org/x/sync/errgroup"

	"moldturn/sim"
	"moldturn/sim/clock"
)

// Setup is a plant as it stands, and how many futures to look at.
type Setup struct {
	Plan    *sim.Plan // its length is the end of the time looked at
	Start   *sim.Start
	Air     func(seed uint64, replication int) (*sim.Air, error)
	Seed    uint64
	Futures int
	Workers int
	Done    func() // called after each future, from any goroutine; may be nil
}

// Morning is the midnight from which days are counted.
func (s *Setup) Morning() clock.Time { return s.Start.At - s.Start.At%clock.Day }

// Days is how many days are looked at, the morning's first.
func (s *Setup) Days() int {
	return int((s.Plan.Length - s.Morning() + clock.Day - 1) / clock.Day)
}

// Run looks into the futures. Future k has the luck of replication k, so two
// setups with the same seed share their luck, future by future. It ends early
// with the context's error; other errors are those of the start or the engine.
func (s *Setup) Run(ctx context.Context) ([]Future, error) {
	out := make([]Future, s.Futures)
	g, ctx := errgroup.WithContext(ctx)
	g.SetLimit(max(s.Workers, 1))
	for k := range out {
		g.Go(func() error {
			if err := ctx.Err(); err != nil {
				return err
			}
			air, err := s.Air(s.Seed, k)
			if err != nil {
				return err
			}
			obs := newKeeper(&out[k], s.Morning(), len(s.Plan.Crafts), s.Days())
			if err := sim.SimulateFrom(s.Plan, air, s.Start, s.Seed, k, obs); err != nil {
				return fmt.Errorf("future %d: %w", k+1, err)
			}
			if s.Done != nil {
				s.Done()
			}
			return nil
		})
	}
	return out, g.Wait()
}
