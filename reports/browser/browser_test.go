package browser_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"moldturn/reports/browser"
)

// A check that never complains proves nothing, so here is a page that does
// everything wrong.
func TestComplaintsAreSeen(t *testing.T) {
	b := browser.Start(t)
	path := filepath.Join(t.TempDir(), "bad.html")
	bad := `<!DOCTYPE html><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-AAAA' 'unsafe-inline'">
<img src="http://192.0.2.1/x.png"><p>bad</p>`
	loud := `<!DOCTYPE html><meta charset="utf-8"><p>loud</p><script>
console.error('a cry'); alert('a dialog'); fetch('http://192.0.2.1/y').catch(function () {});
setTimeout(function () { throw new Error('a throw'); }, 0);</script>`
	if err := os.WriteFile(path, []byte(bad), 0o600); err != nil {
		t.Fatal(err)
	}
	tab := b.Open(t, path, browser.Look{})
	browser.Eval[bool](t, tab, `new Promise(function (r) { setTimeout(r, 300, true); })`)
	expect(t, tab, "policy violation: img-src")

	if err := os.WriteFile(path, []byte(loud), 0o600); err != nil {
		t.Fatal(err)
	}
	tab = b.Open(t, path, browser.Look{})
	browser.Eval[bool](t, tab, `new Promise(function (r) { setTimeout(r, 300, true); })`)
	expect(t, tab, "a cry", "dialog: alert", "request: http://192.0.2.1/y", "a throw")
}

func expect(t *testing.T, tab *browser.Tab, want ...string) {
	t.Helper()
	got := tab.Complaints()
	for _, w := range want {
		if !slices.ContainsFunc(got, func(s string) bool { return strings.Contains(s, w) }) {
			t.Errorf("%q was not seen in %q", w, got)
		}
	}
}

func TestLook(t *testing.T) {
	b := browser.Start(t)
	path := filepath.Join(t.TempDir(), "plain.html")
	if err := os.WriteFile(path, []byte("<!DOCTYPE html><title>x</title><meta name=viewport content='width=device-width'><p>text</p>"), 0o600); err != nil {
		t.Fatal(err)
	}
	tab := b.Open(t, path, browser.Look{Width: 390, Height: 800, Dark: true, Phone: true})
	if w := browser.Eval[int](t, tab, `window.innerWidth`); w != 390 {
		t.Errorf("width %d", w)
	}
	if !browser.Eval[bool](t, tab, `matchMedia('(prefers-color-scheme: dark)').matches`) {
		t.Error("not dark")
	}
	if got := tab.Complaints(); len(got) != 0 {
		t.Errorf("complaints about a plain page: %q", got)
	}
	if pdf := tab.PDF(t); !strings.HasPrefix(string(pdf), "%PDF-") {
		t.Error("no PDF")
	}
}
