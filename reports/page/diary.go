package page

import (
	"encoding/json"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"moldturn/reports/cells"
)

// Diary steps through a stretch of time: boards tell who is where at one moment,
// buttons and keys go to another. It starts at Start and stands still until it is
// asked to step. Without scripts the first moment is shown.
type Diary struct {
	ID      string // as of a Chart
	Finding string // the heading
	Caption string // how to read it
	From    time.Time
	Minutes int // how long it is, at least 1
	Start   int // minutes after From, shown first
	Boards  []Board
	Names   []string // the texts that entries point to
	Entries []Entry  // in the order of From
}

// BoardForm is how a board shows the entries of a moment.
type BoardForm string

// The forms.
const (
	One    BoardForm = "one"    // a fixed row has at most one entry, a column for each of its texts
	Joined BoardForm = "joined" // a fixed row has any number, joined in one column
	Listed BoardForm = "listed" // every entry is a row; the last column tells the hours since it began
)

// Board is a table that changes from moment to moment.
type Board struct {
	Title   string
	Form    BoardForm
	Columns []string // heads; the first is that of Rows where there are some
	Rows    []string // fixed rows; none when Listed
	Empty   string   // stands where nothing is: "free"
}

// Entry is what one row of a board says for a while.
type Entry struct {
	From, To int   // minutes, To after From; what was there before the diary has a From below 0
	Board    int   // index
	Row      int   // index; -1 when Listed
	Names    []int // indexes of texts
}

func (Diary) block() {}

// Check reports the first thing that keeps d from being written.
func (d Diary) Check() error {
	switch {
	case !idForm.MatchString(d.ID):
		return fmt.Errorf("diary id %q: allowed are a-z, 0-9 and -, a letter first", d.ID)
	case d.Finding == "" || len(d.Boards) == 0:
		return fmt.Errorf("diary %s: it needs a finding and a board", d.ID)
	case d.Minutes < 1 || d.Start < 0 || d.Start >= d.Minutes:
		return fmt.Errorf("diary %s: it starts at minute %d of %d", d.ID, d.Start, d.Minutes)
	}
	for i, b := range d.Boards {
		if wanted := 2; b.Form == Joined && len(b.Columns) != wanted || len(b.Columns) < wanted {
			return fmt.Errorf("diary %s, board %d: %d columns", d.ID, i+1, len(b.Columns))
		}
	}
	for i, e := range d.Entries {
		if err := d.checkEntry(e); err != nil {
			return fmt.Errorf("diary %s, entry %d: %w", d.ID, i+1, err)
		}
		if i > 0 && e.From < d.Entries[i-1].From {
			return fmt.Errorf("diary %s, entry %d: earlier than the one before", d.ID, i+1)
		}
	}
	return nil
}

func (d Diary) checkEntry(e Entry) error {
	if e.Board < 0 || e.Board >= len(d.Boards) {
		return fmt.Errorf("there is no board %d", e.Board)
	}
	b := d.Boards[e.Board]
	switch {
	case b.Form != Listed && (e.Row < 0 || e.Row >= len(b.Rows)):
		return fmt.Errorf("there is no row %d", e.Row)
	case b.Form != Joined && len(e.Names) != len(b.Columns)-1:
		return fmt.Errorf("%d texts for %d columns", len(e.Names), len(b.Columns))
	case e.To <= e.From || e.To > d.Minutes:
		return errors.New("it ends before it starts, or is not within the diary")
	}
	for _, n := range e.Names {
		if n < 0 || n >= len(d.Names) {
			return fmt.Errorf("there is no text %d", n)
		}
	}
	return nil
}

// At gives board b at a minute, as the script of the page does.
func (d Diary) At(b, minute int) cells.Table {
	board := d.Boards[b]
	t := cells.Table{Title: board.Title}
	for _, c := range board.Columns {
		t.Columns = append(t.Columns, cells.Column{Head: c})
	}
	rows := make([][][]string, max(len(board.Rows), 1))
	for _, e := range d.Entries {
		if e.Board != b || e.From > minute || e.To <= minute {
			continue
		}
		var texts []string
		for _, n := range e.Names {
			texts = append(texts, d.Names[n])
		}
		if board.Form == Listed {
			t.Rows = append(t.Rows, cells.Texts(append(texts, waited(minute-e.From))...))
			continue
		}
		rows[e.Row] = append(rows[e.Row], texts)
	}
	for i, name := range board.Rows {
		t.Rows = append(t.Rows, cells.Texts(append([]string{name}, board.row(rows[i])...)...))
	}
	if len(t.Rows) == 0 {
		t.Rows = append(t.Rows, cells.Texts(append([]string{board.Empty}, make([]string, len(board.Columns)-1)...)...))
	}
	return t
}

// row is the texts of a fixed row after its name.
func (b Board) row(entries [][]string) []string {
	out := make([]string, len(b.Columns)-1)
	if len(entries) == 0 {
		out[0] = b.Empty
		return out
	}
	if b.Form == One {
		return entries[0]
	}
	var all []string
	for _, e := range entries {
		all = append(all, strings.Join(e, ", "))
	}
	return []string{strings.Join(all, "; ")}
}

// waited prints minutes as hours; floats of half a tenth are rounded up, as the
// script does.
func waited(minutes int) string {
	tenths := (minutes + 3) / 6
	return strconv.Itoa(tenths/10) + "." + strconv.Itoa(tenths%10)
}

// When names a minute.
func (d Diary) When(minute int) string {
	return d.From.UTC().Add(time.Duration(minute) * time.Minute).Format("Monday, January 2, 2006, 15:04")
}

// diaryView is what the template reads.
type diaryView struct {
	Diary
	Moment  string
	Shown   []*tableView
	Payload json.RawMessage
}

func diaryOf(d Diary) (*diaryView, error) {
	v := &diaryView{Diary: d, Moment: d.When(d.Start)}
	for b := range d.Boards {
		v.Shown = append(v.Shown, tableOf(d.At(b, d.Start)))
	}
	boards := []map[string]any{}
	for _, b := range d.Boards {
		boards = append(boards, map[string]any{"form": b.Form, "rows": len(b.Rows), "columns": len(b.Columns), "empty": b.Empty})
	}
	var err error
	v.Payload, err = json.Marshal(map[string]any{"from": d.From.UnixMilli(), "minutes": d.Minutes, "start": d.Start,
		"boards": boards, "names": d.Names, "entries": d.short()})
	return v, err
}

// Last is the last minute.
func (d Diary) Last() int { return d.Minutes - 1 }

// short is the entries as numbers: minutes since the entry before began, length,
// board, row, names.
func (d Diary) short() [][]int {
	out := [][]int{}
	last := 0
	for _, e := range d.Entries {
		out = append(out, append([]int{e.From - last, e.To - e.From, e.Board, e.Row}, e.Names...))
		last = e.From
	}
	return out
}

// Size is how many bytes the diary takes in a page, about: its data and its
// tables of the first moment.
func (d Diary) Size() (int, error) {
	v, err := diaryOf(d)
	if err != nil {
		return 0, err
	}
	n := len(v.Payload)
	for _, t := range v.Shown {
		for _, r := range t.Rows {
			for _, c := range r.Cells {
				n += len(c.Text) + len("<td></td>")
			}
		}
	}
	return n, nil
}
