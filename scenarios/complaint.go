package scenarios

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Complaint is one fault in the inputs. Everything but File and Message may be
// empty. Texts from the file are kept as they are; String escapes them.
type Complaint struct {
	File    string `json:"file"`    // as the user named it, or "--set path"
	Line    int    `json:"line"`    // from 1; 0 where a source has no lines
	Column  int    `json:"column"`  // from 1, in characters
	Path    string `json:"path"`    // of the input, "hold.clock"
	Found   string `json:"found"`   // what was written
	Message string `json:"message"` // what is wrong with it, one sentence in lower case
	Allowed string `json:"allowed"` // what would be accepted
	Hint    string `json:"hint"`    // what was probably meant, or what to do
	Source  string `json:"source"`  // the whole line
}

// Complaints are all faults of a reading, in the order of their places. Nil
// means that there is none. As an error it is the text of all of them.
type Complaints []Complaint

// shown is the largest number of complaints that a text shows.
const shown = 100

// Error is the text of the complaints; of more than a hundred, the first ones
// and how many are left.
func (c Complaints) Error() string {
	var b strings.Builder
	for _, one := range c[:min(len(c), shown)] {
		b.WriteString(one.String())
	}
	if len(c) > shown {
		fmt.Fprintf(&b, "and %d more\n", len(c)-shown)
	}
	return strings.TrimSuffix(b.String(), "\n")
}

// sorted orders by file, line, column and message, and drops what was said
// twice.
func (c Complaints) sorted() Complaints {
	slices.SortStableFunc(c, func(a, b Complaint) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), cmp.Compare(a.Message, b.Message))
	})
	return slices.Compact(c)
}

// Place is where the complaint belongs, "plant.yaml:14:9".
func (c Complaint) Place() string {
	if c.Line == 0 {
		return printable(c.File)
	}
	return fmt.Sprintf("%s:%d:%d", printable(c.File), c.Line, c.Column)
}

// String is the complaint as it is shown, ending with a new line:
//
//	plant.yaml:14:9: unknown craft "laminatoin"
//	    craft: laminatoin
//	           ^
//	  allowed: gel, lamination, pull
//	  hint: did you mean "lamination"?
func (c Complaint) String() string {
	var b strings.Builder
	message := c.Message
	if c.Line == 0 && strings.HasSuffix(c.File, " "+c.Path) { // the place names the input
		message = strings.TrimPrefix(message, c.Path+": ")
	}
	fmt.Fprintf(&b, "%s: %s\n", c.Place(), printable(message))
	if c.Line > 0 && strings.TrimSpace(c.Source) != "" {
		line, indent := excerpt(c.Source, c.Column)
		fmt.Fprintf(&b, "    %s\n    %s^\n", line, strings.Repeat(" ", indent))
	}
	if c.Allowed != "" {
		fmt.Fprintf(&b, "  allowed: %s\n", printable(c.Allowed))
	}
	if c.Hint != "" {
		fmt.Fprintf(&b, "  hint: %s\n", printable(c.Hint))
	}
	return b.String()
}
