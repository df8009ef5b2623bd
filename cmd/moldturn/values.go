package main

import (
	"fmt"
	"os"
	"strconv"
	"strings"
)

// judged is a flag value that takes every text and says afterwards what was
// wrong with it, so that one run reports all mistakes of a command line.
type judged interface {
	complaints() []string // whole lines, each beginning with the flag
}

// option is a value that may be left open. Its zero value is open.
type option[T any] struct {
	Value T
	Given bool
}

// Or is the value, or other when it was left open.
func (o option[T]) Or(other T) T {
	if o.Given {
		return o.Value
	}
	return other
}

// whole is a flag that takes one whole number from low to high, both included.
type whole[T int | uint64] struct {
	flag      string
	to        *option[T]
	low, high T
	text      string
	wrong     bool
}

// Set implements pflag.Value. It returns no error; see complaints.
func (w *whole[T]) Set(text string) error {
	w.text = text
	n, err := strconv.ParseInt(strings.TrimSpace(text), 10, 64)
	w.wrong = err != nil || n < int64(w.low) || n > int64(w.high)
	*w.to = option[T]{Value: T(n), Given: !w.wrong}
	return nil
}

// String implements pflag.Value.
func (w *whole[T]) String() string { return w.text }

// Type implements pflag.Value; it stands for the value in help texts.
func (w *whole[T]) Type() string { return "N" }

func (w *whole[T]) complaints() []string {
	if !w.wrong {
		return nil
	}
	return []string{fmt.Sprintf("--%s: found %q, allowed: a whole number from %d to %d", w.flag, w.text, w.low, w.high)}
}

// folder is a flag that names a folder which may not exist yet.
type folder struct {
	flag string
	to   *string
	set  bool
}

// Set implements pflag.Value. It returns no error; see complaints.
func (f *folder) Set(text string) error {
	*f.to, f.set = text, true
	return nil
}

// String implements pflag.Value.
func (f *folder) String() string { return *f.to }

// Type implements pflag.Value; it stands for the value in help texts.
func (f *folder) Type() string { return "FOLDER" }

func (f *folder) offer(*Context) offer { return offer{paths: folders} }

func (f *folder) complaints() []string {
	if f.set && strings.TrimSpace(*f.to) == "" {
		return []string{fmt.Sprintf("--%s: found nothing, allowed: the name of a folder", f.flag)}
	}
	if info, err := os.Stat(*f.to); err == nil && !info.IsDir() {
		return []string{fmt.Sprintf("--%s: %q is a file, allowed: a folder or a new name", f.flag, *f.to)}
	}
	return nil
}

// setting changes one input of a scenario for this run: its path and the value
// as it would stand in the file.
type setting struct{ Path, Value string }

// settings is a repeatable flag of the form path=value.
type settings struct {
	flag  string
	to    *[]setting
	paths func(*Context) []string // the paths there are, for completion; may be nil
	wrong []string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (s *settings) Set(text string) error {
	path, value, ok := strings.Cut(text, "=")
	path, value = strings.TrimSpace(path), strings.TrimSpace(value)
	if !ok || path == "" || value == "" {
		s.wrong = append(s.wrong, fmt.Sprintf("--%s: found %q, allowed: path=value", s.flag, text))
		return nil
	}
	for _, earlier := range *s.to {
		if earlier.Path == path {
			s.wrong = append(s.wrong, fmt.Sprintf("--%s: %s is given twice, %q and %q", s.flag, path, earlier.Value, value))
			return nil
		}
	}
	*s.to = append(*s.to, setting{path, value})
	return nil
}

// String implements pflag.Value.
func (s *settings) String() string { return "" }

// Type implements pflag.Value; it stands for the value in help texts.
func (s *settings) Type() string { return "PATH=VALUE" }

func (s *settings) complaints() []string { return s.wrong }

func (s *settings) offer(c *Context) offer {
	if s.paths == nil {
		return offer{}
	}
	var o offer
	for _, path := range s.paths(c) {
		o.words = append(o.words, offered{word: path + "="})
	}
	return o
}
