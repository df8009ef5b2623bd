//go:build peer

package sim

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"testing"
	"time"
)

// The targets of speed. Each is a median of rounds and is printed; one that is
// missed, or could not be measured, fails. They run only on request, by "make
// bench-peer", and want a machine without other work.
func TestPeer(t *testing.T) {
	t.Run("mold loop beside SimPy", besideSimPy)
	t.Run("two cores", func(t *testing.T) {
		if runtime.NumCPU() < 2 {
			t.Skip("this machine has one core")
		}
		atLeast(t, "work done by two cores over that of one", 1.6, rounds(func() float64 { return coresRatio(t) }))
	})
	t.Run("100 models", func(t *testing.T) {
		few, many := rounds(func() float64 { return perPart(t, 3) }), rounds(func() float64 { return perPart(t, 100) })
		t.Logf("processor time for a part: %.0f ns among 3 models, %.0f ns among 100", few, many)
		atMost(t, "time for a part among 100 models over that among 3", 1.3, many/few)
	})
	t.Run("bare heap", func(t *testing.T) {
		t.Logf("time of the engine over that of a bare heap with the same loop: %.2f, the aim is under 4", rounds(func() float64 { return limitRatio(t) }))
	})
}

func rounds(measure func() float64) float64 {
	var all []float64
	for range 7 {
		all = append(all, measure())
	}
	return middle(all)
}

func atLeast(t *testing.T, what string, target, got float64) {
	t.Helper()
	t.Logf("%s: %.2f, target at least %g", what, got, target)
	if got < target {
		t.Errorf("%.2f is under the target %g", got, target)
	}
}

func atMost(t *testing.T, what string, target, got float64) {
	t.Helper()
	t.Logf("%s: %.2f, target at most %g", what, got, target)
	if got > target {
		t.Errorf("%.2f is over the target %g", got, target)
	}
}

// besideSimPy runs the same loop (testdata/simpy_moldloop.py) in turn with the
// engine and compares mold cycles per second of processor time.
func besideSimPy(t *testing.T) {
	const target, aim, cycles = 12.0, 15.0, 200_000
	needSimPy(t)
	var ratios, walls []float64
	for range 7 {
		peer := peerRun(t)
		w0, t0 := time.Now(), processorTime(t)
		n := loopRun(t, 1, cycles)
		ours := float64(n) / (processorTime(t) - t0)
		wall := float64(n) / time.Since(w0).Seconds()
		theirs := float64(peer.Pulls) / peer.CPU
		ratios = append(ratios, ours/theirs)
		walls = append(walls, wall/(float64(peer.Pulls)/peer.Wall))
		t.Logf("%s on Python %s: %.0f mold cycles/s, engine: %.0f, ratio %.1f", peer.Lib, peer.Python, theirs, ours, ours/theirs)
	}
	t.Logf("by the clock on the wall %.1f; the aim is %g", middle(walls), aim)
	atLeast(t, "mold cycles per second of the engine over those of SimPy, by processor time", target, middle(ratios))
}

const python = "/usr/bin/python3"

// needSimPy sees to it that the SimPy program runs. Where it does not, SimPy is
// installed as the package of Debian, which takes root and apt-get.
func needSimPy(t *testing.T) {
	t.Helper()
	out, err := exec.Command(python, "testdata/simpy_moldloop.py", "--hours", "100").CombinedOutput()
	if err == nil {
		return
	}
	apt, none := exec.LookPath("apt-get")
	if os.Geteuid() != 0 || none != nil {
		t.Fatalf("the SimPy program does not run (%v); install SimPy first, on Debian as root: apt-get install python3-simpy\n%s", err, out)
	}
	t.Log("SimPy is missing: apt-get install python3-simpy")
	for _, args := range [][]string{{"update", "-q"}, {"install", "-q", "-y", "--no-install-recommends", "python3-simpy"}} {
		get := exec.Command(apt, args...)
		get.Env = append(os.Environ(), "DEBIAN_FRONTEND=noninteractive")
		if out, err := get.CombinedOutput(); err != nil {
			t.Fatalf("apt-get %s: %v\n%s", args[0], err, out)
		}
	}
}

// peerLoop is what the SimPy program prints.
type peerLoop struct {
	Lib    string  `json:"lib"`
	Python string  `json:"py"`
	Pulls  int     `json:"pulls"`
	X      float64 `json:"X"`
	Wall   float64 `json:"wall_s"`
	CPU    float64 `json:"cpu_s"`
}

func peerRun(t *testing.T) peerLoop {
	t.Helper()
	p, err := peerLine()
	if err != nil {
		t.Fatalf("the SimPy program did not run: %v", err)
	}
	if p.X < 0.17 || p.X > 0.19 || p.CPU <= 0 {
		t.Fatalf("the SimPy program ran another model: %+v", p)
	}
	return p
}

func peerLine() (peerLoop, error) {
	var p peerLoop
	out, err := exec.Command(python, "testdata/simpy_moldloop.py", "--hours", "300000").Output()
	if err != nil {
		return p, err
	}
	if err := json.Unmarshal(out, &p); err != nil {
		return p, fmt.Errorf("it printed %q: %w", out, err)
	}
	return p, nil
}
