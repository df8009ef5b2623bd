package floor

import (
	"regexp"
	"slices"
	"strings"

	"moldturn/sim/param/guess"
)

// searched is how many rows are looked at for the header.
const searched = 25

// head is the header of a sheet: for each column of its File, the column of the
// sheet, -1 for none.
type head struct {
	at    int // index into the rows of the grid
	where []int
	spare []int // columns of the sheet that are not used
	near  []int // columns of the File that were found by a near name
}

var (
	inBrackets = regexp.MustCompile(`[(\[][^)\]]*[)\]]`)
	headWords  = strings.NewReplacer("#", " no ", "%", " percent ", "mould", "mold", "Mould", "mold", "MOULD", "mold")
)

// headKey is what heads of columns are compared by.
func headKey(s string) string {
	return key(headWords.Replace(inBrackets.ReplaceAllString(s, " ")))
}

// names of a column, in the form of headKey.
func (c *Column) names() []string {
	names := []string{headKey(c.Name)}
	for _, a := range c.Also {
		names = append(names, headKey(a))
	}
	return names
}

// match maps the cells of a row to the columns of f: names and their other
// forms first, then near ones.
func (f *File) match(cells []string) head {
	h := head{where: make([]int, len(f.Columns))}
	taken := map[int]bool{}
	for c := range f.Columns {
		h.where[c] = -1
	}
	keys := make([]string, len(cells))
	for i, s := range cells {
		keys[i] = headKey(s)
	}
	names, longest := make([][]string, len(f.Columns)), 0
	for c := range f.Columns {
		names[c] = f.Columns[c].names()
		longest = max(longest, len(names[c]))
	}
	for rank := range longest {
		for c := range f.Columns {
			if h.where[c] >= 0 || rank >= len(names[c]) {
				continue
			}
			if i := slices.Index(keys, names[c][rank]); i >= 0 && !taken[i] {
				h.where[c], taken[i] = i, true
			}
		}
	}
	for i, k := range keys {
		if c := nearest(k, names, h.where); !taken[i] && c >= 0 {
			h.where[c], taken[i] = i, true
			h.near = append(h.near, c)
		}
	}
	for i, s := range cells {
		if !taken[i] && s != "" {
			h.spare = append(h.spare, i)
		}
	}
	return h
}

// nearest is the column without a place whose name is nearest to a head, -1 for
// none. Short heads have to be written right.
func nearest(k string, names [][]string, where []int) int {
	if len(k) < 5 {
		return -1
	}
	for c := range names {
		if where[c] >= 0 {
			continue
		}
		for _, name := range names[c] {
			if len(name) >= 5 && guess.Distance([]rune(k), []rune(name)) <= len(name)/5 {
				return c
			}
		}
	}
	return -1
}

// needed counts the needed columns that h has, and all of them.
func (f *File) needed(h head) (has, all int) {
	for c := range f.Columns {
		if f.Columns[c].Needed {
			all++
			if h.where[c] >= 0 {
				has++
			}
		}
	}
	return has, all
}

// find looks for the header of f in g. ok is false if no row has all needed
// columns; best is then the row that comes nearest.
func (f *File) find(g *grid) (best head, ok bool) {
	best = head{at: -1}
	most := 0
	for i := range min(len(g.rows), searched) {
		h := f.match(g.rows[i].cells)
		h.at = i
		has, all := f.needed(h)
		if has == all {
			return h, true
		}
		if has > most {
			best, most = h, has
		}
	}
	return best, false
}

// isHeader tells whether a row is the header once more.
func (f *File) isHeader(h head, cells []string, header []string) bool {
	same, filled := 0, 0
	for _, i := range h.where {
		if i < 0 || i >= len(cells) || cells[i] == "" {
			continue
		}
		filled++
		if i < len(header) && key(cells[i]) == key(header[i]) {
			same++
		}
	}
	return same >= 2 && 2*same > filled
}

// kindOf chooses the File that a table is: by its name if its heads fit, else
// by its heads, else by its name alone, so that what is missing can be told.
func kindOf(name string, g *grid) (f File, ok bool) {
	named, isNamed := fileNamed(name)
	if isNamed {
		if _, full := named.find(g); full {
			return named, true
		}
	}
	if f, ok = fileWithHeads(g); ok {
		return f, true
	}
	return named, isNamed
}

// fileNamed is the File of a name.
func fileNamed(name string) (File, bool) {
	wanted := fileKey(name)
	for _, f := range Files() {
		for _, n := range append([]string{f.Name}, f.Also...) {
			if key(n) == wanted {
				return f, true
			}
		}
	}
	return File{}, false
}

// fileWithHeads is the File with most columns in a table that has all that are
// needed.
func fileWithHeads(g *grid) (f File, ok bool) {
	best := 0
	for _, candidate := range Files() {
		h, full := candidate.find(g)
		if !full {
			continue
		}
		score := 0
		for _, i := range h.where {
			if i >= 0 {
				score++
			}
		}
		if score >= 3 && score > best {
			f, ok, best = candidate, true, score
		}
	}
	return f, ok
}

var (
	fileDate = regexp.MustCompile(`[-_ ]*(\d{4}[-_ ]?\d{2}[-_ ]?\d{2}|\d{1,2}[-_.]\d{1,2}[-_.]\d{2,4})[-_ ]*`)
	fileCopy = regexp.MustCompile(`(?i)([-_ ]*(copy|final|new|current|today|latest|v?\d+)|\(\d+\))+$`)
)

// fileKey is the name of a file or sheet without its ending, its date and the
// words that copies gather.
func fileKey(name string) string {
	name = strings.TrimSpace(fileDate.ReplaceAllString(name, " "))
	return strings.ReplaceAll(key(fileCopy.ReplaceAllString(name, "")), "mould", "mold")
}
