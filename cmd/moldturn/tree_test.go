package main

import (
	"os"
	"path"
	"path/filepath"
	"runtime/debug"
	"slices"
	"strings"
	"testing"
)

// The order of events at one instant is the kernel's work in part, so that
// another version is another simulator.
func TestKernelVersion(t *testing.T) {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		t.Fatal("the test program carries no build information")
	}
	if got, want := moduleVersion(info, kernelModule), "v0.7.0"; got != want {
		t.Errorf("%s is %s, want %s", kernelModule, got, want)
	}
	if got := moduleVersion(info, "example.org/none"); got != "not linked" {
		t.Errorf("a module that is not there has version %q", got)
	}
	info.Deps = []*debug.Module{{Path: "a", Version: "v1.0.0", Replace: &debug.Module{Path: "../a"}}}
	if got := moduleVersion(info, "a"); got != "../a" {
		t.Errorf("a replaced module shows as %q", got)
	}
}

// agreed are the names at the top of the tree; dot-files are free.
var agreed = []string{
	"sim", "scenarios", "cmd", "reports",
	"go.mod", "go.sum", "README.md", "DEVELOPERS.md", "Makefile",
}

func TestTopLevelHoldsTheAgreedNames(t *testing.T) {
	entries, err := os.ReadDir(root)
	if err != nil {
		t.Fatal(err)
	}
	ignored := ignoredAtTop(t)
	for _, e := range entries {
		name := e.Name()
		if !strings.HasPrefix(name, ".") && !slices.Contains(agreed, name) && !ignored(name) {
			t.Errorf("%s stands at the top level; agreed are %s", name, strings.Join(agreed, " "))
		}
	}
}

// ignoredAtTop matches names that .gitignore keeps out of the tree.
func ignoredAtTop(t *testing.T) func(name string) bool {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root, ".gitignore"))
	if err != nil {
		t.Fatal(err)
	}
	return func(name string) bool {
		for pattern := range strings.FieldsSeq(string(text)) {
			if ok, _ := path.Match(strings.Trim(pattern, "/"), name); ok {
				return true
			}
		}
		return false
	}
}
