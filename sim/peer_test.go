//go:build peer

package sim

import (
	"encoding/json"
	"os/exec"
	"testing"
	"time"
)

// SimPy runs the same mold loop (testdata/simpy_moldloop.py) in turn with the
// engine; the median ratio of mold cycles per second of processor time must not
// be under the target. It runs only on request, by "make bench-peer".
func TestPeer(t *testing.T) {
	const rounds, target, cycles = 7, 12.0, 200_000
	var ratios, walls []float64
	for range rounds {
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
	ratio := middle(ratios)
	t.Logf("median ratio %.1f by processor time, %.1f by the clock on the wall; target %.0f", ratio, middle(walls), target)
	if ratio < target {
		t.Errorf("ratio %.1f is under the target %.0f", ratio, target)
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
	out, err := exec.Command("/usr/bin/python3", "testdata/simpy_moldloop.py", "--hours", "300000").Output()
	if err != nil {
		t.Fatalf("the SimPy program did not run: %v; on Debian: apt-get install python3-simpy", err)
	}
	var p peerLoop
	if err := json.Unmarshal(out, &p); err != nil {
		t.Fatalf("the SimPy program printed %q: %v", out, err)
	}
	if p.X < 0.17 || p.X > 0.19 || p.CPU <= 0 {
		t.Fatalf("the SimPy program ran another model: %+v", p)
	}
	return p
}
