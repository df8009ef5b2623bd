package workbook

import (
	"strings"

	"github.com/xuri/excelize/v2"
)

// accent is the one color of the workbook: a blue that has a contrast of 7.6 on
// white (WCAG 2.2, 1.4.3, asks for 4.5).
const accent = "1F4E79"

// family is the font of all cells.
const family = "Calibri"

// look is how a cell is shown.
type look struct {
	format string // number format; "" for text
	kind   kind
}

type kind uint8

const (
	plain   kind = iota
	header       // of a column
	title        // of a sheet
	strong       // the answer, and headings
	prose        // a sentence over several columns
	apart        // a text behind a number
	running      // a text that is not broken into lines
)

// style is the number of a look in the file.
func (b *book) style(l look) (int, error) {
	if id, ok := b.formats[l]; ok {
		return id, nil
	}
	s := &excelize.Style{Font: &excelize.Font{Family: family, Size: 11}, Alignment: &excelize.Alignment{Vertical: "top", WrapText: l.format == ""}}
	if l.format != "" {
		s.CustomNumFmt = &l.format
	}
	switch l.kind {
	case header:
		s.Font.Bold = true
		s.Alignment.Vertical = "bottom"
		s.Border = []excelize.Border{{Type: "bottom", Color: accent, Style: 2}}
	case running:
		s.Alignment.WrapText = false
	case apart:
		s.Alignment.Indent = 1
	case title:
		s.Font.Bold, s.Font.Size, s.Font.Color = true, 14, accent
		s.Alignment.WrapText = false
	case strong:
		s.Font.Bold, s.Font.Size = true, 12
	}
	id, err := b.file.NewStyle(s)
	if err == nil {
		b.formats[l] = id
	}
	return id, err
}

// decimals is the number format with some decimals and commas.
func decimals(n int) string {
	if n <= 0 {
		return "#,##0"
	}
	return "#,##0." + strings.Repeat("0", n)
}

// percent is the number format of a share that is stored as 0 to 1.
func percent(n int) string {
	if n <= 0 {
		return "0%"
	}
	return "0." + strings.Repeat("0", n) + "%"
}

// sign makes a format of a difference: what is above zero has a plus.
func sign(format string) string { return "+" + format + ";-" + format + ";" + format }
