package floor

import (
	"cmp"
	"fmt"
	"slices"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// DiaryID is the id of the floor diary.
const DiaryID = "floor-diary"

// MostBytes is how large the data of a diary may be. A diary may take 300 KB of a
// page; a third of it shows two weeks of a plant with sixteen molds, and leaves
// room for the rest of a report of 2 MB.
const MostBytes = 100_000

// The boards of the diary, in their order on the page.
const (
	moldBoard = iota
	placeBoard
	crewBoard
	waitBoard
	shiftBoard
	mateBoard
)

// Diary is the section with the floor diary: as many whole weeks of those
// recorded, from their first, as fit into MostBytes, else as many days. ok is false where nothing was
// recorded, or one day alone is too large.
func Diary(t *study.Typical, name string) (s page.Section, ok bool, err error) {
	if t == nil || t.Recorder == nil || len(t.Recorder.Spans) == 0 {
		return s, false, nil
	}
	days := int((t.Recorder.To - t.Recorder.From) / clock.Day)
	for days > 0 {
		d := diaryOf(t, days)
		size, err := d.Size()
		if err != nil {
			return s, false, err
		}
		if size <= MostBytes {
			return page.Section{Heading: "The floor, hour by hour", Blocks: []page.Block{page.Text(whose(t, name)), d}}, true, d.Check()
		}
		days = fewer(days, size)
	}
	return s, false, nil
}

// fewer is the next number of days to try for a diary of so many bytes: whole
// weeks as long as it is one or more.
func fewer(days, size int) int {
	n := min(days-1, days*MostBytes/size)
	if n >= 7 {
		n -= n % 7
	}
	return n
}

// whose says which run the diary is of.
func whose(t *study.Typical, name string) string {
	return fmt.Sprintf("The floor of “%s” in the same repeat and from the same day as the molds by the hour: repeat %d, from %s. It is for finding mistakes of the model with those who know the floor; orders are numbered as they came in that run.",
		cells.OneLine(name), t.Replication+1, dateOf(t.Plan, t.Recorder.From).Format("Monday, January 2, 2006"))
}

// diaryOf is the diary of the first days of what was recorded.
func diaryOf(t *study.Typical, days int) page.Diary {
	r := t.Recorder
	w := &writer{plan: t.Plan, from: r.From, to: r.From + clock.Time(days)*clock.Day, names: map[string]int{}, places: placeRows(t.Plan)}
	d := page.Diary{ID: DiaryID, From: dateOf(t.Plan, r.From), Minutes: days * 24 * 60, Boards: w.boards(),
		Caption: "Arrow keys step an hour, with Shift a day, Home and End to the ends; “change” goes to the next thing that happens. It stands still until you step."}
	spans := slices.Clone(r.Spans)
	slices.SortStableFunc(spans, func(a, b record.Span) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.Job, b.Job), cmp.Compare(a.Mold, b.Mold))
	})
	for i := range spans {
		w.span(&spans[i])
	}
	slices.SortStableFunc(w.entries, func(a, b page.Entry) int { return cmp.Compare(a.From, b.From) })
	d.Names, d.Entries = w.texts, w.entries
	d.Start = firstWork(spans, r.From, w.to)
	d.Finding = diaryFinding(d)
	return d
}

// firstWork is the first whole hour, in minutes, at which people are at work.
func firstWork(spans []record.Span, from, to clock.Time) int {
	first := to
	for i := range spans {
		if s := &spans[i]; s.Working && s.People > 0 && s.To > from {
			first = min(first, max(s.From, from))
		}
	}
	hour := (first - from + clock.Hour - 1) / clock.Hour
	if from+hour*clock.Hour >= to {
		return 0
	}
	return int(hour) * 60
}

// diaryFinding says what the diary is; how many days it has is part of it.
func diaryFinding(d page.Diary) string {
	days := d.Minutes / (24 * 60)
	unit := "days"
	if days == 1 {
		unit = "day"
	}
	return fmt.Sprintf("%d %s of the floor: who is where, and what waits for what", days, unit)
}

// placeRow is a row of the board of places.
type placeRow struct {
	place, unit int16 // unit -1: all of it
	name        string
}

// mostUnits is the largest number of like places that have rows of their own.
const mostUnits = 12

func placeRows(p *sim.Plan) []placeRow {
	var out []placeRow
	for i := range p.Places {
		x := &p.Places[i]
		if x.Kind == sim.Hoist || x.Count < 1 || x.Count > mostUnits {
			name := x.Name
			if x.Count > 1 {
				name = fmt.Sprintf("%s (%d)", x.Name, x.Count)
			}
			out = append(out, placeRow{int16(i), -1, name})
			continue
		}
		for u := range x.Count {
			name := x.Name
			if x.Count > 1 {
				name = fmt.Sprintf("%s %d", x.Name, u+1)
			}
			out = append(out, placeRow{int16(i), int16(u), name})
		}
	}
	return out
}
