package main

import (
	"bufio"
	"cmp"
	"fmt"
	"strings"

	"github.com/spf13/pflag"
)

// offer is what could be typed at one place of a command line.
type offer struct {
	words []offered
	paths string // what the shell adds from the disk: files, folders, or "" for nothing
}

// What a shell may add from the disk.
const (
	files   = "files"
	folders = "folders"
)

// offered is one word and, where a shell can show it, a note about it.
type offered struct{ word, note string }

// offering is a flag value that knows what it could be.
type offering interface{ offer(c *Context) offer }

func offerWords(words ...string) offer {
	var o offer
	for _, w := range words {
		o.words = append(o.words, offered{word: w})
	}
	return o
}

func offerCommands(table []*command) offer {
	var o offer
	for _, cmd := range table {
		if !cmd.hidden {
			o.words = append(o.words, offered{cmd.name, cmd.synopsis})
		}
	}
	return o
}

func offerFlags(flags *pflag.FlagSet) offer {
	var o offer
	flags.VisitAll(func(f *pflag.Flag) {
		if !f.Hidden {
			_, note := pflag.UnquoteUsage(f)
			o.words = append(o.words, offered{"--" + f.Name, note})
		}
	})
	return o
}

// completeCommand is what the completion scripts call. Its arguments are the
// words of a command line after the program's name up to the cursor, the last
// one unfinished and perhaps empty. The first line of its answer says what the
// shell should add from the disk (files, folders or none); every other line is
// a word, with a note after a tab. Nothing to offer is no failure.
func completeCommand() *command {
	return &command{
		name:     "complete",
		synopsis: "answer a completion script",
		hidden:   true,
		args:     argSpec{names: "[-- WORD …]", max: -1},
		run: func(c *Context) error {
			o := c.complete(c.Args)
			w := bufio.NewWriter(c.Stdout)
			fmt.Fprintln(w, cmp.Or(o.paths, "none"))
			for _, x := range o.words {
				fmt.Fprintf(w, "%s\t%s\n", x.word, x.note)
			}
			return w.Flush()
		},
	}
}

// complete finds the place at which the last of words stands and what it could
// become.
func (c *Context) complete(words []string) offer {
	if len(words) == 0 {
		words = []string{""}
	}
	last := len(words) - 1
	if last == 0 {
		return offerCommands(c.table).startingWith(words[0])
	}
	cmd, err := findCommand(c.table, words[0])
	if err != nil {
		return offer{}
	}
	flags, _ := cmd.flagSet()
	return c.completeAfter(cmd, flags, words[1:last], words[last])
}

// completeAfter completes part, which stands after the command and the words
// in done.
func (c *Context) completeAfter(cmd *command, flags *pflag.FlagSet, done []string, part string) offer {
	args, open, dashes := readWords(flags, done)
	if open != nil {
		return c.valueOf(open).startingWith(part)
	}
	if !dashes && strings.HasPrefix(part, "-") {
		name, value, hasValue := strings.Cut(part, "=")
		if !hasValue {
			return offerFlags(flags).startingWith(part)
		}
		f := flags.Lookup(strings.TrimPrefix(name, "--"))
		return c.valueOf(f).startingWith(value).after(name + "=")
	}
	if cmd.args.offer == nil || cmd.args.max >= 0 && len(args) >= cmd.args.max {
		return offer{}
	}
	return cmd.args.offer(c, args).startingWith(part)
}

// readWords sorts finished words into arguments and flags. open is the flag
// whose value comes next, nil for none; dashes tells that "--" ended the flags.
func readWords(flags *pflag.FlagSet, done []string) (args []string, open *pflag.Flag, dashes bool) {
	for _, w := range done {
		switch {
		case open != nil:
			open = nil
		case dashes || !strings.HasPrefix(w, "-") || w == "-":
			args = append(args, w)
		case w == "--":
			dashes = true
		case !strings.Contains(w, "="):
			open = flagAwaiting(flags, w)
		}
	}
	return args, open, dashes
}

// flagAwaiting is the flag that word names if it takes a value.
func flagAwaiting(flags *pflag.FlagSet, word string) *pflag.Flag {
	var f *pflag.Flag
	if name, long := strings.CutPrefix(word, "--"); long {
		f = flags.Lookup(name)
	} else if len(word) == 2 {
		f = flags.ShorthandLookup(word[1:])
	}
	if f == nil || f.NoOptDefVal != "" {
		return nil
	}
	return f
}

// valueOf is what the value of f could be; f may be nil.
func (c *Context) valueOf(f *pflag.Flag) offer {
	if f == nil {
		return offer{}
	}
	if v, ok := f.Value.(offering); ok {
		return v.offer(c)
	}
	return offer{}
}

// startingWith keeps the words that begin with part.
func (o offer) startingWith(part string) offer {
	kept := offer{paths: o.paths}
	for _, x := range o.words {
		if strings.HasPrefix(x.word, part) {
			kept.words = append(kept.words, x)
		}
	}
	return kept
}

// after puts head before every word.
func (o offer) after(head string) offer {
	for i := range o.words {
		o.words[i].word = head + o.words[i].word
	}
	return o
}
