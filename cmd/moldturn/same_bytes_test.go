package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// The number of workers, the order in which they finish, and the folder leave
// no trace in any result.
func TestSameBytesForAnyNumberOfWorkers(t *testing.T) {
	var first map[string][]byte
	for _, workers := range []int{1, 2, 7} {
		dir := t.TempDir()
		code, stdout, stderr := try(t.Context(), commands(), "compare", "fenwater", "-q", "--years", "1", "--replications", "3",
			"--workers", strconv.Itoa(workers), "-o", dir)
		if code != exitDone {
			t.Fatalf("code %d, stderr %q", code, stderr)
		}
		got := map[string][]byte{"stdout": []byte(stdout)}
		for _, name := range []string{"results.csv", "results.json", "report.html"} {
			b, err := os.ReadFile(filepath.Join(dir, name))
			if err != nil {
				t.Fatal(err)
			}
			got[name] = b
			if bytes.Contains(b, []byte(dir)) {
				t.Errorf("%s names its folder", name)
			}
		}
		if first == nil {
			first = got
			continue
		}
		for name, b := range got {
			if !bytes.Equal(b, first[name]) {
				t.Errorf("%s differs with %d workers", name, workers)
			}
		}
	}
}
