// Package exact holds formulas of queues and closed loops: what a skeleton of
// the plant does on average, without a run. The engine is held against them,
// and they give quick bounds on what a number of molds or people can do.
//
// All of it is pure arithmetic on one unit of time, hours in moldturn: rates
// are per hour, times in hours. Loads must leave room for steady state: where a
// queue grows without end a function gives an error, never an infinity.
//
// Words: a station has servers (people, booths). L is the mean number at it,
// those in work included, Lq only those that wait. W and Wq are the mean times
// of a visit, with and without the work. X is a rate of visits per hour, U the
// busy share of one server, Q the mean number at a station of a loop. scv is
// variance over mean².
package exact

import "fmt"

// overload is the error of a queue that grows without end.
func overload(load float64) error {
	return fmt.Errorf("load %.4g of what the servers can do: the queue grows without end; allowed: 0 to below 1", load)
}

// positive complains about the first value that is not a finite number above 0.
func positive(names string, values ...float64) error {
	for _, v := range values {
		if !(v > 0 && v < 1e300) {
			return fmt.Errorf("%s: found %g, allowed: more than 0", names, v)
		}
	}
	return nil
}
