package floor

import (
	"bytes"
	"errors"
	"fmt"

	"github.com/xuri/excelize/v2"
)

// mostUnzipped bounds a workbook once it is unpacked; nothing of it is put on
// the disk.
const mostUnzipped = 64 << 20

// xlsxGrids reads the sheets of a workbook: what cells hold, not how they are
// shown, so a date is the number of a day. A cell of merged ones holds what all
// of them show.
func xlsxGrids(name string, data []byte) (grids []*grid, err error) {
	defer func() {
		if p := recover(); p != nil {
			grids, err = nil, errors.New("the workbook is damaged")
		}
	}()
	f, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{RawCellValue: true, UnzipSizeLimit: mostUnzipped, UnzipXMLSizeLimit: mostUnzipped})
	if err != nil {
		return nil, err
	}
	defer f.Close()
	since := false
	if props, err := f.GetWorkbookProps(); err == nil && props.Date1904 != nil {
		since = *props.Date1904
	}
	for _, sheet := range f.GetSheetList() {
		g := &grid{place: Place{File: name, Sheet: sheet}, since: since}
		if err := g.readSheet(f, sheet); err != nil {
			continue // a sheet of a chart
		}
		grids = append(grids, g)
	}
	return grids, nil
}

// readSheet takes the rows of one sheet.
func (g *grid) readSheet(f *excelize.File, sheet string) error {
	rows, err := f.Rows(sheet)
	if err != nil {
		return err
	}
	defer rows.Close()
	var table [][]string
	hidden := 0
	for rows.Next() {
		if len(table) == mostRows {
			g.tell(Fault, "too many rows", fmt.Sprintf("has more than %d rows; the others are not read", mostRows), "", "whatever stands there is missing from the floor")
			break
		}
		cells, err := rows.Columns()
		if err != nil {
			return err
		}
		if rows.GetRowOpts().Hidden && len(cells) > 0 {
			hidden++
		}
		table = append(table, cells)
	}
	g.merged(f, sheet, table)
	for i, cells := range table {
		g.add(i+1, cells, "")
	}
	if hidden > 0 {
		g.tell(Told, "hidden rows", fmt.Sprintf("rows that are hidden or filtered out: %d; they are read like the others", hidden), "delete what is no longer on the floor", "")
	}
	return nil
}

// merged writes what merged cells show into each of them.
func (g *grid) merged(f *excelize.File, sheet string, table [][]string) {
	merges, err := f.GetMergeCells(sheet)
	if err != nil {
		return
	}
	for _, m := range merges {
		left, top, err1 := excelize.CellNameToCoordinates(m.GetStartAxis())
		right, bottom, err2 := excelize.CellNameToCoordinates(m.GetEndAxis())
		if err1 != nil || err2 != nil || top > len(table) || left > len(table[top-1]) {
			continue
		}
		for row := top; row <= min(bottom, len(table)); row++ {
			for col := left; col <= min(right, mostColumns); col++ {
				for len(table[row-1]) < col {
					table[row-1] = append(table[row-1], "")
				}
				table[row-1][col-1] = table[top-1][left-1]
			}
		}
	}
}
