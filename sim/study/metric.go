package study

import (
	"moldturn/sim/clock"
	"moldturn/sim/record"
	"moldturn/sim/stats"
)

// Metric is one figure of a run. To add one: a row in metrics.
type Metric struct {
	Name   string // snake_case, as in files
	Label  string // for people
	Unit   string
	Doc    string // what it is, and of what it is a share
	Digits int
	Better int  // +1 when more is better, -1 when less is, 0 when neither
	Share  bool // shown in percent

	NeedsDates bool // only runs with a dated order book have it

	// Of gives the figure, false when the run has none (no boat with a date).
	Of func(*Outcome) (float64, bool)
}

// Metrics lists every figure, in the order of reports.
func Metrics() []Metric { return append([]Metric(nil), metrics...) }

// MetricNamed finds a figure by its name.
func MetricNamed(name string) (Metric, bool) {
	for _, m := range metrics {
		if m.Name == name {
			return m, true
		}
	}
	return Metric{}, false
}

var metrics = append(append(plantMetrics, flawMetrics...), moneyMetrics...)

var plantMetrics = []Metric{
	{Name: "boats_per_week", Label: "boats per week", Unit: "boats/week", Digits: 2, Better: 1,
		Doc: "boats shipped in counted weeks over the number of counted weeks; weeks run Monday to Sunday, shutdown weeks are not counted; with orders always waiting", Of: capacity(boatsPerWeek)},
	{Name: "on_time_share", Label: "on time", Unit: "share", NeedsDates: true, Digits: 3, Better: 1, Share: true,
		Doc: "dated boats shipped on or before their due date over all dated boats shipped; with the dated order book", Of: dated(onTime)},
	{Name: "luster_mean", Label: "mean luster", Unit: "points", Digits: 2, Better: 1,
		Doc: "mean luster of parts as pulled, before rework, on the 100-point scale", Of: capacity(lusterMean)},
	{Name: "luster_p10", Label: "luster 9 parts in 10 reach", Unit: "points", Digits: 2, Better: 1,
		Doc: "the luster that 9 parts in 10 reach as pulled: the 10th percentile of one run, averaged over runs", Of: capacity(lusterP10)},
	{Name: "share_at_target", Label: "boats at target", Unit: "share", Digits: 3, Better: 1, Share: true,
		Doc: "boats whose worst visible part, as shipped, reaches the luster target, over boats shipped", Of: capacity(atTarget)},
	{Name: "mold_turns_per_week", Label: "mold turns per week", Unit: "turns/week", Digits: 1, Better: 1,
		Doc: "parts pulled from all molds over weeks of the frame", Of: capacity(moldTurns)},
	{Name: "turns_per_mold_week", Label: "turns per mold", Unit: "turns/week", Digits: 2, Better: 1,
		Doc: "parts pulled over molds in rotation and weeks of the frame", Of: capacity(turns)},
	{Name: "parts_at_target_share", Label: "parts at target", Unit: "share", Digits: 3, Better: 1, Share: true,
		Doc: "parts at or above the luster target as pulled, over parts pulled", Of: capacity(partsAtTarget)},
	{Name: "mold_cycle_hours", Label: "mold cycle", Unit: "h", Digits: 1, Better: -1,
		Doc: "mean hours from one pull of a mold to its next", Of: capacity(cycle)},
	{Name: "mold_turn_hours", Label: "mold turn", Unit: "h", Digits: 1, Better: -1,
		Doc: "hours of a turn in which a mold is worked on or cures, nights and weekends of a hold included; waits for orders, people and places, and time out of rotation, are not; the time from pull to pull is mold_cycle_hours", Of: capacity(turnHours)},
	{Name: "lead_time_days", Label: "lead time", Unit: "days", Digits: 1, Better: -1,
		Doc: "mean days from the start of a boat's first part to shipping", Of: capacity(leadTime)},
	{Name: "strips_per_week", Label: "strips per week", Unit: "strips/week", Digits: 2,
		Doc: "light and full strips over weeks of the frame", Of: capacity(strips)},
	{Name: "buff_hours_per_boat", Label: "buffing per boat", Unit: "h/boat", Digits: 2, Better: -1,
		Doc: "labor hours of rework by buffing over boats shipped", Of: capacity(buffHours)},
	{Name: "stuck_per_100_pulls", Label: "stuck parts", Unit: "per 100 pulls", Digits: 2, Better: -1,
		Doc: "parts that stuck in their mold, per 100 pulls", Of: capacity(stuck)},
	{Name: "orders_per_week", Label: "orders per week", Unit: "boats/week", NeedsDates: true, Digits: 2,
		Doc: "orders that came in over the number of counted weeks, the same weeks as boats per week; with the dated order book", Of: dated(ordersPerWeek)},
	{Name: "spare_boats_per_week", Label: "boats the plant could ship beyond orders", Unit: "boats/week", NeedsDates: true, Digits: 2,
		Doc: "boats per week with orders always waiting, less orders per week; below zero the plant falls behind its orders", Of: spare},
	{Name: "conceded_share", Label: "shipped under target", Unit: "share", Digits: 3, Better: -1, Share: true,
		Doc: "boats with a part still read under target after the last round of rework, over boats shipped", Of: capacity(conceded)},
}

func capacity(of func(*record.Result) (float64, bool)) func(*Outcome) (float64, bool) {
	return func(o *Outcome) (float64, bool) {
		r := o.Capacity
		if r == nil {
			r = o.Dated
		}
		return of(r)
	}
}

func dated(of func(*record.Result) (float64, bool)) func(*Outcome) (float64, bool) {
	return func(o *Outcome) (float64, bool) {
		if o.Dated == nil {
			return 0, false
		}
		return of(o.Dated)
	}
}

func ratio(a, b float64) (float64, bool) {
	if b == 0 {
		return 0, false
	}
	return a / b, true
}

func boatsPerWeek(r *record.Result) (float64, bool) {
	return ratio(float64(r.Shipped), float64(r.Frame.Open()))
}

// ordersPerWeek counts the orders of closed weeks too: they must be built in
// the open ones.
func ordersPerWeek(r *record.Result) (float64, bool) {
	return ratio(float64(r.Notes[record.OrderArrived]), float64(r.Frame.Open()))
}

func spare(o *Outcome) (float64, bool) {
	if o.Capacity == nil || o.Dated == nil {
		return 0, false
	}
	could, ok := boatsPerWeek(o.Capacity)
	come, known := ordersPerWeek(o.Dated)
	return could - come, ok && known
}

func onTime(r *record.Result) (float64, bool) {
	on, all := 0, 0
	for i := range r.Models {
		on += r.Models[i].OnTime
		all += r.Models[i].Dated
	}
	return ratio(float64(on), float64(all))
}

func lusterMean(r *record.Result) (float64, bool) {
	if len(r.Lusters) == 0 {
		return 0, false
	}
	return stats.Mean(r.Lusters), true
}

func lusterP10(r *record.Result) (float64, bool) {
	if len(r.Lusters) == 0 {
		return 0, false
	}
	return stats.P10(r.Lusters), true
}

func atTarget(r *record.Result) (float64, bool) {
	return ratio(float64(r.Boats.AtTarget), float64(r.Boats.N))
}

func partsAtTarget(r *record.Result) (float64, bool) {
	n := 0
	for i := range r.Parts {
		n += r.Parts[i].Luster.AtTarget
	}
	return ratio(float64(n), float64(len(r.Lusters)))
}

func weeks(r *record.Result) float64 {
	return float64(r.Frame.To-r.Frame.From) / float64(clock.Week)
}

func moldTurns(r *record.Result) (float64, bool) {
	pulls := 0
	for i := range r.Parts {
		pulls += r.Parts[i].Pulls
	}
	return ratio(float64(pulls), weeks(r))
}

func turns(r *record.Result) (float64, bool) {
	pulls, molds := 0, 0
	for i := range r.Parts {
		if r.Parts[i].Molds > 0 {
			pulls += r.Parts[i].Pulls
			molds += r.Parts[i].Molds
		}
	}
	return ratio(float64(pulls), float64(molds)*weeks(r))
}

func cycle(r *record.Result) (float64, bool) {
	n, sum := 0, clock.Time(0)
	for i := range r.Parts {
		n += r.Parts[i].Cycles
		sum += r.Parts[i].CycleSum
	}
	return ratio(sum.Hours(), float64(n))
}

func shipped(r *record.Result) float64 {
	n := 0
	for i := range r.Models {
		n += r.Models[i].Shipped
	}
	return float64(n)
}

// turnHours is what molds spent at work and in cure over the parts pulled.
func turnHours(r *record.Result) (float64, bool) {
	var busy clock.Time
	pulls := 0
	for i := range r.Parts {
		if r.Parts[i].Molds == 0 {
			continue
		}
		pulls += r.Parts[i].Pulls
		for m := range r.MoldHours[i] {
			for d := record.Idle + 1; d < record.Doings; d++ {
				if d != record.OutOfUse {
					busy += r.MoldHours[i][m][d]
				}
			}
		}
	}
	return ratio(busy.Hours(), float64(pulls))
}

func leadTime(r *record.Result) (float64, bool) {
	sum := clock.Time(0)
	for i := range r.Models {
		sum += r.Models[i].LeadSum
	}
	return ratio(sum.Hours()/24, shipped(r))
}

func strips(r *record.Result) (float64, bool) {
	return ratio(float64(r.Notes[record.LightStrip]+r.Notes[record.FullStrip]), weeks(r))
}

func buffHours(r *record.Result) (float64, bool) { return ratio(r.Values[record.Buffed], shipped(r)) }

func stuck(r *record.Result) (float64, bool) {
	return ratio(100*float64(r.Notes[record.Stuck]), float64(len(r.Lusters)))
}

func conceded(r *record.Result) (float64, bool) {
	n := 0
	for i := range r.Models {
		n += r.Models[i].Conceded
	}
	return ratio(float64(n), shipped(r))
}
