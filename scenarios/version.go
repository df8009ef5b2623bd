package scenarios

import (
	"fmt"

	"moldturn/sim/param"
)

// Version is the version of the scenario format this program reads. The names
// and defaults of a version never change: a file gives the same plant for ever.
const Version = "1"

// versionRow is the input every scenario states first.
var versionRow = param.Row{
	Path: "version", Kind: param.Choice, Choices: []string{Version},
	Doc: "version of the scenario format; it fixes the names and the defaults", Mark: param.User,
}

// checkVersion complains about a document of an unknown version; its other
// inputs may then mean something else, so nothing else is checked.
func checkVersion(doc *Document) *Complaint {
	n := doc.root.get("version")
	if n == nil || n.shape != scalar || n.text == Version {
		return nil
	}
	c := n.at.complaint(fmt.Sprintf("unknown version %q of the scenario format", n.text))
	c.Path, c.Found, c.Allowed = "version", n.text, Version
	c.Hint = "the file may be made for a newer release of this program"
	return &c
}
