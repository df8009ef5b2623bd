package ical

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
	"time"
	"unicode/utf8"
)

func at(text string) time.Time {
	t, err := time.Parse("2006-01-02 15:04", text)
	if err != nil {
		panic(err)
	}
	return t
}

func example() Calendar {
	long := strings.Repeat("Überlänge; größer, \\ 90° ± 2 ", 12)
	return Calendar{Name: "Fenwater, board", Product: "-//moldturn//board//EN", Stamp: at("2027-05-11 00:00"), Issue: 9992, Events: []Event{
		{Key: "pull R23-H1 204", Start: at("2027-05-11 13:30"), End: at("2027-05-11 15:00"), Summary: "Pull R23-H1; F27-171, hull", Description: "first\nsecond\r\nthird\x07" + long, Category: "pull"},
		{Key: "strip R23-H1 1", Start: at("2027-05-12 00:00"), End: at("2027-05-13 00:00"), AllDay: true, Summary: long},
	}}
}

func written(t *testing.T, c Calendar) string {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, c); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// RFC 5545, section 3.1: lines end with CRLF and are no longer than 75 octets
// without it; a long line goes on after CRLF and one space, and is the same
// again when those are taken out. No character is cut.
func TestLines(t *testing.T) {
	text := written(t, example())
	if !strings.HasSuffix(text, "\r\n") || strings.Count(text, "\n") != strings.Count(text, "\r\n") || strings.Count(text, "\r") != strings.Count(text, "\r\n") {
		t.Error("a line does not end with CRLF")
	}
	folded := 0
	for _, l := range strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		if len(l) > 75 || len(l) == 0 {
			t.Errorf("%d octets: %q", len(l), l)
		}
		if !utf8.ValidString(l) {
			t.Errorf("a character is cut: %q", l)
		}
		if strings.HasPrefix(l, " ") {
			folded++
		}
	}
	if folded < 8 {
		t.Errorf("only %d folds", folded)
	}
	whole := strings.ReplaceAll(text, "\r\n ", "")
	if !strings.Contains(whole, "SUMMARY:"+Escape(example().Events[1].Summary)+"\r\n") {
		t.Error("a folded line does not read back")
	}
}

// Section 3.3.11: in texts \ ; and , are escaped, a line break is \n, a colon is
// not escaped, and there are no control characters (section 3.1, CONTROL).
func TestEscape(t *testing.T) {
	for in, want := range map[string]string{
		`a\b;c,d`:         `a\\b\;c\,d`,
		"a\nb\r\nc":       `a\nb\nc`,
		"06:30 \"now\"":   "06:30 \"now\"",
		"\x07a\x1bb\tc\r": "ab\tc",
	} {
		if got := Escape(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

// Section 3.6: one calendar with version and product, both once (3.7.3, 3.7.4).
// Section 3.6.1: every event has one UID and one DTSTAMP and starts, an end of a
// date goes with a start of a date (3.8.2.2). DTSTAMP is in UTC (3.8.7.2).
// Section 3.3.5: other times are floating. What is opened is closed (3.6).
func TestComponents(t *testing.T) {
	whole := strings.ReplaceAll(written(t, example()), "\r\n ", "")
	count := map[string]int{}
	var open []string
	for _, l := range strings.Split(strings.TrimSuffix(whole, "\r\n"), "\r\n") {
		name, value, ok := strings.Cut(l, ":")
		if !ok || !regexp.MustCompile(`^[A-Z-]+(;[A-Z-]+=[A-Z]+)*$`).MatchString(name) {
			t.Fatalf("no content line: %q", l)
		}
		switch name {
		case "BEGIN":
			open = append(open, value)
		case "END":
			if open[len(open)-1] != value {
				t.Fatalf("%s ends in %v", value, open)
			}
			open = open[:len(open)-1]
		case "DTSTAMP":
			if value != "20270511T000000Z" {
				t.Errorf("stamp %s", value)
			}
		case "DTSTART", "DTEND":
			if !regexp.MustCompile(`^\d{8}T\d{6}$`).MatchString(value) {
				t.Errorf("%s %s", name, value)
			}
		case "DTSTART;VALUE=DATE", "DTEND;VALUE=DATE":
			if !regexp.MustCompile(`^\d{8}$`).MatchString(value) {
				t.Errorf("%s %s", name, value)
			}
		}
		count[name]++
	}
	if len(open) > 0 {
		t.Errorf("open: %v", open)
	}
	for name, want := range map[string]int{"VERSION": 1, "PRODID": 1, "UID": 2, "DTSTAMP": 2, "DTSTART": 1, "DTEND": 1, "DTSTART;VALUE=DATE": 1, "DTEND;VALUE=DATE": 1, "SUMMARY": 2} {
		if count[name] != want {
			t.Errorf("%d of %s, want %d", count[name], name, want)
		}
	}
}

// Section 3.8.4.7: a UID is the same in every issue of an event, and no other
// event has it. RFC 9562, section 5.5: a name-based UUID is of version 5 and of
// variant 10x. The UUID of the section's example, made of the name
// "www.example.com" in the space of domain names, is RFC 9562, appendix A.4; the
// space here is another, so only the bits are held against it.
func TestUID(t *testing.T) {
	uids := func(c Calendar) []string { return regexp.MustCompile(`UID:(.*)\r`).FindAllString(written(t, c), -1) }
	first, later := example(), example()
	later.Stamp, later.Issue = at("2027-05-12 00:00"), 9993
	later.Events[0].Start, later.Events[0].Summary = at("2027-05-11 14:00"), "Pull R23-H1 later"
	a, b := uids(first), uids(later)
	if len(a) != 2 || a[0] == a[1] || a[0] != b[0] || a[1] != b[1] {
		t.Errorf("%q, then %q", a, b)
	}
	for _, u := range a {
		if !regexp.MustCompile(`^UID:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}\r$`).MatchString(u) {
			t.Errorf("no UUID of version 5: %q", u)
		}
	}
}

func TestRefused(t *testing.T) {
	for name, spoil := range map[string]func(*Calendar){
		"no events":   func(c *Calendar) { c.Events = nil },
		"no name":     func(c *Calendar) { c.Name = "" },
		"no key":      func(c *Calendar) { c.Events[0].Key = "" },
		"no summary":  func(c *Calendar) { c.Events[0].Summary = "" },
		"same key":    func(c *Calendar) { c.Events[1].Key = c.Events[0].Key },
		"ends before": func(c *Calendar) { c.Events[0].End = c.Events[0].Start },
	} {
		c := example()
		spoil(&c)
		var b bytes.Buffer
		if err := Write(&b, c); err == nil || b.Len() > 0 {
			t.Errorf("%s: no error, %d bytes", name, b.Len())
		}
	}
}
