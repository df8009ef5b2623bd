package main

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestComplete(t *testing.T) {
	for _, test := range []struct {
		line string // the last word is the unfinished one
		want string // the kind of path and the words
	}{
		{"", "none help completion version compare"},
		{"com", "none completion compare"},
		{"unknown ", "none"},
		{"help ", "none help completion version compare"},
		{"help v", "none version"},
		{"help version ", "none"},
		{"completion z", "none zsh"},
		{"version ", "none"},
		{"version -", "none --help"},
		{"compare ", "none fenwater fenwater-july small"},
		{"compare fenwater ", "files"},
		{"compare fenwater other.yaml ", "none"},
		{"compare --r", "none --replications"},
		{"compare --q", "none --quiet"},
		{"compare --out ", "folders"},
		{"compare -o ", "folders"},
		{"compare --out=", "folders"},
		{"compare --out=x s", "none small"},
		{"compare --quiet s", "none small"},
		{"compare --years ", "none"},
		{"compare --years 3 s", "none small"},
		{"compare --set mold.", "none mold.hold= mold.strip="},
		{"compare --set=mold.h", "none --set=mold.hold="},
		{"compare --unknown s", "none small"},
		{"compare --unknown=", "none"},
		{"compare -- --", "none"},
		{"compare -- s", "none small"},
	} {
		args := append([]string{"complete", "--"}, strings.Split(test.line, " ")...)
		code, stdout, stderr := try(t.Context(), trialTable(), args...)
		if code != exitDone || stderr != "" {
			t.Errorf("%q: code %d, stderr %q", test.line, code, stderr)
		}
		var got []string
		for line := range strings.Lines(stdout) {
			word, _, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "\t")
			got = append(got, word)
		}
		if diff := cmp.Diff(test.want, strings.Join(got, " ")); diff != "" {
			t.Errorf("%q: %s", test.line, diff)
		}
	}
}

func TestCompletionsCarryNotes(t *testing.T) {
	_, stdout, _ := try(t.Context(), trialTable(), "complete", "--", "vers")
	if want := "none\nversion\t" + versionCommand().synopsis + "\n"; stdout != want {
		t.Errorf("got %q, want %q", stdout, want)
	}
	_, stdout, _ = try(t.Context(), trialTable(), "complete", "--", "compare", "--js")
	if want := "none\n--json\tprint the result as JSON\n"; stdout != want {
		t.Errorf("got %q, want %q", stdout, want)
	}
}
