package clock

import (
	"fmt"

	"moldturn/sim/state"
)

// derived is what a clock has beside its state: the event kernel, which is set
// to the time, and its own last word on the end of a run.
var derived = state.Derived{"Clock.kernel", "Clock.ended", "Clock.Bound"}

// NewAt gives a clock at time t, 0 or later, with nothing pending.
func NewAt(t Time) *Clock {
	c := New()
	c.kernel.RunUntil(float64(t))
	c.now = t
	return c
}

// Layout is the fingerprint of what Save saves; see package state.
func Layout() (string, error) { return state.Layout(&Clock{}, derived) }

// Save gives the time and all pending events as JSON: their order, and the
// tokens that name them, are kept. It must not be called while Run is running.
func (c *Clock) Save() ([]byte, error) { return state.Write(c, derived) }

// Restore gives the clock that Save saved. Run goes on with it as it would have
// gone on with the saved one.
func Restore(data []byte) (*Clock, error) {
	c := New()
	if err := state.Read(data, c, derived); err != nil {
		return nil, fmt.Errorf("clock: %w", err)
	}
	if c.now < 0 || c.now >= Never {
		return nil, fmt.Errorf("clock: the time is %d", int64(c.now))
	}
	c.kernel.RunUntil(float64(c.now))
	return c, nil
}
