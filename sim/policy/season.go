package policy

// SeasonKind says how a plant tells hot months from cool ones.
type SeasonKind uint8

// Kinds of seasons.
const (
	NoSeason   SeasonKind = iota // never hot
	ByMonths                     // hot in named months
	ByHeatPeak                   // hot by the plant's daily peak heat index
)

// Season decides whether it is the hot season, with a band between the two
// limits in which it stays what it was.
type Season struct {
	Kind    SeasonKind
	Months  [12]bool // hot months, January first
	On, Off float64  // 7-day mean of the daily peak heat index, °F
}

// Hot says whether the season is hot on a day of the given month, with the
// mean of the last seven daily peaks of the heat index in °F, when it was hot
// (or not) the day before.
func (s *Season) Hot(month int, peak7 float64, before bool) bool {
	switch s.Kind {
	case ByMonths:
		return s.Months[month-1]
	case ByHeatPeak:
		if before {
			return peak7 >= s.Off
		}
		return peak7 > s.On
	}
	return false
}
