package record

import (
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// Heat is what the air, pulls and strips did to molds in one week of the year,
// over all years that were counted. All of it is sums and counts, so weeks and
// runs can be added up.
type Heat struct {
	Pulls     int
	BuildUp   float64 // of the molds before each pull, in pulls of a cool mold
	Grown     float64 // what each pull added
	HeatIndex float64 // °F, mean of each part from its spray to its last shot
	Strips    int     // light and full
	Looks     int     // Mondays, as a run that begins on one counts, in a plant with seasons
	Hot       int     // of them in the hot season
	Peak      float64 // °F, at each look: mean of the last seven daily peaks
}

// Plus is both weeks in one.
func (h Heat) Plus(x Heat) Heat {
	return Heat{h.Pulls + x.Pulls, h.BuildUp + x.BuildUp, h.Grown + x.Grown, h.HeatIndex + x.HeatIndex,
		h.Strips + x.Strips, h.Looks + x.Looks, h.Hot + x.Hot, h.Peak + x.Peak}
}

func (h *Heat) pull(p *Pull) {
	h.Pulls++
	h.BuildUp += p.BuildUp
	h.Grown += p.Grown
	h.HeatIndex += p.HeatIndex
}

// heatOf is the week of the year that an instant lies in.
func (t *Tally) heatOf(at clock.Time) *Heat {
	return &t.r.Heat[t.frame.WeekYear(shift.WeekAt(t.frame.Start, at))]
}

// heat counts strips and looks at the air.
func (t *Tally) heat(n *Note) {
	switch n.Kind {
	case LightStrip, FullStrip:
		t.heatOf(n.At).Strips++
	case HeatPeak:
		h := t.heatOf(n.At)
		h.Looks++
		h.Peak += n.Value
		if t.hot {
			h.Hot++
		}
	}
}
