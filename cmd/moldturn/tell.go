package main

import (
	"encoding/json"
	"io"
)

// tell prints an answer as a text, or as JSON where that is asked for, and keeps
// both in the folder of results, if there is one: name.txt and name.json.
func tell[T any](c *Context, o *common, name string, v T, text func(io.Writer, T) error) error {
	if err := saveAs(c, o.Out, []resultFile{resultOf(name+".txt", v, text), resultOf(name+".json", v, indented[T])}); err != nil {
		return err
	}
	if o.JSON {
		return indented(c.Stdout, v)
	}
	return text(c.Stdout, v)
}

// indented writes v as JSON for people to read.
func indented[T any](w io.Writer, v T) error {
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	return e.Encode(v)
}
