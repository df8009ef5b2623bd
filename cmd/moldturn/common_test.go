package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/spf13/pflag"
)

func TestCommonFlags(t *testing.T) {
	var o common
	f := pflag.NewFlagSet("compare", pflag.ContinueOnError)
	o.add(f)
	err := f.Parse([]string{"-o", "results", "--replications=40", "--years", "3", "--seed", "0", "--workers", "2",
		"--set", "mold.hold = 20 h", "--set", "name=a=b", "--json", "-q"})
	if err != nil {
		t.Fatal(err)
	}
	want := common{
		Out: "results", Replications: option[int]{40, true}, Years: option[int]{3, true},
		Seed: option[uint64]{0, true}, Workers: option[int]{2, true},
		Settings: []setting{{"mold.hold", "20 h"}, {"name", "a=b"}}, JSON: true, Quiet: true,
	}
	if diff := cmp.Diff(want, o); diff != "" {
		t.Error(diff)
	}
	if o.workers() != 2 {
		t.Errorf("%d workers, want 2", o.workers())
	}
}

func TestOpenFlagsStayOpen(t *testing.T) {
	code, stdout, stderr := try(t.Context(), trialTable(), "compare", "fenwater")
	if code != exitDone {
		t.Fatalf("code %d, stderr %q", code, stderr)
	}
	var got map[string]any
	if err := json.Unmarshal([]byte(stdout), &got); err != nil {
		t.Fatal(err)
	}
	want := map[string]any{
		"args": []any{"fenwater"}, "out": "", "replications": -1.0, "years": -1.0,
		"seed": 42.0, "settings": nil, "json": false, "quiet": false,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	if n := (&common{}).workers(); n < 1 {
		t.Errorf("%d workers by default", n)
	}
}

func TestAllComplaintsAtOnce(t *testing.T) {
	file := filepath.Join(t.TempDir(), "plant.yaml")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	code, stdout, stderr := try(t.Context(), trialTable(), "compare", "--out", file, "--replications", "0",
		"--years", "ten", "--seed=-1", "--workers", "1e3", "--set", "hold", "--set", "=4", "--set", "a=1", "--set", "a=2")
	want := `--out: "` + file + `" is a file, allowed: a folder or a new name
--replications: found "0", allowed: a whole number from 1 to 10000
--years: found "ten", allowed: a whole number from 1 to 1000
--seed: found "-1", allowed: a whole number from 0 to 9007199254740991
--workers: found "1e3", allowed: a whole number from 1 to 1024
--set: found "hold", allowed: path=value
--set: found "=4", allowed: path=value
--set: a is given twice, "1" and "2"
compare needs SCENARIO
  hint: usage is "moldturn compare SCENARIO [OTHER] [flags]"; "moldturn help compare" says more
`
	if code != exitMisuse || stdout != "" {
		t.Errorf("code %d, stdout %q, want 2 and nothing", code, stdout)
	}
	if diff := cmp.Diff(want, stderr); diff != "" {
		t.Error(diff)
	}
}

func TestOneComplaint(t *testing.T) {
	hint := "\n  hint: usage is \"moldturn compare SCENARIO [OTHER] [flags]\"; \"moldturn help compare\" says more\n"
	for _, test := range []struct {
		args []string
		want string
	}{
		{[]string{"compare", "a", "b", "c"}, "compare takes 2 at most, found \"c\" too" + hint},
		{[]string{"compare", "a", "--out", " "}, "--out: found nothing, allowed: the name of a folder" + hint},
		{[]string{"compare", "a", "--out"}, "--out needs a value" + hint},
		{[]string{"compare", "a", "-o"}, "--out needs a value" + hint},
		{[]string{"compare", "a", "--json=maybe"}, "--json: found \"maybe\", allowed: true, false, or no value at all" + hint},
		{[]string{"compare", "a", "--replcations", "4"}, "unknown flag \"--replcations\"\n  hint: did you mean \"--replications\"?\n"},
		{[]string{"compare", "a", "-x"}, "unknown flag \"-x\"" + hint},
		{[]string{"compare", "a", "-qx"}, "unknown flag \"-x\"" + hint},
		{[]string{"compare", "a", "--=4"}, "\"--=4\" is no flag" + hint},
		{[]string{"--years", "3", "compare"}, "--years stands before a command\n  hint: flags come after the command: moldturn COMMAND --years\n"},
		{[]string{"wiat"}, "unknown command \"wiat\"\n  hint: \"moldturn help\" lists the commands\n"},
		{[]string{"help", "comapre"}, "unknown command \"comapre\"\n  hint: did you mean \"compare\"?\n"},
	} {
		code, stdout, stderr := try(t.Context(), trialTable(), test.args...)
		if code != exitMisuse || stdout != "" || stderr != test.want {
			t.Errorf("%q: code %d, stdout %q, stderr\n%swant\n%s", test.args, code, stdout, stderr, test.want)
		}
	}
}
