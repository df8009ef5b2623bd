// Command break damages the engine on purpose, in a copy, one small edit at a
// time, and says which tests notice. It fails when no test does, when an edit no
// longer fits the code, or when a test fails without any damage. Words on the
// command line pick the damages whose names hold one of them.
package main

import (
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// damage is one edit: text that stands once in a file, and what replaces it.
type damage struct {
	name, file, was, is string
	packages            []string // whose tests run
}

var (
	engine   = []string{"./sim", "./sim/validate"}
	engineOf = func(more ...string) []string { return append(slices.Clone(more), engine...) }
	damages  = []damage{
		{"queue order: who asked last goes first", "sim/job.go",
			"return x.asked < y.asked", "return x.asked > y.asked", engine},
		{"class order at one instant: only the order of adding counts", "sim/clock/queue.go",
			"uint64(class)<<classShift | q.seq", "q.seq", engineOf("./sim/clock")},
		{"pause remainder: forgets how fast the work went", "sim/work.go",
			"worked = clock.Time(math.Round(float64(worked) / b.pace))", "worked = clock.Time(math.Round(float64(worked)))", engine},
		{"strip counter off by one", "sim/policy/strip.go",
			"return n > 0 && look.Turns >= n", "return n > 0 && look.Turns > n", engineOf("./sim/policy")},
		{"claim leak: a hoist is not given back", "sim/work.go",
			"r.give(r.place(p), 1)\n\t}\n\tif s.Craft != None {\n\t\tr.delist", "_ = p\n\t}\n\tif s.Craft != None {\n\t\tr.delist", engine},
		{"protection off: large claims can be passed for ever", "sim/claim.go",
			"r.clk.Now()-r.jobs[g].asked >= protectAfter", "r.clk.Now()-r.jobs[g].asked >= protectAfter+clock.Never", engine},
		{"calendar boundary: work that ends with the shift ends with the next one's start", "sim/shift/arithmetic.go",
			"if work <= iv.To-from {", "if work < iv.To-from {", engineOf("./sim/shift")},
		{"hand-over loses work: half of what was done is done again", "sim/work.go",
			"b.left = max(b.left-worked, 0)", "b.left = max(b.left-worked/2, 0)", engine},
		{"a stream shared by two purposes: time up and repair time", "sim/failures.go",
			".U(2*r.fails[f].number + repair)", ".U(2*r.fails[f].number + repair - repair)", engine},
		{"wait reason dropped: off shift counts as no free crew", "sim/job.go",
			"cause.Reason = record.OffShift", "cause.Reason = record.NoCrew", engine},
	}
)

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func run() error {
	copied, err := os.MkdirTemp("", "moldturn-break-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(copied)
	if err := copyModule(copied); err != nil {
		return err
	}
	chosen := slices.DeleteFunc(slices.Clone(damages), func(d damage) bool {
		return len(os.Args) > 1 && !slices.ContainsFunc(os.Args[1:], func(word string) bool { return strings.Contains(d.name, word) })
	})
	if len(chosen) == 0 {
		return fmt.Errorf("no damage has a name that holds one of %q", os.Args[1:])
	}
	var all []string
	for _, d := range chosen {
		all = append(all, d.packages...)
	}
	slices.Sort(all)
	if failing := tests(copied, slices.Compact(all)); len(failing) > 0 {
		return fmt.Errorf("these fail without any damage: %s", strings.Join(failing, ", "))
	}
	unnoticed := 0
	for _, d := range chosen {
		failing, err := d.try(copied)
		if err != nil {
			return err
		}
		fmt.Printf("%s (%s)\n", d.name, d.file)
		if len(failing) == 0 {
			unnoticed++
			fmt.Println("  UNNOTICED")
		}
		for _, name := range failing {
			fmt.Println("  " + name)
		}
	}
	if unnoticed > 0 {
		return fmt.Errorf("%d of %d damages were not noticed by any test", unnoticed, len(chosen))
	}
	return nil
}

// copyModule copies what tests under sim need.
func copyModule(to string) error {
	for _, file := range []string{"go.mod", "go.sum"} {
		data, err := os.ReadFile(file)
		if err != nil {
			return fmt.Errorf("run this at the top of the module: %w", err)
		}
		if err := os.WriteFile(filepath.Join(to, file), data, 0o644); err != nil {
			return err
		}
	}
	return os.CopyFS(filepath.Join(to, "sim"), os.DirFS("sim").(fs.FS))
}

// try damages the copy, runs the tests, and mends it.
func (d *damage) try(copied string) ([]string, error) {
	path := filepath.Join(copied, d.file)
	whole, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	if n := strings.Count(string(whole), d.was); n != 1 {
		return nil, fmt.Errorf("%s: %q stands there %d times, wanted once", d.file, d.was, n)
	}
	if err := os.WriteFile(path, []byte(strings.Replace(string(whole), d.was, d.is, 1)), 0o644); err != nil {
		return nil, err
	}
	failing := tests(copied, d.packages)
	return failing, os.WriteFile(path, whole, 0o644)
}

var failed = regexp.MustCompile(`(?m)^\s*--- FAIL: (\S+)|^(panic: test timed out.*)|^FAIL\s+(\S+ \[build failed\])`)

// tests runs the tests of packages in the copy and names those that fail; a test
// with parts by its parts.
func tests(copied string, packages []string) []string {
	cmd := exec.Command("go", append([]string{"test", "-count=1", "-timeout=300s"}, packages...)...)
	cmd.Dir = copied
	out, err := cmd.CombinedOutput()
	if err == nil {
		return nil
	}
	var names []string
	for _, m := range failed.FindAllSubmatch(out, -1) {
		names = append(names, string(m[1])+string(m[2])+string(m[3]))
	}
	names = slices.DeleteFunc(names, func(n string) bool {
		return slices.ContainsFunc(names, func(other string) bool { return strings.HasPrefix(other, n+"/") })
	})
	if len(names) == 0 {
		tail := out[max(0, len(out)-300):]
		names = []string{"go test: " + strings.Join(strings.Fields(string(tail)), " ")}
	}
	return names
}
