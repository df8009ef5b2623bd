package main

import (
	"fmt"

	"github.com/spf13/pflag"

	"moldturn/sim/param/guess"
)

// explainFlag turns an error of the flag parser into one in this program's
// words, with a guess for an unknown flag.
func explainFlag(cmd *command, flags *pflag.FlagSet, err error) error {
	switch e := err.(type) {
	case *pflag.NotExistError:
		if e.GetSpecifiedShortnames() != "" {
			return misuse(cmd.seeHelp(), "unknown flag %q", "-"+e.GetSpecifiedName())
		}
		hint := cmd.seeHelp()
		if near := guess.Near(e.GetSpecifiedName(), flagNames(flags)); near != "" {
			hint = fmt.Sprintf("did you mean %q?", "--"+near)
		}
		return misuse(hint, "unknown flag %q", "--"+e.GetSpecifiedName())
	case *pflag.ValueRequiredError:
		return misuse(cmd.seeHelp(), "--%s needs a value", e.GetFlag().Name)
	case *pflag.InvalidValueError:
		return misuse(cmd.seeHelp(), "--%s: found %q, allowed: %s", e.GetFlag().Name, e.GetValue(), allowedOf(e.GetFlag()))
	case *pflag.InvalidSyntaxError:
		return misuse(cmd.seeHelp(), "%q is no flag", e.GetSpecifiedFlag())
	}
	return misuse(cmd.seeHelp(), "%v", err)
}

func allowedOf(f *pflag.Flag) string {
	if f.Value.Type() == "bool" {
		return "true, false, or no value at all"
	}
	return "a value of kind " + f.Value.Type()
}

// flagNames are the names of the flags that are shown, without dashes, in the
// order in which they were added.
func flagNames(flags *pflag.FlagSet) []string {
	var names []string
	flags.VisitAll(func(f *pflag.Flag) {
		if !f.Hidden {
			names = append(names, f.Name)
		}
	})
	return names
}
