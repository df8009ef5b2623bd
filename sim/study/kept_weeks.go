package study

import (
	"encoding/binary"
	"fmt"

	"moldturn/sim/clock"
	"moldturn/sim/record"
)

// weeksOf writes the weeks of pools one after the other: of each pool and week
// use, overtime, capacity and wait in milliseconds, each as a varint of package
// encoding/binary.
func weeksOf(pools []record.ByWeek) []byte {
	var out []byte
	for p := range pools {
		for w := range pools[p] {
			x := &pools[p][w]
			for _, t := range [...]clock.Time{x.Used, x.Over, x.Capacity, x.Wait} {
				out = binary.AppendVarint(out, int64(t))
			}
		}
	}
	return out
}

// readWeeks reads what weeksOf wrote.
func readWeeks(b []byte) ([]record.ByWeek, error) {
	var out []record.ByWeek
	for len(b) > 0 {
		var p record.ByWeek
		for w := range p {
			x := &p[w]
			for _, to := range [...]*clock.Time{&x.Used, &x.Over, &x.Capacity, &x.Wait} {
				v, n := binary.Varint(b)
				if n <= 0 {
					return nil, fmt.Errorf("the weeks of craft or place %d end before the year does", len(out)+1)
				}
				*to, b = clock.Time(v), b[n:]
			}
		}
		out = append(out, p)
	}
	return out, nil
}
