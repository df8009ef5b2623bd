package view

import (
	"fmt"
	"math"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/money"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Quality is a finished comparison of strip policies by the cost of quality.
type Quality struct {
	*Study
	Full  *study.Quality // with orders always waiting; nil: not simulated
	Dated *study.Quality // with the dated order book; nil: not simulated

	Often, Seldom int     // the pair whose break-even is asked for
	Claim         float64 // mean of a warranty claim
	Chance        float64 // of a claim per escape
}

// Main is the comparison that the headline is about: orders always waiting,
// where it was simulated.
func (v *Quality) Main() *study.Quality {
	if v.Full != nil {
		return v.Full
	}
	return v.Dated
}

// classes are the four columns, in the classic order.
func classes() []money.Class {
	return []money.Class{money.Prevention, money.Appraisal, money.InternalFailure, money.ExternalFailure}
}

func (v *Quality) name(q *study.Quality, i int) string { return q.Policies[i].Runs.Name }

// Headline names the policy that costs least and how flat the valley is.
func (v *Quality) Headline() string {
	q := v.Main()
	text := fmt.Sprintf("“%s” costs least: %s a year %s.", v.name(q, q.Least), v.Money.mean(q.Policies[q.Least].Total), v.counted(q))
	if v.once() {
		return text + " One repeat does not show which of the others are dearer by more than luck."
	}
	var near, far []string
	for i := range q.Policies {
		switch p := &q.Policies[i]; {
		case i == q.Least:
		case p.NotWorse:
			near = append(near, "“"+v.name(q, i)+"”")
		default:
			far = append(far, fmt.Sprintf("“%s” %s", v.name(q, i), v.Money.amount(p.More.Summary)))
		}
	}
	if len(near) > 0 {
		text += v.valley(q, near)
	}
	if len(far) > 0 {
		text += " Clearly dearer: " + listed(far) + "."
	}
	return text
}

// flatValley is the share of the least total within which policies that are not
// clearly dearer count as a flat valley (a rule of this report, no source).
const flatValley = 0.1

// valley names the policies that are not clearly dearer, and by how much they may
// be; it is called flat only where that is little.
func (v *Quality) valley(q *study.Quality, near []string) string {
	widest := stats.Summary{}
	for i := range q.Policies {
		if x := q.Policies[i].More; i != q.Least && q.Policies[i].NotWorse && x.High > widest.High {
			widest = x.Summary
		}
	}
	most := v.Money.whole(widest.High, grain(widest.Half))
	if widest.High <= flatValley*q.Policies[q.Least].Total.Mean {
		return fmt.Sprintf(" The valley is flat: not clearly dearer are %s, by %s a year at most.", listed(near), most)
	}
	return fmt.Sprintf(" Not clearly dearer are %s, but these repeats leave up to %s a year open; more repeats would tell how flat the valley is.", listed(near), most)
}

// once says that there is one repeat, which has no intervals.
func (v *Quality) once() bool { return len(v.Base().Outcomes) < 2 }

func (v *Quality) counted(q *study.Quality) string {
	if q.Margins {
		return "in costs of quality, margin given up and other costs"
	}
	return "in costs of quality"
}

// listed joins words with commas and a last "and".
func listed(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}

// Findings are the sentences under the headline.
func (v *Quality) Findings() []string {
	out := []string{v.pair(), v.breakEven(), v.molds()}
	if v.once() {
		out = []string{v.pair(), "One repeat does not show from which warranty claim on stripping often pays, nor whether mold time costs boats: simulate two or more (--replications)."}
	}
	if text := v.beyond(); text != "" {
		out = append(out, text)
	}
	if v.Full != nil && v.Dated != nil {
		out = append(out, v.withOrders())
	}
	return append(out, "Hours paid stay the same under every policy: hours that a policy does not work are paid without work, which is in “other costs”.")
}

// pair says what stripping often costs and returns.
func (v *Quality) pair() string {
	q := v.Main()
	a, b := &q.Policies[v.Often], &q.Policies[v.Seldom]
	more := q.Between(v.Often, v.Seldom)
	text := fmt.Sprintf("“%s” instead of “%s”, a year: prevention %s, appraisal %s, internal failure %s, external failure %s; the four classes together %s",
		a.Runs.Name, b.Runs.Name, v.Money.plus(more.Class[money.Prevention]), v.Money.plus(more.Class[money.Appraisal]),
		v.Money.plus(more.Class[money.InternalFailure]), v.Money.plus(more.Class[money.ExternalFailure]), v.Money.plus(more.Four))
	text += fmt.Sprintf(" (%s a boat).", v.Money.plus(more.FourBoat))
	if q.Margins {
		text += fmt.Sprintf(" With %s boats a year and all other costs it is %s in all (%s a boat).",
			plusBoats(more.Boats), v.Money.dearer(more.Total), v.Money.plus(more.TotalBoat))
	}
	return text
}

// breakEven says from which warranty claim on stripping often pays.
func (v *Quality) breakEven() string {
	q := v.Main()
	e := q.BreakEvenOf(v.Often, v.Seldom, v.Chance, v.Claim)
	often, seldom := v.name(q, v.Often), v.name(q, v.Seldom)
	if !e.Claims {
		return v.unbounded(&e, often, seldom)
	}
	text := v.paysFrom(e.Claim, often, seldom)
	if q.Margins {
		text += " On the four classes alone, as if freed hours were saved and boats did not change: " + v.from(e.Four) + "."
	}
	return text + fmt.Sprintf(" Claims cost %s on average now, and come from %.0f %% of escapes.", v.Money.whole(v.Claim, 1), 100*v.Chance)
}

// unbounded says what is known of the break-even where the number of claims is
// not clearly lowered: from which claim on there may be one.
func (v *Quality) unbounded(e *study.BreakEven, often, seldom string) string {
	text := fmt.Sprintf("Break-even warranty cost: “%s” does not clearly lower the number of claims against “%s” (%s a year), so it has no upper end", often, seldom, plusClaims(e.Fewer))
	if e.Fewer.Mean > 0 && e.Claim.Value > 0 {
		text += fmt.Sprintf("; on the means it would be %s a claim", v.Money.whole(e.Claim.Value, 1000))
	}
	if v.Main().Margins {
		text += fmt.Sprintf(". All costs counted, “%s” is %s. On the four classes alone it is %s", often, v.side(e.ClaimSide), v.side(e.FourSide))
	} else {
		text += fmt.Sprintf(". “%s” is %s", often, v.side(e.FourSide))
	}
	return text + fmt.Sprintf(". Claims cost %s on average now.", v.Money.whole(v.Claim, 1))
}

// side says up to which claim one policy clearly costs more or less.
func (v *Quality) side(s study.Side) string {
	word := map[int]string{-1: "clearly cheaper", 0: "not clearly cheaper or dearer even if claims cost nothing", 1: "clearly dearer"}[s.Sign]
	switch {
	case s.Sign == 0:
		return word
	case math.IsInf(s.To, 1):
		return word + " whatever a claim costs"
	}
	g := max(math.Pow10(int(math.Floor(math.Log10(s.To)))-1), 1) // two digits, rounded down
	return fmt.Sprintf("%s with claims of up to %s, and not clear above", word, v.Money.whole(math.Floor(s.To/g)*g, 1))
}

func (v *Quality) paysFrom(r study.Ratio, often, seldom string) string {
	if r.Value <= 0 && (!r.Bounded || r.High <= 0) {
		return fmt.Sprintf("“%s” pays against “%s” at any warranty cost.", often, seldom)
	}
	return fmt.Sprintf("“%s” pays against “%s” once a warranty claim costs %s.", often, seldom, v.from(r))
}

// from puts a break-even claim in words.
func (v *Quality) from(r study.Ratio) string {
	switch {
	case !r.Bounded:
		return "an amount that these runs do not bound"
	case r.High <= 0:
		return "nothing or more: it pays without any claim"
	case r.Low <= 0:
		return fmt.Sprintf("%s or more (0 to %s)", v.Money.whole(max(r.Value, 0), grain((r.High-r.Low)/2)), v.Money.whole(r.High, grain((r.High-r.Low)/2)))
	}
	g := grain((r.High - r.Low) / 2)
	return fmt.Sprintf("%s or more (%s to %s)", v.Money.whole(r.Value, g), v.Money.whole(r.Low, g), v.Money.whole(r.High, g))
}

// molds says whether mold time costs boats here. The hold takes mold time too,
// but it is the same under every strip policy.
func (v *Quality) molds() string {
	q := v.Main()
	binds, many, d := q.MoldsBind()
	if binds {
		return fmt.Sprintf("Mold time binds: “%s” ships %s boats a year against “%s”, which has most mold time in strips. Mold-days are charged as the margin of boats not built, measured and not estimated from a rate.",
			v.name(q, q.Most), plusBoats(d), v.name(q, many))
	}
	return fmt.Sprintf("Mold time does not bind: “%s”, which has most of it in strips, does not clearly ship fewer boats than another. Mold-days are charged nothing of their own.", v.name(q, many))
}

// beyond says what holds the plant back where fewer strips ship fewer boats;
// empty where they do not.
func (v *Quality) beyond() string {
	q := v.Main()
	last := len(q.Policies) - 1
	p := &q.Policies[last]
	d := q.Fewer(last)
	if last == q.Most || !d.Clear || d.Mean > 0 || p.MoldDays.Mean >= q.Policies[q.Most].MoldDays.Mean {
		return ""
	}
	a := &v.Alternatives[last]
	digits := decimals(d.Half, 1)
	text := fmt.Sprintf("Stripping too seldom costs boats too: “%s” ships %s fewer a year than “%s”", p.Runs.Name, fixed(-d.Mean, digits)+plusOrNothing(d.Half, digits), v.name(q, q.Most))
	if ranked := a.Limits(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11); len(ranked) > 0 && ranked[0].Wait >= waitWorthNaming {
		text += fmt.Sprintf("; there %s, busy %.0f %% of the hours there are", limits(a.Plan, ranked[0].Pool), 100*ranked[0].Load)
	}
	return text + "."
}

// withOrders says what the order book as it is would pick.
func (v *Quality) withOrders() string {
	q := v.Dated
	text := fmt.Sprintf("With the orders as they come, “%s” costs least: %s a year", v.name(q, q.Least), v.Money.mean(q.Policies[q.Least].Total))
	var near []string
	for i := range q.Policies {
		if i != q.Least && q.Policies[i].NotWorse && !v.once() {
			near = append(near, "“"+v.name(q, i)+"”")
		}
	}
	if len(near) > 0 {
		text += "; not clearly dearer: " + listed(near)
	}
	return text + "."
}

// ClassTable is the four classes of each policy, a year or a boat.
func (v *Quality) ClassTable(q *study.Quality, perBoat bool) cells.Table {
	title := "Cost of quality a year"
	if perBoat {
		title = "Cost of quality per boat"
	}
	t := cells.Table{Title: title + v.orders(q), Columns: []cells.Column{{Head: "policy"}}}
	for _, c := range classes() {
		t.Columns = append(t.Columns, cells.Column{Head: c.String(), Align: cells.Right})
	}
	t.Columns = append(t.Columns, cells.Column{Head: "four classes", Align: cells.Right})
	for i := range q.Policies {
		p := &q.Policies[i]
		by, all := &p.Class, p.Four
		if perBoat {
			by, all = &p.PerBoat, p.FourBoat
		}
		row := cells.Texts(p.Runs.Name)
		for _, c := range classes() {
			row.Cells = append(row.Cells, cells.Cell{Text: v.Money.mean(by[c])})
		}
		row.Cells = append(row.Cells, cells.Cell{Text: v.Money.amount(all)})
		t.Rows = append(t.Rows, row)
	}
	return t
}

func (v *Quality) orders(q *study.Quality) string {
	if q.Dated {
		return ", orders as they come"
	}
	return ", orders always waiting"
}

// TotalTable is what each policy costs in all, and what it ships.
func (v *Quality) TotalTable(q *study.Quality) cells.Table {
	t := cells.Table{Title: "What each policy costs in all, a year" + v.orders(q), Columns: []cells.Column{{Head: "policy"}, {Head: "four classes", Align: cells.Right}}}
	if q.Margins {
		t.Columns = append(t.Columns, cells.Column{Head: "margin given up", Align: cells.Right}, cells.Column{Head: "other costs", Align: cells.Right}, cells.Column{Head: "in all", Align: cells.Right})
	}
	t.Columns = append(t.Columns, cells.Column{Head: "more than the least", Align: cells.Right})
	for i := range q.Policies {
		p := &q.Policies[i]
		row := cells.Texts(p.Runs.Name, v.Money.mean(p.Four))
		if q.Margins {
			for _, x := range []string{v.Money.mean(p.Margin), v.Money.mean(p.Other), v.Money.mean(p.Total)} {
				row.Cells = append(row.Cells, cells.Cell{Text: x})
			}
		}
		more := v.Money.change(p.More)
		if i == q.Least {
			more, row.Strong = "least", true
		}
		row.Cells = append(row.Cells, cells.Cell{Text: more})
		t.Rows = append(t.Rows, row)
	}
	if q.Margins {
		noteHead(&t, 2, fmt.Sprintf("Against “%s”, which ships most.", v.name(q, q.Most)))
		markHead(&t, 3, 0)
	}
	return t
}

// PlantTable is what each policy does to boats, luster, escapes and molds.
func (v *Quality) PlantTable(q *study.Quality) cells.Table {
	t := cells.Table{Title: "What each policy does, a year" + v.orders(q), Columns: []cells.Column{{Head: "policy"}, {Head: "boats", Align: cells.Right},
		{Head: "luster as pulled", Align: cells.Right}, {Head: "boats with an escape", Align: cells.Right}, {Head: "mold-days in strips", Align: cells.Right}}}
	luster := metric("luster_mean")
	for i := range q.Policies {
		p := &q.Policies[i]
		one := func(x float64, half float64, most int) string {
			return fixed(x, decimals(half, most)) + plusOrNothing(half, decimals(half, most))
		}
		t.Rows = append(t.Rows, cells.Texts(p.Runs.Name, one(p.Boats.Mean, p.Boats.Half, 1), amount(luster, p.Luster, 2), one(p.Escapes.Mean, p.Escapes.Half, 1), one(p.MoldDays.Mean, p.MoldDays.Half, 1)))
	}
	return t
}

func plusOrNothing(half float64, digits int) string {
	if half > 0 {
		return plusMinus(half, digits)
	}
	return ""
}
