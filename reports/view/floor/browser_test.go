package floor_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/reports/browser"
	"moldturn/reports/files"
	"moldturn/reports/page"
	"moldturn/reports/view/floor"
	"moldturn/reports/view/weekly"
	"moldturn/sim"
)

// attack is a name that is markup, script and an end of script.
const attack = `</script><script>alert(1)</script><img src=x onerror=alert(2)>"'{a}__f__alert(3)__f__ `

func saved(t *testing.T, b []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "near.html")
	if err := files.WriteBytes(path, b); err != nil {
		t.Fatal(err)
	}
	return path
}

// now is the moment shown and the texts of all boards.
func now(t *testing.T, tab *browser.Tab) (moment, boards string) {
	t.Helper()
	const js = `(function (d) { return [d.querySelector('.when').textContent, Array.from(d.querySelectorAll('.board tbody > tr > *')).map(function (c) { return c.textContent; }).join('|')]; }
		(document.querySelector('.diary')))`
	x := browser.Eval[[]string](t, tab, js)
	return x[0], x[1]
}

// shapes counts what is drawn in each figure.
const shapes = `Array.from(document.querySelectorAll('.plot')).map(function (p) { return p.classList.contains('failed') ? -1 : p.querySelectorAll('svg path, svg rect, svg line, svg text').length; })`

func TestFloorInABrowser(t *testing.T) {
	b := browser.Start(t)
	x := run(t, "fenwater", nil)
	path := saved(t, written(t, x.sections(t)...))
	tab := b.Open(t, path, browser.Look{Width: 1280, Height: 900})
	drawn(t, tab)
	diarySteps(t, tab)
	likeGo(t, tab, x.diary(t))
	look(t, tab, "desktop")
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
	tab = b.Open(t, path, browser.Look{Width: 390, Height: 844, Phone: true})
	drawn(t, tab)
	if over := browser.Eval[float64](t, tab, `document.scrollingElement.scrollWidth - window.innerWidth`); over > 0 {
		t.Errorf("the page is %v pixels wider than a phone", over)
	}
	look(t, tab, "phone")
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
}

func drawn(t *testing.T, tab *browser.Tab) {
	t.Helper()
	n := browser.Eval[[]int](t, tab, shapes)
	if len(n) != 3 {
		t.Fatalf("%d drawings, want molds, weeks and waits", len(n))
	}
	for i, least := range []int{300, 300, 15} {
		if n[i] < least {
			t.Errorf("drawing %d has %d shapes, want %d or more", i+1, n[i], least)
		}
	}
}

// diarySteps goes through the diary by keys alone.
func diarySteps(t *testing.T, tab *browser.Tab) {
	t.Helper()
	start, boards := now(t, tab)
	browser.Eval[bool](t, tab, `new Promise(function (ok) { setTimeout(function () { ok(true); }, 300); })`)
	if later, _ := now(t, tab); later != start {
		t.Errorf("it moved from %q to %q by itself", start, later)
	}
	browser.Eval[bool](t, tab, `(document.querySelector('.steps button').focus(), true)`)
	tab.Press(t, browser.Right)
	next, _ := now(t, tab)
	if next == start || next[len(next)-2:] != start[len(start)-2:] {
		t.Errorf("an hour after %q is %q", start, next)
	}
	tab.PressShift(t, browser.Right)
	day, _ := now(t, tab)
	if day[len(day)-5:] != next[len(next)-5:] || day == next {
		t.Errorf("a day after %q is %q", next, day)
	}
	tab.PressShift(t, browser.Left)
	tab.Press(t, browser.Left)
	if back, same := now(t, tab); back != start || same != boards {
		t.Errorf("back at %q with other boards than at %q", back, start)
	}
	tab.Press(t, browser.End)
	if end, _ := now(t, tab); !strings.HasSuffix(end, "23:59") {
		t.Errorf("the end is %q", end)
	}
	tab.Press(t, browser.Home)
	if first, _ := now(t, tab); !strings.HasSuffix(first, "00:00") {
		t.Errorf("the first moment is %q", first)
	}
	tab.Press(t, strings.Repeat(browser.Tabulator, 3)+browser.Enter) // to "change ▶"
	_, before := now(t, tab)
	tab.Press(t, browser.Enter)
	if _, after := now(t, tab); after == before {
		t.Error("a change changes nothing")
	}
}

// likeGo goes to some moments with the slider: the script shows what page.Diary
// says, which is also what is there without scripts.
func likeGo(t *testing.T, tab *browser.Tab, d page.Diary) {
	t.Helper()
	for _, minute := range []int{0, d.Start, d.Start + 217, 3*24*60 + 1, d.Minutes / 2, d.Minutes - 1} {
		browser.Eval[bool](t, tab, fmt.Sprintf(`(function (s) { s.value = %d; s.dispatchEvent(new Event('input')); return true; }(document.querySelector('.steps input')))`, minute))
		moment, boards := now(t, tab)
		var want []string
		for b := range d.Boards {
			for _, r := range d.At(b, minute).Rows {
				for _, c := range r.Cells {
					want = append(want, c.Text)
				}
			}
		}
		if moment != d.When(minute) || boards != strings.Join(want, "|") {
			t.Errorf("minute %d: %q\n%s\nwant %q\n%s", minute, moment, boards, d.When(minute), strings.Join(want, "|"))
		}
	}
}

func TestHostileNamesOfAFloor(t *testing.T) {
	b := browser.Start(t)
	x := run(t, "small-shop", func(p *sim.Plan) { rename(p, func(s string) string { return attack + s }) })
	tab := b.Open(t, saved(t, written(t, x.sections(t)...)), browser.Look{Width: 1280, Height: 900})
	drawn(t, tab)
	browser.Eval[bool](t, tab, `(document.querySelector('.steps button').focus(), true)`)
	tab.Press(t, browser.Right+browser.Right)
	if n := browser.Eval[int](t, tab, `document.querySelectorAll('img, iframe, script:not([type])').length`); n != 2 {
		t.Errorf("%d elements that no page has, want the 2 scripts", n)
	}
	if _, boards := now(t, tab); !strings.Contains(boards, "<img src=x onerror=alert(2)>") {
		t.Error("a name is not whole in the boards")
	}
	for _, c := range tab.Complaints() {
		t.Error(c)
	}
}

// look leaves pictures in the folder named by LOOK_DIR, for eyes.
func look(t *testing.T, tab *browser.Tab, name string) {
	t.Helper()
	dir := os.Getenv("LOOK_DIR")
	if dir == "" {
		return
	}
	for _, id := range []string{floor.MoldsID, weekly.LoadsID, weekly.LostID, floor.DiaryID} {
		if err := files.WriteBytes(filepath.Join(dir, name+"-"+id+".png"), tab.ShotOf(t, "#"+id)); err != nil {
			t.Fatal(err)
		}
	}
}
