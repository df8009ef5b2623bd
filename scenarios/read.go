package scenarios

import (
	"bytes"
	"errors"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// maxSize is the largest file that is read, in bytes.
const maxSize = 4 << 20

// Read reads a scenario file; name is what complaints call it. With complaints
// the Document is nil if the text could not be read to its end; otherwise it is
// usable, so that binding can add its own complaints before all are shown.
func Read(name string, data []byte) (*Document, Complaints) {
	if len(data) > maxSize {
		src := &source{name: name}
		c := src.at(0, 0).complaint("the file has " + strconv.Itoa(len(data)) + " bytes")
		c.Allowed = "at most 4 MB"
		return nil, Complaints{c}
	}
	text := strings.TrimPrefix(string(data), "\ufeff")
	src := newSource(name, text)
	if i := badByte(text); i >= 0 {
		return nil, Complaints{badText(src.atByte(text, i), text[i:])}
	}
	root, complaints := parseYAML(src, text)
	if root == nil {
		return nil, complaints.sorted()
	}
	return &Document{root: root}, complaints.sorted()
}

// badByte is the offset of the first character that YAML does not allow in a
// file, or -1.
func badByte(text string) int {
	for i, r := range text {
		_, n := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == utf8.RuneError && n == 1, r < 0x20 && r != '\t' && r != '\n' && r != '\r',
			r >= 0x7f && r <= 0x9f && r != 0x85, r == 0xfeff, r == 0xfffe, r == 0xffff:
			return i
		}
	}
	return -1
}

// badText complains about the character that rest starts with.
func badText(at position, rest string) Complaint {
	if r, n := utf8.DecodeRuneInString(rest); r != utf8.RuneError || n > 1 {
		c := at.complaint("control character " + strconv.QuoteRune(r) + " in the file")
		c.Hint = "scenario files are plain text"
		return c
	}
	c := at.complaint("the text is not UTF-8")
	c.Hint = "save the file as plain text in UTF-8"
	return c
}

// parseYAML parses text into one node. The node is nil after a syntax error.
func parseYAML(src *source, text string) (*node, Complaints) {
	loader, err := yaml.NewLoader(bytes.NewReader([]byte(text)))
	var doc, second yaml.Node
	if err == nil {
		err = loader.Load(&doc)
	}
	if errors.Is(err, io.EOF) || err == nil && len(doc.Content) == 0 {
		return nil, Complaints{src.at(1, 1).complaint("the file is empty")}
	}
	if err == nil {
		if err = loader.Load(&second); errors.Is(err, io.EOF) {
			c := converter{source: src}
			return c.node(doc.Content[0]), c.complaints
		}
	}
	if err != nil {
		return nil, Complaints{syntax(src, err)}
	}
	c := src.at(second.Line, second.Column).complaint("a second document begins here")
	c.Hint = "a scenario is one document; remove the line with three dashes"
	return nil, Complaints{c}
}

// syntax turns an error of the YAML parser into a complaint.
func syntax(src *source, err error) Complaint {
	var load *yaml.LoadError
	if !errors.As(err, &load) {
		return src.at(1, 1).complaint("not readable as YAML: " + err.Error())
	}
	at := src.at(load.Mark.Line, load.Mark.Column)
	c := at.complaint("not readable as YAML: " + load.Message)
	indent := at.excerpt()
	indent = indent[:len(indent)-len(strings.TrimLeft(indent, " \t"))]
	switch {
	case strings.Contains(indent, "\t"):
		c.Hint = "indent with spaces, not with tabs"
	case load.ContextMark.Line > 0 && load.ContextMark.Line != load.Mark.Line:
		c.Hint = load.ContextMsg + " that begins in line " + strconv.Itoa(load.ContextMark.Line)
	}
	return c
}
