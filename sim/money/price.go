package money

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"moldturn/sim/record"
)

// Units of quantities in units of prices.
const (
	msPerHour    = 3_600_000.0
	msPerDay     = 24 * msPerHour
	msPerYear    = 365.25 * msPerDay
	gramsPerKilo = 1000.0
)

const laborLines = "labor."

// pricing turns quantities into lines.
type pricing struct {
	*Setup
	q *Quantities
	g Ledger
}

// Price makes the ledger of a run's quantities.
func (s *Setup) Price(q *Quantities) *Ledger {
	p := pricing{Setup: s, q: q}
	p.g = Ledger{Currency: s.Prices.Currency, Years: s.Plant.Years(), Open: s.Plant.Open, Shipped: q.Shipped[:len(s.Plant.Models)], Margins: true}
	for _, m := range s.Plant.Models {
		p.g.Margins = p.g.Margins && m.Known
	}
	for _, n := range q.Escaped {
		p.g.Escaped += n
	}
	for _, t := range q.MoldTime {
		p.g.MoldUse = append(p.g.MoldUse, float64(t)/msPerDay)
		p.g.MoldDays += float64(t) / msPerDay
	}
	p.g.Claimed = s.Claimed(q)
	p.labor()
	for i := range s.Plant.Parts {
		p.part(i)
	}
	for k := range s.Plant.Small {
		p.small(k)
	}
	p.shop()
	p.boats()
	return &p.g
}

// modelOf gives the model of a place in a list by model, -1 for none.
func (p *pricing) modelOf(place int) int {
	if place >= len(p.Plant.Models) {
		return -1
	}
	return place
}

// of is " of Rush 23", nothing for what belongs to no model.
func (p *pricing) of(model int) string {
	if model < 0 {
		return ""
	}
	return " of " + p.Plant.Models[model].Name
}

// name joins words into the name of a line.
func name(words ...string) string {
	for i, w := range words {
		words[i] = strings.ReplaceAll(w, " ", "_")
	}
	return strings.Join(words, ".")
}

// path is the path of an input; names that are not of letters, digits, "_" and
// "-" are quoted, as in scenario files.
func path(words ...string) string {
	for i, w := range words {
		if strings.IndexFunc(w, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '_' && r != '-' }) >= 0 {
			words[i] = strconv.Quote(w)
		}
	}
	return strings.Join(words, ".")
}

// labor prices people: what they did at the regular rate, what overtime costs
// on top, and what is paid without work.
func (p *pricing) labor() {
	for c, craft := range p.Plant.Crafts {
		rate := p.rate(c)
		wage := []string{path("money", "wages", craft), "money.wage", "money.loading"}
		line := Line{Unit: "h", Per: msPerHour, Price: rate, Model: -1, Inputs: wage}
		var counted int64
		for d := range record.Doings {
			for class := range Classes {
				for m, time := range p.q.Labor[c][d][class] {
					counted += time
					l := line
					l.Model, l.Class, l.Quantity = p.modelOf(m), class, time
					l.Name = name("labor", craft, d.String(), class.String())
					if l.Model >= 0 {
						l.Name = name(l.Name, p.Plant.Models[m].Name)
					}
					l.Label = fmt.Sprintf("%s, %s%s", craft, d, p.of(l.Model))
					l.Of = "person-hours in steps of " + d.String() + p.of(l.Model)
					p.g.add(l)
				}
			}
		}
		more := func(word, label, of string, quantity int64, price float64, input ...string) {
			l := line
			l.Name, l.Label, l.Of = name("paid", craft, word), craft+", "+label, of
			l.Quantity, l.Price = quantity, price
			l.Inputs = append(input, wage...)
			p.g.add(l)
		}
		more("lent", "lent to other crafts, less borrowed", "hours worked by the craft less hours in steps of its own", p.q.Worked[c]+p.q.Over[c]-counted, rate)
		more("idle", "paid without work", "hours on shift less hours worked on shift", p.q.Paid[c]-p.q.Worked[c], rate)
		more("off_floor", "paid off the floor", "hours on shift times money.off_floor", int64(float64(p.q.Paid[c])*p.Prices.OffFloor+0.5), rate, "money.off_floor")
		more("overtime", "overtime premium", "hours worked beyond the shift", p.q.Over[c], rate*(p.Prices.Overtime-1), "money.overtime")
	}
}

// rate is what an hour of a craft costs.
func (p *pricing) rate(craft int) float64 {
	if craft >= len(p.Prices.Wages) {
		return 0
	}
	return p.Prices.Wages[craft] * p.Prices.Loading
}
