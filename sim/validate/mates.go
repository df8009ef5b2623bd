package validate

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
)

// pairs holds orders that each need a hull from one person and a deck from
// another, and are done with the later: R₂ = (12−ρ)/8 · 1/(μ−λ).
func pairs() []Case {
	var out []Case
	for _, row := range []struct{ rate, both, waits, number, hours float64 }{
		{.1, 1.652777778, .541666667, .165277778, 400_000}, {.3, 2.089285714, .660714286, .626785714, 400_000},
		{.5, 2.875, .875, 1.4375, 400_000}, {.8, 7, 2, 5.6, 1_600_000},
	} {
		out = append(out, Case{
			Group: "hull and deck", Name: fmt.Sprintf("orders at random, load %g", row.rate),
			Source: "Flatto and Hahn 1984; Nelson and Tantawi 1988, IEEE Trans. Computers 37:739–743",
			Plant: func(length clock.Time, _ uint64) *sim.Plan {
				p := twoLines(length, exponential(1), exponential(1))
				p.demand(row.rate)
				return &p.Plan
			}, WarmUp: 3000, Hours: row.hours,
			Values: []Value{{"R", row.both, lead, 0}, {"wait for the mate", row.waits, mateWait(2), 0}, {"orders there", row.number, inHouse, 0}},
		})
	}
	return out
}

// inHouse is the mean number of orders from arrival to shipment, by hours of
// those shipped.
func inHouse(s *Sums) (float64, float64) { return s.one(leadHours), s.hours }

// closedPairs holds a limit of work on the floor: hull line, deck line, and
// assembly with one person each.
func closedPairs() []Case {
	var out []Case
	for _, row := range []struct {
		n                    int
		hull, deck, assembly float64
		x                    float64
	}{
		{1, 10, 8, 6, .051136364}, {2, 10, 8, 6, .072763203}, {3, 10, 8, 6, .083664124}, {4, 10, 8, 6, .089819571},
		{2, 10, 10, 5, .070270270}, {4, 10, 10, 5, .085409358}, {8, 10, 10, 5, .093292795},
	} {
		out = append(out, Case{
			Group: "hull and deck", Name: fmt.Sprintf("%d boats on the floor, hull %g h, deck %g h, assembly %g h", row.n, row.hull, row.deck, row.assembly),
			Source: "closed fork-join; Markov chain, computed",
			Plant: func(length clock.Time, _ uint64) *sim.Plan {
				p := twoLines(length, exponential(row.hull), exponential(row.deck))
				p.route("boat", work("assemble", p.always("assemblers", 1), exponential(row.assembly)))
				p.Models[0].Boat = int16(len(p.Routes) - 1)
				p.Demand.Full, p.Demand.FloorLimit = true, row.n
				return &p.Plan
			}, WarmUp: 2000, Hours: 800_000,
			Values: []Value{{"X", row.x, shipped, 0}}, Long: row.n == 2,
		})
	}
	return out
}

// twoLines is a model with a hull and a deck without molds, one person each.
func twoLines(length clock.Time, hull, deck draw.Dist) *plant {
	p := newPlant("hull and deck", length)
	m := p.model()
	p.part(m, work("hull", p.always("hull line", 1), hull))
	p.part(m, work("deck", p.always("deck line", 1), deck))
	return p
}

// plantInMiniature holds hull molds and deck molds, each kind with its laminator
// and its cure, stores of some places, and assembly of any hull with any deck. A
// mold whose store is full keeps its part.
func plantInMiniature() []Case {
	var out []Case
	for _, row := range []struct {
		molds, store                                          int
		x, hulls, decks, hullBlocked, deckBlocked, assembling float64
	}{
		{1, 1, .028221540, .155018677, .664658830, .040467628, .322683031, .169329242},
		{1, 2, .029085350, .149898413, 1.427636690, .011098092, .301951595, .174512101},
		{2, 1, .052444112, .192887131, .741544579, .073368312, .651701237, .314664675},
		{2, 2, .053661259, .210064130, 1.547727766, .020737074, .616360827, .321967557},
	} {
		out = append(out, Case{
			Group: "hull and deck", Name: fmt.Sprintf("%d molds of each, stores of %d, assembly", row.molds, row.store), Source: "Markov chain, computed",
			Plant: func(length clock.Time, _ uint64) *sim.Plan { return miniature(length, row.molds, row.store) }, WarmUp: 4000, Hours: 6_000_000,
			Values: []Value{{"X", row.x, shipped, 0}, {"hulls in store", row.hulls, inUse("hull store"), 0}, {"decks in store", row.decks, inUse("deck store"), 0},
				{"hull mold blocked", row.hullBlocked, waiting("hull pull"), 0}, {"deck mold blocked", row.deckBlocked, waiting("deck pull"), 0}, {"assembly busy", row.assembling, busy(1, "assemble"), 0}},
		})
	}
	return out
}

func miniature(length clock.Time, molds, store int) *sim.Plan {
	p := newPlant("miniature", length)
	stores := []int16{p.place("hull store", store), p.place("deck store", store)}
	assemble := work("assemble", p.always("assemblers", 1), exponential(6))
	assemble.Swap = stores
	m := p.model(assemble)
	for i, half := range []struct {
		name           string
		laminate, cure float64
	}{{"hull", 10, 24}, {"deck", 8, 16}} {
		pull := means(passing(half.name+" pull", constant(0)), sim.Pulled)
		pull.Take = []int16{stores[i]}
		part := p.part(m, work(half.name+" laminate", p.always(half.name+" laminator", 1), exponential(half.laminate)), passing(half.name+" cure", exponential(half.cure)), pull)
		p.molds(part, molds)
	}
	p.Demand.Full, p.Demand.AnyMate = true, true
	return &p.Plan
}
