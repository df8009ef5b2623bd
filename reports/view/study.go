// Package view turns a finished comparison into finished texts and tables: it
// chooses what is shown, rounds every number once, to the digits its interval
// supports, and puts it in words. The writers of package reports only place
// what comes from here.
//
// A Study holds the outcomes and the names their indices stand for. Everything
// else is a function of it, so the same Study gives the same texts.
package view

import (
	"moldturn/sim"
	"moldturn/sim/cure"
	"moldturn/sim/hand"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Study is a finished comparison. Its first alternative is the base that the
// others are held against; there is at least one.
type Study struct {
	Scenario     string // name of the plant
	Note         string // a sentence of the user about it, may be empty
	Seed         uint64
	Replications int
	Years        int // counted in each replication
	Warm         int // simulated before them and not counted
	Alternatives []Alternative
	Enough       *Enough          // the rule that ended the runs; nil without one
	Money        Money            // how amounts and quantities are written
	Holds        *study.HoldCurve // the base at other holds; nil where it was not run
	Air          []string         // warnings about the air of the base
	Card         *cure.Hold       // of the base, for the wall; may be nil
	Hand         *hand.Table      // the base by hand; nil where it was not worked out
	Inputs       []Input          // every value of the base, in the order of the scenario
	Version      string           // of the program, may be empty
	Hash         string           // fingerprint of the inputs, may be empty

	// Typical runs a replication of the base again, for what the floor did in it;
	// the same one each time it is called. nil: there is nothing to run.
	Typical func() (*study.Typical, error)

	// Permit counts for the permit in runs of the base of its own; nil: no permit.
	Permit func() (*Permit, error)
}

// Alternative is one way to run the plant, with what happened.
type Alternative struct {
	study.Runs
	Plan *sim.Plan // names the crafts, places, models and parts of its figures
}

// Base is the alternative that the others are held against.
func (s *Study) Base() *Alternative { return &s.Alternatives[0] }

// SimulatedYears is how many counted years stand behind each figure.
func (s *Study) SimulatedYears() int { return s.Replications * s.Years }

// summary is a figure of an alternative; the zero Summary if it has none.
func (a *Alternative) summary(m *study.Metric) stats.Summary {
	x, _ := a.Summary(m)
	return x
}

// metric is the study's metric of that name. A name that the study does not
// have is an error of the program.
func metric(name string) *study.Metric {
	m, ok := study.MetricNamed(name)
	if !ok {
		panic("view: there is no figure " + name)
	}
	return &m
}
