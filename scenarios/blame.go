package scenarios

import (
	"slices"
	"strings"
)

// blame names the settings of a command line in complaints about places of the
// file that nobody would have without them: "with --set hold.clock = 90 h: …".
func (t *Tree) blame(found Complaints, file *Document, standard *Value, o Options) Complaints {
	if len(o.Sets) == 0 {
		return found
	}
	var before Complaints
	v, faults := t.Bind(file)
	if len(faults) == 0 {
		_, before = t.build(v, standard, o)
	}
	for i := range found {
		if c := &found[i]; !strings.HasPrefix(c.File, "--set") && !slices.Contains(before, *c) {
			c.Message = "with " + settings(o.Sets) + ": " + c.Message
		}
	}
	return found
}

// settings lists changes as they were written.
func settings(changes []Change) string {
	var list []string
	for _, ch := range changes {
		list = append(list, "--set "+ch.String())
	}
	return strings.Join(list, ", ")
}
