package weekly

import (
	"fmt"
	"strings"
)

// littleLost is the share of the boats shipped below which waits cost nothing
// worth naming.
const littleLost = 0.05

// mostFew is how many causes may be named together, and fewShare what they must
// make of the whole.
const (
	mostFew  = 3
	fewShare = 2.0 / 3
)

var numberWords = [...]string{"", "One wait", "Two waits", "Three waits"}

// lostFinding is the rule "the few waits that cost most": nothing below
// littleLost; as few causes as make fewShare, mostFew at most; else no few stand
// out.
func lostFinding(l *Lost) string {
	total := l.Total()
	if total < littleLost*l.Boats {
		return fmt.Sprintf("No wait of molds is worth naming: all together %.1f boats a year of %.0f", total, l.Boats)
	}
	sum := 0.0
	for i, c := range l.Causes[:min(mostFew, len(l.Causes))] {
		sum += c.Boats
		if sum < fewShare*total {
			continue
		}
		var names []string
		for _, x := range l.Causes[:i+1] {
			names = append(names, x.Name)
		}
		return fmt.Sprintf("%s %s %.0f %% of the mold-hours that waiting costs, worth %.0f boats a year: %s",
			numberWords[i+1], makes(i+1), 100*sum/total, sum, strings.Join(names, "; "))
	}
	return fmt.Sprintf("No few waits of molds stand out: the largest, %s, makes %.0f %% of %.0f boats a year", l.Causes[0].Name, 100*l.Causes[0].Boats/total, total)
}

func makes(n int) string {
	if n == 1 {
		return "makes"
	}
	return "make"
}
