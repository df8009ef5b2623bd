package table

import "moldturn/reports/cells"

// Wrap breaks a paragraph into lines of the style's width, later lines indented,
// and ends it with a line break. Escape sequences in it are made harmless.
func Wrap(paragraph string, s Style) string {
	width := s.Width
	if width <= 0 {
		width = DefaultWidth
	}
	return hang("", cells.OneLine(paragraph), width)
}
