package scenarios

import (
	"fmt"
	"strings"

	"moldturn/sim/param/guess"
)

// listed is the largest number of names that a complaint lists as allowed.
const listed = 14

// short lists names if they are few.
func short(names []string) string {
	if len(names) > listed {
		return ""
	}
	return strings.Join(names, ", ")
}

// didYouMean is the hint that guesses, or "".
func didYouMean(word string, names []string) string {
	if near := guess.Near(word, names); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return ""
}
