package draw

import (
	"errors"
	"fmt"
	"strings"
)

// Parse reads a law as a user writes it:
//
//	24 h                    always this value
//	8 - 10 - 16 h           low - typical - high (PERT); " - " or "–"
//	lognormal(24 h, 0.3)    a law by name, see Forms
//
// number reads one value with its unit, such as "90 min", into the unit the
// caller wants. A unit may be written once, after the last value: it then holds
// for values before it that are bare numbers, if all of them are. A cv is a
// plain number or a percentage and is not given to number.
//
// Errors quote what was found and say what is allowed; an unknown name gives an
// *UnknownError. They carry no place, which only the caller knows.
func Parse(text string, number func(s string) (float64, error)) (Dist, error) {
	text = strings.TrimSpace(text)
	if name, args, ok := splitCall(text); ok {
		return parseCall(text, name, args, number)
	}
	parts := splitDashes(text)
	switch len(parts) {
	case 1:
		return parseSingle(text, number)
	case 3:
		values, err := readAmounts(parts, number)
		if err != nil {
			return nil, fmt.Errorf("%q: %w", text, err)
		}
		return named(text)(PERT(values[0], values[1], values[2]))
	}
	return nil, fmt.Errorf("%q: number of values is %d; allowed: 1, or 3 as low - typical - high; limits alone are written uniform(low, high)",
		text, len(parts))
}

// UnknownError is a law whose name, or whose form as a whole, is not known.
type UnknownError struct {
	Found   string   // the name, or the whole text if no name can be told
	Allowed []string // as Forms gives them
}

// Error lists what is allowed.
func (e *UnknownError) Error() string {
	return fmt.Sprintf("unknown distribution %q; allowed: %s", e.Found, strings.Join(e.Allowed, ", "))
}

// splitCall takes "name(args)" apart.
func splitCall(text string) (name, args string, ok bool) {
	name, args, ok = strings.Cut(text, "(")
	if !ok || !strings.HasSuffix(args, ")") {
		return "", "", false
	}
	return strings.ToLower(strings.TrimSpace(name)), strings.TrimSuffix(args, ")"), true
}

// splitDashes cuts at " - " and at the dash "–" with or without spaces. A minus
// sign without spaces is left alone: it may belong to a number, "1e-3".
func splitDashes(text string) []string {
	text = strings.ReplaceAll(text, " - ", "–")
	parts := strings.Split(text, "–")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	return parts
}

// parseSingle reads one value. Text that cannot be one is an unknown form; of
// three numbers joined without spaces the error shows how to write them.
func parseSingle(text string, number func(string) (float64, error)) (Dist, error) {
	if text == "" || strings.ContainsAny(text, "()") {
		return nil, &UnknownError{text, Forms()}
	}
	v, err := number(text)
	switch {
	case err == nil:
		return named(text)(Constant(v))
	case strings.Count(text, "-") == 2:
		return nil, fmt.Errorf("%q: put a space on both sides of each dash: %q", text, strings.ReplaceAll(text, "-", " - "))
	case !strings.ContainsAny(text, "0123456789"):
		return nil, &UnknownError{text, Forms()}
	}
	return nil, fmt.Errorf("%q: %w", text, err)
}

// parseCall reads the arguments of a law and makes it.
func parseCall(text, name, args string, number func(string) (float64, error)) (Dist, error) {
	f, ok := findForm(name)
	if !ok {
		return nil, &UnknownError{name, Forms()}
	}
	words := strings.Split(args, ",")
	for i := range words {
		words[i] = strings.TrimSpace(words[i])
		if words[i] == "" {
			return nil, fmt.Errorf("%q: value %d is empty; allowed: %s", text, i+1, f.usage())
		}
	}
	if f.params[len(f.params)-1] != more && len(words) != len(f.params) {
		return nil, fmt.Errorf("%q: number of values is %d; allowed: %s", text, len(words), f.usage())
	}
	values, err := readArguments(f, words, number)
	if err != nil {
		return nil, fmt.Errorf("%q: %w", text, err)
	}
	return named(text)(f.make(values))
}

// readArguments reads a trailing cv as a ratio and everything else as amounts.
func readArguments(f form, words []string, number func(string) (float64, error)) ([]float64, error) {
	last := len(words) - 1
	if f.params[len(f.params)-1] != cv {
		return readAmounts(words, number)
	}
	values, err := readAmounts(words[:last], number)
	if err != nil {
		return nil, err
	}
	r, err := readRatio(words[last])
	return append(values, r), err
}

// named puts the text the user wrote before a constructor's complaint.
func named(text string) func(Dist, error) (Dist, error) {
	return func(d Dist, err error) (Dist, error) {
		var p *ParamError
		if errors.As(err, &p) && p.Law == "constant" {
			return nil, fmt.Errorf("%q: the value is %s; allowed: %s", text, digits(p.Value), p.Allowed)
		}
		if err != nil {
			return nil, fmt.Errorf("%q: %w", text, err)
		}
		return d, nil
	}
}
