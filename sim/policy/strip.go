// Package policy holds the decisions people make about molds and orders, as
// functions of small values: when to strip, how long to hold, what comes next.
// It knows nothing of the plant that asks.
package policy

// StripKind says how a plant decides that a mold is due for a strip.
type StripKind uint8

// Kinds of strip policies.
const (
	StripNever         StripKind = iota
	StripEvery                   // every N turns
	StripSeasonal                // every N turns, N by season
	StripByBuildUp               // when the next part would show too much haze
	StripByLuster                // when parts read too low
	StripOpportunistic           // every N turns, or one turn before when the mold is not missed
)

// Strip is when molds are stripped, and how.
type Strip struct {
	Kind       StripKind
	Every      int     // turns, for StripEvery and StripOpportunistic; about that many for those by what is seen
	Hot, Cool  int     // turns, for StripSeasonal
	Haze       float64 // points of luster, for StripByBuildUp
	Limit      float64 // luster, for StripByLuster
	FullEvery  int     // every how many strips is a full one; 1: all, 0: none by count
	FullAt     float64 // lasting surface loss above which a strip is a full one; 0: not used
	LightCoats int     // coats of wax a light strip leaves
	FullCoats  int     // and a full strip
	LightLoss  float64 // surface loss a light strip adds
	FullLoss   float64 // and a full strip
}

// Care is what a mold gets after a pull.
type Care uint8

// Kinds of care.
const (
	NoStrip Care = iota
	Light
	Full
)

// Look is what is known of a mold at its check.
type Look struct {
	Turns   int     // parts since its strip, the one just pulled included
	Strips  int     // before
	Surface float64 // lasting loss of luster, points
	Hot     bool    // the season is hot
	Haze    float64 // points the next part is expected to lose; for StripByBuildUp
	Reading float64 // of the last part, as if it were dark; for StripByLuster
	Low     int     // parts in a row that read under the limit; for StripByLuster
	Slack   bool    // it will not be missed for some hours; for StripOpportunistic
}

// Interval is the number of turns after which a mold is due, for policies by
// what is seen about how many it will be; 0 for never.
func (s *Strip) Interval(hot bool) int {
	switch s.Kind {
	case StripEvery, StripByBuildUp, StripByLuster, StripOpportunistic:
		return s.Every
	case StripSeasonal:
		if hot {
			return s.Hot
		}
		return s.Cool
	}
	return 0
}

// After says what a mold needs after a pull.
func (s *Strip) After(look Look) Care {
	if !s.due(&look) {
		return NoStrip
	}
	if s.FullEvery > 0 && (look.Strips+1)%s.FullEvery == 0 || s.FullAt > 0 && look.Surface > s.FullAt {
		return Full
	}
	return Light
}

// muchUnder is how far a single reading must be under the limit, in points, for
// a strip by luster.
const muchUnder = 1

func (s *Strip) due(look *Look) bool {
	switch s.Kind {
	case StripByBuildUp:
		return look.Haze > s.Haze
	case StripByLuster:
		return look.Low >= 2 || look.Low > 0 && look.Reading < s.Limit-muchUnder
	case StripOpportunistic:
		return look.Turns >= s.Every || look.Turns >= s.Every-1 && look.Slack
	}
	n := s.Interval(look.Hot)
	return n > 0 && look.Turns >= n
}

// Wax is how often molds are waxed, with how many coats.
type Wax struct {
	Every int // turns between waxings; 1: after every pull, 0: never
	Coats int
}

// Due says how many coats a mold needs that has made since parts since it was
// last waxed.
func (w Wax) Due(since int) int {
	if w.Every <= 0 || since < w.Every {
		return 0
	}
	return w.Coats
}

// BreakIn is how a new or resurfaced mold is seasoned.
type BreakIn struct {
	Coats     []int   // coats before each of its first turns: 5, 2, 1
	Hold      float64 // the least hold on those turns, hours
	PlainDays int     // how old a solid-color order may be to be looked for first
}

// Turns is how many turns a break-in has.
func (b *BreakIn) Turns() int { return len(b.Coats) }

// Life is how molds age.
type Life struct {
	Limit       int     // turns after which a mold is retired or resurfaced; 0: never
	Resurfaces  int     // how often it can be resurfaced before it is replaced
	Replacement float64 // hours from the end of a mold that is replaced to the new one in its place
	Surface     float64 // lasting surface loss after resurfacing
	SurfaceHigh float64 // lasting surface loss at which it is resurfaced; 0: not used
	ReserveIdle float64 // days in reserve after which a mold needs two coats
	CallAfter   float64 // hours a mold is out after which a reserve mold is called
	RepairCoats int     // of wax on a mold that was repaired after a part stuck in it
}
