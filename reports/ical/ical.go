// Package ical writes calendar files that calendar programs take in: iCalendar,
// RFC 5545, "Internet Calendaring and Scheduling Core Object Specification"
// (2009).
//
// Times are floating (section 3.3.5, form 1): the hour on the clock of the shop,
// whatever zone the reader is in. The same Calendar gives the same bytes; the
// stamp is the caller's, not the time of writing.
package ical

import (
	"crypto/sha1"
	"errors"
	"fmt"
	"io"
	"strings"
	"time"
	"unicode/utf8"
)

// Calendar is one file. Name and at least one event are required by Write.
type Calendar struct {
	Name    string    // shown by programs that know RFC 7986, section 5.1
	Product string    // the program that made it, for PRODID
	Stamp   time.Time // when the events were drawn up; written as UTC
	Issue   int       // number of this issue: of two with one UID the higher holds
	Events  []Event
}

// Event is one entry. Its times are read as wall clock times, their zone is not
// looked at.
type Event struct {
	Key         string    // what it is, the same in every issue; makes its UID
	Start, End  time.Time // AllDay: End is the day after the last
	AllDay      bool
	Summary     string // one line
	Description string // lines parted by \n; may be empty
	Category    string // may be empty
}

// Write writes c. It fails for a calendar without name or product, for an event
// without key or summary, for one that does not end after it starts, and for two
// events with one key; RFC 5545 wants a component at least (section 3.6).
func Write(w io.Writer, c Calendar) error {
	if err := c.check(); err != nil {
		return err
	}
	var b strings.Builder
	line(&b, "BEGIN", "VCALENDAR")
	line(&b, "VERSION", "2.0")
	line(&b, "PRODID", Escape(c.Product))
	line(&b, "CALSCALE", "GREGORIAN")
	line(&b, "NAME", Escape(c.Name))
	for _, e := range c.Events {
		c.event(&b, e)
	}
	line(&b, "END", "VCALENDAR")
	_, err := io.WriteString(w, b.String())
	return err
}

func (c *Calendar) check() error {
	if c.Name == "" || c.Product == "" || len(c.Events) == 0 {
		return errors.New("a calendar needs a name, a product and an event")
	}
	seen := map[string]bool{}
	for i, e := range c.Events {
		switch {
		case e.Key == "" || e.Summary == "":
			return fmt.Errorf("event %d: it needs a key and a summary", i+1)
		case !e.End.After(e.Start):
			return fmt.Errorf("event %d, %s: it does not end after it starts", i+1, e.Key)
		case seen[e.Key]:
			return fmt.Errorf("event %d: the key %s is used twice", i+1, e.Key)
		}
		seen[e.Key] = true
	}
	return nil
}

// Forms of section 3.3.4 and 3.3.5.
const (
	dateForm  = "20060102"
	localForm = "20060102T150405"
	utcForm   = "20060102T150405Z"
)

func (c *Calendar) event(b *strings.Builder, e Event) {
	line(b, "BEGIN", "VEVENT")
	line(b, "UID", c.uid(e.Key))
	line(b, "DTSTAMP", c.Stamp.UTC().Format(utcForm))
	if c.Issue > 0 {
		line(b, "SEQUENCE", fmt.Sprint(c.Issue))
	}
	if e.AllDay {
		line(b, "DTSTART;VALUE=DATE", e.Start.Format(dateForm))
		line(b, "DTEND;VALUE=DATE", e.End.Format(dateForm))
	} else {
		line(b, "DTSTART", e.Start.Format(localForm))
		line(b, "DTEND", e.End.Format(localForm))
	}
	line(b, "SUMMARY", Escape(e.Summary))
	if e.Description != "" {
		line(b, "DESCRIPTION", Escape(e.Description))
	}
	if e.Category != "" {
		line(b, "CATEGORIES", Escape(e.Category))
	}
	line(b, "TRANSP", "TRANSPARENT")
	line(b, "END", "VEVENT")
}

// uid makes a name-based UUID of calendar and key: RFC 9562, section 5.5, as RFC
// 7986, section 5.3, asks for.
func (c *Calendar) uid(key string) string {
	url := [16]byte{0x6b, 0xa7, 0xb8, 0x11, 0x9d, 0xad, 0x11, 0xd1, 0x80, 0xb4, 0x00, 0xc0, 0x4f, 0xd4, 0x30, 0xc8} // RFC 9562, section 6.6
	sum := sha1.Sum(append(url[:], c.Product+"\x00"+c.Name+"\x00"+key...))
	u := sum[:16]
	u[6], u[8] = u[6]&0x0f|0x50, u[8]&0x3f|0x80
	return fmt.Sprintf("%x-%x-%x-%x-%x", u[:4], u[4:6], u[6:8], u[8:10], u[10:])
}

// Escape writes a text as section 3.3.11 does: \, ; and , with a \ before them,
// a line break as \n. Other control characters are left out.
func Escape(s string) string {
	var b strings.Builder
	for _, r := range strings.ReplaceAll(strings.ToValidUTF8(s, "\uFFFD"), "\r\n", "\n") {
		switch {
		case r == '\\' || r == ';' || r == ',':
			b.WriteRune('\\')
			b.WriteRune(r)
		case r == '\n':
			b.WriteString(`\n`)
		case r < ' ' && r != '\t' || r == 0x7f:
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// longest is how many octets a line may have, its break left out: section 3.1.
const longest = 75

// line writes a content line, folded between characters.
func line(b *strings.Builder, name, value string) {
	text := name + ":" + value
	room := longest
	for len(text) > room {
		n := room
		for !utf8.RuneStart(text[n]) {
			n--
		}
		b.WriteString(text[:n] + "\r\n ")
		text, room = text[n:], longest-1
	}
	b.WriteString(text + "\r\n")
}
