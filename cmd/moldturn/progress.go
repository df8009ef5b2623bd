package main

import (
	"fmt"
	"io"
	"math"
	"os"
	"sync"
	"time"
	"unicode/utf8"

	"golang.org/x/term"
)

// progress tells on stderr how far a long computation is: on a terminal in one
// line that it keeps changing, elsewhere in a new line for every tenth. Its
// methods may be called from several goroutines.
type progress struct {
	what  string // what is being done: "comparing 4 changes"
	out   io.Writer
	now   func() time.Time
	width func() int // columns of the terminal; nil writes whole lines
	quiet bool

	mu     sync.Mutex
	start  time.Time
	drawn  time.Time
	tenths int // tenths already told
}

// redraw is the least time between two changes of the line on a terminal.
const redraw = 100 * time.Millisecond

// newProgress starts the clock of a computation. With quiet it stays silent.
func newProgress(c *Context, what string, quiet bool) *progress {
	return &progress{
		what: what, out: c.Stderr, now: c.Now, quiet: quiet,
		width: terminalWidth(c), start: c.Now(),
	}
}

// terminalWidth is nil when stderr is not a terminal on which a line can be
// changed.
func terminalWidth(c *Context) func() int {
	f, ok := c.Stderr.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) || c.Env("TERM") == "dumb" {
		return nil
	}
	return func() int {
		columns, _, err := term.GetSize(int(f.Fd()))
		if err != nil || columns <= 0 {
			return 80
		}
		return columns
	}
}

// Update tells that done of total equal pieces of work are finished. total may
// grow on the way; a total of 0 says nothing.
func (p *progress) Update(done, total int) {
	if p.quiet || total <= 0 {
		return
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	share := min(1, max(0, float64(done)/float64(total)))
	if p.width != nil {
		p.redraw(share)
	} else {
		p.writeTenth(share)
	}
}

// Close clears the line on a terminal. Errors and results come after it.
func (p *progress) Close() {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.width != nil && !p.drawn.IsZero() {
		fmt.Fprint(p.out, "\r\x1b[K")
		p.drawn = time.Time{}
	}
}

func (p *progress) redraw(share float64) {
	now := p.now()
	if share < 1 && now.Sub(p.drawn) < redraw {
		return
	}
	p.drawn = now
	fmt.Fprintf(p.out, "\r\x1b[K%s", cut(p.line(share, now), p.width()-1))
}

func (p *progress) writeTenth(share float64) {
	tenths := int(share * 10)
	if tenths <= p.tenths {
		return
	}
	p.tenths = tenths
	fmt.Fprintln(p.out, p.line(float64(tenths)/10, p.now()))
}

// line is the text for a share of the work, with the time left once there is
// enough to judge by.
func (p *progress) line(share float64, now time.Time) string {
	text := fmt.Sprintf("%s: %d %%", p.what, int(share*100+1e-9))
	spent := now.Sub(p.start)
	if share <= 0 || share >= 1 || spent < time.Second {
		return text
	}
	return text + ", " + inWords(time.Duration(float64(spent)*(1-share)/share)) + " left"
}

// inWords rounds d up to what a person waiting wants to know.
func inWords(d time.Duration) string {
	switch {
	case d <= 50*time.Second:
		return fmt.Sprintf("about %.0f s", max(5, 5*math.Ceil(d.Seconds()/5)))
	case d <= 90*time.Minute:
		return fmt.Sprintf("about %.0f min", math.Ceil(d.Minutes()))
	}
	return fmt.Sprintf("about %.0f h", math.Ceil(d.Hours()))
}

// cut shortens text to at most n characters.
func cut(text string, n int) string {
	if n < 0 || utf8.RuneCountInString(text) <= n {
		return text
	}
	return string([]rune(text)[:n])
}
