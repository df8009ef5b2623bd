package main

import (
	"html"
	"os"
	"regexp"
	"strings"
	"testing"
)

// The command with which a report has its assumptions measured is one that runs,
// and it measures what it names.
func TestReportNamesACommandThatMeasures(t *testing.T) {
	named := regexp.MustCompile(`moldturn (sweep SCENARIO --each [^<]*')`)
	one := regexp.MustCompile(`'([^']*)'|(\S+)`)
	for _, scenario := range []string{"fenwater", "small-shop"} {
		text, err := os.ReadFile(reportOf(t, scenario))
		if err != nil {
			t.Fatal(err)
		}
		found := named.FindStringSubmatch(html.UnescapeString(string(text)))
		if found == nil {
			t.Fatalf("%s: the report names no command", scenario)
		}
		var args, inputs []string
		for _, m := range one.FindAllStringSubmatch(strings.Replace(found[1], "SCENARIO", scenario, 1), -1) {
			args = append(args, m[1]+m[2])
			if path, _, ok := strings.Cut(m[1], "="); ok {
				inputs = append(inputs, path)
			}
		}
		args = append(args, "--years", "1", "--replications", "2", "-q", "-o", t.TempDir())
		code, stdout, stderr := try(t.Context(), commands(), args...)
		if code != exitDone || len(inputs) == 0 {
			t.Errorf("%s: code %d, stderr %q", found[1], code, stderr)
		}
		for _, path := range inputs {
			if !strings.Contains(stdout, path) {
				t.Errorf("%s: %s is not measured in\n%s", scenario, path, stdout)
			}
		}
	}
}
