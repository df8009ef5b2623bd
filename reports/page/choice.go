package page

import "fmt"

// Choice is a table of ways to choose from: a row each, a column for each figure
// that decides, and in every cell what the figure is and how it stands against
// the first row, in words and signs, so that no color is needed to read it.
type Choice struct {
	Title   string
	Columns []string // heads of the figures, without the column of names
	Rows    []ChoiceRow
	Notes   []string // paragraphs under the table
}

// ChoiceRow is one way. Mark is a word for the row, as "chosen"; Note says what
// is different about the way.
type ChoiceRow struct {
	Name, Mark, Note string
	Cells            []ChoiceCell // as many as columns
}

// ChoiceCell is a figure of a way. Change is against the first row and empty in
// it.
type ChoiceCell struct {
	Value, Change string
	Sense         Sense
}

// Sense says whether a change is good.
type Sense int

// The zero Sense says nothing.
const (
	Silent Sense = iota
	Better
	Worse
	Unclear
)

// words stand before a change.
var words = [...]string{Silent: "", Better: "▲ better", Worse: "▼ worse", Unclear: ""}

// classes are for the style of a change, beside its word.
var classes = [...]string{Silent: "", Better: "better", Worse: "worse", Unclear: "unclear"}

// Check reports the first row that does not fit the columns.
func (c Choice) Check() error {
	if len(c.Columns) == 0 || len(c.Rows) == 0 {
		return fmt.Errorf("a choice of %d rows and %d columns", len(c.Rows), len(c.Columns))
	}
	for i, r := range c.Rows {
		if len(r.Cells) != len(c.Columns) {
			return fmt.Errorf("choice, row %d: %d cells for %d columns", i+1, len(r.Cells), len(c.Columns))
		}
		for _, x := range r.Cells {
			if x.Sense < Silent || x.Sense > Unclear {
				return fmt.Errorf("choice, row %d: unknown sense %d", i+1, x.Sense)
			}
		}
	}
	return nil
}

// choiceView is what the template reads.
type choiceView struct {
	Choice
	Rows []choiceRowView
}

type choiceRowView struct {
	ChoiceRow
	Cells []choiceCellView
}

type choiceCellView struct{ Value, Word, Change, Class string }

func choiceOf(c Choice) *choiceView {
	v := &choiceView{Choice: c}
	for _, r := range c.Rows {
		row := choiceRowView{ChoiceRow: r}
		for _, x := range r.Cells {
			row.Cells = append(row.Cells, choiceCellView{x.Value, words[x.Sense], x.Change, classes[x.Sense]})
		}
		v.Rows = append(v.Rows, row)
	}
	return v
}
