package chart_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"moldturn/reports/browser"
)

// hostile is a namer whose texts attack every layer: markup, scripts, the form
// that go-echarts runs, templates of echarts, rich texts, formulas, keys of
// JavaScript objects, color roles.
func hostile(s string) string {
	attacks := []string{
		`</script><script>alert(1)</script>`, `<img src=x onerror=alert(2)>`, `__f__alert(3)__f__`, `__f__function(){alert(4)}__f__`,
		`{a}{b}{c}{@x}`, `{red|rich}`, `=cmd|' /C calc'!A0`, `"'` + "`" + `${alert(5)}`, `__proto__`, `constructor`, `@ink`,
		`javascript:alert(6)`, `{{.Title}}`, `image://http://192.0.2.1/x.png`, `<svg onload=alert(7)>`, `&lt;b&gt;%00`,
	}
	n := 0
	for _, r := range s {
		n += int(r)
	}
	a := attacks[n%len(attacks)]
	if a == "__proto__" || a == "constructor" || a == "@ink" {
		return a // bare, or it is no key
	}
	return a + " " + s
}

type drawing struct {
	ID, Role, Label, Seen string
	Failed                bool
	Shapes, Texts         int
	Width, Room           float64
}

var (
	desktop     = browser.Look{Width: 1280, Height: 6000}
	desktopDark = browser.Look{Width: 1280, Height: 6000, Dark: true}
	phone       = browser.Look{Width: 390, Height: 9000, Phone: true}
	phoneDark   = browser.Look{Width: 390, Height: 9000, Phone: true, Dark: true}
)

// visit shows the demo page in each look.
func visit(t *testing.T, n namer, check func(t *testing.T, tab *browser.Tab), looks ...browser.Look) {
	t.Helper()
	b := browser.Start(t)
	path := written(t, demo(t, n))
	for _, look := range looks {
		t.Run(fmt.Sprintf("%d wide, dark %v", look.Width, look.Dark), func(t *testing.T) {
			tab := b.Open(t, path, look)
			browser.Eval[bool](t, tab, browser.Probe)
			check(t, tab)
			for _, c := range tab.Complaints() {
				t.Error(c)
			}
		})
	}
}

// drawn checks that all figures are there and returns them.
func drawn(t *testing.T, tab *browser.Tab) map[string]drawing {
	t.Helper()
	out := map[string]drawing{}
	for _, d := range browser.Eval[[]drawing](t, tab, `probe.drawings()`) {
		out[d.ID] = d
		if d.Failed || d.Shapes < 10 || d.Texts < 5 {
			t.Errorf("%s: failed %v, %d shapes, %d texts", d.ID, d.Failed, d.Shapes, d.Texts)
		}
		if d.Width != d.Room || d.Role != "img" || d.Label == "" {
			t.Errorf("%s: %v pixels of %v, role %q, label %q", d.ID, d.Width, d.Room, d.Role, d.Label)
		}
	}
	if len(out) != 9 {
		t.Errorf("%d drawings, want 9", len(out))
	}
	if over := browser.Eval[float64](t, tab, `probe.wide()`); over > 0 {
		t.Errorf("the page is %v pixels wider than the window", over)
	}
	return out
}

func TestPageInABrowser(t *testing.T) {
	visit(t, plain, func(t *testing.T, tab *browser.Tab) {
		figures := drawn(t, tab)
		for _, row := range demoIntervals(plain).Rows {
			if !strings.Contains(figures["gain"].Seen, strings.ReplaceAll(row.Name, " ", "")) {
				t.Errorf("%q is not in the drawing", row.Name)
			}
		}
		for _, p := range demoScatter(plain).Points {
			list := browser.Eval[string](t, tab, `document.querySelector('#luster .names').textContent`)
			if !strings.Contains(figures["luster"].Seen+list, strings.ReplaceAll(p.Name, " ", "")) && !strings.Contains(list, p.Name) {
				t.Errorf("%q is neither in the drawing nor listed", p.Name)
			}
		}
		for _, bad := range browser.Eval[[]string](t, tab, `probe.overlaps()`) {
			t.Errorf("texts overlap or are cut: %s", bad)
		}
		for _, bad := range browser.Eval[[]string](t, tab, `probe.faint()`) {
			t.Errorf("contrast below 4.5: %s", bad)
		}
	}, desktop, desktopDark, phone, phoneDark)
}

func TestHostileNames(t *testing.T) {
	visit(t, hostile, func(t *testing.T, tab *browser.Tab) {
		drawn(t, tab)
		if n := browser.Eval[int](t, tab, `document.querySelectorAll('img, a:not(nav a, .skip), iframe, script:not([type])').length`); n != 2 {
			t.Errorf("%d elements that no page has, want the 2 scripts", n)
		}
		// Names are whole in the axis that echarts was given, and in the texts.
		page := browser.Eval[string](t, tab, `document.body.textContent`)
		for _, c := range demoPareto(hostile).Causes {
			if !strings.Contains(page, c.Name) {
				t.Errorf("%q is not on the page as it is", c.Name)
			}
		}
		sweepTips(t, tab)
	}, desktop, phoneDark)
}

// sweepTips moves the pointer over every figure and expects tips, as texts.
func sweepTips(t *testing.T, tab *browser.Tab) {
	t.Helper()
	type spot struct{ X, Y, W, H float64 }
	for _, id := range []string{"luster", "weeks", "mold-hours", "months", "gain", "causes", "diary", "by-week"} {
		s := browser.Eval[spot](t, tab, fmt.Sprintf(`(function () { var r = document.querySelector('#%s .plot').getBoundingClientRect();
			return { X: r.x, Y: r.y, W: r.width, H: r.height }; }())`, id))
		tips := ""
		for i := range 12 {
			at := spot{X: s.X + s.W*(0.35+float64(i)*0.05), Y: s.Y + s.H*0.3}
			if id == "luster" {
				at = browser.Eval[spot](t, tab, fmt.Sprintf(`(function () { var d = document.querySelector('#luster .plot'), c = echarts.getInstanceByDom(d),
					s = c.getOption().series[0].data, v = s[%d %% s.length].value, p = c.convertToPixel('grid', v), r = d.getBoundingClientRect();
					return { X: r.x + p[0], Y: r.y + p[1], W: 0, H: 0 }; }())`, i))
			}
			tab.Move(t, at.X, at.Y)
			tips += browser.Eval[string](t, tab, `new Promise(function (ok) { setTimeout(function () { ok(probe.tip()); }, 30); })`)
		}
		if !regexp.MustCompile(`[a-z<{=]`).MatchString(tips) {
			t.Errorf("%s: no tip appeared", id)
		}
	}
}

func TestThemeAndPaper(t *testing.T) {
	b := browser.Start(t)
	tab := b.Open(t, written(t, demo(t, plain)), browser.Look{})
	browser.Eval[bool](t, tab, browser.Probe)
	ink := func() string { // two frames later, when changes of media have been told
		return browser.Eval[string](t, tab, `new Promise(function (ok) { requestAnimationFrame(function () {
			requestAnimationFrame(function () { ok(probe.inkOf('gain')); }); }); })`)
	}
	light := ink()
	tab.Show(t, browser.Look{Width: 1280, Height: 900, Dark: true})
	dark := ink()
	if light == dark {
		t.Errorf("the drawing keeps %s in the dark", light)
	}
	pdf := tab.PDF(t)
	if !strings.HasPrefix(string(pdf), "%PDF-") || len(pdf) < 50_000 {
		t.Errorf("the PDF has %d bytes", len(pdf))
	}
	if pages := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(pdf, -1)); pages < 3 || pages > 12 {
		t.Errorf("the PDF has %d pages", pages)
	}
	if ink() != dark {
		t.Error("after printing the drawing is not dark again")
	}
	browser.Eval[bool](t, tab, `window.dispatchEvent(new Event('beforeprint'))`)
	for _, d := range browser.Eval[[]drawing](t, tab, `probe.drawings()`) {
		if d.Width != 660 {
			t.Errorf("%s is %v pixels wide on paper", d.ID, d.Width)
		}
	}
	if ink() == dark {
		t.Error("paper is drawn in the colors of the dark")
	}
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
}
