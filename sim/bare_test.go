package sim

import (
	"math"

	"moldturn/sim/draw"
)

// bareEvent is an end of work or cure in the bare loop.
type bareEvent struct {
	at   float64
	mold int32
}

// bareLoop is the loop of configuration C, 8 molds, written by hand on a binary
// heap of plain values: no plant, no calendars, no claims, no facts. It is what
// an engine can be measured against: little can be faster on one core.
type bareLoop struct {
	heap  []bareEvent
	free  [6]int
	queue [6][]int32 // first come, first served
	head  [6]int
	at    [8]int8  // station of each mold
	since [8]int32 // its pulls since a strip
	drawn uint64
	key   draw.Key
	pulls int
}

var bareMeans = [6]float64{2, 3, 10, 24, 2, 6}

const (
	bareCure  = 3
	barePull  = 4
	bareStrip = 5
)

func runBare(seed uint64, cycles int) *bareLoop {
	l := &bareLoop{free: [6]int{2, 2, 3, 1 << 30, 1, 1}, key: draw.Root(seed, 0)}
	for s := range l.queue {
		l.queue[s] = make([]int32, 0, 8)
	}
	for m := range int32(len(l.at)) {
		l.arrive(m, 0, 0)
	}
	for l.pulls < cycles {
		l.step()
	}
	return l
}

// arrive brings a mold to a station at time t.
func (l *bareLoop) arrive(m int32, s int8, t float64) {
	l.at[m] = s
	if l.free[s] == 0 {
		l.queue[s] = append(l.queue[s], m)
		return
	}
	l.free[s]--
	l.begin(m, s, t)
}

func (l *bareLoop) begin(m int32, s int8, t float64) {
	d := bareMeans[s]
	if s != bareCure {
		l.drawn++
		d *= -math.Log(l.key.U(l.drawn))
	}
	l.push(bareEvent{t + d, m})
}

func (l *bareLoop) step() {
	e := l.pop()
	m, s := e.mold, l.at[e.mold]
	if l.head[s] < len(l.queue[s]) {
		next := l.queue[s][l.head[s]]
		if l.head[s]++; l.head[s] == len(l.queue[s]) {
			l.head[s], l.queue[s] = 0, l.queue[s][:0]
		}
		l.begin(next, s, e.at)
	} else {
		l.free[s]++
	}
	to := s + 1
	switch s {
	case barePull:
		l.pulls++
		if l.since[m]++; l.since[m] < 5 {
			to = 0
		} else {
			l.since[m] = 0
		}
	case bareStrip:
		to = 0
	}
	l.arrive(m, to, e.at)
}

func (l *bareLoop) push(e bareEvent) {
	l.heap = append(l.heap, e)
	i := len(l.heap) - 1
	for i > 0 && e.at < l.heap[(i-1)/2].at {
		l.heap[i] = l.heap[(i-1)/2]
		i = (i - 1) / 2
	}
	l.heap[i] = e
}

func (l *bareLoop) pop() bareEvent {
	first := l.heap[0]
	n := len(l.heap) - 1
	e := l.heap[n]
	l.heap = l.heap[:n]
	i := 0
	for n > 0 {
		c := 2*i + 1
		if c >= n {
			break
		}
		if c+1 < n && l.heap[c+1].at < l.heap[c].at {
			c++
		}
		if e.at <= l.heap[c].at {
			break
		}
		l.heap[i] = l.heap[c]
		i = c
	}
	if n > 0 {
		l.heap[i] = e
	}
	return first
}
