package sim

import (
	"math"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// What is left of paused work is counted in hours at the wanted number of
// people: one person of two does half of it in the same time. Timelines by hand;
// hours count from Monday midnight.
func TestPauseKeepsWhatFewPeopleDid(t *testing.T) {
	s := newShop(3)
	c := s.craft(crewOf(1, s.daily(6, 14)), crewOf(2, s.daily(15, 22)))
	step := labor(c, 2, 10, Pause) // 4 h of it are done by 14:00, at half the pace
	step.Least, step.Slow = 1, 1
	a := s.task(6, 0, step)
	s.run(t).want(t, a, "works 1 6:00-14:00, off shift 14:00-15:00, works 2 15:00-21:00")
}

// failTimes keeps when something broke down and when it was there again.
type failTimes struct {
	record.Nothing
	broke, mended []clock.Time
}

func (f *failTimes) Use(u *record.Use) {
	if u.Pool != 0 { // no crafts: pool 0 is the place
		return
	}
	if u.Capacity == 0 {
		f.broke, f.mended = append(f.broke, u.From), append(f.mended, u.To)
	}
}

// Repair times tell nothing of the time up before: they are drawn from streams
// of their own. With both uniform, their correlation over n pairs is near normal
// with standard deviation 1/√n (Kendall & Stuart, The Advanced Theory of
// Statistics, vol. 2; from memory).
func TestRepairsDoNotDependOnTimeUp(t *testing.T) {
	s := newShop(2000)
	p := s.place("booth", 1)
	law, err := draw.Uniform(1, 9)
	if err != nil {
		t.Fatal(err)
	}
	s.p.Failures = []Failure{{Place: p, Gun: None, Up: draw.Compile(law), Repair: draw.Compile(law)}}
	f := &failTimes{}
	if err := Simulate(s.p, steadyAir(), 5, 0, f); err != nil {
		t.Fatal(err)
	}
	var up, down []float64
	for i := 1; i < len(f.broke)-1; i++ {
		up = append(up, (f.broke[i] - f.mended[i-1]).Hours())
		down = append(down, (f.mended[i] - f.broke[i]).Hours())
	}
	var mu, md, uu, dd, ud float64
	n := float64(len(up))
	for i := range up {
		mu += up[i] / n
		md += down[i] / n
	}
	for i := range up {
		uu += (up[i] - mu) * (up[i] - mu)
		dd += (down[i] - md) * (down[i] - md)
		ud += (up[i] - mu) * (down[i] - md)
	}
	if r := ud / math.Sqrt(uu*dd); n < 4000 || math.Abs(r) > 4/math.Sqrt(n) {
		t.Errorf("correlation %.4f over %v pairs", r, n)
	}
}
