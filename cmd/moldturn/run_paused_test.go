package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/sim/study"
)

// Whichever digit of a saved file is altered, the file is refused, packed or not;
// untouched it is read.
func TestEveryAlteredDigitIsRefused(t *testing.T) {
	path := filepath.Join(t.TempDir(), "state.json")
	p := &study.Paused{Version: study.PausedVersion, At: 1234567890, Counted: "a1", Runs: make([]study.Stopped, 1)}
	if err := writePaused(path, p); err != nil {
		t.Fatal(err)
	}
	if back, err := readPaused(path); err != nil || back.At != p.At {
		t.Fatalf("untouched: %v, %v", back, err)
	}
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	digits := 0
	for i, b := range data {
		if b < '0' || b > '9' {
			continue
		}
		digits++
		altered := append([]byte{}, data...)
		altered[i] = '0' + (b-'0'+1)%10
		if err := os.WriteFile(path, altered, 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := readPaused(path); err == nil {
			t.Errorf("digit %d of %q is altered, and the file is read", i, data)
		} else if strings.Contains(string(altered), `"sha256"`) && !strings.Contains(err.Error(), "was altered") {
			t.Errorf("digit %d: %v", i, err)
		}
	}
	if digits < 40 {
		t.Errorf("only %d digits in %q", digits, data)
	}
}
