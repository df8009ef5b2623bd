package decision

import (
	"fmt"
	"strings"
)

// phrase turns one change of an input into words of the trade. Stars in key take
// any name; the words have a %s for each of them, then one for the value.
type phrase struct{ key, words string }

// phrases are the changes that alternatives mostly make. What is not here reads as
// its key does, without the marks of a file.
var phrases = []phrase{
	{"models.*.parts.*.molds", "%s %s: %s molds"},
	{"models.*.parts.*.reserve", "%s %s: %s molds in reserve"},
	{"models.*.orders", "%s: orders for %s"},
	{"crafts.*.people.*", "%s, %s shift: %s people"},
	{"places.*.count", "%s: %s of them"},
	{"strip.policy", "strip %s"},
	{"strip.every", "a strip every %s turns"},
	{"hold.clock", "held %s in the mold"},
	{"hold.barcol", "pulled at a Barcol hardness of %s"},
	{"hold.degree", "pulled at a degree of cure of %s"},
	{"wax.every", "waxed every %s turns"},
	{"demand.floor_limit", "%s boats on the floor at most"},
	{"models.*.parts.*.grade", "%s %s: %s gel coat"},
	{"climate.areas.*.cool", "%s cooled to %s"},
	{"climate.areas.*.heat", "%s heated to %s"},
}

// plain are changes in words: "a strip every 3 turns; held 16 h in the mold".
func plain(changes []string) string {
	var out []string
	for _, c := range changes {
		path, value, given := strings.Cut(c, " = ")
		if c == "strip.policy = every" && interval(changes) {
			continue // the interval says it
		}
		if !given {
			out = append(out, unmarked(path))
			continue
		}
		out = append(out, worded(path, value))
	}
	return strings.Join(out, "; ")
}

// interval tells whether the changes set how many turns lie between strips.
func interval(changes []string) bool {
	for _, c := range changes {
		if strings.HasPrefix(c, "strip.every = ") {
			return true
		}
	}
	return false
}

// worded is one change in words.
func worded(path, value string) string {
	keys := keysOf(path)
	for _, p := range phrases {
		if names, ok := p.takes(keys); ok {
			words := p.words
			if value == "1" {
				words = strings.NewReplacer("%s molds", "%s mold", "%s people", "%s person", "every %s turns", "every turn").Replace(words)
			}
			if n := strings.Count(words, "%s"); n == len(names) {
				return fmt.Sprintf(words, names...)
			}
			return fmt.Sprintf(words, append(names, value)...)
		}
	}
	return unmarked(path) + " = " + value
}

// takes matches the keys of a path, and gives what the stars stand for.
func (p phrase) takes(keys []string) ([]any, bool) {
	want := strings.Split(p.key, ".")
	if len(want) != len(keys) {
		return nil, false
	}
	var names []any
	for i, w := range want {
		switch {
		case w == "*":
			names = append(names, keys[i])
		case w != keys[i]:
			return nil, false
		}
	}
	return names, true
}

// keysOf cuts a path at its dots; a name in quotes may hold some.
func keysOf(path string) []string {
	quoted := false
	keys := strings.FieldsFunc(path, func(r rune) bool {
		if r == '"' {
			quoted = !quoted
		}
		return r == '.' && !quoted
	})
	for i := range keys {
		keys[i] = strings.Trim(keys[i], `"`)
	}
	return keys
}

// unmarked is a path without the marks of a scenario file: "gel window sag".
func unmarked(path string) string {
	keys := keysOf(path)
	if len(keys) > 1 && keys[0] == "models" {
		keys = keys[1:]
	}
	return strings.ReplaceAll(strings.Join(keys, " "), "_", " ")
}

// subject is what an input is about, in front of its description: the craft, the
// place or the model; empty for those of the whole plant.
func subject(path string) string {
	keys := keysOf(path)
	if len(keys) < 2 {
		return ""
	}
	switch keys[0] {
	case "crafts", "places":
		return keys[1] + ": "
	case "models":
		if len(keys) > 3 && keys[2] == "parts" {
			return keys[1] + " " + keys[3] + ": "
		}
		return keys[1] + ": "
	}
	return ""
}

// guessed says an input and its value as people ask about them; the key stands in
// the table of the assumptions. What follows a semicolon in a description are the
// values it may take.
func guessed(path, doc, value, why string) string {
	what, _, _ := strings.Cut(doc, ";")
	return fmt.Sprintf("A guess, %s: %s%s. It matters: %s.", value, subject(path), what, why)
}
