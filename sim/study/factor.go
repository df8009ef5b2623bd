package study

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
)

// Factor is one input that a sweep changes, with the values it takes: a list of
// texts, or numbers from low to high.
type Factor struct {
	Path   string
	Levels []string // values as texts, in order; empty for a range without a step

	// Numbers are the levels as numbers, all in Unit; nil if they are words.
	Numbers []float64
	Unit    string // as written, "h"; may be empty

	low, high float64
	digits    int  // decimals of values
	ranged    bool // written as low..high
	stepped   bool // … with a step
}

// MostLevels is the largest number of values of one factor.
const MostLevels = 1000

// number with its unit: "12h", "0.5 mm", "-3", "95 %".
var quantity = regexp.MustCompile(`^\s*([+-]?\d+(?:\.(\d+))?)\s*([^\d\s].*?)?\s*$`)

// ParseFactor reads "path=values". Values are a list, "never, every", or a
// range "12h..36h" with or without a step, "12h..36h/2h". A range of whole
// numbers has the step 1 unless another is given.
func ParseFactor(text string) (Factor, error) {
	path, values, ok := cutOutsideQuotes(text)
	if !ok || path == "" || values == "" {
		return Factor{}, fmt.Errorf("found %q, allowed: path=low..high/step or path=value, value, …", text)
	}
	f := Factor{Path: path}
	if low, rest, ok := strings.Cut(values, ".."); ok {
		return f, f.span(low, rest)
	}
	for _, v := range strings.Split(values, ",") {
		v = strings.TrimSpace(v)
		if v == "" {
			return Factor{}, fmt.Errorf("%s: a value of %q is empty", path, values)
		}
		for _, earlier := range f.Levels {
			if earlier == v {
				return Factor{}, fmt.Errorf("%s: the value %s is given twice", path, v)
			}
		}
		f.Levels = append(f.Levels, v)
	}
	f.readNumbers()
	return f, nil
}

// cutOutsideQuotes cuts at the first equal sign that is not in a quoted name.
func cutOutsideQuotes(text string) (path, value string, ok bool) {
	quoted := false
	for i, r := range text {
		switch {
		case r == '"':
			quoted = !quoted
		case r == '=' && !quoted:
			return strings.TrimSpace(text[:i]), strings.TrimSpace(text[i+1:]), true
		}
	}
	return strings.TrimSpace(text), "", false
}

// amount is a number as it was written.
type amount struct {
	value  float64
	digits int
	unit   string
}

func parseAmount(text string) (amount, error) {
	m := quantity.FindStringSubmatch(text)
	if m == nil {
		return amount{}, fmt.Errorf("%q is not a number with a unit", strings.TrimSpace(text))
	}
	v, err := strconv.ParseFloat(m[1], 64)
	return amount{v, len(m[2]), m[3]}, err
}

// span reads "low..high/step" behind the low end.
func (f *Factor) span(low, rest string) error {
	end, step, stepped := strings.Cut(rest, "/")
	a, err := parseAmount(low)
	if err != nil {
		return fmt.Errorf("%s: %w", f.Path, err)
	}
	b, err := parseAmount(end)
	if err != nil {
		return fmt.Errorf("%s: %w", f.Path, err)
	}
	if a.unit == "" {
		a.unit = b.unit
	}
	if a.unit != b.unit {
		return fmt.Errorf("%s: the ends are in %s and %s (allowed: one unit)", f.Path, orNone(a.unit), orNone(b.unit))
	}
	if a.value >= b.value {
		return fmt.Errorf("%s: the range %s to %s does not rise", f.Path, strings.TrimSpace(low), strings.TrimSpace(end))
	}
	f.low, f.high, f.Unit, f.digits, f.ranged = a.value, b.value, a.unit, max(a.digits, b.digits), true
	switch {
	case stepped:
		s, err := parseAmount(step)
		if err != nil {
			return fmt.Errorf("%s: %w", f.Path, err)
		}
		if s.unit != "" && s.unit != f.Unit {
			return fmt.Errorf("%s: the step is in %s, the range in %s (allowed: one unit)", f.Path, s.unit, orNone(f.Unit))
		}
		f.digits, f.stepped = max(f.digits, s.digits), true
		return f.fill(s.value)
	case f.whole():
		return f.fill(1)
	}
	return nil
}

func orNone(unit string) string {
	if unit == "" {
		return "no unit"
	}
	return unit
}

// whole is true for a range of whole numbers without a unit.
func (f *Factor) whole() bool { return f.ranged && f.Unit == "" && f.digits == 0 }

// fill makes the levels of a range.
func (f *Factor) fill(step float64) error {
	n := (f.high - f.low) / step
	if !(step > 0) || n < 1-1e-9 {
		return fmt.Errorf("%s: a step of %s in the range %s to %s (allowed: above 0, at most the range)", f.Path, f.text(step), f.text(f.low), f.text(f.high))
	}
	if n > MostLevels {
		return fmt.Errorf("%s: %.0f values (allowed: %d)", f.Path, n+1, MostLevels)
	}
	for i := range int(math.Floor(n+1e-9)) + 1 {
		f.Levels = append(f.Levels, f.text(f.low+float64(i)*step))
	}
	f.readNumbers()
	return nil
}

// text writes a number of the range as a value.
func (f *Factor) text(v float64) string {
	s := strconv.FormatFloat(v, 'f', f.digits, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	if f.Unit == "" {
		return s
	}
	return s + " " + f.Unit
}

// readNumbers fills Numbers if every level is a number in one unit.
func (f *Factor) readNumbers() {
	var numbers []float64
	unit := ""
	for i, level := range f.Levels {
		a, err := parseAmount(level)
		if err != nil || i > 0 && a.unit != unit {
			return
		}
		unit = a.unit
		numbers = append(numbers, a.value)
	}
	f.Numbers, f.Unit = numbers, unit
}

// Ends are the least and the greatest value; of words the first and the last.
func (f *Factor) Ends() []string {
	switch {
	case f.ranged && len(f.Levels) == 0:
		return []string{f.text(f.low), f.text(f.high)}
	case len(f.Levels) < 2:
		return f.Levels
	}
	return []string{f.Levels[0], f.Levels[len(f.Levels)-1]}
}

// at is the value at share u, 0 ≤ u < 1, of the range or list: one of the
// levels where there are some, else a value with three decimals of the range.
func (f *Factor) at(u float64) string {
	if n := len(f.Levels); n > 0 {
		return f.Levels[min(int(u*float64(n)), n-1)]
	}
	g := *f
	g.digits = max(f.digits, int(math.Ceil(-math.Log10((f.high-f.low)/500))))
	return g.text(f.low + u*(f.high-f.low))
}
