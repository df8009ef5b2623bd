package browser

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// Sheet is the size of a printed sheet in inches.
type Sheet struct{ Width, Height float64 }

// The sheets of paper for walls, in inches: ISO 216, and ANSI/ASME Y14.1 B.
var (
	A3      = Sheet{11.69, 16.54}
	Tabloid = Sheet{11, 17}
)

// Print prints the page and gives the size of every sheet, in order. With the
// zero Sheet the style sheet of the page chooses them, else all are alike.
func (tab *Tab) Print(t testing.TB, on Sheet) []Sheet {
	t.Helper()
	options := []chromedp.PDFOption{chromedp.PDFPrintBackground(), chromedp.PDFPreferCSSPageSize()}
	if on != (Sheet{}) {
		options = []chromedp.PDFOption{chromedp.PDFPrintBackground(), chromedp.PDFPaper(chromedp.PaperSize{Width: on.Width, Height: on.Height}), chromedp.PDFMargin(0.5)}
	}
	b, err := chromedp.Run(tab.ctx, chromedp.PrintToPDF(options...))
	if err != nil {
		t.Fatal(err)
	}
	return sheets(b)
}

// mediaBox is the size of a page in points, as ISO 32000-1, 7.7.3.3 has it.
var mediaBox = regexp.MustCompile(`/MediaBox\s*\[\s*0 0 ([0-9.]+) ([0-9.]+)\s*\]`)

func sheets(pdf []byte) []Sheet {
	var out []Sheet
	for _, m := range mediaBox.FindAllSubmatch(pdf, -1) {
		w, _ := strconv.ParseFloat(string(m[1]), 64)
		h, _ := strconv.ParseFloat(string(m[2]), 64)
		out = append(out, Sheet{w / 72, h / 72})
	}
	return out
}

// Is tells whether two sheets have the same size, but for rounding.
func (s Sheet) Is(other Sheet) bool {
	near := func(a, b float64) bool { return a-b < 0.05 && b-a < 0.05 }
	return near(s.Width, other.Width) && near(s.Height, other.Height)
}

// WithoutScripts opens the file as a browser does that runs no scripts. Eval
// still works.
func (b *Browser) WithoutScripts(t testing.TB, path string, look Look) *Tab {
	t.Helper()
	tab := b.Open(t, path, look)
	if _, err := chromedp.Call(tab.ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true}); err != nil {
		t.Fatal(err)
	}
	tab.do(t, chromedp.Reload())
	return tab
}

// Shift is how far the layout moved after the page was shown, summed up: the
// scores of the Layout Instability API.
func (tab *Tab) Shift(t testing.TB) float64 {
	t.Helper()
	return Eval[float64](t, tab, `new Promise(function (ok) {
		var sum = 0;
		new PerformanceObserver(function (list) { list.getEntries().forEach(function (e) { sum += e.value; }); }).observe({ type: 'layout-shift', buffered: true });
		setTimeout(function () { ok(sum); }, 500);
	})`)
}

// FirstPaint is the milliseconds from the start of loading to the first text or
// drawing on the screen: Paint Timing, first-contentful-paint.
func (tab *Tab) FirstPaint(t testing.TB) float64 {
	t.Helper()
	return Eval[float64](t, tab, `new Promise(function (ok) {
		new PerformanceObserver(function (list) {
			list.getEntries().forEach(function (e) { if (e.name === 'first-contentful-paint') { ok(e.startTime); } });
		}).observe({ type: 'paint', buffered: true });
	})`)
}
