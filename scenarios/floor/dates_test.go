package floor

import (
	"errors"
	"testing"
)

// One day in the styles that people and programs write. 2026-11-25 is a
// Wednesday (ISO 8601 week 48 of 2026; from memory).
func TestStylesOfDates(t *testing.T) {
	for _, s := range []string{
		"2026-11-25", "2026/11/25", "2026.11.25", "20261125", "11/25/2026", "25.11.2026", "25/11/26", "25-11-2026", "11/25/26",
		"25 Nov 2026", "25-Nov-26", "25. November 2026", "Nov 25, 2026", "November 25 2026", "25th of Nov 2026", "Nov. 25th, 2026",
		"Wed 25 Nov 2026", "Wednesday, 25 Nov 2026", "wed, 2026-11-25", "2026-Nov-25", "46351", "25Nov2026",
	} {
		if m, err := parseMoment(s, orderUnknown, false); err != nil || m.String() != "2026-11-25" {
			t.Errorf("%q is %s (%v)", s, m, err)
		}
	}
	for _, s := range []string{
		"2026-11-25 14:30", "2026-11-25T14:30:00", "11/25/2026 2:30 PM", "25.11.2026 14.30", "25 Nov 2026, 2:30pm", "Nov 25, 2026 at 14:30", "2026-11-25 14h30", "46351.604166666667",
	} {
		if m, err := parseMoment(s, orderUnknown, false); err != nil || m.String() != "2026-11-25 14:30" {
			t.Errorf("%q is %s (%v)", s, m, err)
		}
	}
	for s, want := range map[string]string{"11/25/2026 12:05 am": "2026-11-25 00:05", "25 Nov 2026 12 pm": "2026-11-25 12:00", "2026-11-25 06:00:30": "2026-11-25 06:00:30"} {
		if m, err := parseMoment(s, orderUnknown, false); err != nil || m.String() != want {
			t.Errorf("%q is %s (%v), want %s", s, m, err, want)
		}
	}
}

func TestDatesThatAreNone(t *testing.T) {
	for _, s := range []string{
		"", "soon", "2026-02-29", "2026-13-01", "31/04/2026", "25/25/2026", "Thu 25 Nov 2026", "25 Nom 2026", "25 Nov", "Nov 2026", "2026-11-25 25:00",
		"2026-11-25 13:00 pm", "60", "1", "3", "1926-11-25", "11/25", "2026-11/25", "11-25-026", "99999999", "2026-11-25T14:30Z", "25 Nov 2026 to 27 Nov 2026",
	} {
		if m, err := parseMoment(s, orderUnknown, false); err == nil {
			t.Errorf("%q is read as %s", s, m)
		}
	}
	for _, s := range []string{"5/6/2027", "05.06.2027", "5-6-27 14:30"} {
		if m, err := parseMoment(s, orderUnknown, false); !errors.Is(err, errAmbiguous) {
			t.Errorf("%q is %s (%v), want two days", s, m, err)
		}
		if m, err := parseMoment(s, dayFirst, false); err != nil || m.Date.String() != "2027-06-05" {
			t.Errorf("%q day first is %s (%v)", s, m, err)
		}
		if m, err := parseMoment(s, monthFirst, false); err != nil || m.Date.String() != "2027-05-06" {
			t.Errorf("%q month first is %s (%v)", s, m, err)
		}
	}
	if m, err := parseMoment("5/5/2027", orderUnknown, false); err != nil || m.String() != "2027-05-05" {
		t.Errorf("%s %v", m, err)
	}
}

func TestAfter(t *testing.T) {
	day, early, late := at("2027-03-08"), at("2027-03-08 06:00"), at("2027-03-08 14:00")
	next := at("2027-03-09")
	for _, c := range []struct {
		a, b Moment
		want bool
	}{{late, early, true}, {early, late, false}, {late, day, false}, {day, late, false}, {next, late, true}, {next, day, true}, {Moment{}, day, false}, {day, Moment{}, false}} {
		if got := c.a.After(c.b); got != c.want {
			t.Errorf("%s after %s: %v", c.a, c.b, got)
		}
	}
}

func at(s string) Moment {
	m, err := ParseMorning(s)
	if err != nil {
		panic(err)
	}
	return m
}
