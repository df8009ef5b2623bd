package floor

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// csvGrid reads a text table: commas, semicolons, tabs or bars, with or without
// quotes, in UTF-8, UTF-16 with its mark, or the one-byte code of Windows.
func csvGrid(name string, data []byte) *grid {
	g := &grid{place: Place{File: name}}
	text := g.decode(data)
	lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text), "\n")
	first := 0
	comma := delimiter(lines)
	if said, ok := strings.CutPrefix(strings.ToLower(lines[0]), "sep="); ok && len(said) == 1 {
		comma, first = rune(said[0]), 1
	}
	for i := first; i < len(lines); {
		if len(g.rows) >= mostRows {
			g.tell(Fault, "too many rows", fmt.Sprintf("has more than %d rows; those from row %d on are not read", mostRows, i+1), "", "whatever stands there is missing from the floor")
			break
		}
		n, closed := quoted(lines[i:], comma)
		record := strings.Join(lines[i:i+n], "\n")
		if strings.TrimSpace(record) == "" {
			i += n
			continue
		}
		broken := ""
		if !closed {
			broken = "a quote is opened and not closed"
		}
		cells, err := cellsOf(record, comma)
		if err != nil {
			cells, broken = strings.Split(record, string(comma)), err.Error()
		}
		g.add(i+1, cells, broken)
		i += n
	}
	return g
}

// cellsOf splits one record.
func cellsOf(record string, comma rune) ([]string, error) {
	r := csv.NewReader(strings.NewReader(record + "\n"))
	r.Comma, r.LazyQuotes, r.FieldsPerRecord = comma, true, -1
	return r.Read()
}

// longestQuote is the most lines that a quoted cell may go over.
const longestQuote = 10

// quoted counts the lines of the record that lines begin with. A cell that goes
// over lines is quoted; when its quote is not closed soon, or closes behind
// lines that look like records themselves, it is a stray one and the record is
// its first line: closed is false then.
func quoted(lines []string, comma rune) (n int, closed bool) {
	open := opensQuote(lines[0], comma)
	if !open {
		return 1, true
	}
	columns := strings.Count(lines[0], string(comma))
	for n := 1; n < len(lines) && n < longestQuote; n++ {
		if strings.Count(lines[n], `"`)%2 == 1 {
			return n + 1, true
		}
		if columns > 0 && strings.Count(lines[n], string(comma)) >= columns {
			return 1, false
		}
	}
	return 1, false
}

// opensQuote tells whether a cell at the end of a line is in an open quote. A
// quote inside a cell that does not begin with one, 24" wide, opens nothing.
func opensQuote(line string, comma rune) bool {
	open, start := false, true
	for i, r := range line {
		switch {
		case r == '"' && start:
			open, start = true, false
		case r == '"' && open:
			rest := strings.TrimLeft(line[i+1:], " ")
			if strings.HasPrefix(line[i+1:], `"`) {
				continue
			}
			if rest == "" || strings.HasPrefix(rest, string(comma)) {
				open = false
			}
		case r == comma && !open:
			start = true
		case r != ' ':
			start = false
		}
	}
	return open
}

// delimiter is the mark that stands most evenly in the first lines.
func delimiter(lines []string) rune {
	best, most := ',', 0
	for _, mark := range []rune{',', ';', '\t', '|'} {
		counts := map[int]int{}
		seen := 0
		for _, line := range lines {
			if strings.TrimSpace(line) == "" {
				continue
			}
			if n := strings.Count(line, string(mark)); n > 0 {
				counts[n]++
			}
			if seen++; seen == 40 {
				break
			}
		}
		score := 0
		for n, lines := range counts {
			score = max(score, lines*min(n, 20))
		}
		if score > most {
			best, most = mark, score
		}
	}
	return best
}

// decode makes text of the bytes of a file.
func (g *grid) decode(data []byte) string {
	switch {
	case bytes.HasPrefix(data, []byte{0xff, 0xfe}), bytes.HasPrefix(data, []byte{0xfe, 0xff}):
		return wide(data[2:], data[0] == 0xff)
	case bytes.HasPrefix(data, []byte{0xef, 0xbb, 0xbf}):
		data = data[3:]
	}
	if utf8.Valid(data) {
		return string(data)
	}
	g.tell(Told, "one-byte text", "is not UTF-8; it is read as the one-byte text of Windows", "save it as CSV UTF-8", "")
	var b strings.Builder
	for _, c := range data {
		switch i := slices.IndexFunc(windows, func(w windowsLetter) bool { return w.code == c }); {
		case i >= 0:
			b.WriteRune(windows[i].letter)
		default:
			b.WriteRune(rune(c))
		}
	}
	return b.String()
}

// wide reads UTF-16.
func wide(data []byte, little bool) string {
	units := make([]uint16, 0, len(data)/2)
	for i := 0; i+1 < len(data); i += 2 {
		low, high := data[i], data[i+1]
		if !little {
			low, high = high, low
		}
		units = append(units, uint16(high)<<8|uint16(low))
	}
	return string(utf16.Decode(units))
}

// windowsLetter is a byte that stands for another letter than in Latin 1.
type windowsLetter struct {
	code   byte
	letter rune
}

// windows are the bytes of Windows code page 1252 that people type: the others
// from 0x80 to 0x9f stay control characters (IANA character set windows-1252;
// from memory).
var windows = []windowsLetter{
	{0x80, '€'}, {0x82, '‚'}, {0x84, '„'}, {0x85, '…'}, {0x8a, 'Š'}, {0x8c, 'Œ'}, {0x8e, 'Ž'}, {0x91, '‘'}, {0x92, '’'}, {0x93, '“'},
	{0x94, '”'}, {0x95, '•'}, {0x96, '–'}, {0x97, '—'}, {0x99, '™'}, {0x9a, 'š'}, {0x9c, 'œ'}, {0x9e, 'ž'}, {0x9f, 'Ÿ'},
}
