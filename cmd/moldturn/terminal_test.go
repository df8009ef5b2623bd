package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// What commands print fits a terminal of 80 columns. Through a pipe it is plain
// text even where the environment promises a terminal with colors: no escapes, no
// carriage returns, so that NO_COLOR has nothing left to forbid.
func TestCommandsFitATerminal(t *testing.T) {
	short := []string{"--years", "1", "--replications", "2", "-q"}
	for _, args := range [][]string{
		append([]string{"compare", "fenwater"}, short...),
		append([]string{"compare", "ten-models"}, short...),
		append([]string{"run", "fenwater"}, short...),
		append([]string{"sweep", "small-shop", "-o", t.TempDir(), "--over", "hold=12 h, 24 h"}, short...),
		append([]string{"quality", "small-shop"}, short...),
		append([]string{"permit", "fenwater"}, short...),
		append([]string{"worth", "small-shop"}, short...),
		append([]string{"invest", "small-shop", "--alternative", "second hull mold"}, short...),
		{"exposure", "fenwater", "-q"}, {"why", "small-shop", "--mold", "1", "-q"},
		{"board", "fenwater", "--floor", "fenwater", "--weeks", "2", "--futures", "10", "-q"},
		{"promise", "fenwater", "--floor", "fenwater", "--boat", "model=Rush 23,color=navy", "--futures", "10", "-q"},
		{"validate", "--short", "-q"}, {"help"},
		{"check", "fenwater"}, {"check", "ten-models"}, {"hold", "fenwater"}, {"explain", "boats_per_week"},
		{"new", filepath.Join(t.TempDir(), "plant.yaml")}, {"version"},
	} {
		var out, errs bytes.Buffer
		c := &Context{Ctx: t.Context(), Stdin: strings.NewReader(""), Stdout: &out, Stderr: &errs, Now: time.Now,
			Env: func(name string) string {
				return map[string]string{"TERM": "xterm-256color", "COLORTERM": "truecolor"}[name]
			}}
		if code := obey(c, commands(), args); code != exitDone {
			t.Errorf("%q: code %d, stderr %q", args, code, errs.String())
		}
		if strings.ContainsAny(out.String()+errs.String(), "\x1b\r\t") {
			t.Errorf("%q: marks of a terminal in what goes through a pipe", args)
		}
		fits(t, strings.Join(args, " "), out.String())
	}
}
