package workbook

import (
	"archive/zip"
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"
)

// errorBars are the intervals of a chart's first series: as far up as down, by
// the numbers of a range of cells.
type errorBars struct {
	chart int    // from 1, in the order in which charts were added
	half  string // range of the half widths
}

// contentTypes is the part that stands first in a package, as readers that
// stream expect.
const contentTypes = "[Content_Types].xml"

// pack writes the workbook as a zip file whose bytes depend on nothing but its
// content: parts in order of their names, all with the first time that a zip
// file can tell (PKWARE, APPNOTE.TXT 6.3.10, section 4.4.6). On the way the
// charts get their error bars, which the library does not know.
func pack(w io.Writer, f *excelize.File, bars []errorBars) error {
	var raw bytes.Buffer
	if err := f.Write(&raw); err != nil {
		return err
	}
	in, err := zip.NewReader(bytes.NewReader(raw.Bytes()), int64(raw.Len()))
	if err != nil {
		return err
	}
	slices.SortFunc(in.File, func(a, b *zip.File) int {
		return cmp.Or(cmp.Compare(rank(a.Name), rank(b.Name)), cmp.Compare(a.Name, b.Name))
	})
	out := zip.NewWriter(w)
	for _, part := range in.File {
		if err := repack(out, part, in.File, bars); err != nil {
			return err
		}
	}
	return out.Close()
}

// rank puts the content types before all else.
func rank(name string) int {
	if name == contentTypes {
		return 0
	}
	return 1
}

// repack copies one part.
func repack(out *zip.Writer, part *zip.File, all []*zip.File, bars []errorBars) error {
	r, err := part.Open()
	if err != nil {
		return err
	}
	defer r.Close()
	content, err := io.ReadAll(r)
	if err != nil {
		return err
	}
	if part.Name == contentTypes {
		content = used(content, all)
	}
	for _, e := range bars {
		if part.Name == fmt.Sprintf("xl/charts/chart%d.xml", e.chart) {
			if content, err = e.draw(content); err != nil {
				return fmt.Errorf("%s: %w", part.Name, err)
			}
		}
	}
	w, err := out.CreateHeader(&zip.FileHeader{Name: part.Name, Method: zip.Deflate, Modified: time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)})
	if err != nil {
		return err
	}
	_, err = w.Write(content)
	return err
}

// byEnding matches a line of the content types about all parts of an ending.
var byEnding = regexp.MustCompile(`<Default Extension="([^"]*)"[^>]*></Default>`)

// used leaves only the lines of the content types whose ending some part has, in
// order: the library writes those of every kind of picture, in any order.
func used(types []byte, all []*zip.File) []byte {
	var kept []string
	for _, m := range byEnding.FindAllSubmatch(types, -1) {
		if slices.ContainsFunc(all, func(f *zip.File) bool { return strings.HasSuffix(f.Name, "."+string(m[1])) }) {
			kept = append(kept, string(m[0]))
		}
	}
	slices.Sort(kept)
	first := byEnding.FindIndex(types)
	rest := byEnding.ReplaceAll(types, nil)
	if first == nil {
		return rest
	}
	return slices.Insert(rest, first[0], []byte(strings.Join(kept, ""))...)
}

// draw puts the error bars into the XML of a chart, where they belong in a line
// series: before the categories (ECMA-376, part 1, section 21.2.2.52, errBars,
// and the type CT_LineSer).
func (e *errorBars) draw(chart []byte) ([]byte, error) {
	at := bytes.Index(chart, []byte("<cat>"))
	if at < 0 {
		return nil, errors.New("a series without categories cannot have error bars")
	}
	width := "<numRef><f>" + e.half + "</f></numRef>"
	bars := `<errBars><errDir val="y"/><errBarType val="both"/><errValType val="cust"/><noEndCap val="0"/>` +
		"<plus>" + width + "</plus><minus>" + width + "</minus>" +
		`<spPr><a:ln w="19050"><a:solidFill><a:srgbClr val="` + accent + `"/></a:solidFill></a:ln></spPr></errBars>`
	return slices.Insert(chart, at, []byte(bars)...), nil
}
