package view

import (
	"fmt"
	"math"
	"strings"

	measures "moldturn/sim/param/unit"
	"moldturn/sim/permit"
	"moldturn/sim/study"
)

// PermitCaution stands first in every permit ledger.
const PermitCaution = "A planning estimate. It shows no compliance: that is shown by the plant's own records and its permit, judged by licensed people."

// Permit is a permit ledger to be shown. Study carries names, inputs and how it
// was computed; its alternatives have no outcomes.
type Permit struct {
	Study  *Study
	Orders bool            // the ledger is of the dated order book; otherwise of orders always waiting
	Units  measures.System // of masses
	Ledger *study.Permits  // what is shown
	Full   *study.Permits  // the same with orders always waiting, for what the plant could emit; nil without
}

// mass is a unit of mass for air permits.
type mass struct {
	kg   float64
	name string
}

// ton is the unit of tons of the system: short tons, or megagrams.
func (p *Permit) ton() mass {
	if p.Units == measures.US {
		return mass{permit.KgPerTon, measures.Short}
	}
	return mass{1000, "Mg"}
}

// small is the unit of what is used.
func (p *Permit) small() mass {
	if p.Units == measures.US {
		return mass{0.45359237, "lb"}
	}
	return mass{1, "kg"}
}

// Mass is the unit in which what is used is written, and how many kg it is.
func (p *Permit) Mass() (name string, kg float64) {
	m := p.small()
	return m.name, m.kg
}

// of prints kg with three digits.
func (m mass) of(kg float64) string { return significant(kg/m.kg, 3) }

// with is of with the unit.
func (m mass) with(kg float64) string { return m.of(kg) + nb + strings.ReplaceAll(m.name, " ", nb) }

// significant prints v with at least so many digits, without decimals it does
// not need.
func significant(v float64, digits int) string {
	if v == 0 {
		return "0"
	}
	places := func(v float64) int { return digits - 1 - int(math.Floor(math.Log10(math.Abs(v)))) }
	unit := math.Pow10(-places(v))
	return fixed(v, max(0, places(math.Round(v/unit)*unit))) // 0.9996 is 1.00, not 1.000
}

// monthName names month n of the counted time: "January of year 2". Years of
// the calendar mean nothing in a plan of the future.
func (p *Permit) monthName(n int) string {
	return fmt.Sprintf("%s of year %d", p.Ledger.Ledgers[0].Months[n].Month.Month, n/permit.Year+1)
}

// monthShort is monthName for tables: "Jan y2".
func (p *Permit) monthShort(n int) string {
	return fmt.Sprintf("%s%sy%d", p.Ledger.Ledgers[0].Months[n].Month.Month.String()[:3], nb, n/permit.Year+1)
}

// what names what the ledger is of.
func (p *Permit) what() string {
	if p.Orders {
		return "with its orders"
	}
	return "with orders always waiting"
}

// repeats is "3 of 10 repeats".
func (p *Permit) repeats(n int) string {
	return fmt.Sprintf("%d of %s", n, count(len(p.Ledger.Ledgers), "repeat"))
}

// top is the month-end with the highest mean of the twelve months, -1 for none.
func (p *Permit) top(months []study.PermitMonth) int {
	best := -1
	for i := range months {
		if months[i].Known && (best < 0 || months[i].Rolling > months[best].Rolling) {
			best = i
		}
	}
	return best
}

// Headline is the answer in a few sentences.
func (p *Permit) Headline() string {
	t := p.ton()
	year := p.Ledger.PerYear()
	text := fmt.Sprintf("%s %s puts an estimated %s of organic HAP into the air in a year", quoted(p.Study.Base().Name), p.what(), t.with(year.Mean))
	if per := p.Ledger.PerBoat(); per.N > 0 {
		text += fmt.Sprintf(", %s a boat", p.small().with(per.Mean))
	}
	text += ". "
	months := p.Ledger.Months()
	top := p.top(months)
	if top < 0 {
		return text + "No twelve months are known: simulate a year or more, or give last year's use."
	}
	return text + p.averagingSentence(months) + p.capSentence() + p.leverSentence()
}

func (p *Permit) averagingSentence(months []study.PermitMonth) string {
	worst, fails := 0.0, 0
	for _, m := range months {
		worst, fails = max(worst, m.Worst), max(fails, m.Fails)
	}
	switch {
	case worst == 0:
		return "Nothing takes part in the averaging of 40 CFR 63 Subpart VVVV."
	case fails == 0:
		return fmt.Sprintf("Averaged emissions of 40 CFR 63 Subpart VVVV are at most %s of the limit at every month-end.", perHundred(worst))
	}
	return fmt.Sprintf("At its worst month-end %s would not keep to 40 CFR 63 Subpart VVVV; averaged emissions reach %s of the limit.", p.repeats(fails), perHundred(worst))
}

// capSentence says when a cap is passed, and how many boats are left; or that no
// cap is given.
func (p *Permit) capSentence() string {
	limit := p.Ledger.Setup.Cap
	if limit <= 0 {
		return " No cap is given (permit.cap), so nothing is held against one."
	}
	t := p.ton()
	by, never := p.Ledger.Crossings(limit)
	left := p.Ledger.Left(limit)
	if never == len(p.Ledger.Ledgers) {
		text := fmt.Sprintf(" The cap of %s is kept", t.with(limit))
		if left.N > 0 {
			text += fmt.Sprintf("; the fullest twelve months have room for %s boats more at this mix", significant(left.Mean, 2))
		}
		return text + "."
	}
	first, half := crossed(by, 1), crossed(by, (len(p.Ledger.Ledgers)+1)/2)
	text := fmt.Sprintf(" The cap of %s is passed in %s, first at the end of %s", t.with(limit), p.repeats(len(p.Ledger.Ledgers)-never), p.monthName(first))
	if half > first {
		text += fmt.Sprintf(" and in half of them by the end of %s", p.monthName(half))
	}
	if left.N > 0 && left.Mean < 0 {
		text += fmt.Sprintf("; the fullest twelve months hold %s boats too many at this mix", significant(-left.Mean, 2))
	}
	return text + "."
}

// crossed is the number of the month by which so many repeats have passed a cap,
// -1 when fewer ever do.
func crossed(byMonth []int, many int) int {
	sum := 0
	for n, more := range byMonth {
		if sum += more; sum >= many {
			return n
		}
	}
	return -1
}

// leverSentence names the change that gives most room under the cap; empty
// without a cap.
func (p *Permit) leverSentence() string {
	if p.Ledger.Setup.Cap <= 0 {
		return ""
	}
	best := study.PermitLever{}
	for _, x := range p.Ledger.Levers() {
		if x.Room.N > 0 && x.Room.Mean > best.Room.Mean {
			best = x
		}
	}
	if best.Room.N == 0 {
		return ""
	}
	text := fmt.Sprintf(" Most room comes from %s: %s boats more a year", best.Name, significant(best.Room.Mean, 2))
	if !best.Complying {
		text += ", but with it the averaging is not kept"
	}
	return text + "."
}

func perHundred(share float64) string { return fixed(100*share, 0) + nb + "%" }
