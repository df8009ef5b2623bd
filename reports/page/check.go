package page

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// Check reports everything that keeps p from being written, joined.
func (p Page) Check() error {
	var errs []error
	if p.Title == "" {
		errs = append(errs, errors.New("the page has no title"))
	}
	if len(p.Sections) == 0 {
		errs = append(errs, errors.New("the page has no sections"))
	}
	seen := map[string]bool{}
	for i, s := range p.Sections {
		if s.Wall < 0 || s.Wall > WallSizes {
			errs = append(errs, fmt.Errorf("section %d: size %d for the wall is not within 0 to %d", i+1, s.Wall, WallSizes))
		}
		for j, b := range s.Blocks {
			if err := checkBlock(b, seen); err != nil {
				errs = append(errs, fmt.Errorf("section %d, block %d: %w", i+1, j+1, err))
			}
		}
	}
	return errors.Join(errs...)
}

// drawn tells whether the page has a chart, folds included.
func (p Page) drawn() bool {
	return slices.ContainsFunc(p.Sections, func(s Section) bool { return charted(s.Blocks) })
}

func charted(list []Block) bool {
	return slices.ContainsFunc(list, func(b Block) bool {
		switch b := b.(type) {
		case Chart, Diary:
			return true
		case Fold:
			return charted(b.Blocks)
		}
		return false
	})
}

func checkBlock(b Block, seen map[string]bool) error {
	switch b := b.(type) {
	case nil:
		return errors.New("the block is nil")
	case Table:
		return b.Check()
	case Beside:
		for _, t := range b {
			if err := t.Check(); err != nil {
				return err
			}
		}
	case Choice:
		return b.Check()
	case Fold:
		if b.Line == "" {
			return errors.New("a fold needs a line")
		}
		for _, in := range b.Blocks {
			if err := checkBlock(in, seen); err != nil {
				return err
			}
		}
	case Chart:
		if seen[b.ID] {
			return fmt.Errorf("the chart id %q is used twice", b.ID)
		}
		seen[b.ID] = true
		return b.Check()
	case Diary:
		if seen[b.ID] {
			return fmt.Errorf("the id %q is used twice", b.ID)
		}
		seen[b.ID] = true
		return b.Check()
	}
	return nil
}

// idForm keeps ids safe in attributes, selectors and addresses.
var idForm = regexp.MustCompile(`^[a-z][a-z0-9-]{0,62}$`)

// Check reports the first thing that keeps c from being written.
func (c Chart) Check() error {
	switch {
	case !idForm.MatchString(c.ID):
		return fmt.Errorf("chart id %q: allowed are a-z, 0-9 and -, a letter first", c.ID)
	case c.Finding == "" || c.Alt == "":
		return fmt.Errorf("chart %s: it needs a finding and an alternative text", c.ID)
	case !slices.Contains([]Kind{Points, Band, Lines, Segments, Grid, Intervals, Pareto, Gantt, Loads}, c.Kind):
		return fmt.Errorf("chart %s: unknown kind %q", c.ID, c.Kind)
	case c.Height < 80 || c.Height > 4000:
		return fmt.Errorf("chart %s: height %d is not within 80 to 4000 pixels", c.ID, c.Height)
	}
	for _, k := range c.Legend {
		if k.Color < 0 || k.Color >= Colors || k.Pattern < 0 || k.Pattern >= Patterns {
			return fmt.Errorf("chart %s: legend key %q has no such color or pattern", c.ID, k.Label)
		}
	}
	if err := c.Table.Check(); err != nil {
		return fmt.Errorf("chart %s: %w", c.ID, err)
	}
	if err := inert(c.Options, "options"); err != nil {
		return fmt.Errorf("chart %s: %w", c.ID, err)
	}
	return nil
}

// refused are option keys that echarts takes as an address to open, as HTML to
// write, as a text with commands inside, or as a place for a function.
var refused = []string{
	"dataView", "extraCssText", "formatter", "link", "optionToContent", "renderItem",
	"rich", "sublink", "title", "toolbox", "labelLayout", "graphic",
}

// inert walks an option tree and reports the first key or value that could be
// more than data. Maps are visited in any order, so which of several faults is
// reported is not fixed.
func inert(v any, at string) error {
	switch v := v.(type) {
	case map[string]any:
		for k, e := range v {
			if slices.Contains(refused, k) {
				return fmt.Errorf("%s.%s is refused", at, k)
			}
			if s, ok := e.(string); ok && (k == "symbol" || k == "icon") && strings.Contains(s, "://") {
				return fmt.Errorf("%s.%s is an image: refused", at, k)
			}
			if err := inert(e, at+"."+k); err != nil {
				return err
			}
		}
	case []any:
		for i, e := range v {
			if err := inert(e, fmt.Sprintf("%s[%d]", at, i)); err != nil {
				return err
			}
		}
	}
	return nil
}
