package floor

import (
	"fmt"
	"strings"

	"moldturn/sim"
)

// priorities are words for how urgent an order is, with their number.
var priorities = []struct {
	value int8
	words []string
}{
	{0, []string{"low", "stock", "c"}},
	{20, []string{"normal", "standard", "medium", "regular", "b", "no", "n"}},
	{60, []string{"high", "urgent", "a", "yes", "y", "hot"}},
	{80, []string{"rush", "top", "critical", "asap"}},
}

// readOrders reads the order book.
func (t *table) readOrders() {
	t.each(func(l *line) {
		id, _ := l.text("id")
		model, part, ok := l.model()
		if !ok {
			return
		}
		if part != "" {
			l.drop(t.column("model"), "part ordered", "an order is for a boat, and this names a part", listed(namesIn(t.r.names.plan.Models, modelName)), "")
			return
		}
		o := Order{Place: l.place(-1), ID: t.r.names.meant(id), Number: 1, Model: int16(model), Color: l.color("color"), Band: l.color("band"),
			Arrived: l.moment("arrived"), Due: l.moment("due"), Priority: l.priority()}
		o.Price = l.price()
		count, ok := l.quantity()
		if !ok || l.bad {
			return
		}
		if !sells(&t.r.names.plan.Models[model], o.Color) {
			l.doubt(t.column("color"), "color not sold", l.cells[t.column("color")], "the scenario does not build this model in it", listed(t.r.names.soldIn(model)), "")
			o.Color = sim.None
		}
		for i := range count {
			o.Number = i + 1
			t.r.orders = append(t.r.orders, entry[Order]{l, o, idKey(o.ID)})
		}
	})
	t.pricesTold()
}

// priceAmount is a price, with or without a sign of a currency.
func priceAmount() *amount {
	return &amount{units: []string{"k", "usd", "eur", "$", "€", "gbp", "£"}, low: 0, high: 1e8, scale: map[string]float64{"k": 1000}}
}

// price is what a boat is sold for, 0 where nothing is said. A price that
// carries another currency than the scenario, or than the first price, is in
// doubt.
func (l *line) price() float64 {
	x, ok := l.amount("price", priceAmount())
	if !ok {
		return 0
	}
	t := l.t
	t.prices++
	sign := currencyOf(l.cells[t.column("price")])
	switch {
	case sign == "":
	case t.r.currency == "":
		t.r.currency = sign
	case sign != t.r.currency:
		l.doubtful("price", "another currency", fmt.Sprintf("price %q is in %s, and other amounts are in %s", l.cells[t.column("price")], sign, t.r.currency),
			"amounts are not converted", "none: no answer uses the price")
	}
	return x
}

// signs are what an amount may carry for a currency.
var signs = []struct{ word, sign string }{{"$", "$"}, {"usd", "$"}, {"€", "€"}, {"eur", "€"}, {"£", "£"}, {"gbp", "£"}}

// currencyOf is the sign of the currency of an amount, "" for none.
func currencyOf(s string) string {
	for _, x := range signs {
		if strings.Contains(strings.ToLower(s), x.word) {
			return x.sign
		}
	}
	return ""
}

// pricesTold says once that prices are read and not used.
func (t *table) pricesTold() {
	if t.prices > 0 {
		c := t.column("price")
		t.r.say(Notice{Place: t.place(t.sheet.Header, t.head.where[c]+1), Level: Told, Rule: "price not used", Message: fmt.Sprintf("price is read in %s, and no answer uses it: margins are those of the scenario", plural(t.prices, "row"))})
	}
}

// sells tells whether a model is built in a color.
func sells(m *sim.Model, color int16) bool {
	for _, s := range m.Colors {
		if s.Color == color {
			return true
		}
	}
	return color == sim.None || len(m.Colors) == 0
}

func (n *names) soldIn(model int) []string {
	var out []string
	for _, s := range n.plan.Models[model].Colors {
		out = append(out, n.plan.Colors[s.Color].Name)
	}
	return out
}

// quantity is the boats of a row: 1 where nothing is said.
func (l *line) quantity() (int, bool) {
	s, c := l.text("quantity")
	if s == "" {
		return 1, true
	}
	a := &amount{units: []string{"boats", "boat", "ea", "pcs", "x", "units"}, whole: true, low: 1, high: 200}
	x, err := a.parse(s)
	if err != nil {
		l.drop(c, "not a number", fmt.Sprintf("quantity %q: %v", s, err), a.allowed(), "")
		return 0, false
	}
	return int(x), true
}

// priority reads a number or a word.
func (l *line) priority() int8 {
	s, c := l.text("priority")
	if s == "" {
		return 0
	}
	for _, p := range priorities {
		if word(s, [][]string{p.words}) >= 0 {
			return p.value
		}
	}
	a := &amount{whole: true, low: 0, high: 100}
	x, err := a.parse(s)
	if err != nil {
		l.wrong(c, "not a priority", err.Error(), "0 to 100, low, normal, high, rush", nearWord(s, []string{"low", "normal", "high", "rush"}))
		return 0
	}
	return int8(x)
}
