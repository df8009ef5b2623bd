package study

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"moldturn/sim/record"
)

// Book is the results of a study as a file keeps them: one JSON text a line,
// first what was asked, then lines of results. Lines may be added at any time;
// a last line that was not finished is left out when the file is read again, so
// a program that was killed loses only what it was working on. The same results
// written in the same order give the same bytes.
type Book struct {
	Head    Head
	entries map[string]*Entry
	order   []string // keys as they came
}

// BookVersion is the version of the file format.
const BookVersion = 1

// Head is the first line of a book: all that is needed to report on it, or to go
// on, without the files it came from.
type Head struct {
	Book         int               `json:"moldturn_results"` // BookVersion
	Kind         string            `json:"kind"`             // the command: "compare", "sweep"
	Program      string            `json:"program"`          // what results depend on beside inputs
	Scenario     string            `json:"scenario"`         // name of the file
	Text         string            `json:"text"`             // its content
	Files        map[string]string `json:"files,omitempty"`  // content of files it names
	Set          []string          `json:"set,omitempty"`    // inputs changed on the command line, "path=value"
	Fingerprint  string            `json:"fingerprint"`      // of the base
	Years        int               `json:"years"`            // counted in each replication
	Seed         uint64            `json:"seed"`
	Replications int               `json:"replications"`
	Of           []string          `json:"of,omitempty"` // names of the figures asked for
	Sweep        *Asked            `json:"sweep,omitempty"`
	Enough       *Enough           `json:"enough,omitempty"`
}

// Asked is a sweep as it was asked for.
type Asked struct {
	Form   Form     `json:"form"`
	Over   []string `json:"over"`             // factors as written
	Points int      `json:"points,omitempty"` // of a Latin hypercube
}

// Enough is a rule of enough as it was asked for; see Rule.
type Enough struct {
	Precision float64 `json:"precision,omitempty"`
	Matters   float64 `json:"matters,omitempty"`
	Budget    int     `json:"budget_years"`
}

// Entry is one alternative's results: figures, or whole outcomes.
type Entry struct {
	Key      string            `json:"key"`   // fingerprint of the alternative and of what was run
	Names    []string          `json:"names"` // of the alternatives that are this, in words
	Changes  []string          `json:"changes,omitempty"`
	First    int               `json:"first"` // the replication that comes first in it
	Values   map[string]Values `json:"values,omitempty"`
	Outcomes []kept            `json:"outcomes,omitempty"`
}

// N is the number of replications in the entry.
func (e *Entry) N() int {
	f := Figures{Values: e.Values}
	return max(f.N(), len(e.Outcomes))
}

// NewBook is a book without results.
func NewBook(head Head) *Book {
	head.Book = BookVersion
	return &Book{Head: head, entries: map[string]*Entry{}}
}

// ReadBook reads a file. whole is the length of the part that consists of
// finished lines: what comes behind it is of no use and can be cut off before
// more is added. The error says what is wrong with which line.
func ReadBook(data []byte) (b *Book, whole int, err error) {
	for line := 1; ; line++ {
		end := bytes.IndexByte(data[whole:], '\n')
		if end < 0 {
			break
		}
		text := data[whole : whole+end]
		if line == 1 {
			b, err = readHead(text)
		} else {
			err = b.readEntry(text)
		}
		if err != nil {
			return nil, 0, fmt.Errorf("line %d: %w", line, err)
		}
		whole += end + 1
	}
	if b == nil {
		return nil, 0, fmt.Errorf("line 1: the file ends before its first line does")
	}
	return b, whole, nil
}

func readHead(text []byte) (*Book, error) {
	var head Head
	if err := json.Unmarshal(text, &head); err != nil || head.Book == 0 {
		return nil, fmt.Errorf("this is no file of results")
	}
	if head.Book != BookVersion {
		return nil, fmt.Errorf("results of version %d (allowed: %d)", head.Book, BookVersion)
	}
	return NewBook(head), nil
}

func (b *Book) readEntry(text []byte) error {
	var e Entry
	if err := json.Unmarshal(text, &e); err != nil {
		return fmt.Errorf("these results cannot be read: %w", err)
	}
	if e.Key == "" || e.First < 0 || e.N() == 0 {
		return fmt.Errorf("results without a key, or of no replication")
	}
	for name, v := range e.Values {
		e.Values[name] = v.from(0, e.N())
	}
	b.Add(&e)
	return nil
}

// Add joins an entry with what there is of the same key. Replications that are
// there already are passed over, and so is an entry that would leave a gap.
func (b *Book) Add(e *Entry) {
	old := b.entries[e.Key]
	if old == nil {
		if e.First == 0 {
			b.entries[e.Key] = e
			b.order = append(b.order, e.Key)
		}
		return
	}
	for _, name := range e.Names {
		b.Name(e.Key, name)
	}
	n := old.N()
	if skip := n - e.First; skip >= 0 && skip < e.N() {
		for name, v := range old.Values {
			old.Values[name] = append(slices.Clip(v), e.Values[name].from(skip, e.N())...)
		}
		if len(old.Outcomes) > 0 {
			old.Outcomes = append(slices.Clip(old.Outcomes), e.Outcomes[skip:]...)
		}
	}
}

// from is the values from index i on, filled up with missing ones to length n.
func (v Values) from(i, n int) Values {
	out := slices.Clone(v)
	for len(out) < n {
		out = append(out, math.NaN())
	}
	return out[i:]
}

// Len is the number of keys.
func (b *Book) Len() int { return len(b.order) }

// Has is the number of replications there are of a key.
func (b *Book) Has(key string) int {
	if e := b.entries[key]; e != nil {
		return e.N()
	}
	return 0
}

// Named is the key of the entry with a name, the last of several; empty if there
// is none.
func (b *Book) Named(name string) string {
	found := ""
	for _, key := range b.order {
		if slices.Contains(b.entries[key].Names, name) {
			found = key
		}
	}
	return found
}

// Name adds a name to the entry of a key; nothing without one.
func (b *Book) Name(key, name string) {
	if e := b.entries[key]; e != nil && !slices.Contains(e.Names, name) {
		e.Names = append(e.Names, name)
	}
}

// Figures gives the first n replications of a key, fewer where there are fewer.
func (b *Book) Figures(key string, n int) map[string]Values {
	e := b.entries[key]
	if e == nil {
		return nil
	}
	out := map[string]Values{}
	for name, v := range e.Values {
		out[name] = v[:min(n, len(v))]
	}
	return out
}

// Outcomes gives all outcomes of a key, counted in frame. It fails if they do
// not fit the frame.
func (b *Book) Outcomes(key string, frame record.Frame) ([]Outcome, error) {
	e := b.entries[key]
	if e == nil {
		return nil, nil
	}
	out := make([]Outcome, len(e.Outcomes))
	for i := range out {
		var err error
		if out[i], err = e.Outcomes[i].outcome(frame); err != nil {
			return nil, fmt.Errorf("%s, replication %d: %w", strings.Join(e.Names, ", "), i+1, err)
		}
	}
	return out, nil
}

// Write writes the whole book: the entries of keys first, in that order, then
// the others in the order of their keys.
func (b *Book) Write(w io.Writer, keys []string) error {
	if err := writeLine(w, b.Head); err != nil {
		return err
	}
	rest := slices.Sorted(slices.Values(b.order))
	seen := map[string]bool{}
	for _, key := range append(slices.Clone(keys), rest...) {
		if e := b.entries[key]; e != nil && !seen[key] {
			seen[key] = true
			if err := writeLine(w, e); err != nil {
				return err
			}
		}
	}
	return nil
}

// Line is an entry as one line of the file.
func (e *Entry) Line() ([]byte, error) {
	var b bytes.Buffer
	err := writeLine(&b, e)
	return b.Bytes(), err
}

func writeLine(w io.Writer, v any) error {
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	return enc.Encode(v)
}
