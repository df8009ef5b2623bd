package main

import (
	"bytes"
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"
)

// hand is a clock that a test moves.
type hand struct{ t time.Time }

func (h *hand) now() time.Time       { return h.t }
func (h *hand) pass(d time.Duration) { h.t = h.t.Add(d) }
func newHand() *hand                 { return &hand{time.Date(2027, 1, 4, 6, 0, 0, 0, time.UTC)} }
func eighty() int                    { return 80 }
func (h *hand) context(w *bytes.Buffer) *Context {
	return &Context{Stderr: w, Now: h.now, Env: func(string) string { return "" }}
}

func TestProgressInAFileIsALineForEveryTenth(t *testing.T) {
	var out bytes.Buffer
	clock := newHand()
	p := newProgress(clock.context(&out), "comparing 4 changes", false)
	for done := range 41 {
		p.Update(done, 40)
		clock.pass(3 * time.Second)
	}
	p.Close()
	want := `comparing 4 changes: 10 %, about 2 min left
comparing 4 changes: 20 %, about 2 min left
comparing 4 changes: 30 %, about 2 min left
comparing 4 changes: 40 %, about 2 min left
comparing 4 changes: 50 %, about 1 min left
comparing 4 changes: 60 %, about 50 s left
comparing 4 changes: 70 %, about 40 s left
comparing 4 changes: 80 %, about 25 s left
comparing 4 changes: 90 %, about 15 s left
comparing 4 changes: 100 %
`
	if got := out.String(); got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
}

// The work to do may grow, as when a comparison asks for one more round: what
// was told is not told again.
func TestProgressNeverTellsATenthTwice(t *testing.T) {
	var out bytes.Buffer
	p := newProgress(newHand().context(&out), "comparing", false)
	for _, step := range [][2]int{{0, 0}, {5, 10}, {6, 20}, {11, 20}, {12, 20}, {20, 20}, {20, 20}} {
		p.Update(step[0], step[1])
	}
	want := "comparing: 50 %\ncomparing: 60 %\ncomparing: 100 %\n"
	if got := out.String(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestProgressOnATerminalIsOneLine(t *testing.T) {
	var out bytes.Buffer
	clock := newHand()
	p := newProgress(clock.context(&out), "comparing", false)
	p.width = eighty
	p.Update(1, 100)
	clock.pass(redraw / 2)
	p.Update(2, 100) // too soon to be seen
	clock.pass(10 * time.Second)
	p.Update(10, 100)
	p.Close()
	p.Close()
	want := "\r\x1b[Kcomparing: 1 %\r\x1b[Kcomparing: 10 %, about 2 min left\r\x1b[K"
	if got := out.String(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestProgressFitsTheTerminal(t *testing.T) {
	var out bytes.Buffer
	p := newProgress(newHand().context(&out), strings.Repeat("wide ", 30), false)
	p.width = func() int { return 20 }
	p.Update(1, 2)
	if got, want := out.String(), "\r\x1b[K"+"wide wide wide wide"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestQuietProgressIsSilent(t *testing.T) {
	for _, width := range []func() int{nil, eighty} {
		var out bytes.Buffer
		p := newProgress(newHand().context(&out), "comparing", true)
		p.width = width
		p.Update(1, 2)
		p.Update(2, 2)
		p.Close()
		if out.Len() > 0 {
			t.Errorf("wrote %q", out.String())
		}
	}
}

// Ten lines from many goroutines stay ten whole lines; the race detector
// watches as well.
func TestProgressFromManyGoroutines(t *testing.T) {
	var out bytes.Buffer
	p := newProgress(newHand().context(&out), "comparing", false)
	var group sync.WaitGroup
	for done := range 100 {
		group.Go(func() { p.Update(done+1, 100) })
	}
	group.Wait()
	p.Close()
	last := 0
	for line := range strings.Lines(out.String()) {
		var percent int
		if _, err := fmt.Sscanf(line, "comparing: %d %%\n", &percent); err != nil || percent <= last || percent%10 != 0 {
			t.Errorf("line %q after %d %%", line, last)
		}
		last = percent
	}
	if last != 100 {
		t.Errorf("the last line says %d %%", last)
	}
}

func TestTimeLeftInWords(t *testing.T) {
	for _, test := range []struct {
		left time.Duration
		want string
	}{
		{0, "about 5 s"}, {7 * time.Second, "about 10 s"}, {50 * time.Second, "about 50 s"},
		{51 * time.Second, "about 1 min"}, {61 * time.Second, "about 2 min"}, {90 * time.Minute, "about 90 min"},
		{91 * time.Minute, "about 2 h"}, {30 * time.Hour, "about 30 h"},
	} {
		if got := inWords(test.left); got != test.want {
			t.Errorf("%v: %q, want %q", test.left, got, test.want)
		}
	}
}
