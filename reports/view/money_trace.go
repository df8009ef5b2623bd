package view

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/sim/money"
	"moldturn/sim/param/guess"
	"moldturn/sim/study"
)

// made says what a quantity is made of: "1,234.5 parts pulled × 18.2 kg".
func (m Money) made(l *spent) string {
	if l.Each == 0 {
		return l.Of
	}
	u, factor := m.measure(l.Unit)
	each := float64(l.Each) / l.Per
	many := grouped(fmt.Sprintf("%.1f", l.size/each)) + " " + l.Of
	if each == 1 {
		return many
	}
	return fmt.Sprintf("%s × %s%s%s", many, significant(each*factor, 4), nb, u)
}

// sources are the inputs at paths, with their values and marks; a path may be of
// a group of inputs. A wage of one craft stands for the wage of all.
func (s *Study) sources(paths []string) []string {
	var out []string
	named := false
	for _, p := range paths {
		if p == "money.wage" && named {
			continue
		}
		for _, in := range s.Inputs {
			if in.Value != "" && (in.Path == p || strings.HasPrefix(in.Path, p+".")) {
				named = named || strings.HasPrefix(in.Path, "money.wages.")
				out = append(out, fmt.Sprintf("%s = %s [%s]", in.Path, in.Value, in.Mark))
			}
		}
	}
	return out
}

// Lines is every line of the ledger of one alternative, means a year: quantity
// times price, what was counted, and the inputs behind both with their marks.
func (s *Study) Lines(r *study.Runs) cells.Table {
	m := s.Money
	t := cells.Table{Title: "Every line of the ledger, mean a year, “" + r.Name + "”", Columns: []cells.Column{{Head: "line"}, {Head: "class"}, {Head: "quantity", Align: cells.Right},
		{Head: "unit"}, {Head: "price", Align: cells.Right}, {Head: "amount", Align: cells.Right}, {Head: "counted"}, {Head: "from inputs"}}}
	for _, l := range spending(r) {
		u, factor := m.measure(l.Unit)
		t.Rows = append(t.Rows, cells.Texts(l.Label, l.word(), quantity(l.size*factor), u, m.price(l.Price/factor), m.cents(l.amount),
			m.made(&l), strings.Join(s.sources(l.Inputs), "; ")))
	}
	return t
}

// Traced is one line of the ledger in full sentences.
type Traced struct {
	Name, Label, Class, Group string
	Sum                       string   // "1,234.5 h × $31.20 = $38,516.40 a year"
	Counted                   string   // what the quantity is made of
	Inputs                    []string // "money.wages.gel = $24 [U]"
	Amount                    float64  // a year

	kind money.Kind
}

// Totals adds up lines by kind, and costs against income where both are there:
// for all lines it has the sums of the ledger.
func (m Money) Totals(lines []Traced) cells.Table {
	t := cells.Table{Title: "In all, a year", Columns: []cells.Column{{Head: ""}, {Head: "lines", Align: cells.Right}, {Head: "amount", Align: cells.Right}}}
	var sum [money.Kinds]float64
	var n [money.Kinds]int
	for _, x := range lines {
		sum[x.kind] += x.Amount
		n[x.kind]++
	}
	row := func(label string, n int, amount float64) {
		if n > 0 {
			t.Rows = append(t.Rows, cells.Texts(label, fmt.Sprint(n), m.cents(amount)))
		}
	}
	row("margin of boats shipped", n[money.Income], sum[money.Income])
	row("costs", n[money.Cost], sum[money.Cost])
	if n[money.Income] > 0 && n[money.Cost] > 0 {
		row("contribution: margin less costs", n[money.Income]+n[money.Cost], sum[money.Income]-sum[money.Cost])
		t.Rows[len(t.Rows)-1].Strong = true
	}
	row("wear of molds, not in the costs", n[money.Wear], sum[money.Wear])
	row("molds bought for worn ones, as cash, not in the costs", n[money.Purchase], sum[money.Purchase])
	noteHead(&t, 2, "Added up in full before rounding; quantities and prices of the lines are rounded for print, to five digits or more.")
	return t
}

// printedDigits is how many digits quantities and prices of lines have at least,
// so that their product is the amount to 0.02 %.
const printedDigits = 5

// quantity prints what was counted: "2,255.9", "0.23776", "85".
func quantity(v float64) string {
	s := grouped(plainDigits(math.Abs(v), 1))
	if v < 0 {
		s = "−" + s
	}
	return s
}

// price prints a price so that amounts multiply out: "$28.60", "$0.0019822".
func (m Money) price(v float64) string { return m.sign(grouped(plainDigits(math.Abs(v), 2)), v < 0) }

// plainDigits writes v in full digits, five of them significant or more, and at
// least so many decimals; zeros beyond those are left out.
func plainDigits(v float64, least int) string {
	places := least
	if v > 0 {
		places = max(least, printedDigits-1-int(math.Floor(math.Log10(v))))
	}
	s := strconv.FormatFloat(v, 'f', places, 64)
	for places > least && strings.HasSuffix(s, "0") {
		s, places = s[:len(s)-1], places-1
	}
	return s
}

// Trace is the lines of the base's ledger whose name begins with name, however
// it is written; all for an empty one.
func (s *Study) Trace(name string) []Traced {
	var out []Traced
	m := s.Money
	for _, l := range spending(&s.Base().Runs) {
		if !strings.HasPrefix(guess.Fold(l.Name), guess.Fold(name)) {
			continue
		}
		u, factor := m.measure(l.Unit)
		x := Traced{Name: l.Name, Label: l.Label, Class: l.word(), Counted: m.made(&l), Inputs: s.sources(l.Inputs), Amount: l.amount, kind: l.Kind,
			Sum: fmt.Sprintf("%s %s × %s = %s a year", quantity(l.size*factor), u, m.price(l.Price/factor), m.cents(l.amount))}
		if h := headingOf(&l.Line); h >= 0 {
			x.Group = headings()[h].label
		}
		out = append(out, x)
	}
	return out
}
