package param

import "math"

// Kind says what a value is and so which units it may be written in.
type Kind uint8

// Kinds of values. Dimensioned kinds must carry a unit in a scenario file (a
// bare 0 may do without where zero is the same in every unit); a value is kept
// in the base unit named here.
const (
	Text        Kind = iota // any text, kept as written
	Choice                  // one of Row.Choices
	Flag                    // true or false
	Count                   // a whole number, 0 or more
	Number                  // a plain number without dimension
	Share                   // a share: "6 %" or 0.06; kept as 0 … 1
	Duration                // hours: "24 h", "90 min", "2 d", "3 wk", "1 h 30 min"
	Temperature             // °C: "75 F", "21 C"
	Difference              // a difference of temperature in K: "5 F", "3 C"
	Area                    // m²: "34 m2", "365 ft2"
	Length                  // mm: "0.51 mm", "20 mil", "24 ft"
	Mass                    // kg: "27 kg", "59 lb"
	Volume                  // L: "4 L", "1 gal"
	Money                   // dollars: "$40k", "$1.2M", "$19.50"
	Rate                    // per week: "3.9/week", "4/day", "200/year"
	Date                    // a day: 2027-01-04; kept as days since 1970-01-01
	DayMonth                // a day of every year: 07-04, "Jul 4"; kept as 704
	ClockTime               // time of day: 06:00, "3:30 pm"; kept in minutes
	Weekdays                // days of the week: "Mon-Fri", "Mon, Wed"; bit 0 is Monday
	Months                  // months: "May-Sep", "Jan, Jul"; bit 0 is January
	Ref                     // the name of another item; Row.RefTo says of which list
	Dist                    // a length of work or wait as a distribution; base hours
	NumberDist              // a distribution without dimension
	List                    // a list whose items have rows under path[].…
	Map                     // a map from a free name to an item with rows under path.*.…
	Group                   // a fixed group of named inputs
	Changes                 // a map from the path of an input to the value it takes
)

// kinds holds what a reader of a complaint or a table is told of each kind.
var kinds = [...]struct{ name, unit string }{
	Text:        {"a text", ""},
	Choice:      {"one of a few words", ""},
	Flag:        {"true or false", ""},
	Count:       {"a whole number", ""},
	Number:      {"a number", ""},
	Share:       {"a share", ""},
	Duration:    {"a length of time", "h"},
	Temperature: {"a temperature", "C"},
	Difference:  {"a difference of temperature", "C"},
	Area:        {"an area", "m2"},
	Length:      {"a length", "mm"},
	Mass:        {"a mass", "kg"},
	Volume:      {"a volume", "L"},
	Money:       {"an amount of money", "$"},
	Rate:        {"a rate", "/week"},
	Date:        {"a date", ""},
	DayMonth:    {"a day of the year", ""},
	ClockTime:   {"a time of day", ""},
	Weekdays:    {"days of the week", ""},
	Months:      {"months", ""},
	Ref:         {"a name", ""},
	Dist:        {"a length of time or its distribution", "h"},
	NumberDist:  {"a number or its distribution", ""},
	List:        {"a list", ""},
	Map:         {"named items", ""},
	Group:       {"a group of inputs", ""},
	Changes:     {"changes of inputs", ""},
}

// String names the kind with its article, "a length of time", as in "hold.clock
// must be a length of time".
func (k Kind) String() string {
	if int(k) >= len(kinds) {
		return "an unknown kind"
	}
	return kinds[k].name
}

// Unit is the sign of the base unit, "h"; empty for kinds without one.
func (k Kind) Unit() string {
	if int(k) >= len(kinds) {
		return ""
	}
	return kinds[k].unit
}

// Container reports whether values of the kind hold other values.
func (k Kind) Container() bool { return k == List || k == Map || k == Group }

// Limits are the bounds that hold for r, both included: Low and High when
// either is set; otherwise those of the kind: a share lies in 0 … 1, lengths of
// time, areas, lengths, masses, volumes, money, rates and counts are not
// negative, and nothing bounds the rest. A Map or List may be empty.
func (r Row) Limits() (low, high float64) {
	if r.Low != 0 || r.High != 0 {
		return r.Low, r.High
	}
	switch r.Kind {
	case Share:
		return 0, 1
	case Count, Duration, Area, Length, Mass, Volume, Money, Rate, Dist, List, Map:
		return 0, math.Inf(1)
	}
	return math.Inf(-1), math.Inf(1)
}
