package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/pflag"
)

func helpCommand() *command {
	return &command{
		name:     "help",
		synopsis: "list the commands, or explain one",
		args: argSpec{names: "[COMMAND]", max: 1, offer: func(c *Context, _ []string) offer {
			return offerCommands(c.table)
		}},
		run: func(c *Context) error {
			if len(c.Args) == 0 {
				return writeOverview(c)
			}
			cmd, err := findCommand(c.table, c.Args[0])
			if err != nil {
				return err
			}
			return writeHelp(c, cmd)
		},
	}
}

// writeOverview says what the program is for, what to type first and which
// commands there are.
func writeOverview(c *Context) error {
	w := c.Stdout
	fmt.Fprint(w, "moldturn simulates a plant that molds boats in open molds: which change is worth\n"+
		"its money, in boats, days and dollars.\n")
	writeFirst(w, c.table)
	fmt.Fprint(w, "\ncommands:\n")
	width := 0
	for _, name := range visibleNames(c.table) {
		width = max(width, len(name))
	}
	for _, cmd := range c.table {
		if !cmd.hidden {
			fmt.Fprintf(w, "  %-*s  %s\n", width, cmd.name, cmd.synopsis)
		}
	}
	_, err := fmt.Fprint(w, "\n\"moldturn help COMMAND\" explains one of them.\n")
	return err
}

// writeFirst lists the command lines that are worth typing first.
func writeFirst(w io.Writer, table []*command) {
	title := "\ntype this first:\n"
	for _, cmd := range table {
		if cmd.first != "" {
			fmt.Fprintf(w, "%s  %s\n", title, cmd.first)
			title = ""
		}
	}
}

// writeHelp writes what there is to know about one command.
func writeHelp(c *Context, cmd *command) error {
	w := c.Stdout
	fmt.Fprintf(w, "%s: %s\n\nusage: %s\n", cmd.name, cmd.synopsis, cmd.usage())
	if cmd.help != "" {
		fmt.Fprintf(w, "\n%s\n", strings.TrimSpace(cmd.help))
	}
	if cmd.first != "" {
		fmt.Fprintf(w, "\nexample:\n  %s\n", cmd.first)
	}
	flags, _ := cmd.flagSet()
	_, err := fmt.Fprintf(w, "\nflags:\n%s", flagList(flags))
	return err
}

// flagList has one line per flag: its letter, its name with the kind of value
// it takes, and what it is for.
func flagList(flags *pflag.FlagSet) string {
	var names, notes []string
	width := 0
	flags.VisitAll(func(f *pflag.Flag) {
		if f.Hidden {
			return
		}
		kind, note := pflag.UnquoteUsage(f)
		name := "    --" + f.Name
		if f.Shorthand != "" {
			name = "-" + f.Shorthand + ", --" + f.Name
		}
		if f.NoOptDefVal == "" {
			name += " " + kind
		}
		names, notes = append(names, name), append(notes, note)
		width = max(width, len(name))
	})
	var b strings.Builder
	for i, name := range names {
		fmt.Fprintf(&b, "  %-*s  %s\n", width, name, notes[i])
	}
	return b.String()
}
