package view

import (
	"regexp"
	"strings"
	"testing"

	"moldturn/reports/page"
	"moldturn/sim/money"
	"moldturn/sim/study"
)

// first keeps so many replications.
func first(r study.Runs, n int) study.Runs {
	r.Outcomes = r.Outcomes[:n]
	return r
}

// An interval over nothing and a chance beside it are reconciled where neither
// shows whether it pays, and only explained where the answer is clear.
func TestIntervalAndChanceAreReconciled(t *testing.T) {
	base := runs("today", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l, 50, 0, 0) })
	for _, c := range []struct {
		gain float64
		want bool
	}{{265, true}, {2000, false}, {-900, false}} {
		with := runs("more", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l+c.gain+20*l, 55, 0, 0) })
		v := investOf(base, with, true, true)
		found := strings.Join(v.Findings(), "\n")
		says(t, found, "two questions to the same repeats")
		for _, words := range []string{"With the orders as they come, the mean may lie anywhere from −$", "If every boat sells, the mean may lie anywhere from −$", "repeats end above zero: neither shows whether it pays."} {
			if strings.Contains(found, words) != c.want {
				t.Errorf("a gain of %v: %q is %t in %s", c.gain, words, !c.want, found)
			}
		}
	}
}

var (
	program  = regexp.MustCompile(`(?s)<script.*?</script>`)
	noNumber = regexp.MustCompile(`.{0,40}\b(NaN|Inf)\b`)
)

// One repeat, or two, give no empty cell and no number that is none, and no
// verdict that one repeat cannot give.
func TestFewRepeats(t *testing.T) {
	base := runs("today", func(l float64) *money.Ledger { return ledger(0, 0, 1000+l, 5000+l, 50, 20, 10) })
	with := runs("more", func(l float64) *money.Ledger { return ledger(10, 100*l, 1000+l, 9000+500*l, 55, int64(20+l), 20) })
	for n := 1; n <= 2; n++ {
		a, b := first(base, n), first(with, n)
		q, v := qualityOf(a, b), investOf(a, b, true, true)
		for _, make := range []func() (page.Page, error){q.Page, v.Page} {
			p, err := make()
			if err != nil {
				t.Fatal(err)
			}
			var out strings.Builder
			if err := page.Write(&out, p); err != nil {
				t.Fatal(err)
			}
			if wrong := noNumber.FindString(program.ReplaceAllString(out.String(), "")); wrong != "" {
				t.Errorf("%d repeats: %q in %s", n, wrong, p.Title)
			}
		}
		for _, table := range append(q.Tables(q.Full), q.PairTable(), v.Cash(), v.BreakEven(), v.Wear()) {
			for _, r := range table.Rows {
				for _, c := range r.Cells {
					if strings.TrimSpace(c.Text) == "" || strings.Contains(c.Text, "NaN") || strings.Contains(c.Text, "Inf") {
						t.Errorf("%d repeats, %s: a cell of %q is %q", n, table.Title, r.Cells[0].Text, c.Text)
					}
				}
			}
		}
		text := v.Headline() + strings.Join(v.Findings(), "\n")
		if strings.Contains(text, "brings no gain") {
			t.Errorf("%d repeats: a gain of thousands is called none: %s", n, text)
		}
		once := q.Headline() + strings.Join(q.Findings(), "\n")
		if got := strings.Contains(once, "One repeat does not show"); got != (n == 1) {
			t.Errorf("%d repeats: %s", n, once)
		}
		if n == 1 && (strings.Contains(once, "flat") || strings.Contains(once, "not bind")) {
			t.Errorf("one repeat is judged: %s", once)
		}
	}
}
