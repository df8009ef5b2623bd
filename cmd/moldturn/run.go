package main

import (
	"context"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"
	"time"

	"github.com/spf13/pflag"
)

// Exit codes of the program.
const (
	exitDone   = 0 // the command did what it was asked
	exitFailed = 1 // it could not, or was stopped
	exitMisuse = 2 // the command line was wrong and nothing was tried
)

// run is the whole program: it performs args, the command line without the
// program's name, and returns the exit code. stdout gets results only; progress,
// complaints and hints go to stderr. When ctx ends, the running command stops.
func run(ctx context.Context, stdin io.Reader, stdout, stderr io.Writer, args []string, env func(string) string) int {
	c := &Context{Ctx: ctx, Stdin: stdin, Stdout: stdout, Stderr: stderr, Env: env, Now: time.Now}
	return obey(c, commands(), args)
}

// obey performs args with the commands of table and gives the exit code.
func obey(c *Context, table []*command, args []string) int {
	out := &rememberingWriter{to: c.Stdout}
	c.Stdout, c.table = out, table
	err := perform(c, args)
	if err == nil {
		err = out.failure()
	}
	return c.conclude(err)
}

// perform finds the command in the table, reads its flags and arguments and
// runs it. Complaints about the command line are returned together.
func perform(c *Context, args []string) error {
	if len(args) == 0 {
		return writeOverview(c)
	}
	name, rest := args[0], args[1:]
	switch {
	case name == "-h" || name == "--help":
		name = "help"
	case name == "--version":
		name = "version"
	case strings.HasPrefix(name, "-"):
		return misuse("flags come after the command: moldturn COMMAND "+name, "%s stands before a command", name)
	}
	cmd, err := findCommand(c.table, name)
	if err != nil {
		return err
	}
	return cmd.perform(c, rest)
}

// perform reads the flags and arguments of one command and runs it.
func (cmd *command) perform(c *Context, words []string) error {
	flags, help := cmd.flagSet()
	err := flags.Parse(words)
	if *help {
		return writeHelp(c, cmd)
	}
	if err != nil {
		return explainFlag(cmd, flags, err)
	}
	c.Args, c.Flags = flags.Args(), flags
	if err := cmd.judge(c); err != nil {
		return err
	}
	return cmd.run(c)
}

// judge collects everything that is wrong with the values on a command line.
func (cmd *command) judge(c *Context) error {
	var lines []string
	c.Flags.VisitAll(func(f *pflag.Flag) {
		if v, ok := f.Value.(judged); ok {
			lines = append(lines, v.complaints()...)
		}
	})
	lines = append(lines, cmd.args.complaints(cmd.name, c.Args)...)
	if len(lines) == 0 {
		return nil
	}
	return misuse(cmd.seeHelp(), "%s", strings.Join(lines, "\n"))
}

// untilInterrupt is a context that ends at Ctrl-C or when the system asks the
// program to end. A second Ctrl-C ends the program at once.
func untilInterrupt() context.Context {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	context.AfterFunc(ctx, stop)
	return ctx
}
