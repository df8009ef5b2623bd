package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestReadme runs what README.md tells the reader to type, in order and in one
// folder, and compares what it shows with what comes out:
//
//   - sh: every line is a command that must succeed;
//   - console: lines after "$ " are commands, the lines below are what they
//     print; "..." stands for any lines. A command that fails must show its
//     complaint;
//   - yaml, with a file name after it: the file is put into the folder;
//   - yaml and text without a name are only looked at.
//
// make run is run by its recipe; other targets of make, go build, go install and
// go test are only checked to exist, or the tests would call themselves. Any
// other kind of block or command is a fault, so that nothing is left out.
func TestReadme(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(root, "README.md"))
	if errors.Is(err, fs.ErrNotExist) {
		t.Fatal("there is no README.md, so there is nothing to run")
	}
	if err != nil {
		t.Fatal(err)
	}
	m := newManual(t)
	for _, fault := range m.faults(string(text)) {
		t.Error("README.md:" + fault)
	}
	if m.ran == 0 {
		t.Error("README.md has no command to run")
	}
}

// manual runs the blocks of a text.
type manual struct {
	t      *testing.T
	folder string // where commands run
	path   string // PATH with the built program in front
	ran    int
}

func newManual(t *testing.T) *manual {
	t.Helper()
	bin := t.TempDir()
	build := exec.CommandContext(t.Context(), "go", "build", "-o", bin, "./cmd/moldturn")
	build.Dir = root
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("go build: %v\n%s", err, out)
	}
	return &manual{t: t, folder: t.TempDir(), path: bin + string(os.PathListSeparator) + os.Getenv("PATH")}
}

// faults runs every block and returns what is wrong as "line: fault".
func (m *manual) faults(text string) []string {
	blocks, err := blocksOf(text)
	if err != nil {
		return []string{err.Error()}
	}
	var found []string
	for _, b := range blocks {
		found = append(found, m.blockFaults(b)...)
	}
	return found
}

func (m *manual) blockFaults(b block) []string {
	switch b.kind() {
	case "sh", "console":
		steps, err := b.steps()
		if err != nil {
			return []string{err.Error()}
		}
		var found []string
		for _, s := range steps {
			if err := m.obey(s); err != nil {
				found = append(found, fmt.Sprintf("%d: %s: %v", s.line, s.command, err))
			}
		}
		return found
	case "yaml", "text":
		if len(b.info) == 1 {
			m.t.Logf("line %d: the %s block is only looked at", b.line, b.kind())
			return nil
		}
		name := filepath.Join(m.folder, filepath.Base(b.info[1]))
		if err := os.WriteFile(name, []byte(strings.Join(b.lines, "\n")+"\n"), 0o600); err != nil {
			return []string{err.Error()}
		}
		return nil
	}
	return []string{fmt.Sprintf("%d: a block of kind %q; known are sh, console, yaml, text", b.line, b.kind())}
}

// tools are the commands besides moldturn that a reader is told to type.
var tools = []string{"moldturn", "cat", "cp", "diff", "echo", "grep", "head", "jq", "ls", "mkdir", "sed", "source", "tail", "wc"}

// obey runs one step, or checks that it could be run.
func (m *manual) obey(s step) error {
	if target, ok := strings.CutPrefix(s.command, "make "); ok {
		return m.obeyMake(s, target)
	}
	if rest, ok := strings.CutPrefix(s.command, "go run ./cmd/moldturn"); ok {
		s.command = "moldturn" + rest
	}
	first, rest, _ := strings.Cut(s.command, " ")
	if verb, _, _ := strings.Cut(rest, " "); first == "go" && slices.Contains([]string{"build", "install", "test"}, verb) {
		return m.checkFolders(s, rest)
	}
	if !slices.Contains(tools, first) {
		return fmt.Errorf("no known command; known are make, go and %s", strings.Join(tools, ", "))
	}
	return m.run(s)
}

// obeyMake runs the recipe of "run" and checks that any other target exists.
func (m *manual) obeyMake(s step, target string) error {
	dry := exec.CommandContext(m.t.Context(), "make", append([]string{"-n", "--no-print-directory"}, strings.Fields(target)...)...)
	dry.Dir, dry.Env = root, append(os.Environ(), "MAKEFLAGS=")
	out, err := dry.CombinedOutput()
	if err != nil {
		return fmt.Errorf("%w: %s", err, bytes.TrimSpace(out))
	}
	recipe := strings.TrimSpace(string(out))
	if target != "run" {
		m.t.Logf("line %d: %s is not run, its recipe is %q", s.line, s.command, recipe)
		return nil
	}
	if !strings.HasPrefix(recipe, "go run ./cmd/moldturn ") || strings.Contains(recipe, "\n") {
		return fmt.Errorf("the recipe %q is not one run of moldturn", recipe)
	}
	s.command = recipe
	return m.obey(s)
}

// checkFolders checks that the packages of a go command are there.
func (m *manual) checkFolders(s step, rest string) error {
	for word := range strings.FieldsSeq(rest) {
		if folder, ok := strings.CutPrefix(word, "./"); ok {
			if _, err := os.Stat(filepath.Join(root, strings.TrimSuffix(folder, "..."))); err != nil {
				return err
			}
		}
	}
	m.t.Logf("line %d: %s is not run", s.line, s.command)
	return nil
}

// run gives a command to the shell and compares what it prints with what is
// shown: the result, or result and complaints when it fails.
func (m *manual) run(s step) error {
	m.ran++
	shell, err := exec.LookPath("bash")
	if err != nil {
		shell = "sh"
	}
	var stdout, stderr bytes.Buffer
	cmd := exec.CommandContext(m.t.Context(), shell, "-c", s.command)
	cmd.Dir, cmd.Stdout, cmd.Stderr = m.folder, &stdout, &stderr
	cmd.Env = []string{"PATH=" + m.path, "HOME=" + m.folder, "TERM=dumb", "NO_COLOR=1", "LC_ALL=C.UTF-8"}
	err = cmd.Run()
	got := stdout.String()
	if err != nil {
		got += stderr.String()
	}
	if err != nil && !s.session {
		return fmt.Errorf("%w\n%s", err, got)
	}
	if s.session && !matches(s.shown, strings.Split(got, "\n")) {
		return fmt.Errorf("shown\n%s\nbut printed\n%s", strings.Join(s.shown, "\n"), got)
	}
	return nil
}

// The runner finds what it is for: a text with one fault of each kind, and none
// where all is well.
func TestManualFindsFaults(t *testing.T) {
	m := newManual(t)
	for _, test := range []struct{ name, text, want string }{
		{"fine", "```sh\nmoldturn version >v.txt\n$ cat v.txt\n```\n```console\n$ cat v.txt\n...\nsimgo v0.7.0\n```\n", ""},
		{"ellipsis", "```console\n$ moldturn version\n...\nsimgo v0.7.0\n```\n", ""},
		{"go run", "```console\n$ go run ./cmd/moldturn version | tail -n 1\nsimgo v0.7.0\n```\n", ""},
		{"failure shown", "```console\n$ moldturn vresion\nunknown command \"vresion\"\n...\n```\n", ""},
		{"failure hidden", "```console\n$ moldturn vresion\n```\n", "did you mean"},
		{"failure in sh", "```sh\nmoldturn vresion\n```\n", "exit status 2"},
		{"wrong output", "```console\n$ moldturn version\nsimgo v0.6.0\n```\n", "simgo v0.7.0"},
		{"file", "```yaml plant.yaml\nversion: 1\n```\n```console\n$ cat plant.yaml\nversion: 1\n```\n", ""},
		{"shown only", "```text\nany\n```\n", ""},
		{"make test", "```sh\nmake test\n```\n", ""},
		{"no target", "```sh\nmake coffee\n```\n", "coffee"},
		{"go install", "```sh\ngo install ./cmd/moldturn\n```\n", ""},
		{"no package", "```sh\ngo install ./cmd/mouldturn\n```\n", "no such file"},
		{"unknown kind", "```python\nprint()\n```\n", `kind "python"`},
		{"no kind", "```\nprint()\n```\n", `kind ""`},
		{"unknown command", "```sh\nrm -r out\n```\n", "no known command"},
		{"not closed", "```sh\nmoldturn version\n", "not closed"},
	} {
		got := strings.Join(m.faults(test.text), "\n")
		if test.want == "" && got != "" || !strings.Contains(got, test.want) {
			t.Errorf("%s: got %q, want %q", test.name, got, test.want)
		}
	}
	if m.ran == 0 {
		t.Error("no command was run")
	}
}
