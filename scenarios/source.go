package scenarios

import (
	"strings"
	"unicode/utf8"
)

// source is a text that inputs come from: a scenario file, or a change given on
// a command line, which has a name and no lines.
type source struct {
	name   string
	lines  []string
	widths []int // characters of each line
}

// position is a place in a source. Line and column count from 1, columns in
// characters; both are 0 in a source without lines.
type position struct {
	source       *source
	line, column int
}

// newSource splits a file at the line breaks that YAML counts.
func newSource(name, text string) *source {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u0085", "\n", "\u2028", "\n", "\u2029", "\n").Replace(text)
	s := &source{name: name, lines: strings.Split(text, "\n")}
	for _, line := range s.lines {
		s.widths = append(s.widths, utf8.RuneCountInString(line))
	}
	return s
}

// at is the position of a line and column of s, moved inside the text if they
// lie outside.
func (s *source) at(line, column int) position {
	if s == nil || len(s.lines) == 0 {
		return position{source: s}
	}
	line = min(max(line, 1), len(s.lines))
	column = min(max(column, 1), s.widths[line-1]+1)
	return position{source: s, line: line, column: column}
}

// atByte is the position of the byte at offset in text, which s was made from.
func (s *source) atByte(text string, offset int) position {
	before := newSource("", text[:offset])
	line := len(before.lines)
	return s.at(line, before.widths[line-1]+1)
}

// excerpt is the line of the position, or "".
func (p position) excerpt() string {
	if p.line == 0 {
		return ""
	}
	return p.source.lines[p.line-1]
}

// complaint starts a complaint about this place.
func (p position) complaint(message string) Complaint {
	name := ""
	if p.source != nil {
		name = p.source.name
	}
	return Complaint{File: name, Line: p.line, Column: p.column, Message: message, Source: p.excerpt()}
}
