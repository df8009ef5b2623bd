package weekly

import (
	"fmt"
	"time"

	"moldturn/sim"
	"moldturn/sim/study"
)

// season is what limits over the year and in the worst month. Waits are hours
// in an open week.
type season struct {
	year      string // craft or place for which work waits longest over the year
	yearWait  float64
	worst     string // the same in the month in which it waits longest for any
	worstWait float64
	usual     float64 // what work waits for worst over the year
	month     time.Month
}

func seasonOf(pools []study.PoolWeeks, p *sim.Plan) season {
	var s season
	for i := range pools {
		x := &pools[i]
		year := yearOf(x)
		if year > s.yearWait {
			s.year, s.yearWait = poolName(p, x.Pool), year
		}
		for m := time.January; m <= time.December; m++ {
			if w := monthOf(x, m); w > s.worstWait {
				s.worst, s.worstWait, s.usual, s.month = poolName(p, x.Pool), w, year, m
			}
		}
	}
	return s
}

// Waits of fewer hours a week than this limit nothing worth naming, as in the
// list of limits.
const waitWorthNaming = 2.0

// muchMore is how many times the year's wait a month's must be to stand out.
const muchMore = 1.25

// limitsFinding is the rule "what limits, and when": nothing below
// waitWorthNaming; another limit in the worst month than over the year; one
// month that stands out; else the same all year.
func limitsFinding(s season) string {
	switch {
	case s.worstWait < waitWorthNaming:
		return "No crew and no place holds work back in any month"
	case s.worst != s.year:
		return fmt.Sprintf("Over the year work waits longest for the %s, %.0f h a week; in %s for the %s, %.0f h", s.year, s.yearWait, s.month, s.worst, s.worstWait)
	case s.worstWait >= muchMore*s.usual:
		return fmt.Sprintf("%s's limit is the %s: work waits %.0f h a week for it, over the year %.0f h", s.month, s.worst, s.worstWait, s.usual)
	}
	return fmt.Sprintf("Work waits longest for the %s, about %.0f h a week all year; no month stands out", s.worst, s.usual)
}
