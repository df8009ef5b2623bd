package validate

// The figures below name steps and crews as the plant does.

// total adds one kind of sum over the steps with these names.
func (s *Sums) total(kind int, steps []string) float64 {
	sum := 0.0
	for _, k := range s.layout.all(steps) {
		sum += s.v[s.layout.step(kind, k)]
	}
	return sum
}

func (s *Sums) one(kind int) float64 { return s.v[s.layout.single(kind)] }

// number is the mean number at the steps, those at work included: L or Q.
func number(steps ...string) Stat {
	return func(s *Sums) (float64, float64) {
		return s.total(waitHours, steps) + s.total(workHours, steps), s.hours
	}
}

// waiting is the mean number that wait at the steps: Lq, or what is blocked.
func waiting(steps ...string) Stat {
	return func(s *Sums) (float64, float64) { return s.total(waitHours, steps), s.hours }
}

// wait is the mean wait before a step, Wq.
func wait(step string) Stat {
	return func(s *Sums) (float64, float64) {
		return s.total(waitEnded, []string{step}), s.total(visits, []string{step})
	}
}

// waited is the share of visits to a step that waited.
func waited(step string) Stat {
	return func(s *Sums) (float64, float64) {
		return s.total(waits, []string{step}), s.total(visits, []string{step})
	}
}

// busy is the share of hours in which one of so many servers works at a step.
func busy(servers int, steps ...string) Stat {
	return func(s *Sums) (float64, float64) { return s.total(workHours, steps), s.hours * float64(servers) }
}

// inUse is the mean number of units of a place that are taken.
func inUse(place string) Stat {
	return func(s *Sums) (float64, float64) {
		for i := range s.layout.plan.Places {
			if s.layout.plan.Places[i].Name == place {
				return s.v[s.layout.pool(used, len(s.layout.plan.Crafts)+i)], s.hours
			}
		}
		return 0, 0
	}
}

// overtime is the hours a craft works beyond its shifts in a day, and regular
// the hours within.
func overtime(craft int) Stat {
	return func(s *Sums) (float64, float64) { return s.v[s.layout.pool(over, craft)], s.hours / 24 }
}

func regular(craft int) Stat {
	return func(s *Sums) (float64, float64) {
		return s.v[s.layout.pool(used, craft)] - s.v[s.layout.pool(over, craft)], s.hours / 24
	}
}

// perHour is pulls per hour, X; shipped is boats per hour.
func perHour(s *Sums) (float64, float64) { return s.one(pulls), s.hours }
func shipped(s *Sums) (float64, float64) { return s.one(ships), s.hours }

// lead is the mean time from an order to its boat: W, R.
func lead(s *Sums) (float64, float64) { return s.one(leadHours), s.one(ships) }

// startWait is the mean time from an order to its first mold, startWaited the
// share of orders that had to wait, and orders the mean number that wait.
func startWait(s *Sums) (float64, float64)   { return s.one(lateStart), s.one(ships) }
func startWaited(s *Sums) (float64, float64) { return s.one(notAtOnce), s.one(ships) }
func orders(s *Sums) (float64, float64)      { return s.one(backlog), s.hours }

// mateWait is the mean time a part waits for its mate, of so many per boat.
func mateWait(parts int) Stat {
	return func(s *Sums) (float64, float64) { return s.one(mateHours), s.one(ships) * float64(parts) }
}

// numberAt is the mean number at the watched steps at a mark, chanceAt the
// chance that exactly n are there, n below mostSeen.
func numberAt(mark int) Stat {
	return func(s *Sums) (float64, float64) {
		return s.v[s.layout.markNumber(mark)], s.v[s.layout.markSeen(mark)]
	}
}

func chanceAt(mark, n int) Stat {
	return func(s *Sums) (float64, float64) {
		return s.v[s.layout.mark(mark, n)], s.v[s.layout.markSeen(mark)]
	}
}

// chanceFrom is the chance that n or more are there.
func chanceFrom(mark, n int) Stat {
	return func(s *Sums) (float64, float64) {
		more := 0.0
		for k := n; k <= mostSeen; k++ {
			more += s.v[s.layout.mark(mark, k)]
		}
		return more, s.v[s.layout.markSeen(mark)]
	}
}

// longWait is the share of visits to a step that wait longer than Case.Over, and
// longLead the share of boats with a longer lead time.
func longWait(step string) Stat {
	return func(s *Sums) (float64, float64) { return s.one(longWaits), s.total(visits, []string{step}) }
}
func longLead(s *Sums) (float64, float64) { return s.one(longLeads), s.one(ships) }

// pulledBy is the mean number of pulls from the start of a run to a mark.
func pulledBy(mark int) Stat {
	return func(s *Sums) (float64, float64) { return s.v[s.layout.pulledUntil(mark)], 1 }
}

// waitOf is the mean wait of the i-th order of a run, from 1; meanWait that of
// the first n.
func waitOf(i int) Stat {
	return func(s *Sums) (float64, float64) { return s.v[s.layout.first(i-1)], 1 }
}

func meanWait(n int) Stat {
	return func(s *Sums) (float64, float64) {
		sum := 0.0
		for i := range n {
			sum += s.v[s.layout.first(i)]
		}
		return sum, float64(n)
	}
}
