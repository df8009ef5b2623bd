package main

import (
	"fmt"
	"math"
	"strings"

	"moldturn/reports/view"
	"moldturn/scenarios"
	paper "moldturn/sim/hand"
	"moldturn/sim/study"
)

// sizer runs the sizes that a search asks for.
type sizer struct {
	c      *Context
	o      *sizeFlags
	s      *scenarios.Scenario
	g      *study.Target
	levers []scenarios.Lever
	told   *progress
	tried  int
	runs   int                    // of the plant, in all
	fresh  map[string]*study.Runs // under fresh luck, by size
}

// freshLuck is where the replications begin that confirm an answer.
const freshLuck = 500_000

func (z *sizer) look() (*view.Sized, error) {
	search := &study.Sizing{Budget: z.o.budget, Try: z.try}
	start := z.onPaper()
	for i, l := range z.levers {
		search.Moves = append(search.Moves, study.Move{Now: l.Now, Start: start[i], Least: max(l.Least(), min(l.Now, 1)),
			Most: max(z.o.most*l.Now, l.Now+2), Price: max(l.Price(), 1)})
	}
	found, err := search.Size()
	if err != nil {
		return nil, err
	}
	v := &view.Sized{Target: *z.g, Found: found, Start: start, Replications: z.replications(), Years: z.s.Base.Years, Runs: z.runs, PricesFrom: z.s.LeverPrices(), Money: view.Money{Currency: z.s.Base.Currency(), Units: z.s.Base.Units()}}
	for i, l := range z.levers {
		v.Labels, v.Now, v.Prices = append(v.Labels, l.Label), append(v.Now, l.Now), append(v.Prices, l.Price())
		v.Units = append(v.Units, unitOf(&l))
		v.Before += float64(l.Now) * l.Price()
		v.Most = append(v.Most, search.Moves[i].Most)
	}
	if runs := z.fresh[fmt.Sprint(found.Size)]; runs != nil {
		v.Next, v.NextPool = view.NextLimit(z.s.Base.Plan(), runs)
		v.Allow = z.barred(v.NextPool)
	}
	return v, nil
}

// unitOf is one of a lever in words: "gel person on day".
func unitOf(l *scenarios.Lever) string {
	if craft, shift, ok := strings.Cut(l.Label, ", "); ok && l.Kind == scenarios.People {
		return craft + " person on " + shift
	}
	return l.Label
}

// barred is what --may would have to name so that a pool may grow; empty where it
// may already, or where nothing moves it.
func (z *sizer) barred(pool string) string {
	for _, l := range z.levers {
		if poolOf(&l) == pool {
			return ""
		}
	}
	for _, l := range z.s.Levers() {
		if poolOf(&l) == pool {
			return l.Key
		}
	}
	return ""
}

// poolOf is the craft or place that a lever moves; "molds" for molds.
func poolOf(l *scenarios.Lever) string {
	switch l.Kind {
	case scenarios.People:
		return strings.TrimPrefix(l.Key, "crew.")
	case scenarios.Places:
		return l.Key
	}
	return "molds"
}

// onPaper is how many of each the plant cannot do without for the target, as
// worked out by hand: hours of work over hours there are, molds times turns.
func (z *sizer) onPaper() []int {
	t := byHand(z.s.Base)
	out := make([]int, len(z.levers))
	for i, l := range z.levers {
		out[i] = l.Now
		if part := z.partOf(&t, &l); part > 0 {
			out[i] = max(int(math.Ceil(part*float64(l.Now)-1e-9)), min(l.Now, 1))
		}
	}
	return out
}

// partOf is how much of what a lever moves the target needs, as a part of what
// there is now; 0 where the paper does not say.
func (z *sizer) partOf(t *paper.Table, l *scenarios.Lever) float64 {
	part := func(perBoat, boats, other float64) float64 {
		if perBoat <= 0 || boats <= 0 {
			return 0
		}
		return (z.g.Boats*perBoat + other) / (boats*perBoat + other)
	}
	switch l.Kind {
	case scenarios.People:
		for _, c := range t.Crafts {
			if c.Name == poolOf(l) {
				return part(c.PerBoat, c.Boats, c.Background)
			}
		}
	case scenarios.Places:
		for _, p := range t.Places {
			if p.Name == poolOf(l) {
				return part(p.PerBoat, p.Boats, p.Background)
			}
		}
	case scenarios.Molds:
		for k, m := range t.Models {
			share := m.Share
			if z.g.Mix != nil {
				share = z.g.Mix[k]
			}
			if "molds."+m.Name == l.Key && m.Molds > 0 {
				return z.g.Boats * share / m.Molds
			}
		}
	}
	return 0
}

func (z *sizer) replications() int { return z.o.Replications.Or(4) }

func (z *sizer) seed() uint64 {
	return z.o.Seed.Or(uint64(z.s.Base.Value.At("run.seed").Count()))
}

// alternative is the plant of a size; ok is false where it cannot run.
func (z *sizer) alternative(size []int) (study.Alternative, bool) {
	var changes []scenarios.Change
	for i, n := range size {
		l := z.levers[i]
		ch, ok := l.By(n - l.Now)
		if !ok {
			return study.Alternative{}, false
		}
		changes = append(changes, ch...)
	}
	a, complaints := z.s.With(fmt.Sprint(size), changes...)
	if len(complaints) > 0 {
		return study.Alternative{}, false
	}
	one := scenarios.Scenario{Alternatives: []scenarios.Alternative{a}}
	out := one.Study()[0]
	if out.Capacity != nil {
		out.Dated = nil
	}
	out.Money = nil
	return out, true
}

// try runs sizes under the luck of the search, or up to a round of fresh luck.
func (z *sizer) try(sizes [][]int, luck int) ([]study.Trial, error) {
	n := z.replications()
	setup := &study.Setup{Replications: n, Seed: z.seed(), Workers: z.o.workers()}
	if luck > 0 {
		setup.First = freshLuck + n*(luck-1)
	}
	var at []int
	for i, s := range sizes {
		if kept := z.fresh[fmt.Sprint(s)]; luck > 0 && kept != nil && len(kept.Outcomes) >= n*luck {
			continue // run before
		}
		if a, ok := z.alternative(s); ok { // a size that cannot run scores nothing
			setup.Alternatives = append(setup.Alternatives, a)
			at = append(at, i)
		}
	}
	z.tried += len(at)
	z.runs += n * len(at)
	z.told.Update(z.tried, max(z.o.budget, z.tried))
	runs, err := study.Compare(z.c.Ctx, setup)
	if err != nil {
		return nil, err
	}
	out := make([]study.Trial, len(sizes))
	if luck == 0 {
		for k := range runs {
			out[at[k]] = z.trial(&runs[k])
		}
		return out, nil
	}
	for k := range runs {
		z.keep(fmt.Sprint(sizes[at[k]]), &runs[k])
	}
	for i, s := range sizes {
		if kept := z.fresh[fmt.Sprint(s)]; kept != nil {
			out[i] = z.trial(kept)
		}
	}
	return out, nil
}

// keep adds a round of fresh luck to those of a size.
func (z *sizer) keep(size string, r *study.Runs) {
	if z.fresh == nil {
		z.fresh = map[string]*study.Runs{}
	}
	if z.fresh[size] == nil {
		z.fresh[size] = &study.Runs{Name: r.Name}
	}
	z.fresh[size].Outcomes = append(z.fresh[size].Outcomes, r.Outcomes...)
}

// trial is how a size did, with what is waited for each lever. Waits for molds
// are not known.
func (z *sizer) trial(r *study.Runs) study.Trial {
	t := z.g.TrialOf(r)
	waits := map[string]float64{}
	p := z.s.Base.Plan()
	for _, l := range r.Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11) {
		waits[view.PoolName(p, l.Pool)] = l.Wait
	}
	for i := range z.levers {
		w := -1.0
		if z.levers[i].Kind != scenarios.Molds {
			w = waits[poolOf(&z.levers[i])]
		}
		t.Waits = append(t.Waits, w)
	}
	return t
}
