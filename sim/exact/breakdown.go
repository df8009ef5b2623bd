package exact

// Breakdowns is how a server fails and is repaired: time to failure is
// exponential. Work that was begun goes on after the repair.
type Breakdowns struct {
	Rate   float64 // failures per hour of the time that counts
	Repair Work    // hours
}

// WhileWorking is the law of the time a job keeps a server that only fails at
// work: E[C] = E[S](1+ξr₁), E[C²] = E[S²](1+ξr₁)² + E[S]ξr₂. Gaver 1962, A
// Waiting Line with Interrupted Service, Journal of the Royal Statistical
// Society B 24:73–90. MG1 of it is the queue.
func (b Breakdowns) WhileWorking(w Work) Work {
	grown := 1 + b.Rate*b.Repair.Mean
	return Work{w.Mean * grown, w.Square*grown*grown + w.Mean*b.Rate*b.Repair.Square}
}

// AnyTime is the queue of a server that fails whenever it is up, idle or not,
// with Poisson arrivals of the given rate and exponential work and repair; of
// Repair only the mean counts. L = λ((ξ+η)² + μξ) / ((ξ+η)(ημ − λ(ξ+η))).
// Avi-Itzhak and Naor 1963, Some Queuing Problems with the Service Station
// Subject to Breakdown, Operations Research 11:303–320.
func (b Breakdowns) AnyTime(rate, mean float64) (Station, error) {
	if err := positive("rate, mean, failures and repair", rate, mean, b.Rate, b.Repair.Mean); err != nil {
		return Station{}, err
	}
	mu, eta := 1/mean, 1/b.Repair.Mean
	sum := b.Rate + eta
	room := eta*mu - rate*sum
	if room <= 0 {
		return Station{}, overload(rate * sum / (eta * mu))
	}
	l := rate * (sum*sum + mu*b.Rate) / (sum * room)
	w := l / rate
	return Station{Load: rate * mean, L: l, W: w, Wq: w - mean, Lq: rate * (w - mean)}, nil
}

// Outages is what stops at random times make of work with a mean and an scv,
// when up times are exponential with mean up: the share of time up, and the
// mean and scv of the time a job takes. Hopp and Spearman, Factory Physics,
// chapter 8, preemptive outages.
func Outages(mean, scv, up, repair, repairSCV float64) (available float64, w Work) {
	available = up / (up + repair)
	ce := scv + (1+repairSCV)*available*(1-available)*repair/mean
	return available, WorkOf(mean/available, ce)
}

// SetUps is what a set-up after one job in every n, at random, makes of the
// work: mean t+s/n, variance σ² + σs²/n + (n−1)s²/n². A mold's strip is such a
// set-up. Hopp and Spearman, Factory Physics, chapter 8. It ignores that set-ups
// after exactly every n-th job are not at random.
func SetUps(mean, scv float64, n int, setUp, setUpSCV float64) Work {
	k := float64(n)
	variance := scv*mean*mean + setUpSCV*setUp*setUp/k + (k-1)/(k*k)*setUp*setUp
	m := mean + setUp/k
	return Work{m, variance + m*m}
}
