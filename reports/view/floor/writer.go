package floor

import (
	"fmt"
	"slices"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// writer turns spans into the entries of a diary.
type writer struct {
	plan     *sim.Plan
	from, to clock.Time
	places   []placeRow
	names    map[string]int // index of each text; never ranged over
	texts    []string
	entries  []page.Entry
	open     map[openKey]int // the last entry of who and what; never ranged over
}

// openKey finds the entry that a span may go on with.
type openKey struct {
	board, row     int
	job, mold      int32
	first, another int // names
}

func (w *writer) boards() []page.Board {
	molds := page.Board{Title: "Molds", Form: page.One, Columns: []string{"mold", "does", "step", "for"}, Empty: "–"}
	for i := range w.plan.Molds {
		molds.Rows = append(molds.Rows, cells.OneLine(w.plan.Molds[i].Name))
	}
	places := page.Board{Title: "Booths, bays and other places", Form: page.Joined, Columns: []string{"place", "who, and what is done"}, Empty: "free"}
	for _, r := range w.places {
		places.Rows = append(places.Rows, cells.OneLine(r.name))
	}
	crews := page.Board{Title: "Crews", Form: page.Joined, Columns: []string{"crew", "at work on, with how many people"}, Empty: "nobody at work"}
	for i := range w.plan.Crafts {
		crews.Rows = append(crews.Rows, cells.OneLine(w.plan.Crafts[i].Name))
	}
	list := func(title string) page.Board {
		return page.Board{Title: title, Form: page.Listed, Columns: []string{"who", "step", "waits for", "hours so far"}, Empty: "nobody"}
	}
	return []page.Board{molds, places, crews, list("Waits for people, a place, a mold or the air"), list("Waits for the next shift"), list("Parts ready, waiting for the rest of their boat")}
}

// name is the index of a text.
func (w *writer) name(text string) int {
	text = cells.OneLine(text)
	k, ok := w.names[text]
	if !ok {
		k = len(w.texts)
		w.names[text], w.texts = k, append(w.texts, text)
	}
	return k
}

// span adds what a span tells to each board.
func (w *writer) span(s *record.Span) {
	from, to := max(s.From, w.from), min(s.To, w.to)
	if from >= to {
		return
	}
	who, step := w.name(w.who(s)), w.name(w.step(s))
	both := []int{who, step}
	if who == step { // background work is called as its only step
		both = both[:1]
	}
	if s.Mold >= 0 {
		x := stateOf(w.plan, s)
		w.add(s, moldBoard, int(s.Mold), from, to, w.name(x.label), step, w.name(w.order(s)))
	}
	for row := range w.places {
		if s.Job >= 0 && w.places[row].held(s) {
			w.add(s, placeBoard, row, from, to, both...)
		}
	}
	if s.Working && s.People > 0 && s.Craft >= 0 {
		w.add(s, crewBoard, int(s.Craft), from, to, append(slices.Clip(both), w.name(people(int(s.People))))...)
		return
	}
	if s.Working || s.Job < 0 && s.Order < 0 {
		return
	}
	board := waitBoard
	switch {
	case forShift(s.Cause.Reason):
		board = shiftBoard
	case s.Cause.Reason == record.MateMissing:
		board = mateBoard
	}
	if who == step {
		step = w.name("–")
	}
	w.add(s, board, -1, min(s.From, from), to, who, step, w.name(waitsFor(w.plan, s.Cause)))
}

// add appends an entry, or goes on with the last one of the same row and job if
// it says the same and ends where this begins.
func (w *writer) add(s *record.Span, board, row int, from, to clock.Time, names ...int) {
	a, b := int((from-w.from)/clock.Minute), int((to-w.from)/clock.Minute)
	if a == b {
		return
	}
	if w.open == nil {
		w.open = map[openKey]int{}
	}
	key := openKey{board, row, s.Job, s.Mold, names[0], names[len(names)-1]}
	if k, ok := w.open[key]; ok && w.entries[k].To == a && slices.Equal(w.entries[k].Names, names) {
		w.entries[k].To = b
		return
	}
	w.open[key] = len(w.entries)
	w.entries = append(w.entries, page.Entry{From: a, To: b, Board: board, Row: row, Names: names})
}

// held is true for a span that has the place of the row.
func (r *placeRow) held(s *record.Span) bool {
	for _, h := range s.Held {
		if h.Place == r.place && (r.unit < 0 || h.Unit == r.unit) {
			return true
		}
	}
	return false
}

func people(n int) string {
	if n == 1 {
		return "1 person"
	}
	return fmt.Sprintf("%d people", n)
}

// who is the part, boat, mold or piece of background work.
func (w *writer) who(s *record.Span) string {
	p := w.plan
	switch {
	case s.Order >= 0 && s.Part >= 0:
		return fmt.Sprintf("order %d, %s %s", s.Order+1, p.Models[p.Parts[s.Part].Model].Name, p.Parts[s.Part].Name)
	case s.Order >= 0:
		return fmt.Sprintf("order %d, boat", s.Order+1)
	case s.Mold >= 0:
		return p.Molds[s.Mold].Name
	}
	return p.Routes[s.Route].Name
}

// step is the name of the step, or what a part without one does.
func (w *writer) step(s *record.Span) string {
	if name := view.StepName(w.plan, s.Route, s.Step); name != "" {
		return name
	}
	if s.Job >= 0 {
		return "stored"
	}
	return "–"
}

// order names the order that a mold is busy with.
func (w *writer) order(s *record.Span) string {
	if s.Order < 0 {
		return "–"
	}
	return fmt.Sprintf("order %d", s.Order+1)
}
