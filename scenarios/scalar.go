package scenarios

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"moldturn/sim/draw"
	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// scalar converts the text of v by its kind and checks its range.
func (b *binder) scalar(v *Value) {
	row := v.branch.row
	var err error
	switch row.Kind {
	case param.Text:
		err = checkText(v.text)
	case param.Choice:
		if !slices.Contains(row.Choices, v.text) {
			err = unknown(v.branch.noun(), v.text, row.Choices)
		}
	case param.Ref:
		b.refs = append(b.refs, v)
	case param.Dist, param.NumberDist:
		v.dist, err = b.tree.laws.parse(row, v.text)
	default:
		v.number, err = parseInRange(row, row.Kind, v.text)
	}
	if err != nil {
		b.wrong(v, err)
		b.standIn(v)
	}
}

// wrong complains about the text of v; the place says which input it is, so the
// path is named only where there is no place.
func (b *binder) wrong(v *Value, err error) {
	message, allowed, hint := err.Error(), "", ""
	var p *unit.Problem
	if errors.As(err, &p) {
		allowed, hint = p.Allowed, p.Hint
	}
	if v.branch.row.Kind != param.Ref && v.branch.row.Kind != param.Choice {
		message = v.path + ": " + message
	}
	b.complain(v, v.at, message, allowed, hint)
}

// parseInRange reads a number of a kind and holds it against the row's limits.
func parseInRange(row param.Row, kind param.Kind, text string) (float64, error) {
	x, err := unit.Parse(kind, text)
	if err != nil {
		return 0, err
	}
	low, high := row.Limits()
	if x >= low && x <= high {
		return x, nil
	}
	p := &unit.Problem{Message: strings.TrimSpace(text) + " is out of range", Allowed: rangeText(kind, low, high, text)}
	if percent := x / 100; kind == param.Share && !strings.Contains(text, "%") && percent >= low && percent <= high {
		p.Hint = "write " + strings.TrimSpace(text) + " %"
	}
	return 0, p
}

// rangeText writes limits in the unit that like is written in.
func rangeText(kind param.Kind, low, high float64, like string) string {
	return between(low, high, func(x float64) string { return unit.FormatLike(kind, x, like) })
}

// between puts limits in words.
func between(low, high float64, write func(float64) string) string {
	switch {
	case math.IsInf(high, 1) && math.IsInf(low, -1):
		return ""
	case math.IsInf(high, 1):
		return write(low) + " or more"
	case math.IsInf(low, -1):
		return "at most " + write(high)
	}
	return write(low) + " to " + write(high)
}

// parseDist reads a distribution whose single amounts are in the row's range.
func parseDist(row param.Row, text string) (draw.Dist, error) {
	kind := amountKind(row.Kind)
	d, err := draw.Parse(text, func(s string) (float64, error) { return parseInRange(row, kind, s) })
	var form *draw.UnknownError
	if errors.As(err, &form) {
		return nil, &unit.Problem{Message: "unknown distribution " + strconv.Quote(form.Found),
			Allowed: strings.Join(form.Allowed, ", "), Hint: didYouMean(form.Found, draw.Names())}
	}
	var p *unit.Problem
	if errors.As(err, &p) {
		return nil, &unit.Problem{Message: err.Error(), Allowed: p.Allowed, Hint: p.Hint}
	}
	return d, err
}

// checkText refuses texts without a letter to see and those that hide some.
func checkText(text string) error {
	switch {
	case strings.TrimSpace(text) == "":
		return errors.New("the text is empty")
	case hidden(strings.ReplaceAll(text, "\n", "")):
		return fmt.Errorf("the text %q has control characters", text)
	}
	return nil
}

// unknown is the problem of a word that is none of the names.
func unknown(noun, word string, names []string) *unit.Problem {
	return &unit.Problem{Message: fmt.Sprintf("unknown %s %q", noun, word), Allowed: short(names), Hint: didYouMean(word, names)}
}
