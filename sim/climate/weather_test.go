package climate

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"moldturn/sim/shift"
)

// epwHead is a header in the layout of the EPW data dictionary, of an invented
// place.
const epwHead = `LOCATION,Invented Coast,-,-,made for tests,000000,30.0,-88.0,-6.0,3.0
DESIGN CONDITIONS,0
TYPICAL/EXTREME PERIODS,0
GROUND TEMPERATURES,0
HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
COMMENTS 1,invented
COMMENTS 2,
DATA PERIODS,1,1,Data,Sunday,1/1,12/31
`

// epwLine writes one hour, 1 … 24, in 35 fields.
func epwLine(year int, c cursor, hour int, dry, dew, rh string) string {
	return fmt.Sprintf("%d,%d,%d,%d,60,?9?9,%s,%s,%s,101300", year, c.month, c.day, hour, dry, dew, rh) +
		strings.Repeat(",0", 25) + "\n"
}

// epwYearText is a year whose dry bulb is month + hour/100 and whose dew point
// is one below; year 0 stands for a different one in every month. change may
// replace a line by its number among the data, from 0.
func epwYearText(year, days int, change func(i int, line string) string) string {
	var b strings.Builder
	b.WriteString(epwHead)
	c := cursor{2001, 1, 1}
	if days == 366 {
		c.year = 2000
	}
	for d := range days {
		for hour := 1; hour <= 24; hour++ {
			y := year
			if y == 0 {
				y = 1980 + c.month*7%12
			}
			t := float64(c.month) + float64(hour)/100
			line := epwLine(y, c, hour, fmt.Sprintf("%.2f", t), fmt.Sprintf("%.2f", t-1), "90")
			if change != nil {
				line = change(d*24+hour-1, line)
			}
			b.WriteString(line)
		}
		c = c.next()
	}
	return b.String()
}

func mustEPW(t *testing.T, text string) *Weather {
	t.Helper()
	w, err := ReadEPW(strings.NewReader(text), "w.epw", 6)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestEPWTypicalYearOfMixedYears(t *testing.T) {
	w := mustEPW(t, epwYearText(0, 365, nil))
	if w.Years() != 1 || len(w.Repairs) != 0 {
		t.Errorf("%d years, repairs %v", w.Years(), w.Repairs)
	}
	// Start in December; through a leap year, which the file has not got.
	out := w.Outdoor(shift.DateOf(2027, 12, 31), 24*(1+366+1), 0)
	within(t, "hour 1 begins at midnight", out.AirC[0], 12.01, 1e-9)
	within(t, "1 January, last hour", out.AirC[47], 1.24, 1e-9)
	feb29 := 24 * (1 + 31 + 28)
	within(t, "29 February", out.AirC[feb29], 2.01, 1e-9)
	within(t, "1 March", out.AirC[feb29+24], 3.01, 1e-9)
	within(t, "31 December", out.AirC[24*366], 12.01, 1e-9)
	within(t, "1 January, a year on", out.AirC[24*367], 1.01, 1e-9)
	within(t, "dew point", out.DewC[24*367], 0.01, 1e-9)
}

func TestEPWLeapYear(t *testing.T) {
	w := mustEPW(t, epwYearText(2000, 366, func(i int, line string) string {
		if i == 24*59 { // 29 February, first hour
			return strings.Replace(line, ",2.01,", ",2.77,", 1)
		}
		return line
	}))
	out := w.Outdoor(shift.DateOf(2028, 2, 29), 48, 0)
	within(t, "its own 29 February", out.AirC[0], 2.77, 1e-9)
	out = w.Outdoor(shift.DateOf(2027, 2, 28), 48, 0)
	within(t, "passed over in a common year", out.AirC[24], 3.01, 1e-9)
}

func TestEPWMissingValues(t *testing.T) {
	w := mustEPW(t, epwYearText(2001, 365, func(i int, line string) string {
		f := strings.Split(line, ",")
		switch i {
		case 100: // dew point missing: from relative humidity
			f[7] = "99.9"
		case 200, 201, 202: // dry bulb missing
			f[6] = "99.9"
		case 300: // no humidity at all
			f[7], f[8] = "99.9", "999"
		case 400: // a dew point above the temperature
			f[7] = "30"
		case 500: // a missing line
			return ""
		}
		return strings.Join(f, ",")
	}))
	out := w.Outdoor(shift.DateOf(2001, 1, 1), 8760, 0)
	within(t, "from humidity", out.DewC[100], DewPoint(1.05, .9), 1e-9)
	within(t, "before", out.AirC[199], 1.08, 1e-9)
	within(t, "filled", out.AirC[201], 1.10, 1e-9)
	within(t, "dew filled", out.DewC[300], (out.DewC[299]+out.DewC[301])/2, 1e-12)
	within(t, "dew point at most the temperature", out.DewC[400], out.AirC[400], 0)
	within(t, "missing line", out.AirC[500], (out.AirC[499]+out.AirC[501])/2, 1e-12)
	var got []string
	for _, r := range w.Repairs {
		got = append(got, r.String())
	}
	want := "dry bulb: 3 hours filled from 01-09 08:00; dry bulb: 1 hour filled from 01-21 20:00; " +
		"dew point: 1 hour filled from 01-13 12:00; dew point: 1 hour filled from 01-21 20:00"
	if s := strings.Join(got, "; "); s != want {
		t.Errorf("repairs\n got %s\nwant %s", s, want)
	}
}

// A file of two calendar years is used one year after the other.
func TestEPWSeveralYears(t *testing.T) {
	second := strings.TrimPrefix(epwYearText(2002, 365, nil), epwHead)
	second = strings.ReplaceAll(second, ",60,?9?9,1", ",60,?9?9,5")
	w := mustEPW(t, epwYearText(2001, 365, nil)+second)
	if w.Years() != 2 {
		t.Fatalf("%d years", w.Years())
	}
	for turn, want := range map[int]float64{0: 1.01, 1: 5.01, 2: 1.01, -1: 5.01} {
		within(t, "first hour", w.Outdoor(shift.DateOf(2027, 1, 1), 24, turn).AirC[0], want, 1e-9)
	}
	out := w.Outdoor(shift.DateOf(2027, 1, 1), 2*8760, 0)
	within(t, "second year", out.AirC[8760], 5.01, 1e-9)
}

// fault fails unless err is complaints whose i-th begins with want.
func fault(t *testing.T, err error, i int, want string) {
	t.Helper()
	var c *Complaints
	if !errors.As(err, &c) || len(c.List) <= i {
		t.Fatalf("no complaint %d in: %v", i, err)
	}
	if got := c.List[i].Error(); !strings.HasPrefix(got, want) {
		t.Errorf("got:\n%s\nwant:\n%s", got, want)
	}
}

func TestEPWComplaintsHavePlaces(t *testing.T) {
	_, err := ReadEPW(strings.NewReader(epwYearText(2001, 365, func(i int, line string) string {
		switch i {
		case 0:
			return strings.Replace(line, "1.01", "warm", 1)
		case 1:
			return strings.Replace(line, ",90,", ",190,", 1)
		case 2:
			return "2001,1,1,3\n"
		case 3:
			return strings.Replace(line, "2001,1,1,4,", "2001,13,1,4,", 1)
		case 4:
			return strings.Replace(line, "2001,1,1,5,", "2001,2,30,5,", 1)
		case 5:
			return strings.Replace(line, "1.06", "NaN", 1)
		}
		return line
	})), "w.epw", 6)
	fault(t, err, 0, "w.epw:9:20: dry bulb \"warm\"\n  allowed: -70 … 70 C, or 99.9 for missing")
	fault(t, err, 1, "w.epw:10:30: relative humidity \"190\"\n  allowed: 0 … 110 %, or 999 for missing")
	fault(t, err, 2, "w.epw:11:1: 4 fields\n  allowed: 35 fields (or 32 from older files)")
	fault(t, err, 3, "w.epw:12:6: month \"13\"\n  allowed: 1 … 12")
	fault(t, err, 4, "w.epw:13:8: day 30 of month 2\n  allowed: 1 … 29")
	fault(t, err, 5, "w.epw:14:20: dry bulb \"NaN\"")
}

func TestEPWComplaintsOfOrderGapsAndCover(t *testing.T) {
	text := epwYearText(2001, 365, func(i int, line string) string {
		if i == 10 {
			return line + line
		}
		if i >= 100 && i < 107 {
			return ""
		}
		return line
	})
	_, err := ReadEPW(strings.NewReader(text), "w.epw", 6)
	fault(t, err, 0, "w.epw:20:1: month 1, day 1, hour 11 comes again or too late")
	fault(t, err, 1, "w.epw:110: no dry bulb for 7 hours from 01-05 04:00\n  allowed: gaps of up to 6 hours")
	fault(t, err, 2, "w.epw:110: no dew point for 7 hours")

	_, err = ReadEPW(strings.NewReader(epwYearText(2001, 300, nil)), "w.epw", 6)
	fault(t, err, 0, "w.epw: no complete day for 65 of the 365 dates: 10-28, 10-29, 10-30 … 12-31")
	_, err = ReadEPW(strings.NewReader(epwHead), "w.epw", 6)
	fault(t, err, 0, "w.epw: no hours of weather")
	_, err = ReadEPW(strings.NewReader("time,dry bulb (C)\n"), "w.epw", 6)
	fault(t, err, 0, "w.epw:1:1: header line 1 begins with \"time\"\n  allowed: LOCATION\n  hint: is this an EPW file?")
	_, err = ReadEPW(strings.NewReader(strings.Replace(epwHead, "PERIODS,1,1", "PERIODS,1,4", 1)), "w.epw", 6)
	fault(t, err, 0, "w.epw:8:16: \"4\" records per hour")
}

// One day with a wrong month makes all hours up to it come too late: that is one
// complaint, and one of the gap.
func TestLateHoursAreOneComplaint(t *testing.T) {
	_, err := ReadEPW(strings.NewReader(epwYearText(2001, 365, func(i int, line string) string {
		return strings.Replace(line, "2001,1,3,1,", "2001,1,30,1,", 1)
	})), "w.epw", 6)
	fault(t, err, 0, "w.epw:58:1: month 1, day 3, hour 2 comes again or too late")
	fault(t, err, 1, "w.epw:57: no dry bulb for 648 hours from 01-03 00:00")

	_, err = ReadCSV(strings.NewReader(csvText("time,dry bulb (F),RH [0-1]", func(i int, c cursor, h int) string {
		if i == 48 {
			c.day = 30
		}
		return fmt.Sprintf("%d-%02d-%02d %02d:00,%d,0.5\n", c.year, c.month, c.day, h, 68+400*(i/8000))
	})), "w.csv", 6)
	fault(t, err, 0, "w.csv:51:1: time 2027-01-03 01:00 after 2027-01-30 00:00")
	fault(t, err, 1, "w.csv:8002:18: dry bulb \"468\"\n  allowed: -94 … 158 F, or empty for missing")
}

func TestComplaintsAreCapped(t *testing.T) {
	_, err := ReadEPW(strings.NewReader(epwYearText(2001, 365, func(_ int, line string) string { return "x" + line })), "w.epw", 6)
	var c *Complaints
	if !errors.As(err, &c) || len(c.List) != 20 || c.More != 8760-20 {
		t.Fatalf("%d listed and %d more", len(c.List), c.More)
	}
	if !strings.HasSuffix(err.Error(), "\nw.epw: 8740 more like these") {
		t.Error(err)
	}
}

// csvText is a year of a table, written row by row.
func csvText(head string, row func(i int, c cursor, hour int) string) string {
	var b strings.Builder
	b.WriteString(head + "\n")
	c := cursor{2027, 1, 1}
	for d := range 365 {
		for hour := range 24 {
			b.WriteString(row(d*24+hour, c, hour))
		}
		c = c.next()
	}
	return b.String()
}

func TestCSVForms(t *testing.T) {
	for name, text := range map[string]string{
		"iso, percent": csvText("time,dry bulb (C),RH (%)", func(_ int, c cursor, h int) string {
			return fmt.Sprintf("%d-%02d-%02d %02d:00,20,50\n", c.year, c.month, c.day, h)
		}),
		"fahrenheit, share, other columns, tabs": csvText("\ufeffRH [0-1]\twind\tTemp_F\tDate time", func(_ int, c cursor, h int) string {
			return fmt.Sprintf("0.5\t3\t68\t%d/%d/%d %d:00\n", c.month, c.day, c.year, h)
		}),
		"dew point, semicolons, comments": csvText("# invented\nTimestamp;Air temperature °C;dew point (K)", func(_ int, c cursor, h int) string {
			return fmt.Sprintf("%d-%02d-%02dT%02d:00:00Z;20;%.6f\n", c.year, c.month, c.day, h, 273.15+9.272392)
		}),
		"half hours are averaged": csvText("time,temp (degC),relative humidity pct", func(_ int, c cursor, h int) string {
			at := fmt.Sprintf("%d-%02d-%02d %02d", c.year, c.month, c.day, h)
			return at + ":10,19,50\n" + at + ":40,21,NA\n"
		}),
	} {
		w, err := ReadCSV(strings.NewReader(text), "w.csv", 6)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		out := w.Outdoor(shift.DateOf(2027, 7, 1), 48, 0)
		within(t, name, out.AirC[30], 20, 1e-9)
		want := DewPoint(20, .5)
		if strings.HasPrefix(name, "half") {
			want = DewPoint(19, .5)
		}
		within(t, name, out.DewC[30], want, 2e-3)
	}
}

func TestCSVComplaintsHavePlaces(t *testing.T) {
	_, err := ReadCSV(strings.NewReader(csvText("time, dry bulb (C),RH (%)", func(i int, c cursor, h int) string {
		at := fmt.Sprintf("%d-%02d-%02d %02d:00", c.year, c.month, c.day, h)
		switch i {
		case 0:
			return "first of January,20,50\n"
		case 1:
			return at + ",\"20,5\",50\n"
		case 2:
			return at + ",20,500\n"
		case 3:
			return at + ",20\n"
		case 5:
			return "2027-01-01 04:00,20,50\n"
		}
		return at + ",20,50\n"
	})), "w.csv", 6)
	fault(t, err, 0, "w.csv:2:1: time \"first of January\"\n  allowed: 2027-01-31 14:00")
	fault(t, err, 1, "w.csv:3:18: dry bulb \"20,5\"\n  allowed: -70 … 70 C, or empty for missing\n  hint: write decimals with a point")
	fault(t, err, 2, "w.csv:4:21: relative humidity \"500\"\n  allowed: 0 … 110 %, or empty for missing")
	fault(t, err, 3, "w.csv:5: 2 fields\n  allowed: as many as the header has")
	fault(t, err, 4, "w.csv:7:1: time 2027-01-01 04:00 after 2027-01-01 04:00")
}

func TestCSVHeaderComplaints(t *testing.T) {
	for head, want := range map[string]string{
		"time,dry bulb,RH (%)":                      "w.csv:1:6: no unit in \"dry bulb\"\n  allowed: columns \"time\", \"dry bulb (C)\" and \"RH (%)\" or \"dew point (C)\"; units C, F, K, %, share\n  hint: write it as \"dry bulb (C)\"",
		"time,dry bulb (R),RH (%)":                  "w.csv:1:6: unit \"r\" in \"dry bulb (R)\"",
		"time,dry bulb (%),RH (%)":                  "w.csv:1:6: unit \"%\"",
		"time,dry bulb (C)":                         "w.csv:1:1: no column of humidity",
		"when,dry bulb (C),RH (%)":                  "w.csv:1:1: no column of time",
		"time,wind,RH (%)":                          "w.csv:1:1: no column of dry bulb",
		"time,temp (C),RH (%),temperature (F)":      "w.csv:1:22: a second column of the same kind",
		"time,temp (C),\"RH (%)\nand more \"x, 1,2": "w.csv:2:10: ",
	} {
		_, err := ReadCSV(strings.NewReader(head+"\n"), "w.csv", 6)
		fault(t, err, 0, want)
	}
	_, err := ReadCSV(strings.NewReader(""), "w.csv", 6)
	fault(t, err, 0, "w.csv: no hours of weather")
}

// A table that starts in May serves every date, and its part days at both ends
// are left out.
func TestCSVFromMidYear(t *testing.T) {
	var b strings.Builder
	b.WriteString("time,dry bulb (C),RH (%)\n")
	c := cursor{2025, 5, 3}
	for d := range 366 {
		for h := range 24 {
			if d == 0 && h < 15 || d == 365 && h > 2 {
				continue
			}
			fmt.Fprintf(&b, "%d-%02d-%02d %02d:00,%d,50\n", c.year, c.month, c.day, h, c.month)
		}
		c = c.next()
	}
	_, err := ReadCSV(strings.NewReader(b.String()), "w.csv", 6)
	fault(t, err, 0, "w.csv: no complete day for 1 of the 365 dates: 05-03")
	text := strings.Replace(b.String(), "RH (%)\n", "RH (%)\n2025-05-03 00:00,5,50\n", 1)
	if _, err = ReadCSV(strings.NewReader(text), "w.csv", 14); err != nil {
		t.Error(err)
	}
}

func FuzzReadEPW(f *testing.F) {
	f.Add(epwHead + epwLine(2001, cursor{2001, 1, 1}, 1, "1", "2", "3"))
	f.Add(epwHead + epwLine(2001, cursor{2001, 2, 29}, 24, "99.9", "", "999"))
	f.Fuzz(func(t *testing.T, text string) {
		if w, err := ReadEPW(strings.NewReader(text), "w", 6); err == nil && math.IsNaN(w.days[0].air[0]) {
			t.Error("a day with holes was kept")
		}
	})
}

func FuzzReadCSV(f *testing.F) {
	f.Add("time,dry bulb (F),RH (%)\n2027-01-01 00:00,50,50\n2027-01-01 00:20,,\n")
	f.Add("date;t_c;dew_k\n1/2/2027 3:00;5;nan\n")
	f.Fuzz(func(t *testing.T, text string) {
		if w, err := ReadCSV(strings.NewReader(text), "w", 6); err == nil && math.IsNaN(w.days[0].air[0]) {
			t.Error("a day with holes was kept")
		}
	})
}
