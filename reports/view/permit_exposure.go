package view

import (
	"fmt"
	"math"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim/exposure"
	measures "moldturn/sim/param/unit"
)

// ExposureCaution stands first in every screening of air.
const ExposureCaution = "Screening only. This replaces no measurement: what people breathe is decided at the gun and in the mold. Defer to industrial hygienists, to local codes and to the authority that has jurisdiction."

// Exposure is a screening of the air of booths and shop.
type Exposure struct {
	Study  *Study // names, inputs and how it was computed
	Orders bool   // the plant had its dated orders; otherwise orders always waiting
	Screen exposure.Screen
	Units  measures.System
}

// air prints an air flow in m³/h in the units of the plant.
func (e *Exposure) air(m3h float64) string {
	if e.Units == measures.US {
		return rounded(exposure.Cfm(m3h)) + nb + "cfm"
	}
	return rounded(m3h) + nb + "m³/h"
}

// velocity prints ft/min in the units of the plant.
func (e *Exposure) velocity(fpm float64) string {
	if e.Units == measures.US {
		return fixed(fpm, 0) + nb + "fpm"
	}
	return fixed(exposure.AirM3h(fpm, 1)/3600, 2) + nb + "m/s"
}

// rate prints kg per hour in the units of the plant.
func (e *Exposure) rate(kg float64) string {
	if e.Units == measures.US {
		return significant(kg/0.45359237, 2) + nb + "lb/h"
	}
	return significant(kg, 2) + nb + "kg/h"
}

// rounded prints a large number with three digits that count.
func rounded(v float64) string {
	if math.IsInf(v, 0) {
		return "–"
	}
	if v >= 1000 {
		p := math.Pow10(int(math.Log10(v)) - 2)
		v = math.Round(v/p) * p
	}
	return significant(v, 3)
}

// Tables are the tables of the screening in order.
func (e *Exposure) Tables() []cells.Table {
	return []cells.Table{e.Booth(), e.Fire(), e.Styrene()}
}

// Booth holds the air of a booth against what codes ask for.
func (e *Exposure) Booth() cells.Table {
	b := &e.Screen.Booth
	fpm, asked, ok := b.Velocity()
	t := cells.Table{Title: "Air of a spray booth", Columns: right("", "has", "asked for", "enough")}
	verdict := func(good bool) string {
		if good {
			return "yes"
		}
		return "no"
	}
	t.Rows = []cells.Row{
		cells.Texts("mean velocity at the open face, at least¹", e.velocity(fpm), e.velocity(exposure.LeastFace), verdict(fpm >= exposure.LeastFace)),
		cells.Texts("velocity for air-operated guns²", e.velocity(fpm), e.velocity(asked.Low)+" to "+e.velocity(asked.High), verdict(ok && fpm >= asked.Low)),
		cells.Texts("air for that, design velocity", e.air(b.Air), e.air(b.Needed()), verdict(b.Air >= b.Needed()*(1-1e-9))),
	}
	if !ok {
		t.Rows[1].Cells[2].Text, t.Rows[1].Cells[3].Text = "crossdraft not permitted", "no"
	}
	t.Notes = []string{
		"OSHA 29 CFR 1910.107(b)(5)(i); the International Mechanical Code, 502.7.3.3, asks for the same.",
		fmt.Sprintf("OSHA 29 CFR 1910.94(c)(6)(i), Table G-10, at a crossdraft of %s; over %s no crossdraft is permitted.", e.velocity(b.Crossdraft), e.velocity(100)),
	}
	return t
}

// Fire holds vapor against a quarter of the explosive limit.
func (e *Exposure) Fire() cells.Table {
	s := &e.Screen
	b := &s.Booth
	t := cells.Table{Title: "Vapor below a quarter of the lower explosive limit", Columns: right("", "screened", "limit", "below")}
	below := "yes"
	if b.Explosive() {
		below = "no"
	}
	ppm := "–"
	if !math.IsInf(b.Exhaust(), 0) {
		ppm = rounded(b.Exhaust()) + nb + "ppm"
	}
	flush := fmt.Sprintf("%s of air", rounded(s.FlushAir())+nb+"m³")
	if e.Units == measures.US {
		flush = fmt.Sprintf("%s of air", rounded(s.FlushAir()/math.Pow(0.3048, 3))+nb+"ft³")
	}
	t.Rows = []cells.Row{
		cells.Texts("styrene in the exhaust of a booth at the peak¹", ppm, rounded(exposure.QuarterLEL(b.LEL))+nb+"ppm", below),
		cells.Texts("to dilute the solvent of one flush of a pumped gun²", flush, "–", "–"),
	}
	t.Notes = []string{
		fmt.Sprintf("NFPA 33, section 7.2: 25 %% of the lower explosive limit, here %s %% by volume; %s of styrene at the mean, %s times that at the peak.", significant(b.LEL, 2), e.rate(b.KgPerHour), significant(b.Peak, 2)),
		"OSHA 29 CFR 1910.94(c)(6)(ii), form from memory: if all of it evaporates.",
	}
	return t
}

// Styrene holds the air that would dilute the shop's styrene against published
// limits.
func (e *Exposure) Styrene() cells.Table {
	s := &e.Screen.Shop
	t := cells.Table{Title: "Fresh air that would dilute the laminating shop's styrene", Columns: right("limit", "eight hours", "short term", "since¹", "air needed²", "kept")}
	have, known := s.PPM()
	for _, l := range exposure.Limits() {
		kept := "air not known"
		if known {
			kept = map[bool]string{true: "yes", false: "no"}[have <= l.PPM]
		}
		t.Rows = append(t.Rows, cells.Texts(l.Name, fixed(l.PPM, 0)+nb+"ppm", fixed(l.Short, 0)+nb+"ppm", l.Dated, e.air(s.Needed(l.PPM)), kept))
		r := &t.Rows[len(t.Rows)-1]
		r.Cells[0].Notes = []int{len(t.Notes) + 2}
		t.Notes = append(t.Notes, l.Source+".")
	}
	first := fmt.Sprintf("%s of styrene, the mean while people laminate; peaks and people near the mold have more. Mixing factor %s.", e.rate(s.KgPerHour), significant(s.Mixing, 2))
	if known {
		first += fmt.Sprintf(" With %s of fresh air the mean would be %s ppm.", e.air(s.Air), rounded(have))
	}
	t.Notes = append([]string{"Years of the first three limits are from memory; ask for the limits in force.", first}, t.Notes...)
	return t
}

// Page is the screening as a page.
func (e *Exposure) Page() (page.Page, error) {
	orders := "with orders always waiting"
	if e.Orders {
		orders = "with its orders"
	}
	s := e.Study
	out := page.Page{Title: s.Scenario + ": air of booths and shop", Lead: e.Headline(), Foot: []string{ExposureCaution, Caution}}
	answer := page.Section{Heading: "The answer", Blocks: []page.Block{page.Remark(ExposureCaution)}}
	if s.Note != "" {
		answer.Blocks = append(answer.Blocks, page.Text(s.Note))
	}
	out.Sections = []page.Section{answer, {Heading: "The screening", Blocks: tables(e.Tables())},
		{Heading: "How it was computed", Blocks: []page.Block{page.List([]string{
			fmt.Sprintf("%s of %s %s, with %s before them that is not counted.", count(s.Replications, "repeat"), count(s.Years, "year"), orders, count(s.Warm, "year")),
			"What the plant sprays and lays up is counted month by month as in its permit ledger; emission factors turn it into styrene an hour, while someone sprays for the booth and while someone laminates for the shop.",
			"Air needed: V·dC = G·dt − Q·C·dt/K in its steady state, with a mixing factor K.",
		})}},
		{Heading: "Assumptions", Blocks: s.assumptions()}}
	return out, nil
}

// Headline is the answer in a sentence or two.
func (e *Exposure) Headline() string {
	b := &e.Screen.Booth
	fpm, asked, ok := b.Velocity()
	text := fmt.Sprintf("“%s”: the booth draws %s at its face, ", e.Study.Base().Name, e.velocity(fpm))
	if ok && fpm >= asked.Low && fpm >= exposure.LeastFace {
		text += "enough"
	} else {
		text += "not enough"
	}
	text += ", and its exhaust stays "
	if b.Explosive() {
		text += "above"
	} else {
		text += "below"
	}
	return text + fmt.Sprintf(" a quarter of the lower explosive limit, as screened. The shop gives off %s of styrene while people laminate.", e.rate(e.Screen.Shop.KgPerHour))
}
