package study

import "fmt"

// Idle lists the factors that make no difference at all: between points that
// differ in nothing else, no replication of any figure differs. Such an input is
// usually not in use, as strip.every where strip.policy is seasonal. Factors of
// which no such points exist, as in a Latin hypercube, are not listed.
func Idle(d *Design, points []Figures) []int {
	var idle []int
	for k := range d.Factors {
		first := map[string]int{} // by the values of the other factors
		pairs, same := 0, true
		for i := range min(len(d.Points), len(points)) {
			if d.Form == Each && d.Points[i].Level[k] < 0 {
				continue
			}
			rest := append([]string{}, d.Points[i].Values...)
			rest[k] = ""
			key := fmt.Sprintf("%q", rest)
			j, seen := first[key]
			if !seen {
				first[key] = i
				continue
			}
			pairs++
			same = same && points[i].Same(&points[j])
		}
		if pairs > 0 && same {
			idle = append(idle, k)
		}
	}
	return idle
}
