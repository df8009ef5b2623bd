package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"moldturn/reports/browser"
	resultfiles "moldturn/reports/files"
)

// reportOf runs a comparison and gives the path of its report.
func reportOf(t testing.TB, scenario string, more ...string) string {
	t.Helper()
	dir := t.TempDir()
	args := append([]string{"compare", scenario, "-q", "-o", dir, "--years", "1", "--replications", "3"}, more...)
	if code, _, stderr := try(t.Context(), commands(), args...); code != exitDone {
		t.Fatalf("code %d, stderr %q", code, stderr)
	}
	return filepath.Join(dir, "report.html")
}

// mostBytes is how large the report of the main job may be: it must go through
// mail.
const mostBytes = 2_000_000

// desktop is the window of a large screen.
var desktop = browser.Look{Width: 1280, Height: 900}

func TestReportOfTheMainJob(t *testing.T) {
	b := browser.Start(t)
	path := reportOf(t, "fenwater")
	if info, err := os.Stat(path); err != nil || info.Size() > mostBytes {
		t.Errorf("the report has %v bytes, %v", info.Size(), err)
	}
	for name, look := range map[string]browser.Look{
		"desktop": desktop, "phone, dark": {Width: 390, Height: 844, Phone: true, Dark: true},
	} {
		tab := b.Open(t, path, look)
		if shift := tab.Shift(t); shift > 0 {
			t.Errorf("%s: the layout shifts by %v after load", name, shift)
		}
		lookedAt(t, name, tab)
		pictured(t, name, tab)
		for _, f := range tab.Accessibility(t) {
			t.Errorf("%s: %s", name, f)
		}
		for _, c := range tab.Complaints() {
			t.Errorf("%s: %s", name, c)
		}
	}
}

// lookedAt holds what is seen to rules: every chart drawn, nothing over or
// beyond anything else, nothing faint, nothing empty.
func lookedAt(t *testing.T, name string, tab *browser.Tab) {
	t.Helper()
	browser.Eval[bool](t, tab, browser.Probe)
	type drawing struct {
		ID, Role, Label string
		Failed          bool
		Shapes, Texts   int
	}
	drawings := browser.Eval[[]drawing](t, tab, `probe.drawings().filter(function (d) { return document.getElementById(d.id).getClientRects().length; })`)
	if len(drawings) < 8 {
		t.Errorf("%s: %d drawings", name, len(drawings))
	}
	for _, d := range drawings {
		if d.Failed || d.Shapes < 5 || d.Texts < 3 || d.Role != "img" || d.Label == "" {
			t.Errorf("%s: %+v", name, d)
		}
	}
	for _, question := range []string{"overlaps", "faint", "covered", "empty", "beyond"} {
		for _, bad := range browser.Eval[[]string](t, tab, "probe."+question+"()") {
			t.Errorf("%s: %s: %s", name, question, bad)
		}
	}
	if over := browser.Eval[float64](t, tab, `probe.wide()`); over > 0 {
		t.Errorf("%s: %v pixels too wide", name, over)
	}
}

// pictured leaves a picture of the page in the folder named by LOOK_DIR, for
// eyes.
func pictured(t *testing.T, name string, tab *browser.Tab) {
	t.Helper()
	dir := os.Getenv("LOOK_DIR")
	if dir == "" {
		return
	}
	if err := resultfiles.WriteBytes(filepath.Join(dir, strings.ReplaceAll(name, ", ", "-")+".png"), tab.Shot(t)); err != nil {
		t.Fatal(err)
	}
}

// The decision takes one sheet, and the rest begins on a new one.
func TestDecisionPrintsOnOneSheet(t *testing.T) {
	b := browser.Start(t)
	for _, scenario := range []string{"fenwater", "small-shop", "ten-models"} {
		path := reportOf(t, scenario)
		tab := b.Open(t, path, desktop)
		all := tab.Print(t, browser.Sheet{})
		wall := 0
		for _, s := range all {
			if s.Is(browser.A3) {
				wall++
			}
		}
		if wall != 1 || len(all) < 4 || !all[0].Is(browser.A3) {
			t.Errorf("%s: %d of %d sheets are A3", scenario, wall, len(all))
		}
		browser.Eval[bool](t, tab, `document.querySelectorAll('main > section:not(.sheet), footer').forEach(function (e) { e.remove(); }); true`)
		for name, on := range map[string]browser.Sheet{"A3": browser.A3, "tabloid": browser.Tabloid} {
			if n := len(tab.Print(t, on)); n != 1 {
				t.Errorf("%s: the decision takes %d sheets of %s", scenario, n, name)
			}
		}
		tab.Show(t, browser.Look{Width: 680, Height: 960, Paper: true})
		browser.Eval[bool](t, tab, browser.Probe)
		for _, c := range tab.Complaints() {
			t.Errorf("%s: %s", scenario, c)
		}
	}
}

// Nothing on paper is wider than the paper: a browser would print all of it
// smaller.
func TestPaperIsWideEnough(t *testing.T) {
	b := browser.Start(t)
	tab := b.Open(t, reportOf(t, "fenwater"), desktop)
	tab.Show(t, browser.Look{Width: 680, Height: 960, Paper: true})
	browser.Eval[bool](t, tab, browser.Probe)
	browser.Eval[bool](t, tab, `window.dispatchEvent(new Event('beforeprint'))`)
	for _, bad := range browser.Eval[[]string](t, tab, `Array.from(document.querySelectorAll('section:not(.sheet) *')).filter(function (e) {
		return e.getClientRects().length && e.getBoundingClientRect().right > 681; }).map(function (e) {
		return e.closest('section').id + ' ' + e.tagName + ' ' + Math.round(e.getBoundingClientRect().right) + ' ' + e.textContent.slice(0, 30); }).slice(0, 5)`) {
		t.Errorf("beyond the paper: %s", bad)
	}
}

// Sentences and tables need no scripts.
func TestReportWithoutScripts(t *testing.T) {
	b := browser.Start(t)
	tab := b.WithoutScripts(t, reportOf(t, "fenwater"), desktop)
	if browser.Eval[bool](t, tab, `document.documentElement.hasAttribute('data-drawn')`) {
		t.Fatal("scripts ran")
	}
	seen := browser.Eval[[]string](t, tab, `['h1', '.lead', '.choice', '.panels', 'noscript p', '.table table', 'details.fold > summary'].filter(function (s) {
		var e = document.querySelector(s); return e && e.getClientRects().length > 0 && e.textContent.trim() !== ''; })`)
	if want := []string{"h1", ".lead", ".choice", ".panels", "noscript p", ".table table", "details.fold > summary"}; !slices.Equal(seen, want) {
		t.Errorf("seen %q, want %q", seen, want)
	}
	if n := browser.Eval[int](t, tab, `document.querySelectorAll('figure details table').length`); n < 8 {
		t.Errorf("%d tables behind the charts", n)
	}
}

// A reader without a pointer reaches everything in the order of reading, the
// way past the head first.
func TestReportByKeyboard(t *testing.T) {
	b := browser.Start(t)
	tab := b.Open(t, reportOf(t, "fenwater"), desktop)
	if n := browser.Eval[int](t, tab, `document.querySelectorAll('[tabindex]:not([tabindex="0"])').length`); n > 0 {
		t.Errorf("%d elements set an order of their own", n)
	}
	want := browser.Eval[int](t, tab, `Array.from(document.querySelectorAll('a[href], summary, .scroll, button:not(:disabled), input:not(:disabled)')).filter(function (e) { return e.checkVisibility(); }).length`) // what folds hide is not reached
	last, order := -1.0, 0
	for i := range want {
		tab.Press(t, "\t")
		type focus struct {
			What  string
			Order float64
			Ring  bool
		}
		at := browser.Eval[focus](t, tab, `(function (e) { var s = getComputedStyle(e);
			return { What: e.className + ' ' + e.tagName, Order: Array.from(document.querySelectorAll('*')).indexOf(e), Ring: s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 }; }(document.activeElement))`)
		if i == 0 && at.What != "skip A" {
			t.Errorf("the first stop is %s", at.What)
		}
		if at.Order <= last {
			t.Errorf("stop %d, %s, is before the one before it", i+1, at.What)
			break
		}
		if !at.Ring {
			t.Errorf("stop %d, %s, has no ring", i+1, at.What)
		}
		last, order = at.Order, order+1
	}
	if order < want {
		t.Errorf("%d stops, want %d", order, want)
	}
}

// Names from a file that somebody else wrote stay texts.
func TestReportOfHostileNames(t *testing.T) {
	b := browser.Start(t)
	dir := t.TempDir()
	text, err := os.ReadFile(filepath.Join(root, "scenarios/library/small-shop.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	const evil = `</script><img src=x onerror=alert(1)><b>__f__alert(2)__f__`
	hostile := strings.ReplaceAll(string(text), "Sedge 16", evil)
	hostile = strings.Replace(hostile, "\nname: ", "\nbase_name: \""+evil+" base\"\n#", 1)
	hostile = strings.Replace(hostile, "\nversion: 1\n", "\nversion: 1\nname: \""+evil+"\"\n", 1)
	path := filepath.Join(dir, "hostile.yaml")
	if err := os.WriteFile(path, []byte(hostile), 0o600); err != nil {
		t.Fatal(err)
	}
	tab := b.Open(t, reportOf(t, path), desktop)
	if got := browser.Eval[string](t, tab, `document.querySelector('h1').textContent`); !strings.Contains(got, evil) {
		t.Errorf("the head is %q", got)
	}
	if n := browser.Eval[int](t, tab, `document.images.length + document.querySelectorAll('main b:not(.mark)').length`); n > 0 {
		t.Errorf("%d elements came out of names", n)
	}
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
}

// BenchmarkReport opens the report of the main job from disk, and prints its
// size and the time to first paint.
func BenchmarkReport(b *testing.B) {
	chrome := browser.Start(b)
	path := reportOf(b, "fenwater")
	info, err := os.Stat(path)
	if err != nil {
		b.Fatal(err)
	}
	sum := 0.0
	for b.Loop() {
		sum += chrome.Open(b, path, desktop).FirstPaint(b)
	}
	b.ReportMetric(float64(info.Size())/1e6, "MB")
	b.ReportMetric(sum/float64(b.N), "ms-to-first-paint")
}
