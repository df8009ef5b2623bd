package reports

import (
	"encoding/json"
	"io"
)

// Document writes v as JSON for people to read: indented, with <, > and & as they
// are, since no page holds it.
func Document(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
