// Package param describes the inputs of a plant: one row per input with its
// path, kind, range, default, mark and source. Rows live in the package that
// uses them; package scenarios puts them together for reading files, for
// `moldturn list inputs`, for the schema and for the assumptions table. This
// package imports nothing of ours.
package param

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
// Path names the input: lower-case words joined by dots, "*" for a free name
// the user gives (a model, a craft), "[]" for an item of a list:
// "models.*.parts.*.area", "calendar.shutdowns[].from". A Map or a List needs a
// row of its own, and so do items that are single values ("colors" and
// "colors[]"); a fixed group needs one only for its Doc or to be Optional.
type Row struct {
	Path string
	Kind Kind

	// Low and High bound the value in the base unit of Kind, both included;
	// with both zero the bounds of the kind hold (see Limits). For a Dist they
	// bound every length written in it; for a Map or List the number of items.
	// A bound on one side takes math.Inf on the other.
	Low, High float64

	// Default is written as the user would write it ("24 h", a List as
	// "[red, white]"); empty means the input has none and must be given unless
	// Optional.
	Default string

	// Optional inputs may be left out; the builder then sees "not given". What
	// an optional group demands is demanded only when the group is given.
	Optional bool

	// Choices are the words of a Choice; for a Ref, names that are known
	// without the scenario, beside those RefTo leads to.
	Choices []string

	// RefTo, for Ref, is the path of the names that are meant: a Map ("crafts")
	// or a text in list items ("colors[]", "shifts[].name"). As long as its
	// words agree with Path a "*" or "[]" means the item the Ref stands in
	// ("models.*.parts": the parts of the same model), after that any item.
	RefTo string

	Doc    string // one sentence: what it is
	Mark   Mark
	Source string // for Published: title and place; otherwise a short reason
}
