package study

import (
	"strconv"

	"moldturn/sim/stats"
)

// HoldHours are the clock hours in the mold that a curve is made of, each in its
// own runs.
func HoldHours() []int {
	var out []int
	for h := 8; h <= 30; h += 2 {
		out = append(out, h)
	}
	return out
}

// HoldReplications is how many replications each of them gets, whatever the
// comparison beside it does. That they meet the same luck makes five enough to
// tell steps apart.
const HoldReplications = 5

// HoldCurve is what a plant gives when nothing but its clock hours in the mold
// is changed: a staircase in boats, since people pull only while they are there,
// and a knee in luster.
type HoldCurve struct {
	Hours  []int
	Base   float64   // what the plant holds, h
	Points []Figures // by Hours
}

// HoldName is a point in words.
func HoldName(hours int) string { return "hold.clock " + strconv.Itoa(hours) + " h" }

// Steps is how much a figure changes from each point to the next, in intervals
// that hold together. ok is false where a point lacks the figure.
func (c *HoldCurve) Steps(m *Metric) (steps []stats.Difference, ok bool) {
	for i := 1; i < len(c.Points); i++ {
		d, ok := c.Points[i].Difference(&c.Points[i-1], m, len(c.Points)-1)
		if !ok {
			return nil, false
		}
		steps = append(steps, d)
	}
	return steps, len(steps) > 0
}

// Gain is how much the best point of a figure has over the worst; best and
// worst are indices. ok is false where a point lacks the figure.
func (c *HoldCurve) Gain(m *Metric) (d stats.Difference, best, worst int, ok bool) {
	for i := range c.Points {
		x, has := c.Points[i].Mean(m)
		if !has {
			return d, 0, 0, false
		}
		w := float64(m.Better) * x
		if a, _ := c.Points[best].Mean(m); w > float64(m.Better)*a {
			best = i
		}
		if a, _ := c.Points[worst].Mean(m); w < float64(m.Better)*a {
			worst = i
		}
	}
	n := len(c.Points)
	if n < 2 {
		return d, 0, 0, false
	}
	d, ok = c.Points[best].Difference(&c.Points[worst], m, n*(n-1)/2)
	return d, best, worst, ok
}

// Knee is the point with the fewest steps from the worst that brings at least
// NineTenths of what the best gains over it.
func (c *HoldCurve) Knee(m *Metric) (at int, ok bool) {
	_, best, worst, ok := c.Gain(m)
	if !ok {
		return 0, false
	}
	low, _ := c.Points[worst].Mean(m)
	high, _ := c.Points[best].Mean(m)
	toward := 1
	if best < worst {
		toward = -1
	}
	for at = worst; at != best; at += toward {
		if x, _ := c.Points[at].Mean(m); (x-low)/(high-low) >= NineTenths {
			break
		}
	}
	return at, true
}
