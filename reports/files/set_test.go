package files_test

import (
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/reports/files"
)

func text(s string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, s)
		return err
	}
}

// oldSet is a folder with three files.
func oldSet(t *testing.T) (dir string, paths [3]string) {
	t.Helper()
	dir = t.TempDir()
	for i, name := range [...]string{"a.csv", "b.json", "c.html"} {
		paths[i] = filepath.Join(dir, name)
		if err := os.WriteFile(paths[i], []byte("old"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return dir, paths
}

// unchanged fails unless the folder is as oldSet left it.
func unchanged(t *testing.T, dir string, paths [3]string) {
	t.Helper()
	for _, path := range paths {
		if got := read(t, path); got != "old" {
			t.Errorf("%s holds %q", filepath.Base(path), got)
		}
	}
	if got := names(t, dir); len(got) != len(paths) {
		t.Errorf("the folder holds %q", got)
	}
}

func TestSetIsWritten(t *testing.T) {
	dir, paths := oldSet(t)
	fresh := filepath.Join(dir, "new", "d.xlsx")
	err := files.WriteAll(t.Context(), []files.File{{paths[0], text("1")}, {paths[1], text("2")}, {paths[2], text("3")}, {fresh, text("4")}})
	if err != nil {
		t.Fatal(err)
	}
	if got := read(t, paths[0]) + read(t, paths[1]) + read(t, paths[2]) + read(t, fresh); got != "1234" {
		t.Errorf("contents %q", got)
	}
	if got := names(t, dir); len(got) != 4 {
		t.Errorf("the folder holds %q", got)
	}
}

// What goes wrong with the last file of a set keeps the first as it was.
func TestSetIsAllOrNothing(t *testing.T) {
	broken := errors.New("no content")
	for name, last := range map[string]func(dir string, paths [3]string) files.File{
		"content fails": func(_ string, p [3]string) files.File {
			return files.File{Path: p[2], Write: func(w io.Writer) error {
				io.WriteString(w, strings.Repeat("half", 10_000))
				return broken
			}}
		},
		"a folder":   func(dir string, _ [3]string) files.File { return files.File{Path: dir, Write: text("x")} },
		"empty path": func(string, [3]string) files.File { return files.File{Write: text("x")} },
	} {
		dir, paths := oldSet(t)
		bad := last(dir, paths)
		err := files.WriteAll(t.Context(), []files.File{{paths[0], text("new")}, {paths[1], text("new")}, bad})
		if err == nil || !strings.HasPrefix(err.Error(), bad.Path+": not written: ") {
			t.Errorf("%s: error %v", name, err)
		}
		unchanged(t, dir, paths)
	}
}

// A stop while the last content is written, or before the first, leaves all as
// it was and is told as a stop.
func TestSetStops(t *testing.T) {
	dir, paths := oldSet(t)
	ctx, stop := context.WithCancel(t.Context())
	defer stop()
	for _, when := range []string{"while the last is written", "before the first"} {
		err := files.WriteAll(ctx, []files.File{{paths[0], text("new")}, {paths[1], text("new")}, {paths[2], func(w io.Writer) error {
			stop()
			_, err := io.WriteString(w, "new")
			return err
		}}})
		if err != context.Canceled {
			t.Errorf("%s: error %v", when, err)
		}
		unchanged(t, dir, paths)
	}
}
