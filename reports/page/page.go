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
}

// Block is one of Text, Remark, List, Facts, Table, Chart and Diary.
type Block interface{ block() }

// Text is a paragraph.
type Text string

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

func (Text) block()   {}
func (Remark) block() {}
func (List) block()   {}
func (Facts) block()  {}
func (Table) block()  {}
func (Chart) block()  {}
