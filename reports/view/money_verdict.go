package view

import (
	"fmt"
	"math"

	"moldturn/reports/cells"
	"moldturn/sim/study"
)

// payVerdict is what the runs say about an investment under one kind of demand.
type payVerdict uint8

const (
	unclear payVerdict = iota // its worth is not clearly above or below nothing
	pays
	loses   // it gains, and less than it costs
	useless // it gains nothing that could pay it
)

// judge sorts by the interval of the worth. Useless is a purchase that is not
// clearly a gain at all and would not pay at the upper end of its interval
// either; what costs nothing is useless only without a clear gain. One repeat, and
// two or more that are too few to tell, show that something is useless only where
// it changes nothing.
func (v *Invest) judge(r *study.Returns) payVerdict {
	gains := r.Gain.Clear && r.Gain.Mean > 0
	switch {
	case r.Worth.Known() && r.Worth.Low > 0:
		return pays
	case !gains && r.Worth.Known() && r.Worth.High <= 0:
		return useless
	case !r.Worth.Known() && r.Gain.Mean == 0 && r.Worth.Mean <= 0:
		return useless
	case r.Worth.Known() && r.Worth.High < 0:
		return loses
	}
	return unclear
}

// said is a verdict on one kind of demand in words, after "it".
func (v *Invest) said(r *study.Returns) string {
	n := v.worthOf(r)
	switch v.judge(r) {
	case pays:
		return "pays (" + n + ")"
	case loses, useless:
		return "does not pay (" + n + ")"
	}
	return "may pay or not (" + n + ")"
}

// Headline is the answer: one verdict for every kind of demand that was
// simulated, never one of them alone.
func (v *Invest) Headline() string {
	r, dated := v.Deciding()
	name := "“" + v.with().Name + "”"
	over := fmt.Sprintf("over %s of use at %s, %s paid", count(v.Investment.Life, "year"), percent(v.Investment.Rate), v.Money.whole(v.Investment.Purchase, 1))
	if v.judge(r) == useless {
		return fmt.Sprintf("%s brings no gain: %s. Contribution changes by %s a year; net present value %s %s, in %s above zero.",
			name, v.limitedBy(dated), v.Money.plus(r.Gain), v.Money.amount(r.Worth), over, aboveZero(r))
	}
	if v.Full == nil || v.Dated == nil {
		return fmt.Sprintf("%s %s: %s %s.", name, v.demandWords(dated), v.said(r), over)
	}
	full, orders := v.judge(v.Full), v.judge(v.Dated)
	switch {
	case full == pays && orders == pays:
		return fmt.Sprintf("%s pays with the orders as they come (%s) and if every boat sells (%s), %s.", name, v.worthOf(v.Dated), v.worthOf(v.Full), over)
	case full == pays:
		return fmt.Sprintf("%s pays only if the boats it adds sell: then %s; with the orders as they come it %s; %s.", name, v.worthOf(v.Full), v.said(v.Dated), over)
	}
	return fmt.Sprintf("%s: with the orders as they come it %s; if every boat sells it %s; %s.", name, v.said(v.Dated), v.said(v.Full), over)
}

func (v *Invest) worthOf(r *study.Returns) string {
	return fmt.Sprintf("net present value %s, in %s above zero", v.Money.amount(r.Worth), aboveZero(r))
}

// aboveZero is "2 of 4 repeats".
func aboveZero(r *study.Returns) string {
	return fmt.Sprintf("%d of %s", r.Pays, count(r.Of, "repeat"))
}

// twoQuestions reconciles the interval of the worth with the chance that it
// pays, which look alike and are not: the one is of the mean over all luck, the
// other of one run of luck. Empty with one repeat, which has no interval.
func (v *Invest) twoQuestions() string {
	text := ""
	for _, d := range v.demands() {
		x := d.r.Worth
		if !x.Known() || v.judge(d.r) != unclear {
			continue
		}
		g := grain(x.Half)
		text += fmt.Sprintf(" %s, the mean may lie anywhere from %s to %s, and %s end above zero: neither shows whether it pays.",
			map[bool]string{true: "With the orders as they come", false: "If every boat sells"}[d.dated], v.Money.whole(x.Low, g), v.Money.whole(x.High, g), aboveZero(d.r))
	}
	r, _ := v.Deciding()
	if !r.Worth.Known() {
		return ""
	}
	return "Net present value and chance put two questions to the same repeats. ± is how well the mean over all luck is known, and narrows with more repeats; the chance is how often one run of luck ends above zero, and does not." + text
}

// chance is the share of luck that makes it pay, with the interval of E. B.
// Wilson ("Probable inference, the law of succession, and statistical
// inference", Journal of the American Statistical Association 22, 1927,
// 209–212) at 95 %.
func chance(hits, of int) (low, high float64) {
	const z = 1.959963984540054
	n := float64(of)
	p := float64(hits) / n
	middle := (p + z*z/(2*n)) / (1 + z*z/n)
	half := z / (1 + z*z/n) * math.Sqrt(p*(1-p)/n+z*z/(4*n*n))
	return max(middle-half, 0), min(middle+half, 1)
}

// chanceText is "5 of 10 (24 to 76 %)".
func chanceText(r *study.Returns) string {
	low, high := chance(r.Pays, r.Of)
	return fmt.Sprintf("%d of %d (%.0f to %.0f %%)", r.Pays, r.Of, 100*low, 100*high)
}

// BreakEven is from which demand and which margins on it pays; no rows where it
// does not gain.
func (v *Invest) BreakEven() cells.Table {
	t := cells.Table{Title: "Break-even", Columns: []cells.Column{{Head: ""}, {Head: "pays from", Align: cells.Right}, {Head: "today", Align: cells.Right}, {Head: "so"}}}
	r, _ := v.Deciding()
	t.Rows = append(t.Rows, cells.Texts("contribution a year more", v.Money.whole(v.Investment.YearlyCost(), 1), v.Money.plus(r.Gain), v.enough(r)))
	if v.Full != nil && v.Full.HasNeed {
		now := v.Base().summary(metric("boats_per_week"))
		so := "the boats it adds can pay it"
		if v.Full.BoatsNeeded > v.Full.Boats.Mean {
			so = "no demand makes it pay"
		}
		t.Rows = append(t.Rows, cells.Texts("orders a week", fixed(now.Mean+v.Full.BoatsNeeded, 2), v.ordered(now.Mean), so))
	}
	if m := r.MarginShare; m.Bounded && r.Boats.Clear && r.Boats.Mean > 0 {
		so := "today's margins are enough"
		switch {
		case m.Low > 1:
			so = "today's margins are too small"
		case m.High > 1:
			so = "not clear"
		}
		t.Rows = append(t.Rows, cells.Texts("margins, of today's", fmt.Sprintf("%.0f %% (%.0f to %.0f %%)", 100*m.Value, 100*m.Low, 100*m.High), "100 %", so))
	}
	return t
}

func (v *Invest) enough(r *study.Returns) string {
	return map[payVerdict]string{pays: "enough", loses: "too little", useless: "too little", unclear: "not clear"}[v.judge(r)]
}

// ordered is the orders a week of today; where only orders always waiting were
// simulated, they are what the plant ships.
func (v *Invest) ordered(shipped float64) string {
	spare, ok := v.Base().Summary(metric("spare_boats_per_week"))
	if !ok {
		return "not known"
	}
	return fixed(shipped-spare.Mean, 2)
}
