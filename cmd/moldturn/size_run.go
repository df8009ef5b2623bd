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
	kept   map[string]*study.Runs // by luck and size
}

// freshLuck is how many replications there are in each luck.
const freshLuck = 500_000

func (z *sizer) look() (*view.Sized, error) {
	search := &study.Sizing{Budget: z.o.budget, Runs: z.replications(), Try: z.try}
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
	for luck := found.Rounds; luck > 0; luck-- {
		runs := z.kept[fmt.Sprint(luck, found.Size)]
		if runs == nil {
			continue
		}
		v.Next, v.NextPool = view.NextLimit(z.s.Base.Plan(), runs)
		v.Allow = z.barred(v.NextPool)
		break
	}
	return v, nil
}

// unitOf is one of a lever in words: "gel person on day".
func unitOf(l *scenarios.Lever) string {
	if craft, shift, ok := strings.Cut(l.Label, ", "); ok && l.Kind == scenarios.People {
		return craft + " person on " + shift
	}
	if l.Kind == scenarios.GunSets {
		return l.Unit
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
	case scenarios.GunSets:
		return strings.TrimPrefix(l.Key, "guns.")
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

// try gives sizes the first n replications of a luck, and runs those that they
// did not have yet.
func (z *sizer) try(sizes [][]int, luck, n int) ([]study.Trial, error) {
	if z.kept == nil {
		z.kept = map[string]*study.Runs{}
	}
	name := func(size []int) string { return fmt.Sprint(luck, size) }
	for from := 0; from < n; {
		setup := &study.Setup{First: freshLuck*luck + from, Replications: n - from, Seed: z.seed(), Workers: z.o.workers()}
		next := n
		for _, s := range sizes {
			has := 0
			if r := z.kept[name(s)]; r != nil {
				has = len(r.Outcomes)
			}
			if has > from {
				next = min(next, has)
				continue
			}
			if a, ok := z.alternative(s); ok { // a size that cannot run scores nothing
				a.Name = name(s)
				setup.Alternatives = append(setup.Alternatives, a)
			}
		}
		setup.Replications = next - from
		if err := z.run(setup); err != nil {
			return nil, err
		}
		from = next
	}
	out := make([]study.Trial, len(sizes))
	for i, s := range sizes {
		if r := z.kept[name(s)]; r != nil {
			out[i] = z.trial(r)
		}
	}
	return out, nil
}

// run runs alternatives and keeps what comes of them.
func (z *sizer) run(setup *study.Setup) error {
	if len(setup.Alternatives) == 0 {
		return nil
	}
	z.runs += setup.Replications * len(setup.Alternatives)
	runs, err := study.Compare(z.c.Ctx, setup)
	if err != nil {
		return err
	}
	for k := range runs {
		name := runs[k].Name
		if z.kept[name] == nil {
			z.kept[name] = &study.Runs{Name: name}
			z.tried++
		}
		z.kept[name].Outcomes = append(z.kept[name].Outcomes, runs[k].Outcomes...)
	}
	z.told.Update(z.tried, max(z.o.budget, z.tried))
	return nil
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
