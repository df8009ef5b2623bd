package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// Keys that have no letter, for Press.
const (
	Tabulator = kb.Tab
	Enter     = kb.Enter
	Left      = kb.ArrowLeft
	Right     = kb.ArrowRight
	Home      = kb.Home
	End       = kb.End
)

// Press presses keys one after the other, as a user would; they go to what has
// the focus.
func (tab *Tab) Press(t testing.TB, keys string) {
	t.Helper()
	tab.do(t, chromedp.KeyEvent(keys))
}

// PressShift is Press with Shift held down.
func (tab *Tab) PressShift(t testing.TB, keys string) {
	t.Helper()
	tab.do(t, chromedp.KeyEvent(keys, chromedp.KeyModifiers(chromedp.ModifierShift)))
}
