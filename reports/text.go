package reports

import (
	"fmt"
	"io"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/reports/view"
)

// Text writes a comparison for a terminal: the headline, the tables, what limits the plant,
// whether demand or the plant binds, and how well the figures are known.
func Text(w io.Writer, s *view.Study, style table.Style) error {
	if _, err := fmt.Fprintln(w, table.Wrap(s.Headline(), style)); err != nil {
		return err
	}
	for _, t := range s.Comparison() {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	return closing(w, s, style)
}

// TextOfBase writes all figures of the base and what Text ends with.
func TextOfBase(w io.Writer, s *view.Study, style table.Style) error {
	if _, err := fmt.Fprintln(w, table.Wrap(s.Headline(), style)); err != nil {
		return err
	}
	if err := spaced(w, s.Figures(s.Base()), style); err != nil {
		return err
	}
	if len(s.Base().Plan.Models) > 1 {
		if err := spaced(w, s.Models(s.Base()), style); err != nil {
			return err
		}
	}
	return closing(w, s, style)
}

// spaced writes a table and an empty line.
func spaced(w io.Writer, t cells.Table, style table.Style) error {
	if err := table.Write(w, t, style); err != nil {
		return err
	}
	_, err := fmt.Fprintln(w)
	return err
}

func closing(w io.Writer, s *view.Study, style table.Style) error {
	lines := s.Limits()
	for _, line := range []string{s.ByHand(), s.Demand()} {
		if line != "" {
			lines = append(lines, line)
		}
	}
	var b strings.Builder
	lines = append(lines, s.Known())
	for _, line := range []string{s.Stopped(), s.Fair(), s.Unsettled()} {
		if line != "" {
			lines = append(lines, line)
		}
	}
	for _, line := range lines {
		b.WriteString(table.Wrap(line, style))
	}
	_, err := io.WriteString(w, b.String())
	return err
}
