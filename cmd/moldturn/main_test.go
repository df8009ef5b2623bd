package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/spf13/pflag"
)

// TestMain lets scripts call two programs: moldturn itself and trial, the same
// shell over a table of its own that has every kind of flag.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"moldturn": main,
		"trial": func() {
			c := &Context{
				Ctx: untilInterrupt(), Stdin: os.Stdin, Stdout: os.Stdout, Stderr: os.Stderr,
				Env: os.Getenv, Now: time.Now,
			}
			os.Exit(obey(c, trialTable(), os.Args[1:]))
		},
	})
}

// TestScripts runs the command lines in testdata, failures included.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata",
		RequireExplicitExec: true,
		UpdateScripts:       os.Getenv("UPDATE_GOLDEN") != "",
	})
}

// trialTable has one command with the common flags that prints what it got, and
// one that waits until it is stopped.
func trialTable() []*command {
	return append(shellCommands(), trialCommand(), waitCommand())
}

func trialCommand() *command {
	o := &common{Inputs: func(*Context) []string { return []string{"mold.hold", "mold.strip", "plant.booths"} }}
	return &command{
		name: "compare", synopsis: "print the common flags", first: "trial compare fenwater -o out",
		args: argSpec{names: "SCENARIO [OTHER]", min: 1, max: 2, offer: func(_ *Context, done []string) offer {
			if len(done) > 0 {
				return offer{paths: files}
			}
			return offerWords("fenwater", "fenwater-july", "small")
		}},
		flags: o.add,
		run: func(c *Context) error {
			return json.NewEncoder(c.Stdout).Encode(map[string]any{
				"args": c.Args, "out": o.Out, "replications": o.Replications.Or(-1), "years": o.Years.Or(-1),
				"seed": o.Seed.Or(42), "settings": o.Settings, "json": o.JSON, "quiet": o.Quiet,
			})
		},
	}
}

func waitCommand() *command {
	var wrote []string
	var ready string
	return &command{
		name: "wait", synopsis: "wait until stopped", hidden: true,
		flags: func(f *pflag.FlagSet) {
			f.StringArrayVar(&wrote, "wrote", nil, "say that this was written")
			f.StringVar(&ready, "ready", "", "make this file when the wait begins")
		},
		run: func(c *Context) error {
			for _, path := range wrote {
				c.Wrote(path)
			}
			if ready != "" {
				if err := os.WriteFile(ready, nil, 0o600); err != nil {
					return err
				}
			}
			<-c.Ctx.Done()
			return c.Ctx.Err()
		},
	}
}

// try obeys a command line in this process.
func try(ctx context.Context, table []*command, args ...string) (code int, stdout, stderr string) {
	var out, errs bytes.Buffer
	c := &Context{
		Ctx: ctx, Stdin: strings.NewReader(""), Stdout: &out, Stderr: &errs,
		Env: func(string) string { return "" }, Now: time.Now,
	}
	code = obey(c, table, args)
	return code, out.String(), errs.String()
}
