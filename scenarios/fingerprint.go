package scenarios

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
)

// named are the groups of inputs that no run depends on: names, notes, how
// often to run, and the list of alternatives.
var named = []string{"name", "note", "base_name", "run", "alternatives"}

// Fingerprint is the hash of all that a run of the plant depends on beside its
// seed and replication: every input except names, notes and counts of runs, the
// years, and the content of the files the scenario names. Plants with the same
// fingerprint have the same runs.
func (p *Plant) Fingerprint(files map[string][]byte) string {
	h := sha256.New()
	fmt.Fprintf(h, "years %d %d\n", p.Warm, p.Years)
	for _, kid := range p.Value.kids {
		if !slices.Contains(named, kid.branch.word) {
			kid.canonical(h)
		}
	}
	var names []string
	for name := range files {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		fmt.Fprintf(h, "file %q %d\n", name, len(files[name]))
		h.Write(files[name])
	}
	return hex.EncodeToString(h.Sum(nil))
}
