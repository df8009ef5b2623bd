package reports

import (
	"io"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/csv"
	"moldturn/reports/page"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/money"
)

// QualityText writes a comparison by the cost of quality for a terminal.
func QualityText(w io.Writer, v *view.Quality, style table.Style) error {
	return told(w, v.Headline(), append([]cells.Table{v.PairTable()}, v.Tables(v.Main())...), append(v.Findings(), v.YearsCounted(), v.Known()), style)
}

// InvestText writes a look at an investment for a terminal.
func InvestText(w io.Writer, v *view.Invest, style table.Style) error {
	return told(w, v.Headline(), []cells.Table{v.Cash(), v.BreakEven(), v.Wear()}, append(v.Findings(), v.YearsCounted(), v.Known()), style)
}

// told writes a headline, tables and sentences.
func told(w io.Writer, headline string, tables []cells.Table, lines []string, style table.Style) error {
	if _, err := io.WriteString(w, table.Wrap(headline, style)+"\n"); err != nil {
		return err
	}
	for _, t := range tables {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	var b strings.Builder
	for _, line := range lines {
		b.WriteString(table.Wrap(line, style))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// QualityHTML writes the report of a comparison by the cost of quality.
func QualityHTML(w io.Writer, v *view.Quality) error { return written(w, v.Page) }

// InvestHTML writes the report of an investment.
func InvestHTML(w io.Writer, v *view.Invest) error { return written(w, v.Page) }

func written(w io.Writer, make func() (page.Page, error)) error {
	p, err := make()
	if err != nil {
		return err
	}
	return page.Write(w, p)
}

// LedgerCSV writes every line of every ledger, one a row, in full: the trace of
// each amount to what happened. Amounts are in the currency of the scenario,
// quantities and prices in its family of units. They are of the whole counted
// time; divided by years, which is that time in years of 365.25 days, and averaged
// over replications, they are the amounts a year of tables and JSON.
func LedgerCSV(w io.Writer, s *view.Study) error {
	out, err := csv.New(w, "alternative", "orders", "replication", "line", "label", "kind", "class", "quantity", "unit", "price", "amount", "counted", "each", "from", "years")
	if err != nil {
		return err
	}
	for i := range s.Alternatives {
		a := &s.Alternatives[i]
		for r := range a.Outcomes {
			for _, g := range []struct {
				orders string
				ledger *money.Ledger
			}{{"always waiting", a.Outcomes[r].CapacityLedger}, {"as they come", a.Outcomes[r].DatedLedger}} {
				if g.ledger == nil {
					continue
				}
				if err := ledgerRows(out, s.Money, a.Name, g.orders, r+1, g.ledger); err != nil {
					return err
				}
			}
		}
	}
	return out.Flush()
}

// eachOf is the quantity of one of what was counted; empty where the quantity
// itself was.
func eachOf(l *money.Line, factor float64) csv.Cell {
	if l.Each == 0 {
		return csv.Empty()
	}
	return csv.Number(float64(l.Each) / l.Per * factor)
}

func ledgerRows(out *csv.Writer, m view.Money, alternative, orders string, replication int, g *money.Ledger) error {
	for i := range g.Lines {
		l := &g.Lines[i]
		unit, factor := m.Measure(l.Unit)
		err := out.Row(csv.Text(alternative), csv.Text(orders), csv.Int(int64(replication)), csv.Text(l.Name), csv.Text(l.Label), csv.Text(l.Kind.String()), csv.Text(l.Class.String()),
			csv.Number(l.Size()*factor), csv.Text(unit), csv.Number(l.Price/factor), csv.Number(l.Amount.Amount()), csv.Text(l.Of), eachOf(l, factor), csv.Text(strings.Join(l.Inputs, ", ")), csv.Number(g.Years))
		if err != nil {
			return err
		}
	}
	return nil
}
