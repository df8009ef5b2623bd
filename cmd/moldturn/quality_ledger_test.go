package main

import (
	"encoding/json"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// The lines of ledger.csv, added up by hand, divided by the years that were
// counted and averaged over repeats, are the amounts of quality.json: every class
// of every policy under both kinds of demand, over a leap year and without one.
func TestLedgerAddsUpToTheTable(t *testing.T) {
	for _, years := range []string{"1", "2"} {
		dir := t.TempDir()
		code, stdout, stderr := try(t.Context(), commands(), "quality", "small-shop", "--intervals", "3,10", "--years", years, "--replications", "2", "--quiet", "--out", dir)
		if code != exitDone {
			t.Fatalf("code %d, %s", code, stderr)
		}
		sums, counted := addedUp(t, dir+"/ledger.csv", 2)
		n, _ := strconv.ParseFloat(years, 64)
		if days := math.Round(counted * 365.25); math.Abs(days-365*n) > 1 { // at most one leap day
			t.Errorf("%v days were counted in %s years", days, years)
		}
		if words := strings.Join(strings.Fields(stdout), " "); !strings.Contains(words, "divided by "+strconv.FormatFloat(counted, 'f', 5, 64)) {
			t.Errorf("the divisor %v is not told", counted)
		}
		checked := 0
		for _, b := range qualityBooks(t, dir+"/quality.json") {
			for _, p := range b.Policies {
				for class, x := range p.Classes {
					checked++
					if got := sums[[3]string{p.Name, b.Orders, class}]; math.Abs(got-x.Mean) > 1e-6*math.Max(1, math.Abs(x.Mean)) {
						t.Errorf("%s years, %s, %s, %s: ledger.csv %v, quality.json %v", years, p.Name, b.Orders, class, got, x.Mean)
					}
				}
			}
		}
		if checked != 24 { // two kinds of demand, three policies, four classes
			t.Errorf("%d amounts were checked", checked)
		}
	}
}

// addedUp adds up the costs of a ledger file by alternative, orders and class, a
// year and over repeats, and gives the years that one repeat counted.
func addedUp(t *testing.T, path string, repeats int) (sums map[[3]string]float64, years float64) {
	rows := tableOf(t, path)
	at := map[string]int{}
	for i, head := range rows[0] {
		at[head] = i
	}
	sums = map[[3]string]float64{}
	for _, r := range rows[1:] {
		amount, _ := strconv.ParseFloat(r[at["amount"]], 64)
		years, _ = strconv.ParseFloat(r[at["years"]], 64)
		if r[at["kind"]] == "cost" {
			sums[[3]string{r[at["alternative"]], r[at["orders"]], r[at["class"]]}] += amount / years / float64(repeats)
		}
	}
	return sums, years
}

type writtenBook struct {
	Orders   string `json:"orders"`
	Policies []struct {
		Name    string `json:"name"`
		Classes map[string]struct {
			Mean float64 `json:"mean"`
		} `json:"classes_per_year"`
	} `json:"policies"`
}

func qualityBooks(t *testing.T, path string) []writtenBook {
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var doc struct {
		Books []writtenBook `json:"books"`
	}
	if err := json.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	return doc.Books
}
