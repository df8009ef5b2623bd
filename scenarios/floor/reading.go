package floor

import (
	"fmt"
	"strings"
)

// Place is a cell of a file. Row and Column count from 1 as a spreadsheet shows
// them; 0 means the whole row or the whole file.
type Place struct {
	File        string // as it is called in the folder
	Sheet       string // "" for files without sheets
	Row, Column int
}

// String is "molds.csv:14:3", or "floor.xlsx:Molds:14:3".
func (p Place) String() string {
	var b strings.Builder
	b.WriteString(p.File)
	if p.Sheet != "" {
		b.WriteString(":" + p.Sheet)
	}
	if p.Row > 0 {
		fmt.Fprintf(&b, ":%d", p.Row)
		if p.Column > 0 {
			fmt.Fprintf(&b, ":%d", p.Column)
		}
	}
	return b.String()
}

// Reading is a folder of floor files as it was read.
type Reading struct {
	Floor   *Floor // nil if no floor can be made of the files
	Sheets  []Sheet
	Notices []Notice // in the order of their places

	First, Last Moment // of the dated entries of molds and work; zero for none
	Early       bool   // most of them are after the morning
}

// Sheet is one table of a file with the fate of each of its rows.
type Sheet struct {
	Place  Place  // without row and column
	Kind   string // "molds", "work", …; "" for one that is not read
	Header int    // row of the header
	Rows   []Row
}

// Row is a row of a sheet below its first line that has anything in it.
type Row struct {
	Row  int
	Fate Fate
	Why  string // for rows that are not used
}

// Fate is what became of a row.
type Fate uint8

// Fates. Each row has one.
const (
	Used    Fate = iota // it is in the Floor
	Older               // a newer row of the same thing is used; looked at for gaps
	Dropped             // it should be in the Floor, and cannot be; a Notice says why
	Skipped             // not a thing of the shop: a blank row, a total, a header again
)

// Notice is something that a reader of the floor should know.
type Notice struct {
	Place   Place
	Level   Level
	Rule    string // a short name that does not change: "two parts in one mold"
	Found   string // as written, "" where nothing is
	Message string // one sentence in lower case
	Allowed string // what would be accepted; may be empty
	Hint    string // what was probably meant, or what to do; may be empty
	Effect  string // on the answer
}

// Level orders notices by what they do to the answer.
type Level uint8

// Levels.
const (
	Told  Level = iota // read as it surely was meant; nothing to do
	Gap                // something is not said; what is used instead is an assumption
	Doubt              // the files contradict themselves or the plant; the doubtful part is not used
	Fault              // a row or a file is not used
	Fatal              // no floor can be made
)

// String is the level as people read it.
func (l Level) String() string {
	return [...]string{"note", "gap", "doubt", "not used", "mistake"}[l]
}

// Count is the number of rows of a sheet with a fate.
func (s *Sheet) Count(f Fate) int {
	n := 0
	for _, r := range s.Rows {
		if r.Fate == f {
			n++
		}
	}
	return n
}

// String is the fate as people read it.
func (f Fate) String() string {
	return [...]string{"used", "older", "not used", "passed over"}[f]
}
