package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// root is the top of the module as seen from this folder, where go test runs.
const root = "../.."

// listed is what go list tells of one package.
type listed struct {
	ImportPath, Dir                    string
	GoFiles                            []string
	Imports, TestImports, XTestImports []string
}

// name is the package's path in the module: "sim/clock".
func (p listed) name() string { return strings.TrimPrefix(p.ImportPath, "moldturn/") }

// ours are the imports from this module, by their path in it.
func (p listed) ours() []string {
	var names []string
	for _, path := range p.Imports {
		if name, ok := strings.CutPrefix(path, "moldturn/"); ok {
			names = append(names, name)
		}
	}
	return names
}

// layers orders the packages of the module: a package may import what stands
// lower or equally high. The first row that fits counts, so what is not named
// under sim, such as a physical effect, a policy or a ledger, has height 1.
var layers = []struct {
	folder string
	height int
}{
	{"cmd", 5},
	{"reports", 4}, {"scenarios", 4},
	{"sim/study", 3}, {"sim/floor", 3}, {"sim/hand", 3}, {"sim/validate", 3}, {"sim/ahead", 3},
	{"sim/clock", 0}, {"sim/draw", 0}, {"sim/exact", 0}, {"sim/param", 0}, {"sim/state", 0}, {"sim/stats", 0},
	{"sim/", 1},
	{"sim", 2},
}

func height(name string) int {
	for _, l := range layers {
		if under(name, l.folder) {
			return l.height
		}
	}
	return -1
}

// under tells whether a package or import is folder or lies in it.
func under(name, folder string) bool {
	return name == folder || strings.HasPrefix(name, strings.TrimSuffix(folder, "/")+"/")
}

// fewImports are the packages of ours that a base package may import.
var fewImports = map[string][]string{
	"sim/stats":  {},
	"sim/param":  {},
	"sim/state":  {},
	"sim/record": {"sim/clock", "sim/shift"},
}

// notInSim are packages of Go's library that have no business in a simulated
// plant: the world outside and the look of a result.
var notInSim = []string{"os", "log", "flag", "html", "net"}

// mayUseFiles are the folders whose packages may import os. Equipment of tests
// may too, which is a package that imports testing and that nothing else does.
var mayUseFiles = []string{"cmd", "scenarios", "reports/files"}

// breaches says which rules a package breaks.
func breaches(p listed) []string {
	var found []string
	say := func(format string, args ...any) {
		found = append(found, p.name()+" "+fmt.Sprintf(format, args...))
	}
	if height(p.name()) < 0 {
		say("is in no layer")
	}
	allowed, few := fewImports[p.name()]
	for _, other := range p.ours() {
		switch {
		case few && !slices.Contains(allowed, other):
			say("imports %s, allowed are %q", other, allowed)
		case height(other) > height(p.name()):
			say("imports %s, which stands higher", other)
		case under(other, "scenarios") != under(p.name(), "scenarios") && height(p.name()) == height(other):
			say("imports %s, which stands beside it", other)
		}
	}
	for _, path := range p.Imports {
		if under(p.name(), "sim") && inAny(path, notInSim) {
			say("imports %s, which nothing under sim may", path)
		} else if under(path, "os") && !inAny(p.name(), mayUseFiles) && !p.equipment() {
			say("imports %s, which only %q may", path, mayUseFiles)
		}
	}
	if p.name() != "sim/clock" && slices.Contains(slices.Concat(p.Imports, p.TestImports, p.XTestImports), kernelModule) {
		say("imports the event kernel, which only sim/clock may")
	}
	return found
}

// equipment tells whether the package is for tests only.
func (p listed) equipment() bool { return slices.Contains(p.Imports, "testing") }

// shippedEquipment lists the packages that ship and import equipment of tests.
func shippedEquipment(packages []listed) []string {
	var found []string
	for _, tool := range packages {
		for _, p := range packages {
			if tool.equipment() && !p.equipment() && slices.Contains(p.Imports, tool.ImportPath) {
				found = append(found, p.name()+" imports "+tool.name()+", which is for tests only")
			}
		}
	}
	return found
}

func inAny(name string, folders []string) bool {
	return slices.ContainsFunc(folders, func(folder string) bool { return under(name, folder) })
}

func TestLayers(t *testing.T) {
	seen := map[string]bool{}
	packages := listPackages(t)
	for _, found := range shippedEquipment(packages) {
		t.Error(found)
	}
	for _, p := range packages {
		seen[p.name()] = true
		for _, breach := range breaches(p) {
			t.Error(breach)
		}
	}
	for _, name := range []string{"cmd/moldturn", "scenarios", "sim", "sim/clock", "sim/draw", "sim/param", "sim/record", "sim/stats"} {
		if !seen[name] {
			t.Errorf("go list shows no package %s", name)
		}
	}
}

// listPackages asks go list for every package of the module. It walks the
// folders too, so that the test cache notices a changed file.
func listPackages(t *testing.T) []listed {
	t.Helper()
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err == nil && entry.IsDir() && path != root && strings.HasPrefix(entry.Name(), ".") {
			return filepath.SkipDir
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	list := exec.CommandContext(t.Context(), "go", "list", "-e", "-json=ImportPath,Dir,GoFiles,Imports,TestImports,XTestImports", "./...")
	list.Dir, list.Stderr = root, os.Stderr
	out, err := list.Output()
	if err != nil {
		t.Fatalf("go list: %v", err)
	}
	var packages []listed
	for dec := json.NewDecoder(strings.NewReader(string(out))); ; {
		var p listed
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			return packages
		} else if err != nil {
			t.Fatal(err)
		}
		packages = append(packages, p)
	}
}

// The rules see what they are for: each of these packages breaks exactly one.
func TestBreachesAreFound(t *testing.T) {
	for _, test := range []struct {
		name, imports, want string
	}{
		{"sim/stats", "moldturn/sim/draw", "allowed are []"},
		{"sim/param", "moldturn/sim/param/unit", "allowed are []"},
		{"sim/record", "moldturn/sim/draw", `allowed are ["sim/clock" "sim/shift"]`},
		{"sim/draw", "moldturn/sim/cure", "stands higher"},
		{"sim/policy", "moldturn/sim", "stands higher"},
		{"sim", "moldturn/sim/study", "stands higher"},
		{"sim/study", "moldturn/reports/table", "stands higher"},
		{"reports/table", "moldturn/cmd/moldturn", "stands higher"},
		{"sim/floor", "moldturn/scenarios", "stands higher"},
		{"reports", "moldturn/scenarios", "stands beside"},
		{"scenarios", "moldturn/reports", "stands beside"},
		{"sim/cure", "os", "nothing under sim"},
		{"sim/study", "log/slog", "nothing under sim"},
		{"sim", "html/template", "nothing under sim"},
		{"sim/floor", "net/http", "nothing under sim"},
		{"reports/page", "os", "only"},
		{"sim/cure", kernelModule, "only sim/clock"},
		{"tools/gen", "fmt", "in no layer"},
	} {
		got := breaches(listed{ImportPath: "moldturn/" + test.name, Imports: []string{test.imports}})
		if len(got) != 1 || !strings.Contains(got[0], test.want) {
			t.Errorf("%s imports %s: got %q, want one with %q", test.name, test.imports, got, test.want)
		}
	}
	for _, fine := range [][2]string{
		{"cmd/moldturn", "os"}, {"cmd/moldturn", "moldturn/scenarios"}, {"scenarios", "moldturn/sim"},
		{"reports/files", "os"}, {"reports/page", "html/template"}, {"reports", "moldturn/sim/study"},
		{"sim/clock", kernelModule}, {"sim/cure", "moldturn/sim/draw"}, {"sim/record", "moldturn/sim/clock"},
		{"sim/study", "moldturn/sim"}, {"reports/table", "moldturn/reports/cells"}, {"sim/draw", "cmp"},
	} {
		if got := breaches(listed{ImportPath: "moldturn/" + fine[0], Imports: []string{fine[1]}}); len(got) > 0 {
			t.Errorf("%s imports %s: got %q, want nothing", fine[0], fine[1], got)
		}
	}
}

func TestShippedEquipmentIsFound(t *testing.T) {
	tool := listed{ImportPath: "moldturn/reports/browser", Imports: []string{"os", "testing"}}
	shipped := listed{ImportPath: "moldturn/reports", Imports: []string{tool.ImportPath}}
	tested := listed{ImportPath: "moldturn/reports/page", XTestImports: []string{tool.ImportPath}}
	got := shippedEquipment([]listed{tool, shipped, tested})
	if want := []string{"reports imports reports/browser, which is for tests only"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := breaches(tool); len(got) > 0 {
		t.Errorf("equipment breaks %q", got)
	}
}

// worldly are the calls that would tie a simulated plant to the machine's clock
// or print from inside it.
var worldly = map[string][]string{
	"time": {"Now", "Since", "Until", "Sleep", "After", "AfterFunc", "Tick", "NewTimer", "NewTicker"},
	"fmt":  {"Print", "Printf", "Println"},
}

func TestNothingUnderSimReadsTheWallClockOrPrints(t *testing.T) {
	files := 0
	for _, p := range listPackages(t) {
		if !under(p.name(), "sim") {
			continue
		}
		for _, name := range p.GoFiles {
			files++
			for _, call := range worldlyCalls(t, filepath.Join(p.Dir, name), nil) {
				t.Errorf("%s: %s", path.Join(p.name(), name), call)
			}
		}
	}
	if files == 0 {
		t.Error("no file under sim was read")
	}
	source := "package p\nimport \"time\"\nvar x = time.Now\nfunc f() { println(x().After(x())) }\n"
	if got := fmt.Sprint(worldlyCalls(t, "p.go", source)); got != "[3: time.Now 4: println]" {
		t.Errorf("the search finds %s", got)
	}
}

// worldlyCalls lists the uses of worldly functions in a Go file by line.
func worldlyCalls(t *testing.T, name string, source any) []string {
	t.Helper()
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, name, source, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	var found []string
	ast.Inspect(file, func(n ast.Node) bool {
		use := ""
		switch n := n.(type) {
		case *ast.SelectorExpr:
			if x, ok := n.X.(*ast.Ident); ok && slices.Contains(worldly[x.Name], n.Sel.Name) {
				use = x.Name + "." + n.Sel.Name
			}
		case *ast.CallExpr:
			if x, ok := n.Fun.(*ast.Ident); ok && (x.Name == "print" || x.Name == "println") {
				use = x.Name
			}
		}
		if use != "" {
			found = append(found, fmt.Sprintf("%d: %s", set.Position(n.Pos()).Line, use))
		}
		return true
	})
	return found
}
