package floor_test

import (
	"testing"
	"testing/fstest"
	"time"

	"github.com/xuri/excelize/v2"

	"moldturn/scenarios/floor"
)

// workbook makes an .xlsx file of sheets of cells.
func workbook(t testing.TB, edit func(f *excelize.File)) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	edit(f)
	b, err := f.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func must(t testing.TB, errs ...error) {
	t.Helper()
	for _, err := range errs {
		if err != nil {
			t.Fatal(err)
		}
	}
}

// A workbook as an office keeps it: a title over merged cells, dates that are
// shown as dates, the model merged over its rows, a hidden row, a sheet that is
// no floor file.
func TestWorkbook(t *testing.T) {
	for _, since := range []bool{false, true} {
		data := workbook(t, func(f *excelize.File) {
			must(t, f.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &since}), f.SetSheetName("Sheet1", "Mold log"))
			must(t, f.SetSheetRow("Mold log", "A1", &[]any{"Molds on the floor"}), f.MergeCell("Mold log", "A1", "G1"))
			must(t, f.SetSheetRow("Mold log", "A3", &[]any{"Mold #", "Model", "Part", "Turns\ntotal", "Since strip", "Status", "Date", "Luster"}))
			day := time.Date(2027, 5, 10, 14, 30, 0, 0, time.UTC)
			must(t, f.SetSheetRow("Mold log", "A4", &[]any{101, "Sedge 20", "hull", 148, 3, "curing", day, 97.2}))
			must(t, f.SetSheetRow("Mold log", "A5", &[]any{102, nil, "hull", 131, "4 turns", "ready", day.AddDate(0, 0, -3), 96.1}))
			must(t, f.MergeCell("Mold log", "B4", "B5"), f.SetRowVisible("Mold log", 5, false))
			must(t, f.SetSheetRow("Mold log", "A6", &[]any{"Total", nil, nil, 279}))
			_, err := f.NewSheet("Phone list")
			must(t, err, f.SetSheetRow("Phone list", "A1", &[]any{"who", "number"}))
			_, err = f.NewSheet("Work")
			must(t, err, f.SetSheetRow("Work", "A1", &[]any{"Serial", "Model", "Part", "Step", "Mold", "Started"}), f.SetSheetRow("Work", "A2", &[]any{7012, "Sedge 20", "hull", "hold", "101", day}))
		})
		r := floor.Read(fstest.MapFS{"floor.xlsx": {Data: data}, "~$floor.xlsx": {Data: []byte("lock")}}, fenwater(t), floor.Options{})
		if r.Floor == nil || len(r.Floor.Molds) != 2 || len(r.Floor.Work) != 1 {
			t.Fatalf("1904 %v: %+v", since, r)
		}
		a, b, w := r.Floor.Molds[0], r.Floor.Molds[1], r.Floor.Work[0]
		if a.ID != "101" || a.Turns != 148 || a.When.String() != "2027-05-10 14:30" || a.Luster != 97.2 || a.Place.String() != "floor.xlsx:Mold log:4" || a.Work != 0 {
			t.Errorf("1904 %v: %+v", since, a)
		}
		if b.ID != "102" || b.Part != a.Part || b.Since != 4 || b.When.String() != "2027-05-07 14:30" || b.State != floor.Ready {
			t.Errorf("1904 %v: %+v", since, b)
		}
		if w.Serial != "7012" || w.Mold != 0 || w.Started != a.When {
			t.Errorf("1904 %v: %+v", since, w)
		}
		wants(t, r, "hidden rows", "floor.xlsx:Mold log")
		wants(t, r, "not a floor file", "floor.xlsx:Phone list")
		if got := r.Floor.Morning.String(); got != "2027-05-11" {
			t.Errorf("the morning is %s", got)
		}
	}
}
