package workbook

import "moldturn/reports/cells"

// costs is every line of the ledgers; without prices, a sentence.
func (b *book) costs() *table {
	s := b.study
	currency := cells.OneLine(s.Money.Currency)
	t := &table{sheet: "Costs", lead: "Every line of the ledger, mean a year, with orders always waiting; wear of molds and molds bought are two views of the same and are never added",
		block: block{columns: []column{{head: "alternative"}, {head: "group"}, {head: "line"}, {head: "class"}, {head: "quantity a year"}, {head: "unit"},
			{head: "price of one, " + currency}, {head: "a year, " + currency}, {head: "price from"}, {head: "made of", wide: 60}, {head: "name in the ledger", wide: 40}}}}
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		for _, l := range s.Money.Ledger(&a.Runs) {
			t.rows = append(t.rows, []any{a.Name, l.Group, l.Label, l.Class, number{l.Quantity, decimals(1)}, aside(l.Unit),
				number{l.Price, decimals(2)}, number{l.Amount, decimals(0)}, aside(l.PriceFrom), l.Of, l.Name})
		}
	}
	if len(t.rows) == 0 {
		return &table{sheet: "Costs", lead: "The scenario has no group “money”, so nothing is priced"}
	}
	return t
}
