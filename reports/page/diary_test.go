package page

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"moldturn/reports/cells"
)

// sampleDiary has each form of board; all its names are s.
func sampleDiary(s string) Diary {
	return Diary{ID: "floor", Finding: s, Caption: s, From: time.Date(2031, 7, 7, 0, 0, 0, 0, time.UTC), Minutes: 300, Start: 60,
		Boards: []Board{
			{Title: s, Form: One, Columns: []string{"mold", "does", "for"}, Rows: []string{s, "mold 2"}, Empty: "stands"},
			{Title: s, Form: Joined, Columns: []string{"crew", "at"}, Rows: []string{"gel"}, Empty: "free"},
			{Title: s, Form: Listed, Columns: []string{"who", "waits for", "h"}, Empty: "nobody"},
		},
		Names:   []string{s, "spraying", "order 7"},
		Entries: []Entry{{0, 90, 0, 0, []int{1, 2}}, {30, 300, 1, 0, []int{2, 1}}, {45, 75, 1, 0, []int{0}}, {51, 120, 2, -1, []int{2, 1}}},
	}
}

func rowsOf(t cells.Table) string {
	var b strings.Builder
	for _, r := range t.Rows {
		for _, c := range r.Cells {
			b.WriteString(c.Text + "|")
		}
	}
	return b.String()
}

func TestDiaryAtAMoment(t *testing.T) {
	d := sampleDiary("x")
	if err := d.Check(); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		board, minute int
		want          string
	}{
		{0, 0, "x|spraying|order 7|mold 2|stands||"},
		{0, 90, "x|stands||mold 2|stands||"}, // an entry has ended at its end
		{1, 29, "gel|free|"},
		{1, 60, "gel|order 7, spraying; x|"},
		{2, 60, "order 7|spraying|0.2|"}, // 9 minutes
		{2, 120, "nobody|||"},
	} {
		if got := rowsOf(d.At(c.board, c.minute)); got != c.want {
			t.Errorf("board %d at %d: %q, want %q", c.board, c.minute, got, c.want)
		}
	}
	if got := d.When(61); got != "Monday, July 7, 2031, 01:01" {
		t.Error(got)
	}
}

func TestDiaryTextsStayTexts(t *testing.T) {
	write := func(s string) string {
		return render(t, Page{Title: "x", Sections: []Section{{Blocks: []Block{sampleDiary(s)}}}})
	}
	plain, hostile := bare(write("x")), bare(write(evil))
	if a, b := strings.Count(plain, "<"), strings.Count(hostile, "<"); a != b {
		t.Errorf("%d tags with plain names, %d with hostile ones", a, b)
	}
	if !strings.Contains(plain, "Monday, July 7, 2031, 01:00") {
		t.Error("the first moment is not shown without scripts")
	}
}

func TestDiaryRefusals(t *testing.T) {
	for want, change := range map[string]func(*Diary){
		"diary id":                 func(d *Diary) { d.ID = "X y" },
		"a finding and a board":    func(d *Diary) { d.Boards = nil },
		"starts at minute 300":     func(d *Diary) { d.Start = 300 },
		"board 2: 3 columns":       func(d *Diary) { d.Boards[1].Columns = []string{"a", "b", "c"} },
		"no board 3":               func(d *Diary) { d.Entries[0].Board = 3 },
		"no row 2":                 func(d *Diary) { d.Entries[0].Row = 2 },
		"1 texts for 3 columns":    func(d *Diary) { d.Entries[0].Names = []int{1} },
		"no text 3":                func(d *Diary) { d.Entries[0].Names = []int{1, 3} },
		"not within the diary":     func(d *Diary) { d.Entries[1].To = 301 },
		"entry 2: earlier than":    func(d *Diary) { d.Entries[0].From = 40 },
		"the id \"floor\" is used": func(d *Diary) {},
	} {
		d := sampleDiary("x")
		change(&d)
		err := Write(&bytes.Buffer{}, Page{Title: "x", Sections: []Section{{Blocks: []Block{d, d}}}})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}
