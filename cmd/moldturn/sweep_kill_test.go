package main

import (
	"bytes"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// tinyPlant is an invented plant that simulates in a moment.
const tinyPlant = `version: 1
name: Tiny
shifts:
  day: {days: Mon-Fri, from: 06:00, to: 14:00}
crafts:
  gel: {people: {day: 2}}
  lamination: {people: {day: 8}}
  mold: {people: {day: 2}}
  pull: {people: {day: 2}}
  finish: {people: {day: 2}}
  assembly: {people: {day: 8}}
places:
  booth: {kind: booth, count: 1}
  hoist: {kind: hoist, count: 1}
colors:
  navy: {look: dark}
models:
  Teal 22:
    colors: {navy: 1}
    work: {assembly: 4 x 10 h}
    parts:
      hull: {area: 30 m2, molds: 2, work: {base: 2 x 1 h, skin: 4 x 1.25 h, shot 1: 4 x 3 h, finish: 1 x 4 h}}
demand: {book: full, floor_limit: 8}
strip: {policy: every, every: 10}
run: {replications: 4, years: 1, warm_up: 1}
`

// sweepOnce starts the built program on a sweep of 24 settings. With a limit it
// is killed then, if it still runs. It returns what it printed.
func sweepOnce(t *testing.T, program, dir, folder string, limit time.Duration, more ...string) (stdout, stderr string, killed bool) {
	t.Helper()
	args := append([]string{"sweep", "tiny.yaml", "--over", "strip.every=1..8", "--over", "hold.clock=16h..24h/4h", "--replications", "24", "-o", folder}, more...)
	cmd := exec.Command(program, args...)
	cmd.Dir = dir
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	if limit > 0 {
		timer := time.AfterFunc(limit, func() { cmd.Process.Kill() })
		defer timer.Stop()
	}
	err := cmd.Wait()
	var exit *exec.ExitError
	if errors.As(err, &exit) && !exit.Exited() {
		return out.String(), errs.String(), true
	}
	if err != nil {
		t.Fatalf("%v\n%s", err, errs.String())
	}
	return out.String(), errs.String(), false
}

// A sweep that is killed again and again loses only what it was working on: the
// number of settings that are kept never falls, kept ones are not simulated
// again, and in the end every file has the same bytes as that of a sweep that
// ran through.
func TestSweepSurvivesKills(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the program and kills it")
	}
	dir := t.TempDir()
	program := filepath.Join(dir, "moldturn")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	if err := os.WriteFile(filepath.Join(dir, "tiny.yaml"), []byte(tinyPlant), 0o600); err != nil {
		t.Fatal(err)
	}
	begun := time.Now()
	want, _, _ := sweepOnce(t, program, dir, "whole", 0, "--workers", "1")
	whole := time.Since(begun)

	rng := rand.New(rand.NewPCG(11, 11))
	kept, kills := 0, 0
	for kills < 12 {
		limit := time.Duration(float64(whole) * rng.Float64() * .4)
		_, stderr, killed := sweepOnce(t, program, dir, "broken", max(limit, time.Millisecond), "--workers", "2")
		if !killed && kills < 3 && whole > time.Millisecond { // it was faster than when it was measured: sooner, from the start
			kept, kills, whole = 0, 0, whole/2
			if err := os.RemoveAll(filepath.Join(dir, "broken")); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if !killed {
			break
		}
		kills++
		now := settingsKept(t, filepath.Join(dir, "broken", "results.jsonl"))
		if now < kept {
			t.Fatalf("after kill %d, %d settings are kept, before it %d", kills, now, kept)
		}
		if kept > 0 && strings.Contains(stderr, "simulating") && !strings.Contains(stderr, fmt.Sprintf("%d of 25 settings are in", kept)) {
			t.Errorf("%d settings were kept, and not taken up:\n%s", kept, stderr)
		}
		kept = now
	}
	if kills < 3 || kept == 0 {
		t.Fatalf("the program was killed %d times, %d settings were kept: this tests nothing", kills, kept)
	}
	got, _, _ := sweepOnce(t, program, dir, "broken", 0, "--workers", "2")
	if got != want {
		t.Errorf("printed after %d kills:\n%s\nin one go:\n%s", kills, got, want)
	}
	for _, name := range []string{"results.jsonl", "results.csv", "results.json", "report.html"} {
		a, errA := os.ReadFile(filepath.Join(dir, "whole", name))
		b, errB := os.ReadFile(filepath.Join(dir, "broken", name))
		if errA != nil || errB != nil || !bytes.Equal(a, b) {
			t.Errorf("%s: %d bytes in one go, %d after %d kills, or they differ (%v, %v)", name, len(a), len(b), kills, errA, errB)
		}
	}
	t.Logf("%d kills in a sweep of %v", kills, whole)
}

// settingsKept is the number of whole lines behind the head; 0 without a file.
func settingsKept(t *testing.T, path string) int {
	t.Helper()
	data, err := os.ReadFile(path)
	if errors.Is(err, os.ErrNotExist) {
		return 0
	}
	if err != nil {
		t.Fatal(err)
	}
	return max(0, bytes.Count(data, []byte("\n"))-1)
}
