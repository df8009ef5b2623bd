package reports

import (
	"io"

	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/reports/view/whole"
)

// HTML writes the report as one page that needs nothing else.
func HTML(w io.Writer, s *view.Study) error {
	p, err := whole.Page(s)
	if err != nil {
		return err
	}
	return page.Write(w, p)
}
