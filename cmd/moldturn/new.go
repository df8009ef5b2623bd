package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/scenarios"
	"moldturn/sim/param/guess"
)

// starter is the plant that a new file begins with.
//
//go:embed starter.yaml
var starter []byte

func newCommand() *command {
	from, shop := "", ""
	return &command{
		name:     "new",
		synopsis: "write a scenario file, or a folder of floor files, to start from",
		help: `FILE must not exist yet. It gets a small plant with comments on what is set; or,
with --from, the text of a scenario that comes with the program. With --floor it
is the name of a folder instead, which gets the floor files of such a scenario:
an invented shop on one morning, with slips in it as real sheets have them.`,
		args: argSpec{names: "FILE", min: 1, max: 1, offer: func(*Context, []string) offer { return offer{paths: files} }},
		flags: func(f *pflag.FlagSet) {
			f.Var(&bundledName{flag: "from", noun: "scenario", names: scenarios.Bundled(), to: &from}, "from", "begin with this scenario; see \"moldturn list scenarios\"")
			f.Var(&bundledName{flag: "floor", noun: "floor", names: scenarios.BundledFloors(), to: &shop}, "floor", "write the floor files of this scenario into a folder")
		},
		run: func(c *Context) error {
			if shop != "" {
				return newFloor(c, c.Args[0], shop, from)
			}
			return writeNew(c, c.Args[0], from)
		},
	}
}

func writeNew(c *Context, path, from string) error {
	text := starter
	if from != "" {
		text, _ = scenarios.BundledFile(from)
	}
	if strings.TrimSpace(path) == "" {
		return misuse("", "FILE is empty")
	}
	if err := writeOnce(path, text); err != nil {
		return err
	}
	c.Wrote(path)
	fmt.Fprintf(c.Stderr, "%s is written; next: moldturn check %s\n", path, path)
	return nil
}

// writeOnce makes a file that does not exist yet. When the disk fails half way,
// what was begun is taken away again.
func writeOnce(path string, text []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	switch {
	case errors.Is(err, fs.ErrExist):
		return failed("choose another name; files are never overwritten", "%s exists already", path)
	case errors.Is(err, fs.ErrNotExist):
		return failed("make the folder first", "%s: there is no such folder", path)
	case err != nil:
		return fmt.Errorf("%s: cannot be written: %w", path, plain(err))
	}
	_, err = f.Write(text)
	if err = errors.Join(err, f.Close()); err != nil {
		os.Remove(path)
		return fmt.Errorf("%s: cannot be written: %w", path, plain(err))
	}
	return nil
}

// bundledName is a flag that names something that comes with the program.
type bundledName struct {
	flag  string
	noun  string   // "scenario"
	names []string // all there are
	to    *string
	wrong []string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (b *bundledName) Set(text string) error {
	*b.to = text
	if slices.Contains(b.names, text) {
		return nil
	}
	line := fmt.Sprintf("--%s: unknown %s %q, allowed: %s", b.flag, b.noun, text, strings.Join(b.names, ", "))
	if near := guess.Near(text, b.names); near != "" {
		line += fmt.Sprintf("; did you mean %q?", near)
	}
	b.wrong = append(b.wrong, line)
	return nil
}

// String implements pflag.Value.
func (b *bundledName) String() string { return *b.to }

// Type implements pflag.Value; it stands for the value in help texts.
func (b *bundledName) Type() string { return "NAME" }

func (b *bundledName) offer(*Context) offer { return offerWords(b.names...) }

func (b *bundledName) complaints() []string { return b.wrong }
