package view

import (
	"strings"
	"testing"

	"moldturn/reports/cells"
	"moldturn/sim/exposure"
	"moldturn/sim/money"
	measures "moldturn/sim/param/unit"
	"moldturn/sim/permit"
)

// unmarked is the first note of a table whose mark stands nowhere in it, -1 for
// none. A mark is at the title, at a head, in a text or in the notes of a cell.
func unmarked(t cells.Table) int {
	for n := range t.Notes {
		texts := []string{t.Title}
		for _, c := range t.Columns {
			texts = append(texts, c.Head)
		}
		found := false
		for _, r := range t.Rows {
			for _, c := range r.Cells {
				texts = append(texts, c.Text)
				for _, k := range c.Notes {
					found = found || k == n
				}
			}
		}
		for _, s := range texts {
			found = found || strings.Contains(s, raised(n))
		}
		if !found {
			return n
		}
	}
	return -1
}

func TestMarksOfNotes(t *testing.T) {
	table := cells.Table{Title: "a", Columns: right("x", ""), Notes: []string{"one"}}
	if got := unmarked(table); got != 0 {
		t.Errorf("a note without a mark is not found: %d", got)
	}
	noteHead(&table, 1, "two") // a column without a head: at the title
	markHead(&table, 0, 0)
	if got := unmarked(table); got >= 0 || table.Title != "a²" || table.Columns[0].Head != "x¹" {
		t.Errorf("%d, %+v", got, table)
	}
	if raised(9) != "¹⁰" {
		t.Error(raised(9))
	}
}

// Every note of the tables about money, the permit and the air has its mark.
func TestEveryNoteHasItsMark(t *testing.T) {
	p := samplePermit(200, permit.Material{Name: "spirits", Operation: permit.Solvent, HAP: 50}, permit.Material{Name: "spare resin", Operation: permit.ProductionResin, HAP: 35})
	p.Ledger.Setup.Materials[0].Filler = 10
	q := qualityOf(runs("every 3", func(l float64) *money.Ledger { return ledger(300+l, 20, 1000, 5000, 50, 8, 40) }),
		runs("every 10", func(l float64) *money.Ledger { return ledger(100+3*l, 90, 1000, 5000, 50, 80, 10) }))
	base := runs("today", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l, 50, 0, 0) })
	v := investOf(base, base, true, true)
	e := &Exposure{Units: measures.US, Screen: exposure.Screen{Booth: exposure.Booth{Face: 22.3, KgPerHour: 2, Peak: 2, LEL: exposure.LEL, Crossdraft: 50}, Shop: exposure.Shop{KgPerHour: 1, Mixing: 5, Air: 1000}, SolventGravity: 0.79, SolventMole: 58, SolventLEL: 2.5, Flush: 7}}
	tables := append(p.Tables(), q.Tables(q.Full)...)
	tables = append(tables, q.PairTable(), v.Cash(), v.BreakEven(), v.Wear(), v.Money.Totals(v.Trace("")))
	noted := 0
	for _, table := range append(tables, e.Tables()...) {
		noted += len(table.Notes)
		if n := unmarked(table); n >= 0 {
			t.Errorf("%s: note %d has no mark: %s", table.Title, n+1, table.Notes[n])
		}
	}
	if noted < 10 {
		t.Errorf("only %d notes were looked at", noted)
	}
}
