package page

import "moldturn/reports/cells"

// Page is the whole file. Title and at least one section are required.
type Page struct {
	Title    string
	Lead     string // one or two sentences under the title: the answer
	Lang     string // language tag of the texts; "" means "en"
	Sections []Section
	Foot     []string // paragraphs in small print at the end
}

// Section is a heading and what stands under it, in order.
type Section struct {
	Heading string
	Blocks  []Block

	// Sheet prints the section on one sheet of A3 or tabloid, with the head of
	// the page when it is the first, and begins a new sheet after it. What it
	// holds must fit; see SheetWidth.
	Sheet bool

	// Wall prints the section on a sheet of A4 or letter of its own, in type that
	// is read from a few steps away: 1 is the largest, WallSizes the smallest. 0
	// prints it as any section. What it holds must fit. Where the first section
	// has it, neither the head of the page nor its foot is printed.
	Wall int
}

// WallSizes is how many sizes of type there are for a wall.
const WallSizes = 4

// SheetWidth is how wide drawings are on such a sheet, in CSS pixels before the style
// sheet makes it smaller: what fits tabloid, which is narrower than A3.
const SheetWidth = 1100

// Block is one of Text, Small, Remark, List, Facts, Table, Beside, Chart, Diary,
// Choice, Panels and Fold.
type Block interface{ block() }

// Text is a paragraph.
type Text string

// Small is a paragraph in small print.
type Small string

// Remark is a paragraph that is set off: a warning, or a limit of a result.
type Remark string

// List is a list of short paragraphs.
type List []string

// Facts are key figures in a row, the most important first.
type Facts []Fact

// Fact is one key figure: "boats a week", "4.1", "3.9 to 4.3, 40 simulated years".
type Fact struct{ Label, Value, Note string }

// Table is a table of finished texts.
type Table struct{ cells.Table }

// Beside is tables side by side where there is room.
type Beside []Table

// Fold is blocks behind a line that opens them, closed at first. On paper it
// stays closed, with its line. Charts inside are drawn when it opens.
type Fold struct {
	Line   string // required
	Blocks []Block
}

// Panels are short lists side by side, each with a heading.
type Panels []Panel

// Panel is one of them.
type Panel struct {
	Heading string
	List    []string
}

func (Text) block()   {}
func (Small) block()  {}
func (Beside) block() {}
func (Remark) block() {}
func (List) block()   {}
func (Facts) block()  {}
func (Table) block()  {}
func (Chart) block()  {}
func (Choice) block() {}
func (Panels) block() {}
func (Fold) block()   {}
