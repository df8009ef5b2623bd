package view

import (
	"moldturn/sim/money"
	"moldturn/sim/study"
)

// LedgerLine is a line of the ledger as numbers: means a year over replications,
// quantities and prices in the chosen family of units.
type LedgerLine struct {
	Name  string // unique in a ledger: "labor.gel.spraying"
	Label string
	Group string // the row of Spending that it is part of
	Class string // of quality costs; of what is no cost, its kind
	Unit  string // of the quantity

	Quantity, Price, Amount float64

	Of        string // what the quantity is made of, in words
	PriceFrom string // path of the input behind the price, may be empty
}

// Ledger is every line of an alternative's ledger; none without prices.
func (m Money) Ledger(r *study.Runs) []LedgerLine {
	var out []LedgerLine
	for _, l := range spending(r) {
		unit, factor := m.measure(l.Unit)
		line := LedgerLine{Name: l.Name, Label: l.Label, Class: l.Class.String(), Unit: unit,
			Quantity: l.size * factor, Price: l.Price / factor, Amount: l.amount, Of: l.Of}
		if l.Kind != money.Cost {
			line.Class = l.Kind.String()
		}
		if h := headingOf(&l.Line); h >= 0 {
			line.Group = headings()[h].label
		}
		if len(l.Inputs) > 0 {
			line.PriceFrom = l.Inputs[0]
		}
		out = append(out, line)
	}
	return out
}

// MarkName says in words what stands behind the value of an Input.
func MarkName(mark string) string { return markName(mark) }
