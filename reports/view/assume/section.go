package assume

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/page"
	"moldturn/reports/view"
)

// groups are the parts of a scenario by the first word of a path, in the order
// of the report, with their names for people. What is not named stands last.
var groups = []struct{ root, name string }{
	{"models", "Models, molds and work"}, {"crafts", "People"}, {"shifts", "Shifts"}, {"calendar", "Calendar"},
	{"places", "Booths and other places"}, {"background", "Other work on the floor"}, {"demand", "Orders"},
	{"strip", "Strips"}, {"hold", "Cure hold"}, {"cure", "Cure"}, {"finish", "Luster"}, {"release", "Wax and release"},
	{"break_in", "Break-in of new molds"}, {"life", "Life of molds"}, {"quality", "Inspection"}, {"defects", "Defects"},
	{"colors", "Colors"}, {"climate", "Weather and air"}, {"season", "Season"}, {"window", "Gel window"}, {"learning", "Learning"},
	{"money", "Prices"}, {"investments", "Investments"}, {"size", "Prices for sizing"}, {"permit", "Permit"}, {"run", "The runs"},
}

// Section is every input behind a study: those worth checking first, those that
// differ from their defaults, and the rest folded by group. ok is false where
// no input is known.
func Section(s *view.Study) (out page.Section, ok bool, err error) {
	items := Rank(s, s.Best())
	if len(items) == 0 {
		return out, false, nil
	}
	out.Heading = "What it assumes"
	out.Blocks = []page.Block{page.Text(Marks(items)), page.Text(method(items))}
	if t, ok := table("Worth checking first", pick(items, func(x Item) bool { return x.Check <= Count })); ok {
		out.Blocks = append(out.Blocks, page.Table{Table: t})
	}
	if t, ok := table("Changed from the default", pick(items, func(x Item) bool { return x.Changed && x.Check > Count })); ok {
		out.Blocks = append(out.Blocks, page.Table{Table: t})
	}
	rest := pick(items, func(x Item) bool { return !x.Changed && x.Check > Count })
	out.Blocks = append(out.Blocks, folds(rest)...)
	return out, true, nil
}

// method says how the rank came about, and the command that measures what the first
// of the inputs are worth.
func method(items []Item) string {
	text := "The order of checking is by rule, not measured: first guesses that the difference between the alternatives rests on or that are about what limits the plant, then the plant's own numbers about it. No input was varied for this report."
	if command := measure(items); command != "" {
		text += " What the first of them are worth in boats and in luster, about a third less and more of each, this command measures, with the name of the scenario's file in place of SCENARIO: " + command
	}
	return text
}

// Marks counts what stands behind the values.
func Marks(items []Item) string {
	var own, source, practice, guesses int
	for _, x := range items {
		switch {
		case guess(x.Mark):
			guesses++
		case x.Mark == "S":
			source++
		case x.Mark == "CP":
			practice++
		default:
			own++
		}
	}
	return fmt.Sprintf("Behind this report stand %s: %d are the plant's own, %d come from published sources, %d are common practice, %d are assumptions or from memory.",
		view.Count(len(items), "value"), own, source, practice, guesses)
}

func pick(items []Item, keep func(Item) bool) []Item {
	var out []Item
	for _, x := range items {
		if keep(x) {
			out = append(out, x)
		}
	}
	return out
}

// table lists items; ok is false without any.
func table(title string, items []Item) (t cells.Table, ok bool) {
	t.Title = fmt.Sprintf("%s: %s", title, view.Count(len(items), "value"))
	for _, head := range []string{"input", "value", "what it is", "known from", "source", "worth checking"} {
		t.Columns = append(t.Columns, cells.Column{Head: head})
	}
	for _, x := range items {
		t.Rows = append(t.Rows, cells.Texts(x.Path, x.Value, x.Doc, view.MarkName(x.Mark), x.Source, x.Check.word()+x.Why))
	}
	return t, len(items) > 0
}

// word begins the last column.
func (c Check) word() string {
	switch c {
	case First:
		return "first: "
	case Limit, Count:
		return "next: "
	case Some:
		return "then: "
	}
	return ""
}

// folds are the items by group, each behind a line.
func folds(items []Item) []page.Block {
	by := map[string][]Item{}
	var others []string
	for _, x := range items {
		root, _, _ := strings.Cut(x.Path, ".")
		if name(root) == "" {
			if by[root] == nil {
				others = append(others, root)
			}
		}
		by[root] = append(by[root], x)
	}
	var out []page.Block
	for _, g := range groups {
		out = appendFold(out, g.name, by[g.root])
	}
	var last []Item
	for _, root := range others {
		last = append(last, by[root]...)
	}
	return appendFold(out, "Everything else", last)
}

func name(root string) string {
	for _, g := range groups {
		if g.root == root {
			return g.name
		}
	}
	return ""
}

func appendFold(to []page.Block, name string, items []Item) []page.Block {
	t, ok := table(name, items)
	if !ok {
		return to
	}
	given := len(pick(items, func(x Item) bool { return x.Place != "" }))
	line := fmt.Sprintf("%s: %s, all at their defaults", name, view.Count(len(items), "value"))
	switch {
	case given == len(items):
		line = fmt.Sprintf("%s: %s, given for this plant", name, view.Count(len(items), "value"))
	case given > 0:
		line = fmt.Sprintf("%s: %s, %d given for this plant, the rest at their defaults", name, view.Count(len(items), "value"), given)
	}
	return append(to, page.Fold{Line: line, Blocks: []page.Block{page.Table{Table: t}}})
}
