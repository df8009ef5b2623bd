package sim

import (
	"math"
	"slices"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// mostParts is how many parts a boat may have.
const mostParts = 8

// order is one boat that is wanted. It is plain data.
type order struct {
	model     int16
	color     int16
	band      int16 // None: no bands
	urgent    int8
	dated     bool
	onFloor   bool
	open      bool  // some part is not started
	ended     bool  // shipped or cancelled
	number    int32 // counts all orders of the run
	started   uint8 // bits by part
	done      uint8
	attempts  [mostParts]uint8
	jobs      [mostParts]int32 // finished parts that wait for their mates
	key       draw.Key
	arrived   clock.Time
	began     clock.Time // first part started
	due       clock.Time
	cancelled clock.Token
}

// modelState is the orders of one model.
type modelState struct {
	open      []int32 // orders with a part not started, in the order of release
	made      uint64  // orders made so far: the number of the next one
	onFloor   int
	assembled int32 // boats put together so far
	arrival   clock.Time
}

// partState is the molds and starts of one part type.
type partState struct {
	ready      []int32 // molds that wait for an order, longest first
	waitsBack  []int32 // molds that wait for their place in rotation
	inRotation int
	started    int   // first starts, for the lead over its mates
	arrived    int   // molds that came during the run
	last       int16 // color started last
	run        int   // how often in a row
	dirty      bool
	blocked    bool // waits for the limit of work on the floor
}

// newOrder makes the next order of a model. Its luck is that of the model and
// its number, so it is the same order under every policy.
func (r *Run) newOrder(model int16) int32 {
	m := &r.models[model]
	key := r.root.At2(luckOrder, uint64(model), m.made)
	m.made++
	i := r.freeOrder()
	o := &r.orders[i]
	*o = order{model: model, key: key, number: r.made, arrived: r.clk.Now(), due: clock.Never, band: None, open: true}
	r.made++
	d := &r.plan.Models[model]
	o.color = None
	if len(d.Colors) > 0 {
		o.color = pickShare(d.Colors, key.U(luckColor))
	}
	if len(d.Bands) > 0 {
		o.band = pickShare(d.Bands, key.U(luckBandColor))
	}
	for k := range o.jobs {
		o.jobs[k] = None
	}
	r.enqueue(i)
	r.note(record.Note{Kind: record.OrderArrived, Order: i, Mold: None, Model: model, Part: None, Place: None})
	return i
}

// freeOrder gives a free row of the table of orders.
func (r *Run) freeOrder() int32 {
	if n := len(r.freeOrders); n > 0 {
		i := r.freeOrders[n-1]
		r.freeOrders = r.freeOrders[:n-1]
		return i
	}
	r.orders = append(r.orders, order{})
	return int32(len(r.orders) - 1)
}

// enqueue puts an order into the list of its model: urgent ones first, then by
// due date or by arrival.
func (r *Run) enqueue(i int32) {
	m := &r.models[r.orders[i].model]
	at := len(m.open)
	for at > 0 && r.before(i, m.open[at-1]) {
		at--
	}
	if at == len(m.open) {
		m.open = append(m.open, i)
		return
	}
	m.open = slices.Insert(m.open, at, i)
}

func (r *Run) before(a, b int32) bool {
	x, y := &r.orders[a], &r.orders[b]
	if x.urgent != y.urgent {
		return x.urgent > y.urgent
	}
	if x.due != y.due && r.plan.Release.Kind != policy.Oldest {
		return x.due < y.due
	}
	return x.arrived < y.arrived
}

func pickShare(s []Share, u float64) int16 {
	sum := 0.0
	for i := range s {
		sum += s[i].Weight
	}
	u *= sum
	for i := range s {
		if u -= s[i].Weight; u < 0 {
			return s[i].Color
		}
	}
	if len(s) == 0 {
		return None
	}
	return s[len(s)-1].Color
}

// startDemand sets up where orders come from.
func (r *Run) startDemand() {
	d := &r.plan.Demand
	if d.Full {
		for p := range r.plan.Parts {
			r.rematch(int16(p))
		}
		return
	}
	next := 0 // what came before a run that begins later is in its start, or is over
	for next < len(d.Dated) && d.Dated[next].Arrives < r.from {
		next++
	}
	if next < len(d.Dated) {
		r.clk.At(d.Dated[next].Arrives, clock.Change, evDated, int32(next))
	}
	for m := range d.Models {
		if d.Models[m].PerWeek > 0 {
			r.models[m].arrival = max(d.Models[m].From, r.from)
			r.nextArrival(int16(m))
		}
	}
}

// nextArrival finds when the next order of a model comes. Orders come at a
// rate that changes with the month; time is stretched so that in units of
// expected orders they are one apart on average.
func (r *Run) nextArrival(model int16) {
	m := &r.models[model]
	d := &r.plan.Demand.Models[model]
	gap := 1.0
	if !d.Even {
		gap = -math.Log(r.root.At1(luckArrival, uint64(model)).U(m.made))
	}
	t := m.arrival
	for gap > 0 && t < r.plan.Length {
		date := shift.DateAt(r.plan.Start, t)
		until := shift.Midnight(r.plan.Start, shift.DateOf(date.Year, date.Month+1, 1))
		rate := d.PerWeek * d.Monthly[date.Month-1] / float64(clock.Week)
		span := gap / rate
		if rate <= 0 || span >= float64(until-t) {
			gap -= rate * float64(until-t)
			t = until
			continue
		}
		t += clock.Time(math.Round(span))
		gap = 0
	}
	if t < r.plan.Length {
		m.arrival = t
		r.clk.At(t, clock.Change, evOrder, int32(model))
	}
}

// orderComes is the arrival of a generated order with its due date.
func (r *Run) orderComes(model int16) {
	i := r.newOrder(model)
	d := &r.plan.Demand.Models[model]
	o := &r.orders[i]
	if lead := d.Due.Quantile(o.key.U(luckDue)); lead > 0 {
		r.giveDue(i, r.clk.Now()+clock.FromHours(lead))
	}
	r.nextArrival(model)
	r.wanted(model)
}

// giveDue sets the due date of an order that is already in its list.
func (r *Run) giveDue(i int32, due clock.Time) {
	o := &r.orders[i]
	m := &r.models[o.model]
	o.dated, o.due = true, due
	m.open = slices.DeleteFunc(m.open, func(k int32) bool { return k == i })
	r.enqueue(i)
	if late := r.plan.Demand.CancelLate; late < clock.Never && late > 0 {
		o.cancelled = r.clk.At(due+late, clock.Change, evCancel, i)
	}
}

// dated takes row i of the order book from a file.
func (r *Run) dated(i int32) {
	book := r.plan.Demand.Dated
	row := &book[i]
	n := r.newOrder(row.Model)
	o := &r.orders[n]
	o.color, o.band, o.urgent = row.Color, row.Band, row.Urgent
	r.giveDue(n, row.Due)
	if int(i)+1 < len(book) {
		r.clk.At(book[i+1].Arrives, clock.Change, evDated, i+1)
	}
	r.wanted(row.Model)
}

// cancel gives up an order that nobody began to build in time.
func (r *Run) cancel(i int32) {
	o := &r.orders[i]
	o.cancelled = 0
	if o.onFloor { // begun, even if its part was thrown away since
		return
	}
	m := &r.models[o.model]
	m.open = slices.DeleteFunc(m.open, func(k int32) bool { return k == i })
	r.note(record.Note{Kind: record.OrderCancelled, Order: i, Mold: None, Model: o.model, Part: None, Place: None})
	r.orderWait(o)
	o.ended = true
	r.freeOrders = append(r.freeOrders, i)
}

// wanted has the molds of a model look for orders.
func (r *Run) wanted(model int16) {
	for _, p := range r.plan.Models[model].Parts {
		r.rematch(p)
	}
}

// orderWait reports that an order with a date had to wait for its first mold.
func (r *Run) orderWait(o *order) {
	if now := r.clk.Now(); o.dated && now > o.arrived {
		f := &r.fact.span
		*f = record.Span{Job: None, Order: o.number, Mold: None, Route: None, Step: None, Part: None, Craft: None, Place: None, Unit: None, Color: None,
			Cause: record.Cause{Reason: record.NoMold, Of: None}, From: o.arrived, To: now}
		r.obs.Span(f)
	}
}
