package unit

import (
	"errors"
	"regexp"
	"testing"

	"moldturn/sim/param"
)

// The factors are those of NIST Special Publication 811 (2008), Guide for the
// Use of the International System of Units, appendix B.8 (bold, that is exact)
// and B.6 for Fahrenheit; the U.S. gallon is 231 cubic inches, NIST Handbook 44
// (2024), appendix C, and an ounce a sixteenth of a pound, same place.
func TestPublishedFactors(t *testing.T) {
	inch3 := 2.54 * 2.54 * 2.54 / 1000 // liters
	for _, c := range []struct {
		kind param.Kind
		text string
		want float64
	}{
		{param.Length, "1 in", 25.4},
		{param.Length, "1 ft", 304.8},
		{param.Length, "1 mil", 0.0254},
		{param.Area, "1 ft2", 0.09290304},
		{param.Mass, "1 lb", 0.45359237},
		{param.Mass, "16 oz", 0.45359237},
		{param.Volume, "1 gal", 3.785411784},
		{param.Volume, "4 qt", 3.785411784},
		{param.Temperature, "32 F", 0},
		{param.Temperature, "212 F", 100},
		{param.Temperature, "-40 F", -40},
		{param.Temperature, "273.15 K", 0},
		{param.Difference, "9 F", 5},
		{param.Difference, "1 K", 1},
		{param.Duration, "60 min", 1},
		{param.Duration, "3600 s", 1},
		{param.Duration, "1 d", 24},
		{param.Duration, "1 wk", 168},
	} {
		if got, err := Parse(c.kind, c.text); err != nil || got != c.want {
			t.Errorf("%v %q = %v, %v; want exactly %v", c.kind, c.text, got, err, c.want)
		}
	}
	if got, _ := Parse(param.Volume, "1 gal"); got-231*inch3 > 1e-14 || 231*inch3-got > 1e-14 {
		t.Errorf("gallon %v, 231 cubic inches %v", got, 231*inch3)
	}
}

func TestForms(t *testing.T) {
	for _, c := range []struct {
		kind param.Kind
		text string
		want float64
	}{
		{param.Duration, "24h", 24}, {param.Duration, "90 min", 1.5}, {param.Duration, "1 h 30 min", 1.5},
		{param.Duration, "1h30min", 1.5}, {param.Duration, "-1 h 30 min", -1.5}, {param.Duration, "0", 0},
		{param.Duration, "3 Weeks", 504}, {param.Duration, "1,200 h", 1200}, {param.Duration, "1.5e1 h", 15},
		{param.Duration, "7200000 ms", 2}, {param.Duration, " .5 h ", 0.5}, {param.Duration, "−2 h", -2},
		{param.Temperature, "50 °F", 10}, {param.Temperature, "21°C", 21}, {param.Temperature, "21 c", 21},
		{param.Area, "34 m²", 34}, {param.Area, "100 sq ft", 9.290304}, {param.Area, "100 ft²", 9.290304},
		{param.Length, "24 ft", 7315.2}, {param.Length, "24 ft 6 in", 7467.6}, {param.Length, `24' 6"`, 7467.6},
		{param.Length, "20 mil", 0.508}, {param.Length, "2.5 m", 2500}, {param.Length, "510 µm", 0.51},
		{param.Mass, "59 lb", 26.76194983}, {param.Mass, "1.5 t", 1500}, {param.Volume, "4 l", 4},
		{param.Money, "$40k", 40000}, {param.Money, "$1.2M", 1.2e6}, {param.Money, "$19.50", 19.5},
		{param.Money, "$1,200", 1200}, {param.Money, "-$5", -5}, {param.Money, "$ 40K", 40000}, {param.Money, "0", 0},
		{param.Rate, "3.9/week", 3.9}, {param.Rate, "4 per day", 28}, {param.Rate, "2 / h", 336},
		{param.Rate, "365.25/year", 7}, {param.Rate, "487/month", 112}, {param.Rate, "0", 0},
		{param.Share, "6 %", 0.06}, {param.Share, "6%", 0.06}, {param.Share, "0.06", 0.06}, {param.Share, "6", 6},
		{param.Number, "-1.5", -1.5}, {param.Count, "12", 12}, {param.Count, "1,200", 1200},
		{param.Flag, "yes", 1}, {param.Flag, "False", 0},
		{param.Date, "1970-01-01", 0}, {param.Date, "2000-03-01", 11017}, {param.Date, "1969-12-31", -1},
		{param.DayMonth, "07-04", 704}, {param.DayMonth, "Jul 4", 704}, {param.DayMonth, "4 July", 704},
		{param.ClockTime, "06:00", 360}, {param.ClockTime, "6:30", 390}, {param.ClockTime, "24:00", 1440},
		{param.ClockTime, "3:30 pm", 930}, {param.ClockTime, "12 AM", 0}, {param.ClockTime, "3pm", 900},
		{param.Weekdays, "Mon-Fri", 31}, {param.Weekdays, "mon, wednesday", 5}, {param.Weekdays, "Sat-Mon", 97},
		{param.Weekdays, "none", 0}, {param.Weekdays, "Mon–Sun", 127},
		{param.Months, "May-Sep", 0x1f0}, {param.Months, "Nov-Feb", 0xc03}, {param.Months, "Jan, Jul", 0x41},
	} {
		got, err := Parse(c.kind, c.text)
		if err != nil || got != c.want {
			t.Errorf("%v %q = %v, %v; want %v", c.kind, c.text, got, err, c.want)
		}
		if p := Pattern(c.kind); p != "" && c.text[0] != ' ' && !regexp.MustCompile(p).MatchString(c.text) {
			t.Errorf("%v %q does not match its pattern %s", c.kind, c.text, p)
		}
	}
}

func TestProblems(t *testing.T) {
	for _, c := range []struct {
		kind param.Kind
		text string
		want Problem
	}{
		{param.Duration, "24", Problem{"24 has no unit", "h, min, s, d, wk, ms", "write 24 h"}},
		{param.Duration, "24 hous", Problem{`unknown unit "hous"`, "h, min, s, d, wk, ms", "did you mean 24 hour?"}},
		{param.Duration, "24 m", Problem{`unknown unit "m"`, "h, min, s, d, wk, ms", "did you mean 24 min?"}},
		{param.Duration, "soon", Problem{`"soon" is not a length of time`, "", "write for example 24 h"}},
		{param.Duration, "1,5 h", Problem{`"1,5 h" has a comma in a number`, "", "write a decimal point; commas only group thousands: 1,200"}},
		{param.Duration, "8 h - 9 h", Problem{`"8 h - 9 h" has more than one value`, "", "write for example 24 h"}},
		{param.Duration, "", Problem{"an empty text is not a length of time", "", "write for example 24 h"}},
		{param.Duration, "1e999 h", Problem{`"1e999 h" is not a length of time`, "", "write for example 24 h"}},
		{param.Duration, "NaN", Problem{`"NaN" is not a length of time`, "", "write for example 24 h"}},
		{param.Temperature, "0", Problem{"0 has no unit", "C, F, K", "write 0 C or 0 F"}},
		{param.Temperature, "75", Problem{"75 has no unit", "C, F, K", "write 75 C or 75 F"}},
		{param.Area, "365 ft", Problem{`unknown unit "ft"`, "m2, ft2", "did you mean 365 ft2?"}},
		{param.Money, "40k", Problem{`"40k" has no currency sign`, "", "write $40k, or €40k where that is the currency"}},
		{param.Money, "$40 grand", Problem{`unknown unit "grand"`, "k, M", ""}},
		{param.Rate, "4", Problem{"4 has no unit", "/week, /day, /year, /month, /h", "write 4/week"}},
		{param.Number, "4 h", Problem{`"4 h" must be a plain number`, "", "write 4"}},
		{param.Count, "2.5", Problem{`"2.5" is not a whole number`, "", ""}},
		{param.Flag, "maybe", Problem{`"maybe" is neither true nor false`, "true, false", ""}},
		{param.Date, "2027-02-29", Problem{`"2027-02-29" is not a date`, "", "write year-month-day, 2027-01-04"}},
		{param.DayMonth, "02-29", Problem{"February 29 is not in every year", "", "write 02-28 or 03-01"}},
		{param.ClockTime, "25:00", Problem{`"25:00" is not a time of day`, "00:00 to 24:00", "write for example 06:00 or 3:30 pm"}},
		{param.Weekdays, "Mon-Fry", Problem{`"Mon-Fry" is not one of the days of the week`,
			"Mon, Tue, Wed, Thu, Fri, Sat, Sun", "write for example Mon-Fri or Mon, Wed"}},
	} {
		_, err := Parse(c.kind, c.text)
		var p *Problem
		if !errors.As(err, &p) || *p != c.want {
			t.Errorf("%v %q: got %#v, want %#v", c.kind, c.text, p, c.want)
		}
	}
}

// An amount has the sign of a currency before it, any of them: one of the block
// Currency Symbols of Unicode, or a code of three letters as in ISO 4217.
func TestAmountsInAnyCurrency(t *testing.T) {
	for _, c := range []struct {
		text, sign string
		want       float64
	}{{"€1,200", "€", 1200}, {"-£40k", "£", -40000}, {"¥ 3", "¥", 3}, {"EUR 1.5M", "EUR", 1.5e6}, {"CHF20", "CHF", 20}, {"$7", "$", 7}, {"0", "", 0}} {
		if got, err := Parse(param.Money, c.text); err != nil || got != c.want || Currency(c.text) != c.sign {
			t.Errorf("%s: %v, sign %q, %v", c.text, got, Currency(c.text), err)
		}
		if !regexp.MustCompile(Pattern(param.Money)).MatchString(c.text) {
			t.Errorf("the pattern for editors does not match %s", c.text)
		}
	}
	for _, text := range []string{"12", "eur 3", "EURO 3", "kg 3", "€", "EUR", "€x"} {
		if got, err := Parse(param.Money, text); err == nil {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}
