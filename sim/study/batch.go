package study

import (
	"context"
	"fmt"
	"sync"

	"golang.org/x/sync/errgroup"

	"moldturn/sim"
)

// Batch is many alternatives to run, each in some replications. It keeps none
// of the outcomes: they are handed over alternative by alternative, as they are
// finished. Other than with Compare, alternatives need not be in memory at the
// same time.
type Batch struct {
	Tasks   []Task
	Seed    uint64
	Workers int

	// Kept takes the outcomes of task i, in the order of its replications. It is
	// called once for each task, one call at a time, in the order in which tasks
	// end: that depends on the machine, so nothing may depend on it. An error
	// ends the batch.
	Kept func(i int, outcomes []Outcome) error
	Done func(runs int) // called after each run, from any goroutine; may be nil
}

// Task is one alternative with the replications to run.
type Task struct {
	First, Replications int                         // First, First+1, …
	Make                func() (Alternative, error) // called when its turn comes, one call of a batch at a time
}

// Run runs all tasks; with the context's error when ctx ends first. What Kept
// got depends only on the seed and the task.
func (b *Batch) Run(ctx context.Context) error {
	g, running := errgroup.WithContext(ctx)
	g.SetLimit(max(b.Workers, 1))
	run := &batchRun{Batch: b, airs: &airs{}}
	for i := range b.Tasks {
		t := &openTask{left: b.Tasks[i].Replications, outcomes: make([]Outcome, b.Tasks[i].Replications)}
		for r := range b.Tasks[i].Replications {
			if running.Err() != nil {
				break
			}
			g.Go(func() error { return run.one(running, i, r, t) })
		}
	}
	if err := g.Wait(); err != nil {
		return err
	}
	return ctx.Err()
}

// batchRun is what the goroutines of one Run share.
type batchRun struct {
	*Batch
	making, keeping sync.Mutex
	airs            *airs
}

// openTask is a task with some replications not finished.
type openTask struct {
	once     sync.Once
	made     Alternative
	fault    error
	mu       sync.Mutex
	left     int
	outcomes []Outcome
}

// one runs a replication of a task; who ends the last one hands the task over.
func (b *batchRun) one(ctx context.Context, i, r int, t *openTask) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	t.once.Do(func() {
		b.making.Lock()
		defer b.making.Unlock()
		t.made, t.fault = b.Tasks[i].Make()
	})
	if t.fault != nil {
		return t.fault
	}
	rep := b.Tasks[i].First + r
	air, err := b.airs.of(&t.made, b.Seed, rep)
	if err != nil {
		return err
	}
	s := Setup{Seed: b.Seed, Done: b.Done}
	o, err := s.run(ctx, &t.made, rep, map[string]*sim.Air{t.made.Climate: air})
	if err != nil {
		return fmt.Errorf("%s, replication %d: %w", t.made.Name, rep+1, err)
	}
	t.mu.Lock()
	t.outcomes[r] = o
	t.left--
	last := t.left == 0
	t.mu.Unlock()
	if !last {
		return nil
	}
	b.keeping.Lock()
	defer b.keeping.Unlock()
	return b.Kept(i, t.outcomes)
}

// airs keeps the weather of the climates that were asked for last, so that
// alternatives under one climate share it.
type airs struct {
	mu   sync.Mutex
	kept []*climateAirs // the one asked for last at the end
}

// keptClimates is how many climates airs remembers.
const keptClimates = 3

type climateAirs struct {
	climate string
	byRep   map[int]*oneAir
}

type oneAir struct {
	once sync.Once
	air  *sim.Air
	err  error
}

// of gives the air of a replication, made by the first who asks.
func (a *airs) of(x *Alternative, seed uint64, rep int) (*sim.Air, error) {
	o := a.entry(x.Climate, rep)
	o.once.Do(func() { o.air, o.err = x.Air(seed, rep) })
	return o.air, o.err
}

func (a *airs) entry(climate string, rep int) *oneAir {
	a.mu.Lock()
	defer a.mu.Unlock()
	for i, c := range a.kept {
		if c.climate == climate {
			a.kept = append(append(a.kept[:i:i], a.kept[i+1:]...), c)
			return c.entry(rep)
		}
	}
	c := &climateAirs{climate: climate, byRep: map[int]*oneAir{}}
	if a.kept = append(a.kept, c); len(a.kept) > keptClimates {
		a.kept = a.kept[1:]
	}
	return c.entry(rep)
}

func (c *climateAirs) entry(rep int) *oneAir {
	if c.byRep[rep] == nil {
		c.byRep[rep] = &oneAir{}
	}
	return c.byRep[rep]
}
