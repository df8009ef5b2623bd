package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// turns is a flag that takes a list of turns between strips.
type turns struct {
	flag        string
	least, most int // how many
	list        []int
	text, wrong string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (t *turns) Set(text string) error {
	t.text, t.list, t.wrong = text, nil, ""
	for _, word := range strings.Split(text, ",") {
		n, err := strconv.Atoi(strings.TrimSpace(word))
		if err != nil || n < 1 || n > 200 {
			t.wrong = fmt.Sprintf("found %q, allowed: whole numbers from 1 to 200 with commas between", word)
			return nil
		}
		if slices.Contains(t.list, n) {
			t.wrong = fmt.Sprintf("%d is given twice", n)
			return nil
		}
		t.list = append(t.list, n)
	}
	if len(t.list) < t.least || len(t.list) > t.most {
		t.wrong = fmt.Sprintf("%s given, allowed: %s", count(len(t.list), "number", "numbers"), t.howMany())
	}
	return nil
}

// howMany is how many numbers are allowed.
func (t *turns) howMany() string {
	if t.least == t.most {
		return fmt.Sprintf("just %d", t.least)
	}
	return fmt.Sprintf("%d to %d", t.least, t.most)
}

// String implements pflag.Value.
func (t *turns) String() string { return t.text }

// Type implements pflag.Value; it stands for the value in help texts.
func (t *turns) Type() string { return "TURNS" }

func (t *turns) complaints() []string {
	if t.wrong == "" {
		return nil
	}
	return []string{"--" + t.flag + ": " + t.wrong}
}

func joined(list []int) string {
	words := make([]string, len(list))
	for i, n := range list {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, ", ")
}
