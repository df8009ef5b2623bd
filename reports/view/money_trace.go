package view

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
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
		t.Rows = append(t.Rows, cells.Texts(l.Label, l.word(), grouped(fmt.Sprintf("%.1f", l.size*factor)), u, m.cents(l.Price/factor), m.cents(l.amount),
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
		x := Traced{Name: l.Name, Label: l.Label, Class: l.word(), Counted: m.made(&l), Inputs: s.sources(l.Inputs), Amount: l.amount,
			Sum: fmt.Sprintf("%s %s × %s = %s a year", grouped(fmt.Sprintf("%.1f", l.size*factor)), u, m.cents(l.Price/factor), m.cents(l.amount))}
		if h := headingOf(&l.Line); h >= 0 {
			x.Group = headings()[h].label
		}
		out = append(out, x)
	}
	return out
}
