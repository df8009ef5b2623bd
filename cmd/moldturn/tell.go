package main

import (
	"io"

	"moldturn/reports"
)

// tell prints an answer as a text, or as JSON where that is asked for, and keeps
// both in the folder of results, if there is one: name.txt and name.json.
func tell[T any](c *Context, o *common, name string, v T, text func(io.Writer, T) error) error {
	if err := saveAs(c, o.Out, []resultFile{resultOf(name+".txt", v, text), resultFile{name + ".json", func(w io.Writer) error { return reports.Document(w, v) }}}); err != nil {
		return err
	}
	if o.JSON {
		return reports.Document(c.Stdout, v)
	}
	return text(c.Stdout, v)
}
