// Package policy holds the decisions people make about molds and orders, as
// functions of small values: when to strip, how long to hold, what comes next.
// It knows nothing of the plant that asks.
package policy

// StripKind says how a plant decides that a mold is due for a strip.
type StripKind uint8

// Kinds of strip policies.
const (
	StripNever    StripKind = iota
	StripEvery              // every N turns
	StripSeasonal           // every N turns, N by season
)

// Strip is when molds are stripped, and how.
type Strip struct {
	Kind       StripKind
	Every      int     // turns, for StripEvery
	Hot, Cool  int     // turns, for StripSeasonal
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

// Interval is the number of turns after which a mold is due, 0 for never.
func (s *Strip) Interval(hot bool) int {
	switch s.Kind {
	case StripEvery:
		return s.Every
	case StripSeasonal:
		if hot {
			return s.Hot
		}
		return s.Cool
	}
	return 0
}

// After says what a mold needs that has made turns parts since its strip, the
// one just pulled included, had strips strips before, and has lost surface.
func (s *Strip) After(turns, strips int, surface float64, hot bool) Care {
	n := s.Interval(hot)
	if n <= 0 || turns < n {
		return NoStrip
	}
	if s.FullEvery > 0 && (strips+1)%s.FullEvery == 0 || s.FullAt > 0 && surface > s.FullAt {
		return Full
	}
	return Light
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
	Coats     []int     // coats before each of its first turns: 5, 2, 1
	Hold      float64   // the least hold on those turns, hours
	Stick     []float64 // chance that the part sticks on each of them
	PlainDays int       // how old a solid-color order may be to be looked for first
}

// Turns is how many turns a break-in has.
func (b *BreakIn) Turns() int { return len(b.Coats) }

// Life is how molds age.
type Life struct {
	Limit       int     // turns after which a mold is retired or resurfaced; 0: never
	Resurfaces  int     // how often it can be resurfaced before it is replaced
	Surface     float64 // lasting surface loss after resurfacing
	SurfaceHigh float64 // lasting surface loss at which it is resurfaced; 0: not used
	ReserveIdle float64 // days in reserve after which a mold needs two coats
	CallAfter   float64 // hours a mold is out after which a reserve mold is called
}

// Sticking is the chance that a part sticks in a mold past its break-in.
type Sticking struct {
	Base       float64 // per pull; 0: parts never stick
	AfterStrip float64 // factor on the first pull after a strip
	PerCoat    float64 // factor per missing coat of wax
	PerBuildUp float64 // share per unit of build-up
	PerCold    float64 // share per °C of the mold below ColdC
	ColdC      float64
	Most       float64
}

// Chance is the chance that the next pull sticks; the law and its numbers are
// assumptions of this model, to be calibrated.
func (s *Sticking) Chance(first bool, missing int, buildUp, moldC float64) float64 {
	c := s.Base
	if first {
		c *= s.AfterStrip
	}
	for range missing {
		c *= s.PerCoat
	}
	c *= 1 + s.PerBuildUp*buildUp
	c *= 1 + s.PerCold*max(s.ColdC-moldC, 0)
	return min(c, s.Most)
}
