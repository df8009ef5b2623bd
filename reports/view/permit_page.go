package view

import (
	"fmt"
	"math"

	"moldturn/reports/chart"
	"moldturn/reports/page"
	"moldturn/sim/study"
)

// Page is the permit ledger as a page.
func (p *Permit) Page() (page.Page, error) {
	out := page.Page{Title: p.Study.Scenario + ": permit ledger", Lead: p.Headline(), Foot: []string{PermitCaution, Caution}}
	answer := page.Section{Heading: "The answer", Blocks: []page.Block{page.Remark(PermitCaution)}}
	if p.Study.Note != "" {
		answer.Blocks = append(answer.Blocks, page.Text(p.Study.Note))
	}
	if band, ok := p.Picture(); ok {
		c, err := band.Build()
		if err != nil {
			return page.Page{}, err
		}
		answer.Blocks = append(answer.Blocks, c)
	}
	ledger := page.Section{Heading: "The ledger"}
	for _, t := range p.Tables() {
		ledger.Blocks = append(ledger.Blocks, page.Table{Table: t})
	}
	out.Sections = []page.Section{answer, ledger,
		{Heading: "How it was computed", Blocks: []page.Block{page.List(p.Computed())}},
		{Heading: "Assumptions", Blocks: p.Study.assumptions()}}
	return out, nil
}

// PermitSection is the permit line of the base in the report of a comparison.
func (s *Study) PermitSection() (page.Section, bool, error) {
	if s.Permit == nil {
		return page.Section{}, false, nil
	}
	p, err := s.Permit()
	if err != nil {
		return page.Section{}, false, err
	}
	out := page.Section{Heading: "Air permit", Blocks: []page.Block{page.Text(p.Headline()), page.Remark(PermitCaution)}}
	if band, ok := p.Picture(); ok {
		c, err := band.Build()
		if err != nil {
			return page.Section{}, false, err
		}
		out.Blocks = append(out.Blocks, c)
	}
	out.Blocks = append(out.Blocks, page.Text(fmt.Sprintf("Counted in %s of %s; “moldturn permit” has the whole ledger.", count(len(p.Ledger.Ledgers), "repeat"), quoted(s.Base().Name))))
	return out, true, nil
}

// Picture is the estimate of the twelve months up to each month-end, with the
// cap; ok is false with fewer than two month-ends that are known.
func (p *Permit) Picture() (c chart.Band, ok bool) {
	t := p.ton()
	months := p.Ledger.Months()
	top := p.top(months)
	if top < 0 {
		return c, false
	}
	c = chart.Band{
		Figure: chart.Figure{ID: "permit", Finding: p.pictureFinding(months, top),
			Caption: fmt.Sprintf("Estimated organic HAP in the air in the twelve months up to each month-end, %s, over %s.", p.what(), count(len(p.Ledger.Ledgers), "repeat")),
			Alt:     "Line of the HAP in twelve months by month-end, with a band around it."},
		XTitle: "end of", Y: chart.Axis{Name: "HAP in twelve months", Unit: t.name, Digits: 1}, Middle: "mean", Range: "8 repeats in 10",
		Series: make([]chart.Ribbon, 1),
	}
	if limit := p.Ledger.Setup.Cap; limit > 0 {
		c.Goals = []chart.Goal{{Label: "cap of the permit", Value: limit / t.kg}}
	}
	known := 0
	r := &c.Series[0]
	for n, m := range months {
		c.X = append(c.X, p.monthShort(n))
		low, middle, high := math.NaN(), math.NaN(), math.NaN()
		if m.Known {
			known++
			low, middle, high = m.Low/t.kg, m.Rolling/t.kg, m.High/t.kg
			low, high = min(low, middle), max(high, middle)
		}
		r.Low, r.Middle, r.High = append(r.Low, low), append(r.Middle, middle), append(r.High, high)
	}
	return c, known > 1
}

// pictureFinding is what the drawing shows: the month-end at which the mean of
// twelve months passes the cap, that it never does, or without a cap the
// highest.
func (p *Permit) pictureFinding(months []study.PermitMonth, top int) string {
	t, limit := p.ton(), p.Ledger.Setup.Cap
	if limit <= 0 {
		return fmt.Sprintf("The twelve months up to the end of %s have the most: %s", p.monthName(top), t.with(months[top].Rolling))
	}
	for n := range months {
		if months[n].Known && months[n].Rolling > limit {
			return fmt.Sprintf("On average the cap of %s is passed at the end of %s", t.with(limit), p.monthName(n))
		}
	}
	return fmt.Sprintf("On average the cap of %s is kept; the fullest twelve months have %s", t.with(limit), t.with(months[top].Rolling))
}

// Computed says how the ledger came about.
func (p *Permit) Computed() []string {
	s := p.Study
	return []string{
		fmt.Sprintf("%s of %s %s, with %s before them that is not counted.", count(s.Replications, "repeat"), count(s.Years, "year"), p.what(), count(s.Warm, "year")),
		"Material is taken when a step begins: gel coat by area, wet film, density and transfer, resin by area, thickness and glass content, shared among the steps of laminating by their labor. Gel coat lost in a flush counts as used.",
		"Averaging: §63.5698(b) Equation 1 and §63.5710 with the point values of Table 3, only the materials that take part in it, at the end of every month over the twelve months before it, and strictly less than the limit. Content: Table 2 with §63.5713. Filled resin: §63.5714. The forms of the weighted averages and of the filled resin are from memory.",
		"Emission factors: UEF-1 (ANSI/ACMA/ICPA UEF-1-2004, 40 CFR 63 Subpart WWWW Table 1), from memory; those of manual, atomized and nonatomized resin and of atomized gel coat agree with published limits within 1 lb/ton, that of nonatomized gel coat and those of vacuum bags and suppressants are not confirmed.",
		"Months are calendar months; the first is the first that begins no more than a week before the counted time. Without last year's use the first month-end that can be judged is the twelfth.",
		fmt.Sprintf("Luck is drawn from the number %d; the same number, program and inputs give the same ledger, byte for byte.", s.Seed),
	}
}
