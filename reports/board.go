package reports

import (
	"fmt"
	"io"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/reports/table"
	"moldturn/reports/view/board"
)

// daysShown is how many days a terminal shows.
const daysShown = 3

// BoardText writes the first days of a board for a terminal.
func BoardText(w io.Writer, v *board.View, style table.Style) error {
	if _, err := io.WriteString(w, table.Wrap(v.Headline(), style)+"\n"); err != nil {
		return err
	}
	if err := warned(w, v.Warned, style); err != nil {
		return err
	}
	if v.If != nil {
		if err := effectText(w, v, style); err != nil {
			return err
		}
	}
	works := v.Works()
	for _, day := range works[:min(daysShown, len(works))] {
		if _, err := fmt.Fprintf(w, "%s\n\n", v.LongDay(v.Days[day].From)); err != nil {
			return err
		}
		for _, t := range v.Tables(day) {
			if err := spaced(w, t, style); err != nil {
				return err
			}
		}
	}
	lines := v.Basis()
	if n := len(works) - daysShown; n > 0 {
		lines = append([]string{fmt.Sprintf("%d more days are in the files of --out.", n)}, lines...)
	}
	for _, line := range append(lines, board.Caution) {
		if _, err := io.WriteString(w, table.Wrap(line, style)); err != nil {
			return err
		}
	}
	return nil
}

// warned writes what a reader must know of a floor.
func warned(w io.Writer, lines []string, style table.Style) error {
	for _, line := range lines {
		if _, err := io.WriteString(w, table.Wrap("Mind: "+line, style)+"\n"); err != nil {
			return err
		}
	}
	return nil
}

// effectText writes what the changes do under which a board is drawn up.
func effectText(w io.Writer, v *board.View, style table.Style) error {
	if _, err := io.WriteString(w, table.Wrap(v.Answer(), style)+"\n"); err != nil {
		return err
	}
	for _, t := range []cells.Table{v.Moved(), v.Recover()} {
		if len(t.Rows) > 0 {
			if err := spaced(w, t, style); err != nil {
				return err
			}
		}
	}
	if text := v.OtherWays(); text != "" {
		_, err := io.WriteString(w, table.Wrap(text, style)+"\n")
		return err
	}
	return nil
}

// BoardHTML writes a board for the wall, a printed page for each day.
func BoardHTML(w io.Writer, v *board.View) error { return page.Write(w, v.Page()) }
