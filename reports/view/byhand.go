package view

import (
	"fmt"
	"math"
)

// paperOff is the distance between queueing and simulation from which on the
// paper is called off.
const paperOff = 0.1

// ByHand sets what is worked out by hand and with queueing beside what was
// simulated, in the base; empty where nothing was worked out.
func (s *Study) ByHand() string {
	if s.Hand == nil || len(s.Hand.Limits) == 0 {
		return ""
	}
	m := metric("boats_per_week")
	x, ok := s.Base().Summary(m)
	if !ok || x.Mean <= 0 {
		return ""
	}
	first := s.Hand.Limits[0]
	text := fmt.Sprintf("By hand %s boats a week (%s)", fixed(first.Boats, 1), first.Words())
	if q := s.Hand.Queueing; q > 0 {
		off := q/x.Mean - 1
		text += fmt.Sprintf("; with queueing about %s", fixed(q, 1))
		if math.Abs(off) < 0.005 {
			text += ", as simulated"
		} else {
			text += fmt.Sprintf(", %.0f %% %s than simulated", 100*math.Abs(off), moreOrFewer(off))
		}
	}
	text += fmt.Sprintf("; simulated %s", mean(m, x))
	if gap := 1 - x.Mean/first.Boats; gap > paperOff {
		text += fmt.Sprintf(", %.0f %% below the paper, because of %s", 100*gap, s.why())
	}
	return text + "."
}

func moreOrFewer(x float64) string {
	if x > 0 {
		return "more"
	}
	return "fewer"
}

// why names what work waits for most in the base over the year.
func (s *Study) why() string {
	a := s.Base()
	ranked := a.Limits(wholeYear()...)
	if len(ranked) == 0 || ranked[0].Wait < waitWorthNaming {
		return "nights, weekends and bad luck"
	}
	return fmt.Sprintf("waits: %.0f h a week for %s", ranked[0].Wait, pool(a.Plan, ranked[0].Pool))
}
