package climate

import (
	"fmt"
	"strings"
)

// Complaint is one fault of a weather file, with its place.
type Complaint struct {
	File         string
	Line, Column int    // from 1; Column 0 means the whole line, Line 0 the whole file
	Found        string // what is wrong, with the value found
	Allowed      string // what is allowed; may be empty
	Hint         string // a guess at what was meant; may be empty
}

// Error writes the complaint in up to three lines, place first.
func (c Complaint) Error() string {
	var b strings.Builder
	b.WriteString(c.File)
	for _, n := range []int{c.Line, c.Column} {
		if n > 0 {
			fmt.Fprintf(&b, ":%d", n)
		}
	}
	b.WriteString(": " + c.Found)
	if c.Allowed != "" {
		b.WriteString("\n  allowed: " + c.Allowed)
	}
	if c.Hint != "" {
		b.WriteString("\n  hint: " + c.Hint)
	}
	return b.String()
}

// Complaints are all faults found in a file, in the order of their places: the
// first of them in full and the number of the rest.
type Complaints struct {
	List []Complaint // at most maxComplaints
	More int         // further ones that are not listed
}

// maxComplaints is how many faults of a file are listed.
const maxComplaints = 20

// Error writes one complaint after another.
func (c *Complaints) Error() string {
	var b strings.Builder
	for i, one := range c.List {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(one.Error())
	}
	if c.More > 0 {
		fmt.Fprintf(&b, "\n%s: %d more like these", c.List[0].File, c.More)
	}
	return b.String()
}

// add lists a complaint, or counts it when the list is full.
func (c *Complaints) add(one Complaint) {
	if len(c.List) == maxComplaints {
		c.More++
		return
	}
	c.List = append(c.List, one)
}

// err is c as an error, nil when there is no complaint.
func (c *Complaints) err() error {
	if len(c.List) == 0 {
		return nil
	}
	return c
}
