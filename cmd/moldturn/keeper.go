package main

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"slices"
	"strings"

	resultfiles "moldturn/reports/files"

	"moldturn/scenarios"
	"moldturn/sim/param/unit"
	"moldturn/sim/study"
)

// keeper is a file of results that grows while a study runs. Every entry is
// synced to disk before the next one, so a program that is killed loses only
// what it was working on.
type keeper struct {
	path string
	book *study.Book
	file *os.File
}

// readBook reads a file of results, compressed or not. whole is false if its
// last line was not finished.
func readBook(path string) (b *study.Book, whole bool, err error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, false, err
	}
	if bytes.HasPrefix(data, []byte{0x1f, 0x8b}) { // RFC 1952, section 2.3.1
		if data, err = gunzip(data); err != nil {
			return nil, false, fmt.Errorf("%s: cannot be unpacked: %w", path, err)
		}
	}
	b, n, err := study.ReadBook(data)
	if err != nil {
		return nil, false, fmt.Errorf("%s: %w", path, err)
	}
	return b, n == len(data), nil
}

func gunzip(data []byte) ([]byte, error) {
	r, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	return io.ReadAll(r)
}

// keep opens the file of a study, or makes it. What it holds of the same study
// stays; with fresh nothing stays. A file of another plant, seed or program is
// an error: results that took long are not thrown away without being asked.
func keep(path string, head study.Head, fresh bool) (*keeper, error) {
	k := &keeper{path: path, book: study.NewBook(head)}
	old, whole, err := readBook(path)
	switch {
	case fresh || errors.Is(err, fs.ErrNotExist):
		old, whole = nil, false
	case err != nil:
		return nil, failed("--fresh begins again and throws away what is there", "%v", err)
	default:
		if err := same(path, "give another folder with --out to keep both, or --fresh to throw the old results away", &old.Head, &head); err != nil {
			return nil, err
		}
		k.book = old
	}
	before := k.book.Head
	k.book.Head = head
	k.book.Head.Book = study.BookVersion
	if !whole || !sameText(before, k.book.Head) {
		if err := resultfiles.Write(path, func(w io.Writer) error { return k.book.Write(w, nil) }); err != nil {
			return nil, err
		}
	}
	k.file, err = os.OpenFile(path, os.O_WRONLY|os.O_APPEND, 0)
	return k, err
}

func sameText(a, b study.Head) bool {
	return fmt.Sprintf("%+v %+v %+v", a, a.Sweep, a.Enough) == fmt.Sprintf("%+v %+v %+v", b, b.Sweep, b.Enough)
}

// add keeps an entry: one write, then a sync.
func (k *keeper) add(e *study.Entry) error {
	line, err := e.Line()
	if err != nil {
		return err
	}
	if _, err := k.file.Write(line); err != nil {
		return fmt.Errorf("%s: not written: %w", k.path, plain(err))
	}
	if err := k.file.Sync(); err != nil {
		return fmt.Errorf("%s: not written: %w", k.path, plain(err))
	}
	k.book.Add(e)
	return nil
}

// finish puts the entries of keys first and in that order, so that the file
// does not tell in which order they came.
func (k *keeper) finish(keys []string) error {
	if err := k.close(); err != nil {
		return err
	}
	return resultfiles.Write(k.path, func(w io.Writer) error { return k.book.Write(w, keys) })
}

func (k *keeper) close() error {
	if k.file == nil {
		return nil
	}
	err := k.file.Close()
	k.file = nil
	return err
}

// same reports what keeps results of one study from going on as another; hint is
// what to do about it.
func same(path, hint string, old, now *study.Head) error {
	switch {
	case old.Kind != now.Kind:
		return failed(hint, "%s: holds results of %q, not of %q", path, "moldturn "+old.Kind, "moldturn "+now.Kind)
	case old.Fingerprint != now.Fingerprint:
		return failed(hint, "%s: holds results of another plant: %s", path, whatChanged(old, now))
	case old.Seed != now.Seed:
		return failed(hint, "%s: holds results of seed %d, not of %d", path, old.Seed, now.Seed)
	case old.Program != now.Program:
		return failed(hint, "%s: holds results of another version of the program: %s", path, old.Program)
	}
	return nil
}

// changesShown is the largest number of changed inputs that an error names.
const changesShown = 3

// whatChanged says in which inputs two heads differ.
func whatChanged(old, now *study.Head) string {
	before, after := assumed(old), assumed(now)
	var changed []string
	for _, in := range after {
		was, ok := valueOf(before, in.Path)
		if !ok {
			was = "not there"
		}
		if was != in.Value && !skipped(in.Path) {
			changed = append(changed, fmt.Sprintf("%s was %s, is %s", in.Path, orNothing(was), orNothing(in.Value)))
		}
	}
	if len(before) == 0 || len(changed) == 0 {
		return now.Scenario + ", or a file that it names, has changed since"
	}
	if more := len(changed) - changesShown; more > 0 {
		changed = append(changed[:changesShown], fmt.Sprintf("and %d more", more))
	}
	return strings.Join(changed, "; ")
}

// assumed is the values behind a head; none where its text cannot be read now.
func assumed(h *study.Head) []scenarios.Input {
	op, err := reopen(h)
	if err != nil {
		return nil
	}
	return op.Base.Value.Assumptions(unit.Metric)
}

func valueOf(list []scenarios.Input, path string) (string, bool) {
	i := slices.IndexFunc(list, func(in scenarios.Input) bool { return in.Path == path })
	if i < 0 {
		return "", false
	}
	return list[i].Value, true
}

// skipped are inputs that no run depends on.
func skipped(path string) bool {
	return path == "name" || path == "note" || path == "base_name" || strings.HasPrefix(path, "alternatives") ||
		path == "run.replications" || path == "run.seed" || path == "run.years"
}

func orNothing(value string) string {
	if value == "" {
		return "left out"
	}
	return value
}
