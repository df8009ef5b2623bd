package floor

import (
	"strings"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/study"
)

// What the boards say at three moments of a day, worked out by hand.
func TestBoards(t *testing.T) {
	p, r := floorOf()
	d := diaryOf(&study.Typical{Plan: p, Recorder: r}, 1)
	if err := d.Check(); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		board, hour int
		want        string
	}{
		{moldBoard, 0, "A|sprayed|base|order 1|B|in reserve or retired|base|order 2|"},
		{placeBoard, 0, "booth 1|order 1, Sedge 20 hull, base|booth 2|order 2, Sedge 20 hull, base|"},
		{crewBoard, 0, "gel|order 1, Sedge 20 hull, base, 2 people; order 2, Sedge 20 hull, base, 2 people|lay-up crew|nobody at work|"},
		{waitBoard, 4, "order 1, Sedge 20 hull|base|the gel crew|3.0|"},
		{waitBoard, 6, "nobody||||"},
		{shiftBoard, 20, "order 1, Sedge 20 hull|base|the next shift of the lay-up crew|11.0|"},
		{mateBoard, 20, "nobody||||"},
	} {
		var b strings.Builder
		for _, row := range d.At(c.board, c.hour*60).Rows {
			for _, cell := range row.Cells {
				b.WriteString(cell.Text + "|")
			}
		}
		if b.String() != c.want {
			t.Errorf("board %d at %d: %q, want %q", c.board, c.hour, b.String(), c.want)
		}
	}
	if d.Start != 0 {
		t.Errorf("it starts at minute %d, with people at work from the first", d.Start)
	}
}

// Without a run, or without facts in it, there is nothing to show.
func TestNothingToShow(t *testing.T) {
	p, r := floorOf()
	r.Spans, r.To = nil, r.From+clock.Day
	for _, x := range []*study.Typical{nil, {Plan: p, Recorder: r}} {
		if _, ok, err := Diary(x, "base"); ok || err != nil {
			t.Errorf("shown %v, %v", ok, err)
		}
	}
	if _, ok, err := Molds(nil, "base"); ok || err != nil {
		t.Errorf("shown %v, %v", ok, err)
	}
}

// A diary that is too large is cut to whole weeks, then to days, and always gets
// shorter.
func TestFewerDays(t *testing.T) {
	for _, c := range [][3]int{{28, 2 * MostBytes, 14}, {28, MostBytes + 1, 21}, {14, MostBytes + 1, 7}, {7, MostBytes + 1, 6}, {7, 4 * MostBytes, 1}, {1, 9 * MostBytes, 0}} {
		if got := fewer(c[0], c[1]); got != c[2] {
			t.Errorf("%d days of %d bytes: %d, want %d", c[0], c[1], got, c[2])
		}
	}
}
