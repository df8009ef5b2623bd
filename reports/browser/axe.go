package browser

import (
	_ "embed"
	"fmt"
	"testing"
)

// axe is dist axe.min.js of the npm package axe-core 4.10.3, unchanged, under
// the Mozilla Public License 2.0, which stands beside it. It is used by tests
// only. SHA-256 880970c081707360e64f34cea25ff91892f5bc95675b0776925b9709dd8a68bb.
//
//go:embed testdata/axe.min.js
var axe string

// Finding is a rule of the accessibility engine that the page breaks.
type Finding struct {
	ID, Impact, Help string
	Where            []string // selectors of the first elements
}

func (f Finding) String() string {
	return fmt.Sprintf("%s (%s): %s, at %q", f.ID, f.Impact, f.Help, f.Where)
}

// Accessibility runs the engine on the open page and gives what it finds serious
// or critical. Drawings, which are one image each, are left out. The engine is put in by the test; the page's own policy is not
// touched.
func (tab *Tab) Accessibility(t testing.TB) []Finding {
	t.Helper()
	Eval[bool](t, tab, axe+"\n;true")
	return Eval[[]Finding](t, tab, `axe.run({ exclude: [[".plot svg"]] }, { preload: false, resultTypes: ['violations'] }).then(function (r) {
		return r.violations.filter(function (v) { return v.impact === 'serious' || v.impact === 'critical'; }).map(function (v) {
			return { ID: v.id, Impact: v.impact, Help: v.help, Where: v.nodes.slice(0, 3).map(function (n) { return String(n.target); }) };
		});
	})`)
}
