// Package browser opens finished pages in a real browser. It is used by tests
// only; nothing that ships imports it.
//
// A test that needs a browser calls Start. Where no browser is found the test
// is skipped with a line that says so, unless the environment has
// REQUIRE_BROWSER=1: then it fails. Every browser has a fresh profile, shows no
// window, and sends nothing in the background.
//
//	b := browser.Start(t)
//	tab := b.Open(t, path, browser.Look{Width: 1280, Height: 900})
//	n := browser.Eval[int](t, tab, `document.images.length`)
//	for _, c := range tab.Complaints() { t.Error(c) }
package browser

import (
	"context"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// Browser is one running browser. Start makes it, the end of the test stops it.
type Browser struct{ ctx context.Context }

// Look is how a page is shown. Zero Width and Height mean 1280 by 900.
type Look struct {
	Width, Height int // CSS pixels
	Dark          bool
	Phone         bool // touch, and the viewport of a phone
	Paper         bool // the styles for print, on the screen
}

// patience is how long one test may use the browser.
const patience = 8 * time.Minute

// Start starts a browser for the test, or skips the test.
func Start(t testing.TB) *Browser {
	t.Helper()
	path := find()
	if path == "" {
		if os.Getenv("REQUIRE_BROWSER") == "1" {
			t.Fatal("no browser found (chromium, chromium-browser, google-chrome) and REQUIRE_BROWSER=1")
		}
		t.Skip("skipped: no browser found (chromium, chromium-browser, google-chrome)")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path),
		chromedp.NoSandbox, // containers often run tests as root
		chromedp.DisableGPU,
		chromedp.UserDataDir(t.TempDir()),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("no-pings", true),
		chromedp.Flag("lang", "en-US"),
	)
	timed, stopTime := context.WithTimeout(context.Background(), patience)
	alloc, stopAlloc := chromedp.NewExecAllocator(timed, options...)
	ctx, stop := chromedp.NewContext(alloc)
	t.Cleanup(func() { stop(); stopAlloc(); stopTime() })
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("the browser %s does not start: %v", path, err)
	}
	return &Browser{ctx: ctx}
}

func find() string {
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome", "google-chrome-stable"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}

// Tab is one open page. Whatever it complains about is collected from the
// moment before it is loaded.
type Tab struct {
	ctx context.Context
	log *complaints
}

// Open opens the file in a new tab and waits until it is loaded.
func (b *Browser) Open(t testing.TB, path string, look Look) *Tab {
	t.Helper()
	abs, err := filepath.Abs(path)
	if err != nil {
		t.Fatal(err)
	}
	address := (&url.URL{Scheme: "file", Path: filepath.ToSlash(abs)}).String()
	ctx, stop := chromedp.NewContext(b.ctx)
	t.Cleanup(stop)
	tab := &Tab{ctx: ctx, log: &complaints{own: address}}
	tab.listen(t)
	if look.Width == 0 || look.Height == 0 {
		look.Width, look.Height = 1280, 900
	}
	tab.show(t, look)
	tab.do(t, chromedp.Navigate(address))
	return tab
}

// listen collects complaints; it is in place before the page is.
func (tab *Tab) listen(t testing.TB) {
	t.Helper()
	if err := chromedp.Listen(tab.ctx, tab.log.event(tab.ctx)); err != nil {
		t.Fatal(err)
	}
	if _, err := chromedp.Call(tab.ctx, network.Enable, network.EnableParams{}); err != nil {
		t.Fatal(err)
	}
	script := page.AddScriptToEvaluateOnNewDocumentParams{Source: reportPolicy}
	if _, err := chromedp.Call(tab.ctx, page.AddScriptToEvaluateOnNewDocument, script); err != nil {
		t.Fatal(err)
	}
}

// reportPolicy turns violations of the page's policy into console errors, each
// named by its directive.
const reportPolicy = `document.addEventListener('securitypolicyviolation', function (e) {
  console.error('policy violation: ' + e.violatedDirective + ' ' + e.blockedURI);
});`

// Show changes size and theme of the open page, as a user would.
func (tab *Tab) Show(t testing.TB, look Look) {
	t.Helper()
	tab.show(t, look)
}

func (tab *Tab) show(t testing.TB, look Look) {
	t.Helper()
	scheme := "light"
	if look.Dark {
		scheme = "dark"
	}
	options := []chromedp.EmulateViewportOption{}
	if look.Phone {
		options = append(options, chromedp.EmulateMobile, chromedp.EmulateTouch, chromedp.EmulatePortrait)
	}
	tab.do(t, chromedp.EmulateViewport(int64(look.Width), int64(look.Height), options...))
	medium := ""
	if look.Paper {
		medium = "print"
	}
	media := emulation.SetEmulatedMediaParams{Media: medium, Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}}
	if _, err := chromedp.Call(tab.ctx, emulation.SetEmulatedMedia, media); err != nil {
		t.Fatal(err)
	}
}

func (tab *Tab) do(t testing.TB, steps ...chromedp.Action[chromedp.Void]) {
	t.Helper()
	if err := chromedp.Do(tab.ctx, steps...); err != nil {
		t.Fatal(err)
	}
}

// Complaints are the console errors and warnings, uncaught errors, policy
// violations, dialogs and network requests so far, in order. A request for the
// page itself, and for data inside it, is none.
func (tab *Tab) Complaints() []string { return tab.log.list() }

// Eval runs a script in the page and returns its value. Promises are awaited.
func Eval[T any](t testing.TB, tab *Tab, script string) T {
	t.Helper()
	v, err := chromedp.Run(tab.ctx, chromedp.Evaluate[T](script, await))
	if err != nil {
		t.Fatalf("%v\nin %s", err, script)
	}
	return v
}

// Move puts the pointer on a place of the window, in CSS pixels.
func (tab *Tab) Move(t testing.TB, x, y float64) {
	t.Helper()
	tab.do(t, chromedp.MouseEvent("mouseMoved", x, y))
}

// Shot is a PNG of the whole page.
func (tab *Tab) Shot(t testing.TB) []byte {
	t.Helper()
	b, err := chromedp.Run(tab.ctx, chromedp.FullScreenshot(100))
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// ShotOf is a PNG of the first element that the CSS selector finds.
func (tab *Tab) ShotOf(t testing.TB, selector string) []byte {
	t.Helper()
	b, err := chromedp.Run(tab.ctx, chromedp.Screenshot(chromedp.CSS(selector)))
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// PDF prints the page on A4 with the margins of its style sheet.
func (tab *Tab) PDF(t testing.TB) []byte {
	t.Helper()
	b, err := chromedp.Run(tab.ctx, chromedp.PrintToPDF(chromedp.PDFPaper(chromedp.PaperA4),
		chromedp.PDFMargins(0.63, 0.59, 0.63, 0.59), chromedp.PDFPrintBackground()))
	if err != nil {
		t.Fatal(err)
	}
	return b
}
