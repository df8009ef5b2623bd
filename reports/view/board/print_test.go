package board_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/reports"
	"moldturn/reports/browser"
	"moldturn/reports/table"
	"moldturn/reports/view/board"
	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim/ahead"
)

// demo is the board of the bundled floor, of few futures.
func demo(t *testing.T, weeks int) *board.View {
	t.Helper()
	data, _ := scenarios.BundledFile("fenwater")
	s, complaints := scenarios.Load("fenwater.yaml", data, scenarios.Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	dir, _ := scenarios.BundledFloor("fenwater")
	r := floor.Read(dir, s.Base.Plan(), floor.Options{Name: "fenwater"})
	st, complaints := s.StartFrom(r.Floor, scenarios.FloorOptions{Weeks: weeks + 1})
	if len(complaints) > 0 {
		t.Fatal(complaints)
	}
	setup := &ahead.Setup{Plan: st.Plant.Plan(), Start: st.Start, Air: st.Plant.Air, Seed: 1, Futures: 20, Workers: 2}
	futures, err := setup.Run(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	v := &board.View{Board: ahead.BoardOf(setup, futures, 7*weeks), Plant: "Fenwater", Futures: 20}
	for i := range setup.Plan.Molds {
		v.Molds = append(v.Molds, setup.Plan.Molds[i].Name) // long names: "Sedge 20 hull mold A"
	}
	for _, o := range st.Orders {
		v.Orders = append(v.Orders, o.Name)
	}
	return v
}

func written(t *testing.T, v *board.View) string {
	t.Helper()
	var b bytes.Buffer
	if err := reports.BoardHTML(&b, v); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "board.html")
	if err := os.WriteFile(path, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// A4 is ISO 216; letter is ANSI/ASME Y14.1, size A.
var papers = map[string]browser.Sheet{"A4": {Width: 8.27, Height: 11.69}, "letter": {Width: 8.5, Height: 11}}

// The wall gets a sheet for every day that has one, on A4 and on letter, also
// when a day holds far more than a sheet has room for; nothing is cut off at the
// side, and the caution is on every sheet.
func TestOneSheetADay(t *testing.T) {
	v := demo(t, 2)
	full := demo(t, 1)
	for range 5 {
		full.Days[1].Pulls = append(full.Days[1].Pulls, full.Days[1].Pulls...)
		full.Days[1].Strips = append(full.Days[1].Strips, full.Days[1].Strips...)
		full.Days[1].Leaves = append(full.Days[1].Leaves, full.Days[1].Leaves...)
		for i := range full.Days[1].Booths {
			for k := range full.Days[1].Booths[i].Lists {
				list := &full.Days[1].Booths[i].Lists[k]
				*list = append(*list, *list...)
			}
		}
	}
	b := browser.Start(t)
	short := demo(t, 3)
	for i := range short.Molds {
		short.Molds[i] = fmt.Sprintf("R23-H%d", i)
	}
	for name, v := range map[string]*board.View{"two weeks": v, "a full day": full, "three weeks, short names": short} {
		tab := b.Open(t, written(t, v), browser.Look{})
		for paper, sheet := range papers {
			got := tab.Print(t, sheet)
			if len(got) != len(v.Works()) {
				t.Errorf("%s on %s: %d sheets for %d days", name, paper, len(got), len(v.Works()))
			}
			for i, s := range got {
				if !s.Is(sheet) {
					t.Errorf("%s on %s, sheet %d: %.2f by %.2f inches", name, paper, i+1, s.Width, s.Height)
				}
			}
		}
		tab.Show(t, browser.Look{Width: 718, Height: 1000, Paper: true})
		if wide := browser.Eval[int](t, tab, `document.documentElement.scrollWidth`); wide > 718 {
			t.Errorf("%s: %d px wide on paper of 718", name, wide)
		}
		cautions := browser.Eval[int](t, tab, `Array.from(document.querySelectorAll('.wall')).filter(s => s.innerText.includes('Local rules')).length`)
		if cautions != len(v.Works()) {
			t.Errorf("%s: %d cautions on %d sheets", name, cautions, len(v.Works()))
		}
		for _, c := range tab.Complaints() {
			t.Error(c)
		}
	}
}

// A phone shows the board without scrolling the page sideways.
func TestBoardOnAPhone(t *testing.T) {
	tab := browser.Start(t).Open(t, written(t, demo(t, 1)), browser.Look{Width: 390, Height: 844, Phone: true})
	if wide := browser.Eval[int](t, tab, `document.documentElement.scrollWidth`); wide > 390 {
		t.Errorf("%d px wide on a phone of 390", wide)
	}
}

// The terminal has 80 columns; the calendar has an entry for every pull, strip,
// window and boat and for every list of a booth.
func TestBoardFiles(t *testing.T) {
	v := demo(t, 2)
	var text, calendar bytes.Buffer
	if err := reports.BoardText(&text, v, table.Style{}); err != nil {
		t.Fatal(err)
	}
	for _, l := range strings.Split(text.String(), "\n") {
		if len([]rune(l)) > 80 {
			t.Errorf("%d columns: %s", len([]rune(l)), l)
		}
	}
	want := 0
	for i := range v.Days {
		d := &v.Days[i]
		want += len(d.Pulls) + len(d.Strips) + len(d.Risks) + len(d.Leaves)
		for _, b := range d.Booths {
			for _, list := range b.Lists {
				want += min(len(list), 1)
			}
		}
	}
	if err := reports.BoardICS(&calendar, v); err != nil {
		t.Fatal(err)
	}
	if got := strings.Count(calendar.String(), "BEGIN:VEVENT"); got != want || want < 30 {
		t.Errorf("%d entries, want %d", got, want)
	}
}

// Chances in words: rounded to tenths, certain only when every future agrees.
func TestChance(t *testing.T) {
	for p, want := range map[float64]string{1: "10 in 10", 0.995: ">9 in 10", 0.94: "9 in 10", 0.5: "5 in 10", 0.1: "1 in 10", 0.04: "<1 in 10", 0: "<1 in 10"} {
		if got := board.Chance(p); got != want {
			t.Errorf("%v: %q, want %q", p, got, want)
		}
	}
}
