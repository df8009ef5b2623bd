package files_test

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"

	"moldturn/reports/files"
)

func read(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// names lists a folder, hidden files included.
func names(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

func TestWriteMakesFoldersAndLeavesNothingElse(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a", "b", "report.html")
	if err := files.WriteBytes(path, []byte("whole")); err != nil {
		t.Fatal(err)
	}
	if got := read(t, path); got != "whole" {
		t.Errorf("content %q", got)
	}
	if got := names(t, filepath.Dir(path)); len(got) != 1 || got[0] != "report.html" {
		t.Errorf("folder holds %q", got)
	}
}

func TestFailureKeepsTheOldFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "report.html")
	if err := files.WriteBytes(path, []byte("old")); err != nil {
		t.Fatal(err)
	}
	stop := errors.New("stopped half way")
	err := files.Write(path, func(w io.Writer) error {
		io.WriteString(w, strings.Repeat("new", 100_000))
		return stop
	})
	if !errors.Is(err, stop) || !strings.Contains(err.Error(), path) {
		t.Errorf("error %v", err)
	}
	if got := read(t, path); got != "old" {
		t.Errorf("content is %d bytes, want the old file", len(got))
	}
	if got := names(t, dir); len(got) != 1 {
		t.Errorf("folder holds %q", got)
	}
}

// A reader that opens the file again and again while it is replaced must see
// one of the two contents, complete.
func TestReadersNeverSeeAHalf(t *testing.T) {
	path := filepath.Join(t.TempDir(), "report.html")
	a, b := strings.Repeat("a", 200_000), strings.Repeat("b", 300_000)
	if err := files.WriteBytes(path, []byte(a)); err != nil {
		t.Fatal(err)
	}
	var wg sync.WaitGroup
	wg.Go(func() {
		for range 20 {
			files.WriteBytes(path, []byte(b))
			files.WriteBytes(path, []byte(a))
		}
	})
	for range 200 {
		if got := read(t, path); got != a && got != b {
			t.Fatalf("a reader saw %d bytes", len(got))
		}
	}
	wg.Wait()
}

func TestPermissionsAndLinks(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("permission bits and links are those of Unix")
	}
	dir := t.TempDir()
	path, link := filepath.Join(dir, "real"), filepath.Join(dir, "link")
	if err := os.WriteFile(path, []byte("old"), 0o640); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(path, link); err != nil {
		t.Fatal(err)
	}
	if err := files.WriteBytes(link, []byte("new")); err != nil {
		t.Fatal(err)
	}
	if got := read(t, path); got != "new" {
		t.Errorf("content behind the link %q", got)
	}
	if info, _ := os.Lstat(link); info.Mode()&os.ModeSymlink == 0 {
		t.Error("the link was replaced by a file")
	}
	if info, _ := os.Stat(path); info.Mode().Perm() != 0o640 {
		t.Errorf("permissions %v, want 0640", info.Mode().Perm())
	}
}

func TestDevicesAreNotReplaced(t *testing.T) {
	before, err := os.Stat(os.DevNull)
	if err != nil || before.Mode().IsRegular() {
		t.Skip("no null device here")
	}
	if err := files.WriteBytes(os.DevNull, []byte("gone")); err != nil {
		t.Fatal(err)
	}
	after, err := os.Stat(os.DevNull)
	if err != nil || !os.SameFile(before, after) {
		t.Fatal("the null device was replaced")
	}
}

func TestComplaints(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "file"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	for name, path := range map[string]string{
		"empty path":              "",
		"a folder":                dir,
		"a file where folders go": filepath.Join(dir, "file", "x", "report.html"),
	} {
		if err := files.WriteBytes(path, []byte("x")); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
