package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"
)

func TestBareProgramShowsWhatToTypeFirst(t *testing.T) {
	code, bare, stderr := try(t.Context(), trialTable())
	if code != exitDone || stderr != "" {
		t.Fatalf("code %d, stderr %q", code, stderr)
	}
	if !strings.Contains(bare, "type this first:\n  trial compare fenwater -o out\n") {
		t.Errorf("no first command in:\n%s", bare)
	}
	if strings.Contains(bare, "wait") {
		t.Errorf("a hidden command is listed:\n%s", bare)
	}
	_, help, _ := try(t.Context(), trialTable(), "help")
	if help != bare {
		t.Errorf("help differs from the bare program:\n%s", help)
	}
}

func TestStopIsAFailure(t *testing.T) {
	for _, test := range []struct {
		args []string
		want string
	}{
		{[]string{"wait"}, "stopped; nothing was written\n"},
		{[]string{"wait", "--wrote", "out/a.csv", "--wrote", "out/b.csv"}, "stopped; complete before that: out/a.csv, out/b.csv\n"},
	} {
		ctx, cancel := context.WithCancel(t.Context())
		time.AfterFunc(10*time.Millisecond, cancel)
		code, stdout, stderr := try(ctx, trialTable(), test.args...)
		if code != exitFailed || stdout != "" || stderr != test.want {
			t.Errorf("%v: code %d, stdout %q, stderr %q, want 1 and %q", test.args, code, stdout, stderr, test.want)
		}
	}
}

func TestInterruptEndsTheContext(t *testing.T) {
	ctx := untilInterrupt()
	self, err := os.FindProcess(os.Getpid())
	if err != nil {
		t.Fatal(err)
	}
	if err := self.Signal(os.Interrupt); err != nil {
		t.Skipf("this system sends no interrupts: %v", err)
	}
	select {
	case <-ctx.Done():
	case <-time.After(5 * time.Second):
		t.Fatal("an interrupt did not end the context")
	}
}

// An error of the work itself ends in 1 even when the user stopped later, and
// keeps its own words.
func TestErrorsAndTheirCodes(t *testing.T) {
	table := func(err error) []*command {
		return []*command{{name: "work", run: func(*Context) error { return err }}}
	}
	stoppedCtx, cancel := context.WithCancel(t.Context())
	cancel()
	for _, test := range []struct {
		ctx  context.Context
		err  error
		code int
		want string
	}{
		{t.Context(), nil, exitDone, ""},
		{stoppedCtx, nil, exitDone, ""},
		{t.Context(), errors.New("plant.yaml:14:9: unknown craft"), exitFailed, "plant.yaml:14:9: unknown craft\n"},
		{stoppedCtx, errors.New("disk full"), exitFailed, "disk full\n"},
		{stoppedCtx, fmt.Errorf("month 3: %w", context.Canceled), exitFailed, "stopped; nothing was written\n"},
		{t.Context(), failed("free some room", "disk full"), exitFailed, "disk full\n  hint: free some room\n"},
		{t.Context(), misuse("", "no such day"), exitMisuse, "no such day\n"},
	} {
		code, _, stderr := try(test.ctx, table(test.err), "work")
		if code != test.code || stderr != test.want {
			t.Errorf("%v: code %d, stderr %q, want %d and %q", test.err, code, stderr, test.code, test.want)
		}
	}
}

// fullDisk takes some bytes and then no more.
type fullDisk struct{ room int }

func (d *fullDisk) Write(b []byte) (int, error) {
	if len(b) > d.room {
		return 0, errors.New("no space left")
	}
	d.room -= len(b)
	return len(b), nil
}

func TestResultThatGoesNowhereIsAFailure(t *testing.T) {
	var stderr bytes.Buffer
	c := &Context{Ctx: t.Context(), Stdout: &fullDisk{room: 20}, Stderr: &stderr}
	table := []*command{{name: "work", run: func(c *Context) error {
		for range 10 {
			fmt.Fprintln(c.Stdout, "9 boats a week")
		}
		return nil
	}}}
	if code := obey(c, table, []string{"work"}); code != exitFailed {
		t.Errorf("code %d, want %d", code, exitFailed)
	}
	if want := "cannot write the result: no space left\n"; stderr.String() != want {
		t.Errorf("stderr %q, want %q", stderr.String(), want)
	}
}

// Every command that is shown has what help needs, and no two share a name.
func TestTable(t *testing.T) {
	seen := map[string]bool{}
	for _, cmd := range commands() {
		if seen[cmd.name] {
			t.Errorf("two commands are called %s", cmd.name)
		}
		seen[cmd.name] = true
		if cmd.synopsis == "" || strings.HasSuffix(cmd.synopsis, ".") || strings.Contains(cmd.synopsis, "\n") {
			t.Errorf("%s: the synopsis %q is not one line without a full stop", cmd.name, cmd.synopsis)
		}
		if cmd.first != "" && !strings.HasPrefix(cmd.first, "moldturn "+cmd.name+" ") {
			t.Errorf("%s: the first command line is %q", cmd.name, cmd.first)
		}
		if code, out, stderr := try(t.Context(), commands(), cmd.name, "--help"); code != exitDone || stderr != "" ||
			!strings.HasPrefix(out, cmd.name+": "+cmd.synopsis) {
			t.Errorf("%s --help: code %d, stdout %q, stderr %q", cmd.name, code, out, stderr)
		}
	}
}
