package browser

import (
	"context"
	"fmt"
	"strings"
	"sync"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// await makes Evaluate wait for a promise.
func await(p *runtime.EvaluateParams) { yes := true; p.AwaitPromise = &yes }

// complaints collects what a page does that it should not.
type complaints struct {
	own string // the address of the page itself

	mu  sync.Mutex
	all []string
}

func (c *complaints) add(format string, args ...any) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.all = append(c.all, fmt.Sprintf(format, args...))
}

func (c *complaints) list() []string {
	c.mu.Lock()
	defer c.mu.Unlock()
	return append([]string(nil), c.all...)
}

// event is the listener. It runs inside the loop that reads messages, so a
// dialog is closed from another goroutine.
func (c *complaints) event(ctx context.Context) func(any) {
	return func(ev any) {
		switch ev := ev.(type) {
		case *page.EventJavascriptDialogOpening:
			c.add("dialog: %s %q", ev.Type, ev.Message)
			go chromedp.Call(ctx, page.HandleJavaScriptDialog, page.HandleJavaScriptDialogParams{})
		case *network.EventRequestWillBeSent:
			if a := ev.Request.URL; !strings.HasPrefix(a, c.own) && !strings.HasPrefix(a, "data:") && a != "about:blank" {
				c.add("request: %s", a)
			}
		case *runtime.EventConsoleAPICalled:
			if k := string(ev.Type); k == "error" || k == "warning" || k == "assert" {
				c.add("console %s: %s", k, arguments(ev.Args))
			}
		case *runtime.EventExceptionThrown:
			text := ev.ExceptionDetails.Text
			if x := ev.ExceptionDetails.Exception; x != nil {
				text += " " + x.Description
			}
			c.add("uncaught: %s", text)
		case *log.EventEntryAdded:
			if l := string(ev.Entry.Level); l == "error" || l == "warning" {
				c.add("log %s: %s", l, ev.Entry.Text)
			}
		}
	}
}

func arguments(args []*runtime.RemoteObject) string {
	var b strings.Builder
	for _, a := range args {
		if a.Description != "" {
			b.WriteString(a.Description + " ")
		} else {
			b.WriteString(string(a.Value) + " ")
		}
	}
	return strings.TrimSpace(b.String())
}
