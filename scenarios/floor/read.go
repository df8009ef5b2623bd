package floor

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"

	"moldturn/sim"
)

// Options say what the files do not.
type Options struct {
	Name    string // of the folder, for the Floor
	Morning Moment // zero: the day after the last entry of the files

	Currency string // sign of the scenario's amounts, for prices; "" for that of the first price
}

// Read reads the floor files of a folder for a plan. Only files of the folder
// itself are opened, those of folders in it are not. It never fails: what keeps
// a floor from being made is a Notice of the level Fatal, and Reading.Floor is
// nil then.
func Read(dir fs.FS, plan *sim.Plan, o Options) *Reading {
	r := &reader{names: &names{plan: plan, aliases: map[string]string{}, used: map[string]bool{}}, floor: &Floor{Name: o.Name, Morning: o.Morning}, currency: currencyOf(o.Currency)}
	grids := r.grids(dir)
	if r.fatal() {
		return r.reading()
	}
	for _, f := range Files() {
		found := false
		for _, g := range grids {
			if g.file.Name != f.Name {
				continue
			}
			found = true
			if t := r.open(&g.file, g.grid); t != nil {
				t.read()
			}
		}
		if !found && f.Missing != "" {
			r.say(Notice{Level: Gap, Rule: "no file", Message: fmt.Sprintf("no file of %s", f.Name), Hint: fmt.Sprintf("%s.csv, or a sheet called %s", f.Name, f.Name), Effect: f.Missing})
		}
	}
	r.settle(o)
	return r.reading()
}

// reading is what was found.
func (r *reader) reading() *Reading {
	out := &Reading{Floor: r.floor, Notices: sortNotices(r.notices), First: r.first, Last: r.last, Early: r.early}
	for _, s := range r.sheets {
		slices.SortFunc(s.Rows, func(a, b Row) int { return a.Row - b.Row })
		out.Sheets = append(out.Sheets, *s)
	}
	if r.fatal() {
		out.Floor = nil
	}
	return out
}

// fatal tells whether no floor can be made.
func (r *reader) fatal() bool {
	return slices.ContainsFunc(r.notices, func(n Notice) bool { return n.Level == Fatal })
}

// read reads the rows of a table as what its file is.
func (t *table) read() {
	switch t.file.Name {
	case "aliases":
		t.readAliases()
	case "molds":
		t.readMolds()
	case "work":
		t.readWork()
	case "orders":
		t.readOrders()
	case "out":
		t.readOut()
	case "downtime":
		t.readDown()
	case "calendar":
		t.readCalendar()
	}
}

// known is a table whose kind is known.
type known struct {
	file File
	grid *grid
}

// grids reads all tables of the folder in the order of their names.
func (r *reader) grids(dir fs.FS) []known {
	entries, err := fs.ReadDir(dir, ".")
	if err != nil {
		r.say(Notice{Level: Fatal, Rule: "no folder", Message: "the folder cannot be read: " + reason(err)})
		return nil
	}
	var out []known
	for _, e := range entries {
		name := e.Name()
		if e.IsDir() || strings.HasPrefix(name, ".") || strings.HasPrefix(name, "~$") {
			continue
		}
		tables := r.file(dir, name)
		for _, g := range tables {
			label := g.place.Sheet
			if _, ok := fileNamed(label); !ok && len(tables) == 1 {
				label = strings.TrimSuffix(name, path.Ext(name))
			}
			f, ok := kindOf(label, g)
			if !ok {
				r.say(Notice{Place: g.place, Level: Told, Rule: "not a floor file", Message: "is not read: neither its name nor its heads are those of a floor file", Allowed: strings.Join(fileNames(), ", ")})
				r.sheets = append(r.sheets, &Sheet{Place: g.place})
				continue
			}
			out = append(out, known{f, g})
		}
	}
	if len(out) == 0 {
		r.say(Notice{Level: Fatal, Rule: "no floor files", Message: "the folder holds no floor file", Allowed: strings.Join(fileNames(), ", ") + ": each a .csv file, or a sheet of an .xlsx file",
			Hint: "\"moldturn list floor\" shows their columns"})
	}
	return out
}

func fileNames() []string {
	var out []string
	for _, f := range Files() {
		out = append(out, f.Name)
	}
	return out
}

// file reads the tables of one file; none if it is no table.
func (r *reader) file(dir fs.FS, name string) []*grid {
	here := Place{File: name}
	fault := func(rule, message, hint string) {
		r.say(Notice{Place: here, Level: Fault, Rule: rule, Message: message, Hint: hint, Effect: "nothing of it is on the floor"})
		r.sheets = append(r.sheets, &Sheet{Place: here})
	}
	switch strings.ToLower(path.Ext(name)) {
	case ".csv", ".tsv", ".txt", ".tab":
		if strings.HasPrefix(strings.ToLower(name), "readme") {
			return nil
		}
		data, err := readAll(dir, name)
		if err != nil {
			fault("unreadable file", "cannot be read: "+reason(err), "")
			return nil
		}
		return []*grid{csvGrid(name, data)}
	case ".xlsx", ".xlsm":
		data, err := readAll(dir, name)
		if err != nil {
			fault("unreadable file", "cannot be read: "+reason(err), "")
			return nil
		}
		grids, err := xlsxGrids(name, data)
		if err != nil {
			fault("unreadable file", "is no workbook that can be read: "+reason(err), "save it as .xlsx without a password, or as CSV")
			return nil
		}
		return grids
	case ".xls", ".ods", ".numbers", ".xlsb", ".pdf":
		fault("kind of file", "is not read: only .csv and .xlsx are", "save it as .xlsx, or as CSV")
	}
	return nil
}

// readAll reads a file that is not too large.
func readAll(dir fs.FS, name string) ([]byte, error) {
	info, err := fs.Stat(dir, name) // before it is opened: opening a pipe would wait
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, errors.New("it is no ordinary file")
	}
	f, err := dir.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	if err == nil && len(data) > mostBytes {
		err = fmt.Errorf("it is larger than %d MB", mostBytes>>20)
	}
	return data, err
}

// reason is an error without the call and the name, which are said before.
func reason(err error) string {
	text := err.Error()
	if p, ok := err.(*fs.PathError); ok {
		text = p.Err.Error()
	}
	return clean(text)
}
