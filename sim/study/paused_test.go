package study

import "testing"

// All tables that count can be saved: they are plain data, or named as derived.
func TestCountingTablesAreSaved(t *testing.T) {
	if _, err := countedLayout(); err != nil {
		t.Error(err)
	}
}
