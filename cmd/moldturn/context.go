package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/spf13/pflag"
)

// Context is what a running command may touch of the world outside: its
// streams, its arguments and the moment at which to stop.
type Context struct {
	Ctx    context.Context // ends at Ctrl-C; pass it on to everything that takes time
	Stdin  io.Reader
	Stdout io.Writer           // the result and nothing else
	Stderr io.Writer           // progress, warnings, hints
	Env    func(string) string // a variable of the environment, "" when not set
	Now    func() time.Time    // for progress only; results never depend on it

	Args  []string       // what stands after the command, without flags
	Flags *pflag.FlagSet // the command's flags after reading

	table []*command
	wrote []string
}

// Wrote notes that the file or folder at path is complete, so that a stop can
// say what is there.
func (c *Context) Wrote(path string) { c.wrote = append(c.wrote, path) }

// conclude tells the user on stderr how a command ended that returned err, and
// gives the exit code. A command that was stopped has failed.
func (c *Context) conclude(err error) int {
	if err == nil {
		return exitDone
	}
	if c.Ctx.Err() != nil && errors.Is(err, c.Ctx.Err()) {
		fmt.Fprintln(c.Stderr, c.stopped())
		return exitFailed
	}
	fmt.Fprintln(c.Stderr, err)
	var p *problem
	if !errors.As(err, &p) {
		return exitFailed
	}
	if p.hint != "" {
		fmt.Fprintln(c.Stderr, "  hint:", p.hint)
	}
	return p.code
}

func (c *Context) stopped() string {
	if len(c.wrote) == 0 {
		return "stopped; nothing was written"
	}
	return "stopped; complete before that: " + strings.Join(c.wrote, ", ")
}

// problem is an error that carries its exit code and a line that helps.
type problem struct {
	text string // lower case, without a full stop; several lines for several complaints
	hint string
	code int
}

func (p *problem) Error() string { return p.text }

// misuse is the error for a wrong command line. hint may be empty.
func misuse(hint, format string, args ...any) error {
	return &problem{text: fmt.Sprintf(format, args...), hint: hint, code: exitMisuse}
}

// failed is the error for a command that could not do its work. hint may be
// empty; without one any other error serves as well.
func failed(hint, format string, args ...any) error {
	return &problem{text: fmt.Sprintf(format, args...), hint: hint, code: exitFailed}
}

// rememberingWriter keeps the first failure to write, so that a result that
// went nowhere does not end as a success.
type rememberingWriter struct {
	to  io.Writer
	err error
}

func (w *rememberingWriter) Write(b []byte) (int, error) {
	if w.err != nil {
		return 0, w.err
	}
	n, err := w.to.Write(b)
	w.err = err
	return n, err
}

func (w *rememberingWriter) failure() error {
	if w.err == nil {
		return nil
	}
	return fmt.Errorf("cannot write the result: %w", w.err)
}
