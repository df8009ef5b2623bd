// Package param describes the inputs of a plant: one row per input with its
// path, kind, range, default, mark and source. Rows live in the package that
// uses them; package scenarios puts them together for reading files, for
// `moldturn list inputs`, for the schema and for the assumptions table. This
// package imports nothing of ours.
package param

// Kind says what a value is and so which units it may be written in.
type Kind uint8

// Kinds of values. Dimensioned kinds must carry a unit in a scenario file; a
// value is kept in the base unit named here.
const (
	Text        Kind = iota // any text, kept as written
	Choice                  // one of Row.Choices
	Flag                    // true or false
	Count                   // a whole number, 0 or more
	Number                  // a plain number without dimension
	Share                   // a share: "6 %" or 0.06; kept as 0 … 1
	Duration                // hours: "24 h", "90 min", "2 d", "3 wk"
	Temperature             // °C: "75 F", "21 C"
	Difference              // a difference of temperature in K: "5 F", "3 C"
	Area                    // m²: "34 m2", "365 ft2"
	Length                  // mm: "0.51 mm", "20 mil", "24 ft"
	Mass                    // kg: "27 kg", "59 lb"
	Volume                  // L: "4 L", "1 gal"
	Money                   // dollars: "$40k", "$1.2M", "$19.50"
	Rate                    // per week: "3.9/week", "4/day", "200/year"
	Date                    // a day: 2027-01-04
	DayMonth                // a day of every year: 07-04
	ClockTime               // time of day: 06:00
	Weekdays                // days of the week: "Mon-Fri", "Mon, Wed"
	Months                  // months: "May-Sep", "Jan, Jul"
	Ref                     // the name of another item; Row.RefTo says of which list
	Dist                    // a length of work or wait as a distribution; base hours
	NumberDist              // a distribution without dimension
	List                    // a list whose items have rows under path[].…
	Map                     // a map from a free name to an item with rows under path.*.…
	Group                   // a fixed group of named inputs
)

// Mark says where a default comes from.
type Mark string

// Marks.
const (
	Published      Mark = "S"  // a published source, named in Row.Source
	CommonPractice Mark = "CP" // common practice of the trade, no source
	Memory         Mark = "M"  // from memory, not verified
	Assumption     Mark = "A"  // an assumption of this model, to be calibrated
	User           Mark = "U"  // the plant's own fact; there is no sensible default
)

// Row is one input.
//
// Path names the input: words joined by dots, "*" for a free name the user
// gives (a model, a craft), "[]" for an item of a list:
// "models.*.parts.*.area", "calendar.shutdowns[].from".
type Row struct {
	Path string
	Kind Kind

	// Low and High bound the value in the base unit of Kind, both included;
	// they are not used when both are zero.
	Low, High float64

	// Default is written as the user would write it ("24 h"); empty means the
	// input has none and must be given unless Optional.
	Default  string
	Optional bool // may be left out; the builder then sees "not given"

	Choices []string // for Choice
	RefTo   string   // for Ref: the path of the map whose names are meant, "crafts"

	Doc    string // one sentence: what it is
	Mark   Mark
	Source string // for Published: title and place; otherwise a short reason
}
