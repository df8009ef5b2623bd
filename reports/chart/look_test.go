package chart_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"moldturn/reports/browser"
	"moldturn/reports/files"
	"moldturn/reports/page"
)

// written puts a page into a file of its own.
func written(t *testing.T, p page.Page) string {
	t.Helper()
	var b bytes.Buffer
	if err := page.Write(&b, p); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "report.html")
	if err := files.WriteBytes(path, b.Bytes()); err != nil {
		t.Fatal(err)
	}
	return path
}

// TestLook leaves pictures of the demo page in the folder named by LOOK_DIR,
// for eyes.
func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK_DIR")
	if dir == "" {
		t.Skip("skipped: LOOK_DIR names no folder for pictures")
	}
	b := browser.Start(t)
	tab := b.Open(t, written(t, demo(t, hostile)), browser.Look{Width: 900, Height: 900})
	if err := files.WriteBytes(filepath.Join(dir, "hostile.png"), tab.Shot(t)); err != nil {
		t.Fatal(err)
	}
	path := written(t, demo(t, plain))
	for name, look := range map[string]browser.Look{
		"desktop": {Width: 1280, Height: 900}, "desktop-dark": {Width: 1280, Height: 900, Dark: true},
		"phone": {Width: 390, Height: 844, Phone: true}, "phone-dark": {Width: 390, Height: 844, Phone: true, Dark: true},
	} {
		tab := b.Open(t, path, look)
		if err := files.WriteBytes(filepath.Join(dir, name+".png"), tab.Shot(t)); err != nil {
			t.Fatal(err)
		}
		for _, c := range tab.Complaints() {
			t.Error(name, c)
		}
		if name == "desktop-dark" {
			if err := files.WriteBytes(filepath.Join(dir, "print.pdf"), tab.PDF(t)); err != nil {
				t.Fatal(err)
			}
		}
		if name == "desktop-dark" {
			tab.Show(t, browser.Look{Width: 680, Height: 960, Paper: true, Dark: true})
			browser.Eval[bool](t, tab, `window.dispatchEvent(new Event('beforeprint'))`)
			if err := files.WriteBytes(filepath.Join(dir, "paper.png"), tab.Shot(t)); err != nil {
				t.Fatal(err)
			}
			pdf := b.Open(t, filepath.Join(dir, "print.pdf"), browser.Look{Width: 900, Height: 1200})
			browser.Eval[bool](t, pdf, `new Promise(function (ok) { setTimeout(ok, 4000, true); })`)
			if err := files.WriteBytes(filepath.Join(dir, "pdf.png"), pdf.Shot(t)); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if os.Getenv("LOOK_FIGURES") == "" {
			continue
		}
		for _, id := range browser.Eval[[]string](t, tab, `Array.from(document.querySelectorAll('figure')).map(function (f) { return f.id; })`) {
			if err := files.WriteBytes(filepath.Join(dir, name+"-"+id+".png"), tab.ShotOf(t, "#"+id)); err != nil {
				t.Fatal(err)
			}
		}
	}
}
