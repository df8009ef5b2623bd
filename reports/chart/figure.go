package chart

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"moldturn/reports/cells"
	"moldturn/reports/page"
)

// Figure is what all figures have: see page.Chart for the fields.
type Figure struct{ ID, Finding, Caption, Alt string }

// Axis is a numeric direction of a figure: what is measured, in which unit,
// with how many decimals its values are printed.
type Axis struct {
	Name   string // "boats shipped"
	Unit   string // "a week", "h", "%"; may be empty
	Digits int    // decimals of printed values, 0 to 9
	Zero   bool   // the axis includes zero

	// Most ends the axis where values have a natural end, as 100 % or the hours
	// of a week; 0: none. Step is the distance of its labels; 0: chosen.
	Most, Step float64
}

// title is the name with its unit, for heads and axis titles.
func (a Axis) title() string {
	if a.Unit == "" {
		return cells.OneLine(a.Name)
	}
	return cells.OneLine(a.Name + " (" + a.Unit + ")")
}

// number prints v with the decimals of the axis and commas between thousands.
func (a Axis) number(v float64) string {
	if math.IsNaN(v) {
		return "–"
	}
	s := strconv.FormatFloat(v, 'f', max(0, min(a.Digits, 9)), 64)
	sign, s := "", strings.TrimPrefix(s, "-")
	if v < 0 && strings.Trim(s, "0.") != "" {
		sign = "−"
	}
	whole, rest, dot := strings.Cut(s, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if dot {
		rest = "." + rest
	}
	return sign + whole + rest
}

// measured is number with the unit.
func (a Axis) measured(v float64) string {
	if a.Unit == "" || math.IsNaN(v) {
		return a.number(v)
	}
	return a.number(v) + " " + cells.OneLine(a.Unit)
}

// between prints an interval.
func (a Axis) between(low, high float64) string {
	return a.number(low) + " to " + a.number(high)
}

// Estimate is a value and its interval, Low <= Value <= High. An estimate
// without interval has three equal numbers.
type Estimate struct{ Value, Low, High float64 }

// Exact is an estimate without interval.
func Exact(v float64) Estimate { return Estimate{v, v, v} }

func (e Estimate) check() error {
	if err := finite(e.Value, e.Low, e.High); err != nil {
		return err
	}
	if e.Low > e.Value || e.Value > e.High {
		return fmt.Errorf("%v is not within its interval, %v to %v", e.Value, e.Low, e.High)
	}
	return nil
}

// finite reports the first number that cannot be drawn. Sizes above 1e15 are
// refused with them, since an axis has no readable labels there.
func finite(vs ...float64) error {
	for _, v := range vs {
		if math.IsNaN(v) || math.Abs(v) > 1e15 {
			return fmt.Errorf("%v is not a number that can be drawn", v)
		}
	}
	return nil
}

// tip is what the pointer shows: finished texts.
type tip struct {
	Head string     `json:"head"`
	Rows [][]string `json:"rows"`
}

// chart starts the page.Chart of a figure.
func (f Figure) chart(kind page.Kind, height int, table cells.Table) page.Chart {
	return page.Chart{ID: f.ID, Finding: f.Finding, Caption: f.Caption, Alt: f.Alt, Kind: kind, Height: height, Table: table}
}

// fault puts the figure before an error.
func (f Figure) fault(format string, args ...any) error {
	return fmt.Errorf("figure %s: "+format, append([]any{f.ID}, args...)...)
}

func clean(names []string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = cells.OneLine(n)
	}
	return out
}
