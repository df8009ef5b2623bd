package floor_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"moldturn/scenarios/floor"
	"moldturn/sim"
)

// morning is the one that the folder testdata/thirty is of.
var morning = mustMorning("2026-11-25")

func mustMorning(s string) floor.Moment {
	m, err := floor.ParseMorning(s)
	if err != nil {
		panic(err)
	}
	return m
}

func readThirty(t testing.TB) *floor.Reading {
	t.Helper()
	return floor.Read(os.DirFS("testdata/thirty"), fenwater(t), floor.Options{Name: "thirty", Morning: morning})
}

// rowOf is the row of a file in a reading.
func rowOf(r *floor.Reading, file string, row int) (floor.Row, bool) {
	for _, s := range r.Sheets {
		for _, x := range s.Rows {
			if s.Place.File == file && x.Row == row {
				return x, true
			}
		}
	}
	return floor.Row{}, false
}

const (
	moldLog  = "molds.csv"
	traveler = "traveler 2026-11-25.csv"
	book     = "order book.tsv"
)

// Each row with what is odd about it, what becomes of it, and the notices at
// its cells, "column rule". Rows without notices are read in silence and
// checked for their values below.
var thirty = []struct {
	kind    string
	file    string
	row     int
	fate    floor.Fate
	notices []string
}{
	{"a title above the heads", moldLog, 1, floor.Skipped, nil},
	{"heads in other order, with units, near names, misspelled", moldLog, 2, floor.Skipped, []string{"6 near head"}},
	{"units in cells", moldLog, 3, floor.Used, nil},
	{"hard spaces, case, plural, thousands, decimal comma, a date with time", moldLog, 4, floor.Used, nil},
	{"a date of two readings told by its column, half a day clock", moldLog, 5, floor.Used, nil},
	{"blank means the same, quotes in a cell, a spreadsheet's date", moldLog, 6, floor.Used, []string{"2 blank means the same"}},
	{"words for the same, a spreadsheet's date with time", moldLog, 7, floor.Used, []string{"5 blank means the same", "7 blank cells"}},
	{"a mark for the same, a blank counter", moldLog, 8, floor.Used, []string{"4 blank cells"}},
	{"a row of totals", moldLog, 9, floor.Skipped, nil},
	{"the heads once more", moldLog, 11, floor.Skipped, nil},
	{"part in the cell of the model, error of a formula", moldLog, 12, floor.Used, []string{"6 part not listed", "7 error of a formula"}},
	{"half a turn", moldLog, 13, floor.Used, []string{"4 not a number"}},
	{"more turns since strip than in all", moldLog, 14, floor.Used, []string{"5 since strip over total"}},
	{"an unknown model", moldLog, 15, floor.Dropped, []string{"2 unknown model"}},
	{"an unknown state, a weekday that the date is not", moldLog, 16, floor.Used, []string{"6 unknown state", "8 not a date"}},
	{"an unknown part, a day that never was", moldLog, 17, floor.Dropped, []string{"3 unknown part", "8 not a date"}},
	{"a renamed mold, luster out of range", moldLog, 18, floor.Used, []string{"7 not a number"}},
	{"a year in the future", moldLog, 19, floor.Used, []string{"8 date in the future"}},
	{"a negative count, the leap day that spreadsheets made up", moldLog, 20, floor.Used, []string{"4 not a number", "8 not a date"}},
	{"a date without marks", moldLog, 21, floor.Used, nil},
	{"a remark across the sheet", moldLog, 22, floor.Skipped, nil},
	{"no id", moldLog, 23, floor.Dropped, []string{"1 cell missing"}},
	{"a quote that is never closed", moldLog, 24, floor.Dropped, []string{"0 broken row"}},
	{"an older row of the same mold", moldLog, 25, floor.Older, nil},

	{"semicolons by a first line sep=; and dots in dates", traveler, 3, floor.Used, nil},
	{"curing before it was sprayed, two parts in one mold", traveler, 4, floor.Dropped, []string{"6 two parts in one mold", "7 impossible sequence"}},
	{"a mold id without its marks", traveler, 5, floor.Used, nil},
	{"an unknown color, a mold of another model, gel coat too old", traveler, 6, floor.Used, []string{"4 unknown color", "6 mold of another part", "8 gel window over"}},
	{"an unknown step", traveler, 7, floor.Dropped, []string{"5 unknown step"}},
	{"a word for several steps, an unknown mold, work done without a start", traveler, 8, floor.Used, []string{"5 word for several steps", "6 unknown mold", "7 begun without a date"}},
	{"pulled after shipped", traveler, 9, floor.Dropped, []string{"11 pulled after shipped"}},
	{"a step begun in the future", traveler, 10, floor.Used, []string{"7 date in the future"}},
	{"shipped already", traveler, 11, floor.Skipped, []string{"11 shipped"}},

	{"a date of two readings that nothing tells apart", book, 2, floor.Used, []string{"5 ambiguous date"}},
	{"several boats in a row, the same day either way, a price in money", book, 3, floor.Used, nil},
	{"a 30th of February, a priority out of range, a price in other money", book, 4, floor.Used, []string{"5 not a date", "6 not a priority", "7 another currency"}},
	{"a count in words", book, 5, floor.Dropped, []string{"4 not a number"}},
	{"an order listed twice", book, 6, floor.Dropped, []string{"1 order listed twice"}},
	{"a grand total", book, 7, floor.Skipped, nil},

	{"people by another word", "people out.csv", 2, floor.Used, nil},
	{"a blank date for the same day", "people out.csv", 3, floor.Used, []string{"1 blank means the same"}},
	{"an unknown craft", "people out.csv", 4, floor.Dropped, []string{"2 unknown craft"}},
	{"more people out than there are", "people out.csv", 5, floor.Used, []string{"3 more out than there are"}},
	{"an absence that ends before it begins", "people out.csv", 6, floor.Dropped, []string{"4 ends before it begins"}},
	{"an absence that is over", "people out.csv", 7, floor.Skipped, nil},
	{"a booth with a number sign", "downtime.csv", 2, floor.Used, nil},
	{"a booth that is not there", "downtime.csv", 3, floor.Dropped, []string{"1 unknown place"}},
	{"downtime without an end", "downtime.csv", 4, floor.Used, []string{"3 blank cells"}},
	{"an extra day", "calendar.csv", 2, floor.Used, nil},
	{"a holiday that the scenario has already", "calendar.csv", 3, floor.Used, nil},
	{"a change that is none", "calendar.csv", 4, floor.Dropped, []string{"2 unknown change"}},
	{"an alias that is used", "renamed molds.csv", 2, floor.Used, nil},
	{"an alias that nothing needs", "renamed molds.csv", 3, floor.Used, []string{"0 aliases not needed"}},
}

// Notices that stand at the first row of several and are told once.
var atFirstOnly = []string{"blank means the same", "blank cells"}

func TestThirtyKindsOfDirt(t *testing.T) {
	if len(thirty) < 30 {
		t.Fatalf("only %d rows", len(thirty))
	}
	r := readThirty(t)
	seen := map[string]bool{}
	for _, want := range thirty {
		row, ok := rowOf(r, want.file, want.row)
		if want.row == 2 && want.file == moldLog {
			ok = true // the heads are no row of their own
		} else if !ok || row.Fate != want.fate {
			t.Errorf("%s:%d %s: %s (%s), want %s", want.file, want.row, want.kind, row.Fate, row.Why, want.fate)
		}
		if ok && row.Fate != floor.Used && row.Why == "" {
			t.Errorf("%s:%d %s: no reason", want.file, want.row, want.kind)
		}
		var got []string
		for _, n := range r.Notices {
			if n.Place.File == want.file && n.Place.Row == want.row {
				got = append(got, strings.TrimSpace(string(rune('0'+n.Place.Column%10)))+" "+n.Rule)
			}
		}
		var expected []string
		for _, n := range want.notices {
			if column, rule, _ := strings.Cut(n, " "); len(column) == 2 {
				n = column[1:] + " " + rule
			}
			expected = append(expected, n)
		}
		got = slices.DeleteFunc(got, func(s string) bool {
			return !slices.Contains(expected, s) && slices.ContainsFunc(atFirstOnly, func(rule string) bool { return strings.HasSuffix(s, rule) })
		})
		slices.Sort(got)
		slices.Sort(expected)
		if !slices.Equal(got, expected) {
			t.Errorf("%s:%d %s: notices %q, want %q", want.file, want.row, want.kind, got, expected)
		}
		seen[want.file+":"+string(rune(want.row))] = true
	}
	for _, s := range r.Sheets {
		for _, row := range s.Rows {
			if !seen[s.Place.File+":"+string(rune(row.Row))] {
				t.Errorf("%s:%d is in no line of the test", s.Place, row.Row)
			}
		}
	}
}

// What rows that are used say, cell by cell.
func TestThirtyValues(t *testing.T) {
	r, plan := readThirty(t), fenwater(t)
	for _, want := range []struct {
		row          int
		id, part     string
		turns, since int
		state        floor.State
		when         string
		luster       float64
	}{
		{3, "S20-H1", "Sedge 20 hull", 148, 3, floor.Occupied, "2026-11-20", 97.2},
		{4, "s20 h2", "Sedge 20 hull", 1204, 4, floor.Ready, "2026-11-23 14:30", 97.2},
		{5, "S20-H3", "Sedge 20 hull", 97, 5, floor.InCare, "2026-11-09 14:30", 96},
		{6, `S20 "D1"`, "Sedge 20 deck", 152, 1, floor.Occupied, "2026-11-23", 98},
		{7, "S20-D2", "Sedge 20 deck", 120, 1, floor.Ready, "2026-11-23 06:00", floor.Unknown},
		{8, "S20-D3", "Sedge 20 deck", floor.Unknown, 2, floor.InCare, "2026-11-25", floor.Unknown},
		{12, "R23-H1", "Rush 23 hull", 203, 3, floor.NotSaid, "", floor.Unknown},
		{13, "R23-H2", "Rush 23 hull", floor.Unknown, 1, floor.Ready, "2026-11-24", 97},
		{14, "R23-D1", "Rush 23 deck", 198, floor.Unknown, floor.Ready, "2026-11-24", 97},
		{16, "R26-H1", "Reed 26 hull", 142, 4, floor.NotSaid, "", 97},
		{18, "R26-D1", "Reed 26 deck", 139, 3, floor.OutOfUse, "2026-11-24 06:00", floor.Unknown},
		{19, "R26-D2", "Reed 26 deck", 115, 1, floor.Ready, "", 97},
		{20, "R26-L1", "Reed 26 liner", floor.Unknown, 2, floor.Ready, "", 97},
		{21, "R26-L2", "Reed 26 liner", 112, 0, floor.Ready, "2026-11-24", 97},
	} {
		i := slices.IndexFunc(r.Floor.Molds, func(m floor.Mold) bool { return m.Place.Row == want.row })
		if i < 0 {
			t.Errorf("no mold of row %d", want.row)
			continue
		}
		m := r.Floor.Molds[i]
		part := plan.Models[plan.Parts[m.Part].Model].Name + " " + plan.Parts[m.Part].Name
		if m.ID != want.id || part != want.part || m.Turns != want.turns || m.Since != want.since || m.State != want.state || m.When.String() != want.when || m.Luster != want.luster {
			t.Errorf("row %d: %+v of %s, want %+v", want.row, m, part, want)
		}
		if p := plan.Molds[m.Plan]; p.Part != m.Part {
			t.Errorf("row %d stands for the mold %q of another part", want.row, p.Name)
		}
	}
	if n := len(r.Floor.Molds); n != 14 {
		t.Errorf("%d molds", n)
	}
	f1 := r.Floor.Work[0]
	if f1.Serial != "F1" || plan.Colors[f1.Color].Name != "navy" || f1.Started.String() != "2026-11-20 14:00" || f1.Sprayed.String() != "2026-11-18" ||
		plan.Routes[f1.Route].Steps[f1.Step].Name != "hold" || r.Floor.Molds[f1.Mold].ID != "S20-H1" || !r.Floor.Orders[f1.Order].Begun {
		t.Errorf("%+v", f1)
	}
	f3 := r.Floor.Work[1]
	if f3.Serial != "F3" || f3.Mold != 3 || r.Floor.Molds[3].Work != 1 || f3.Started.String() != "2026-11-23 10:00" {
		t.Errorf("a hold begins when the last shot ends: %+v", f3)
	}
	f8 := r.Floor.Work[len(r.Floor.Work)-1]
	if f8.Serial != "F8" || f8.Part != sim.None || f8.Started != morning || f8.Done != 0.6 {
		t.Errorf("%+v", f8)
	}
	var b2 []floor.Order
	for _, o := range r.Floor.Orders {
		if o.ID == "B2" {
			b2 = append(b2, o)
		}
	}
	if len(b2) != 3 || b2[2].Number != 3 || b2[0].Due.String() != "2027-05-05" || b2[0].Price != 78400 || b2[0].Priority != 80 || plan.Colors[b2[0].Color].Name != "sea green" {
		t.Errorf("%+v", b2)
	}
	if o := r.Floor.Orders[4]; o.ID != "B3" || o.Price != 112500 || !o.Due.IsZero() || o.Priority != 0 {
		t.Errorf("%+v", o)
	}
	if o := r.Floor.Out; len(o) != 3 || plan.Crafts[o[0].Craft].Name != "lamination" || o[0].Number != 2 || o[1].From != morning || o[2].Number != 5 {
		t.Errorf("%+v", o)
	}
	if d := r.Floor.Down; len(d) != 2 || d[0].Unit != 1 || d[0].From.String() != "2026-11-26 06:00" || d[1].Unit != sim.None || !d[1].To.IsZero() {
		t.Errorf("%+v", d)
	}
	if c := r.Floor.Calendar; len(c) != 2 || !c[0].Extra || c[1].Extra {
		t.Errorf("%+v", c)
	}
}
