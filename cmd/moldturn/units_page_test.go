package main

import (
	"cmp"
	"html"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"moldturn/scenarios"
	"moldturn/sim/exposure"
)

// measured is a small plant with everything that has a unit or a price.
const measured = `version: 1
name: Plant
currency: CURRENCY
units: SYSTEM
crafts:
  gel: {people: {day: 2}}
  lamination: {people: {day: 6}}
  mold: {people: {day: 3}}
  pull: {people: {day: 2}}
  finish: {people: {day: 3}}
  assembly: {people: {day: 8}}
models:
  Skiff:
    margin: CURRENCY6k
    orders: 3/week
    parts:
      hull: {area: 15 m2, molds: 2, mold_dates: [2028-01-10], work: {base: 1 x 0.5 h, skin: 2 x 1 h, shot 1: 2 x 2 h}}
money: {wage: CURRENCY19}
permit: {cap: 5000 kg}
run: {years: 1, replications: 2}
alternatives:
  third mold: {models.Skiff.parts.hull.molds: 3}
investments:
  third mold: {lead: 6 wk, life: 5}
`

// foreign are the signs of the other system and of other currencies. An "L" alone
// is not looked for: letters stand for other things too.
var foreign = map[string]*regexp.Regexp{
	"SI": regexp.MustCompile(`\$|£|°F|\blbs?\b|\bmils?\b|\bft\b|ft²|ft³|\bgal\b|\btons?\b|\bcfm\b|\bfpm\b|\binch(es)?\b|\bpounds?\b|\bdollars?\b`),
	"US": regexp.MustCompile(`€|£|°C|\bkg\b|\bMg\b|\bmm\b|m²|m³|\bm/s\b|\bliters?\b`),
}

// asWritten are what inputs are and where they are from, and texts of published
// limits: they are quoted in the units of their source, whatever a scenario's
// units. Longest first.
func asWritten(t *testing.T) []string {
	t.Helper()
	tree, err := scenarios.Inputs()
	if err != nil {
		t.Fatal(err)
	}
	quoted := []string{"published limits within 1 lb/ton"}
	for _, in := range tree.Inputs() {
		quoted = append(quoted, in.Doc, in.Source)
	}
	for _, l := range exposure.Limits() {
		quoted = append(quoted, l.Source)
	}
	quoted = slices.DeleteFunc(quoted, func(s string) bool { return len(s) < 4 })
	slices.SortFunc(quoted, func(a, b string) int { return cmp.Or(cmp.Compare(len(b), len(a)), strings.Compare(a, b)) })
	return slices.Compact(quoted)
}

var (
	codeOfPage = regexp.MustCompile(`(?s)<style.*?</style>|<script>.*?</script>`)
	markup     = regexp.MustCompile(`<[^>]*>`)
)

// wordsOfPage is what a page shows: its texts, with those of its charts.
func wordsOfPage(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return html.UnescapeString(markup.ReplaceAllString(codeOfPage.ReplaceAllString(string(data), ""), "\n"))
}

// wordsOfBook is every cell of a workbook as a reader sees it.
func wordsOfBook(t *testing.T, path string) string {
	t.Helper()
	book, err := excelize.OpenFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	for _, sheet := range book.GetSheetList() {
		rows, err := book.GetRows(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for _, row := range rows {
			all = append(all, row...)
		}
	}
	return strings.Join(all, "\n")
}

// Pages and workbooks are in the units and the currency that a scenario asks for.
func TestPagesKeepTheUnitsOfTheScenario(t *testing.T) {
	quoted := asWritten(t)
	for system, currency := range map[string]string{"SI": "€", "US": "$"} {
		plant := filepath.Join(t.TempDir(), "plant.yaml")
		if err := os.WriteFile(plant, []byte(strings.NewReplacer("CURRENCY", currency, "SYSTEM", system).Replace(measured)), 0o600); err != nil {
			t.Fatal(err)
		}
		for _, command := range [][]string{{"compare"}, {"permit"}, {"exposure"}, {"quality", "--intervals", "3,10"}, {"invest", "--alternative", "third mold"},
			{"launch"}, {"worth"}, {"sweep", "--over", "hold.clock=16h,24h"}} {
			name, out := system+" "+command[0], t.TempDir()
			code, _, errs := try(t.Context(), commands(), slices.Concat(command[:1], []string{plant, "-q", "-o", out}, command[1:])...)
			if code != exitDone {
				t.Errorf("%s: code %d, %s", name, code, errs)
				continue
			}
			pages, _ := filepath.Glob(filepath.Join(out, "*.html"))
			books, _ := filepath.Glob(filepath.Join(out, "*.xlsx"))
			if len(pages) == 0 || command[0] == "compare" && len(books) == 0 {
				t.Errorf("%s: %d pages, %d workbooks", name, len(pages), len(books))
			}
			for _, path := range pages {
				heldToUnits(t, name+", page", wordsOfPage(t, path), system, currency, quoted)
			}
			for _, path := range books {
				heldToUnits(t, name+", workbook", wordsOfBook(t, path), system, currency, quoted)
			}
		}
	}
}

// heldToUnits looks for signs of other units in a text, quotations aside; the
// currency of amounts must be there.
func heldToUnits(t *testing.T, name, text, system, currency string, quoted []string) {
	t.Helper()
	if !strings.Contains(text, currency) {
		t.Errorf("%s: no amount in %s", name, currency)
	}
	for _, q := range quoted {
		text = strings.ReplaceAll(text, q, "…")
	}
	for i, at := range foreign[system].FindAllStringIndex(text, -1) {
		if i == 5 {
			t.Errorf("%s: and more", name)
			break
		}
		t.Errorf("%s: %q in …%s…", name, text[at[0]:at[1]], text[max(0, at[0]-60):min(len(text), at[1]+30)])
	}
}
