package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// block is a fenced block of a Markdown text.
type block struct {
	line  int      // of its opening fence
	info  []string // the words after the fence: the kind and what else stands there
	lines []string
}

// kind is the first word after the fence, "" for none.
func (b block) kind() string {
	if len(b.info) == 0 {
		return ""
	}
	return b.info[0]
}

// blocksOf finds the fenced blocks of a text. A block that is not closed is an
// error, since all after it would be lost.
func blocksOf(text string) ([]block, error) {
	var found []block
	var open *block
	n := 0
	for line := range strings.Lines(text) {
		n++
		line = strings.TrimRight(line, "\r\n")
		info, fence := strings.CutPrefix(strings.TrimSpace(line), "```")
		switch {
		case fence && open == nil:
			open = &block{line: n, info: strings.Fields(info)}
		case fence:
			found, open = append(found, *open), nil
		case open != nil:
			open.lines = append(open.lines, line)
		}
	}
	if open != nil {
		return nil, fmt.Errorf("line %d: the block is not closed", open.line)
	}
	return found, nil
}

// step is one command of a block and, in a block that shows a session, the
// lines that must follow it.
type step struct {
	line    int
	command string
	shown   []string
	session bool
}

// steps are the commands of an sh or console block. In an sh block every line
// is a command, with or without "$ " before it; in a console block only lines
// that begin with "$ " are. A line ending in a backslash goes on in the next.
func (b block) steps() ([]step, error) {
	var found []step
	session, goesOn := b.kind() == "console", false
	for i, line := range b.lines {
		n := b.line + 1 + i
		command, prompt := strings.CutPrefix(strings.TrimSpace(line), "$ ")
		switch {
		case goesOn:
			found[len(found)-1].command += " " + command
		case prompt, !session && command != "" && !strings.HasPrefix(command, "#"):
			found = append(found, step{line: n, command: command, session: session})
		case session && len(found) > 0:
			found[len(found)-1].shown = append(found[len(found)-1].shown, line)
			continue
		case session:
			return nil, fmt.Errorf("line %d: a console block begins with output", n)
		default:
			continue
		}
		last := &found[len(found)-1]
		last.command, goesOn = strings.CutSuffix(last.command, "\\")
		last.command = strings.TrimSpace(last.command)
	}
	if len(found) == 0 {
		return nil, fmt.Errorf("line %d: a block without a command", b.line)
	}
	return found, nil
}

// matches tells whether got is what was shown. A shown line "..." stands for
// any number of lines; blanks at the end of a line and empty lines at the end
// do not count.
func matches(shown, got []string) bool {
	shown, got = trimmed(shown), trimmed(got)
	for i, line := range shown {
		if strings.TrimSpace(line) == "..." {
			for skip := range len(got) - i + 1 {
				if matches(shown[i+1:], got[i+skip:]) {
					return true
				}
			}
			return false
		}
		if i >= len(got) || got[i] != line {
			return false
		}
	}
	return len(shown) == len(got)
}

func trimmed(lines []string) []string {
	lines = slices.Clone(lines)
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " \t")
	}
	for len(lines) > 0 && lines[len(lines)-1] == "" {
		lines = lines[:len(lines)-1]
	}
	return lines
}

func TestBlocksAndTheirSteps(t *testing.T) {
	text := "# Title\n```sh\n# first\nmake run\n$ moldturn version\n```\n\n" +
		"  ```console\n  $ moldturn list \\\n      --json\n  a\n  b\n  $ ls\n  ```\n" +
		"```yaml plant.yaml\nversion: 1\n```\n"
	blocks, err := blocksOf(text)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, b := range blocks {
		got = append(got, fmt.Sprint(b.line, b.info))
		if b.kind() == "yaml" {
			continue
		}
		steps, err := b.steps()
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range steps {
			got = append(got, fmt.Sprintf("%d: %s -> %q %t", s.line, s.command, s.shown, s.session))
		}
	}
	want := []string{
		"2 [sh]", "4: make run -> [] false", "5: moldturn version -> [] false",
		"8 [console]", `9: moldturn list --json -> ["  a" "  b"] true`, "13: ls -> [] true",
		"15 [yaml plant.yaml]",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	for _, bad := range []string{"```sh\nls\n", "```console\nno command\n```\n", "```sh\n# nothing\n```\n"} {
		blocks, err := blocksOf(bad)
		if err == nil {
			_, err = blocks[0].steps()
		}
		if err == nil {
			t.Errorf("%q has no fault", bad)
		}
	}
}

func TestShownOutputMatches(t *testing.T) {
	for _, test := range []struct {
		shown, got string
		want       bool
	}{
		{"a b", "a b", true}, {"a b", "a", false}, {"a", "a b", false}, {"", "", true}, {"", "a", false},
		{"a ... c", "a b b c", true}, {"a ... c", "a c", true}, {"a ... c", "a b", false},
		{"...", "", true}, {"...", "a b", true}, {"... b ... b", "a b a b", true}, {"... b ... b", "a b", false},
		{"a ...", "b", false}, {"a b ...", "a", false},
	} {
		if got := matches(strings.Fields(test.shown), strings.Fields(test.got)); got != test.want {
			t.Errorf("shown %q, got %q: %t, want %t", test.shown, test.got, got, test.want)
		}
	}
	if !matches([]string{"a", ""}, []string{"a  ", "", ""}) {
		t.Error("blanks at the end count")
	}
}
