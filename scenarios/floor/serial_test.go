package floor

import (
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
)

// Serial values of ECMA-376, Office Open XML File Formats, part 1, 18.17.4.1
// Date Conversion for Serial Values and 18.17.4.2 Time Representation (from
// memory): in the 1900 system the first day is serial 1 and the last 2958465,
// noon of the first day is 1.5, 3687.4207639… is 10:05:54 of 3 February 1910 and
// 2958465.9999884… the last second of 9999; in the 1904 system serial 0 is
// 1904-01-01 and 2957003 the last day.
func TestSerialsOfTheStandard(t *testing.T) {
	for _, c := range []struct {
		x     float64
		since bool
		want  string
	}{
		{1, false, "1900-01-01"}, {1.5, false, "1900-01-01 12:00"}, {59, false, "1900-02-28"}, {61, false, "1900-03-01"},
		{3687.4207639, false, "1910-02-03 10:05:54"}, {2958465, false, "9999-12-31"}, {2958465.9999884, false, "9999-12-31 23:59:59"},
		{0, true, "1904-01-01"}, {2957003, true, "9999-12-31"},
	} {
		got, err := FromSerial(c.x, c.since)
		if err != nil || got.String() != c.want {
			t.Errorf("%v is %s (%v), want %s", c.x, got, err, c.want)
		}
	}
	for _, x := range []float64{0, 0.5, 60, 60.5, 2958466, -1} {
		if got, err := FromSerial(x, false); err == nil {
			t.Errorf("%v is read as %s", x, got)
		}
	}
	if got, err := FromSerial(2957004, true); err == nil {
		t.Errorf("a day too many is read as %s", got)
	}
}

// An independent reader of workbooks gives the same dates.
func TestSerialsAsAnotherReader(t *testing.T) {
	for _, since := range []bool{false, true} {
		for x := 61.0; x < 60000; x += 13.0625 {
			got, err := FromSerial(x, since)
			other, err2 := excelize.ExcelDateToTime(x, since)
			if err != nil || err2 != nil || got.Instant(got.Date).Hours() != other.Sub(other.Truncate(24*time.Hour)).Hours() || got.Date.String() != other.Format(time.DateOnly) {
				t.Fatalf("%v: %s and %s (%v, %v)", x, got, other, err, err2)
			}
		}
	}
}
