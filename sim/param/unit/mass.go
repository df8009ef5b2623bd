package unit

import (
	"strings"

	"moldturn/sim/param"
)

// megagram is 1,000 kg, the one unit whose case matters.
const megagram = "Mg"

// Short is the spelling in which short tons are written, so that what is printed
// can be typed back.
const Short = "short tons"

// massProblem complains about masses that the trade writes and that are not one
// thing: tons of no kind, and masses with a time. Nil for anything else.
func massProblem(rest, number string) *Problem {
	mass, time := cutTime(rest)
	if bare := strings.ToLower(strings.TrimSuffix(mass, ".")); bare == "ton" || bare == "tons" {
		return &Problem{Message: shown(number+" "+rest) + " does not say which ton", Allowed: allowed(param.Mass),
			Hint: "write " + number + " " + Short + " (2,000 lb each) or " + number + " tonnes (1,000 kg each)" + alone(time)}
	}
	if m, n := longestSign(param.Mass, mass); time && n == len(mass) {
		return &Problem{Message: shown(number+" "+rest) + " is a mass in a time, and only a mass is asked for", Allowed: allowed(param.Mass),
			Hint: "write " + join(number, m) + alone(time)}
	}
	return nil
}

// alone explains why no time belongs to a mass, where one was written.
func alone(time bool) string {
	if !time {
		return ""
	}
	return ", without a time: a permit's cap is the mass in any twelve months"
}

// cutTime takes "/year", "per year" or "a year" off the end of a unit.
func cutTime(s string) (mass string, time bool) {
	for _, mark := range []string{"/", " per ", " a ", " in "} {
		if head, _, found := strings.Cut(s, mark); found {
			return strings.TrimSpace(head), true
		}
	}
	return s, false
}
