package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/sim/param/guess"
)

// command is one row of the table: everything that help, completion and the
// dispatcher need to know about it.
type command struct {
	name     string
	synopsis string // one line, lower case, without a full stop
	help     string // the rest, in sentences; may be empty
	first    string // a whole command line worth typing first; empty for most
	hidden   bool   // left out of lists, help and guesses

	args  argSpec
	flags func(*pflag.FlagSet)   // adds the command's flags; nil for none
	run   func(c *Context) error // returns nil when done
}

// argSpec says which arguments a command takes besides flags. Its zero value
// is a command without arguments.
type argSpec struct {
	names    string // as shown after the name: "SCENARIO [OTHER …]"
	min, max int    // how many; max < 0 for any number

	// offer lists what could stand after the arguments in done, for shell
	// completion. nil offers nothing.
	offer func(c *Context, done []string) offer
}

// complaints says in whole lines what is wrong with the number of args.
func (s argSpec) complaints(name string, args []string) []string {
	switch {
	case len(args) < s.min:
		missing := strings.Fields(s.names)[len(args)]
		return []string{fmt.Sprintf("%s needs %s", name, missing)}
	case s.max == 0 && len(args) > 0:
		return []string{fmt.Sprintf("%s takes no arguments, found %q", name, args[0])}
	case s.max >= 0 && len(args) > s.max:
		return []string{fmt.Sprintf("%s takes %d at most, found %q too", name, s.max, args[s.max])}
	}
	return nil
}

// usage is the command line in short: "moldturn help [COMMAND]".
func (cmd *command) usage() string {
	words := []string{"moldturn", cmd.name}
	if cmd.args.names != "" {
		words = append(words, cmd.args.names)
	}
	if cmd.flags != nil {
		words = append(words, "[flags]")
	}
	return strings.Join(words, " ")
}

// seeHelp is the hint for a command line that names the right command wrongly.
func (cmd *command) seeHelp() string {
	return fmt.Sprintf("usage is %q; %q says more", cmd.usage(), "moldturn help "+cmd.name)
}

// flagSet makes the command's flags and --help, whose value it returns.
func (cmd *command) flagSet() (*pflag.FlagSet, *bool) {
	flags := pflag.NewFlagSet(cmd.name, pflag.ContinueOnError)
	flags.SortFlags = false
	flags.SetOutput(io.Discard)
	flags.Usage = func() {}
	if cmd.flags != nil {
		cmd.flags(flags)
	}
	return flags, flags.BoolP("help", "h", false, "show this text")
}

// findCommand looks name up, hidden commands included; the error guesses what
// was meant.
func findCommand(table []*command, name string) (*command, error) {
	for _, cmd := range table {
		if cmd.name == name {
			return cmd, nil
		}
	}
	hint := `"moldturn help" lists the commands`
	if near := guess.Near(name, visibleNames(table)); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return nil, misuse(hint, "unknown command %q", name)
}

// visibleNames are the names of the commands that are shown, in their order.
func visibleNames(table []*command) []string {
	var names []string
	for _, cmd := range table {
		if !cmd.hidden {
			names = append(names, cmd.name)
		}
	}
	return names
}
