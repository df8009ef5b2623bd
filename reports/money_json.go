package reports

import (
	"io"

	"moldturn/reports/view"
	"moldturn/sim/money"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// figure is a mean with its interval; the ends are null without one.
type figure struct {
	Mean float64  `json:"mean"`
	Low  *float64 `json:"low"`
	High *float64 `json:"high"`
}

func figureOf(x stats.Summary) figure {
	low, high := ends(x)
	return figure{x.Mean, low, high}
}

// clearFigure is a paired difference.
type clearFigure struct {
	figure
	Clear bool `json:"clear"`
}

func clearOf(d stats.Difference) clearFigure { return clearFigure{figureOf(d.Summary), d.Clear} }

type qualityPolicy struct {
	Name     string            `json:"name"`
	Every    int               `json:"every"` // 0 for another policy
	Classes  map[string]figure `json:"classes_per_year"`
	PerBoat  map[string]figure `json:"classes_per_boat"`
	Four     figure            `json:"four_classes_per_year"`
	FourBoat figure            `json:"four_classes_per_boat"`
	Margin   figure            `json:"margin_given_up_per_year"`
	Other    figure            `json:"other_costs_per_year"`
	Total    figure            `json:"total_per_year"`
	More     clearFigure       `json:"more_than_least_per_year"`
	NotWorse bool              `json:"not_clearly_dearer"`
	Boats    figure            `json:"boats_per_year"`
	Luster   figure            `json:"luster_mean"`
	Escapes  figure            `json:"escapes_per_year"`
	MoldDays figure            `json:"mold_days_in_strips_per_year"`
}

// ratioFigure is a break-even; the ends are null where runs do not bound it.
type ratioFigure struct {
	Value float64  `json:"value"`
	Low   *float64 `json:"low"`
	High  *float64 `json:"high"`
}

func ratioOf(r study.Ratio) ratioFigure {
	out := ratioFigure{Value: r.Value}
	if r.Bounded {
		out.Low, out.High = &r.Low, &r.High
	}
	return out
}

type qualityBook struct {
	Orders    string          `json:"orders"`
	Policies  []qualityPolicy `json:"policies"`
	Least     string          `json:"least"`
	MoldsBind bool            `json:"molds_bind"`
	BreakEven breakEven       `json:"break_even_claim"`
}

type breakEven struct {
	Often  string      `json:"often"`
	Seldom string      `json:"seldom"`
	Fewer  clearFigure `json:"fewer_claims_per_year"`
	Claim  ratioFigure `json:"claim"`
	Four   ratioFigure `json:"claim_four_classes_alone"`
}

// QualityJSON writes the comparison in full.
func QualityJSON(w io.Writer, v *view.Quality) error {
	doc := struct {
		Scenario     string        `json:"scenario"`
		Currency     string        `json:"currency"`
		Seed         uint64        `json:"seed"`
		Replications int           `json:"replications"`
		Years        int           `json:"years"`
		Confidence   float64       `json:"confidence"`
		Books        []qualityBook `json:"books"`
	}{Scenario: v.Scenario, Currency: v.Money.Currency, Seed: v.Seed, Replications: v.Replications, Years: v.Years, Confidence: study.Confidence}
	for _, q := range []*study.Quality{v.Full, v.Dated} {
		if q != nil {
			doc.Books = append(doc.Books, bookOf(v, q))
		}
	}
	return Document(w, doc)
}

func bookOf(v *view.Quality, q *study.Quality) qualityBook {
	book := qualityBook{Orders: "always waiting", Least: q.Policies[q.Least].Runs.Name}
	if q.Dated {
		book.Orders = "as they come"
	}
	book.MoldsBind, _, _ = q.MoldsBind()
	e := q.BreakEvenOf(v.Often, v.Seldom, v.Chance, v.Claim)
	book.BreakEven = breakEven{q.Policies[v.Often].Runs.Name, q.Policies[v.Seldom].Runs.Name, clearOf(e.Fewer), ratioOf(e.Claim), ratioOf(e.Four)}
	for i := range q.Policies {
		p := &q.Policies[i]
		out := qualityPolicy{Name: p.Runs.Name, Every: p.Every, Classes: map[string]figure{}, PerBoat: map[string]figure{},
			Four: figureOf(p.Four), FourBoat: figureOf(p.FourBoat), Margin: figureOf(p.Margin), Other: figureOf(p.Other), Total: figureOf(p.Total), More: clearOf(p.More),
			NotWorse: p.NotWorse, Boats: figureOf(p.Boats), Luster: figureOf(p.Luster), Escapes: figureOf(p.Escapes), MoldDays: figureOf(p.MoldDays)}
		for c := money.Prevention; c < money.Classes; c++ {
			out.Classes[c.String()], out.PerBoat[c.String()] = figureOf(p.Class[c]), figureOf(p.PerBoat[c])
		}
		book.Policies = append(book.Policies, out)
	}
	return book
}

type investBook struct {
	Orders      string      `json:"orders"`
	Gain        clearFigure `json:"gain_per_year"`
	Boats       clearFigure `json:"boats_per_week_more"`
	Worth       figure      `json:"net_present_value"`
	Pays        int         `json:"pays_in_runs"`
	Of          int         `json:"runs"`
	Payback     *float64    `json:"payback_years"`
	Rate        *float64    `json:"internal_rate_of_return"`
	BoatsNeeded *float64    `json:"boats_per_week_needed"`
	MarginShare ratioFigure `json:"break_even_share_of_margins"`
	WearNow     figure      `json:"wear_per_year_today"`
	WearThen    figure      `json:"wear_per_year_with_it"`
}

// InvestJSON writes the look at an investment in full.
func InvestJSON(w io.Writer, v *view.Invest) error {
	i := &v.Investment
	doc := struct {
		Scenario    string       `json:"scenario"`
		Alternative string       `json:"alternative"`
		Currency    string       `json:"currency"`
		Answer      string       `json:"answer"`
		Purchase    float64      `json:"purchase"`
		LeadYears   float64      `json:"lead_years"`
		Life        int          `json:"life_years"`
		Residual    float64      `json:"residual"`
		Rate        float64      `json:"discount_rate"`
		YearlyCost  float64      `json:"equivalent_annual_cost"`
		Books       []investBook `json:"books"`
	}{v.Scenario, v.Alternatives[1].Name, v.Money.Currency, v.Headline(), i.Purchase, i.Lead, i.Life, i.Residual, i.Rate, i.YearlyCost(), nil}
	for _, b := range []struct {
		orders string
		r      *study.Returns
	}{{"always waiting", v.Full}, {"as they come", v.Dated}} {
		if b.r == nil {
			continue
		}
		r := b.r
		out := investBook{Orders: b.orders, Gain: clearOf(r.Gain), Boats: clearOf(r.Boats), Worth: figureOf(r.Worth), Pays: r.Pays, Of: r.Of,
			MarginShare: ratioOf(r.MarginShare), WearNow: figureOf(r.WearNow), WearThen: figureOf(r.WearThen)}
		if r.PaysBack {
			out.Payback = &r.Payback
		}
		if r.HasRate {
			out.Rate = &r.Rate
		}
		if r.HasNeed {
			out.BoatsNeeded = &r.BoatsNeeded
		}
		doc.Books = append(doc.Books, out)
	}
	return Document(w, doc)
}
