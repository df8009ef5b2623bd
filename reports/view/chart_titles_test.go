package view

import (
	"testing"

	"moldturn/reports/view/saying"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/money"
	"moldturn/sim/permit"
	"moldturn/sim/shift"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// Both sides of each switch of the rules for titles of charts.

// The month-end that passes the cap is the first that is known and above it; at
// the cap exactly it is kept, and without a cap the fullest is told.
func TestPermitPictureFinding(t *testing.T) {
	p := samplePermit(0)
	months := make([]study.PermitMonth, 14)
	set := func(n int, tons float64, known bool) {
		months[n] = study.PermitMonth{Known: known, Rolling: tons * permit.KgPerTon}
	}
	set(11, 10, true)
	set(12, 12, true)
	set(13, 11, true)
	for _, c := range []struct {
		limit float64 // short tons
		want  string
	}{
		{0, "The twelve months up to the end of January of year 2 have the most: 12.0 short tons"},
		{9, "On average the cap of 9.00 short tons is passed at the end of December of year 1"},
		{10, "On average the cap of 10.0 short tons is passed at the end of January of year 2"},
		{11.9, "On average the cap of 11.9 short tons is passed at the end of January of year 2"},
		{12, "On average the cap of 12.0 short tons is kept; the fullest twelve months have 12.0 short tons"},
	} {
		p.Ledger.Setup.Cap = c.limit * permit.KgPerTon
		saying.Check(t, p.pictureFinding(months, p.top(months)), c.want)
	}
	set(11, 99, false)
	p.Ledger.Setup.Cap = 11.5 * permit.KgPerTon
	saying.Check(t, p.pictureFinding(months, p.top(months)), "On average the cap of 11.5 short tons is passed at the end of January of year 2")
}

func TestStartFinding(t *testing.T) {
	weeks := make([]study.Week, 60)
	for i := range weeks {
		weeks[i].Number = i
	}
	for _, c := range []struct {
		w    study.WarmUp
		want string
	}{
		{study.WarmUp{Weeks: weeks, Short: true}, "The plant had not settled when counting began"},
		{study.WarmUp{Weeks: weeks, Short: true, Settle: 55}, "The plant had not settled when counting began"},
		{study.WarmUp{Weeks: weeks}, "The plant is settled from the first weeks on"},
		{study.WarmUp{Weeks: weeks, Settle: 1}, "The plant settles within 1 week, before counting begins"},
		{study.WarmUp{Weeks: weeks, Settle: 15}, "The plant settles within 15 weeks, before counting begins"},
		{study.WarmUp{Weeks: weeks, Settle: 60}, "The plant settles within 59 weeks, before counting begins"},
	} {
		saying.Check(t, (&Study{}).startFinding(&settling{WarmUp: c.w}), c.want)
	}
}

// policies are a comparison of which the first costs least, and some of the
// others are clearly dearer.
func policies(dearer ...bool) (*Quality, *study.Quality) {
	names := []string{"every 3", "every 5", "every 7", "every 9"}
	q := &study.Quality{}
	for i := range len(dearer) + 1 {
		q.Policies = append(q.Policies, study.QualityPolicy{Runs: &study.Runs{Name: names[i]}, NotWorse: i == 0 || !dearer[i-1],
			Four: stats.Summary{N: 5, Mean: 9000 + 1000*float64(i), Half: 10}})
	}
	return &Quality{Study: &Study{Money: Money{Currency: "$"}}}, q
}

func TestMoreFinding(t *testing.T) {
	for _, c := range []struct {
		dearer []bool
		want   string
	}{
		{[]bool{false, false, false}, "“every 3” costs least in all; no other policy is clearly dearer"},
		{[]bool{false, true, false}, "“every 3” costs least in all; one other policy is clearly dearer"},
		{[]bool{false, true, true}, "“every 3” costs least in all; 2 other policies are clearly dearer"},
		{[]bool{true, true, true}, "“every 3” costs least in all; every other policy is clearly dearer"},
		{[]bool{true}, "“every 3” costs least in all; every other policy is clearly dearer"},
		{[]bool{false}, "“every 3” costs least in all; no other policy is clearly dearer"},
	} {
		v, q := policies(c.dearer...)
		saying.Check(t, v.moreFinding(q), c.want)
	}
}

// The four classes can be least with another policy than the total; of equals it
// is the first.
func TestClassFinding(t *testing.T) {
	v, q := policies(true, true)
	saying.Check(t, v.classFinding(q), "The four classes together are least with “every 3”: $9,000 a year")
	q.Policies[2].Four.Mean = 8999
	saying.Check(t, v.classFinding(q), "The four classes together are least with “every 7”: $8,999 a year")
	q.Policies[2].Four.Mean = 9000
	saying.Check(t, v.classFinding(q), "The four classes together are least with “every 3”: $9,000 a year")
}

// worth is returns of a net present value mean ± half.
func worth(mean, half float64) *study.Returns {
	d := saying.Judged(mean, half)
	return &study.Returns{Worth: d.Summary, Gain: d}
}

func TestWorthFinding(t *testing.T) {
	for _, c := range []struct {
		dated, full *study.Returns
		want        string
	}{
		{worth(10, 9), worth(10, 11), "It pays with the orders as they come and may pay or not if every boat sells"},
		{worth(-10, 11), worth(-10, 9), "It may pay or not with the orders as they come and does not pay if every boat sells"},
		{&study.Returns{Worth: worth(-10, 9).Worth, Gain: saying.Judged(1, 0.5)}, nil, "It does not pay with the orders as they come"},
		{&study.Returns{Worth: worth(-10, 10).Worth, Gain: saying.Judged(0, 0.5)}, nil, "It does not pay with the orders as they come"},
		{&study.Returns{Worth: worth(-10, 10).Worth, Gain: saying.Judged(1, 0.5)}, nil, "It may pay or not with the orders as they come"},
		{nil, &study.Returns{Worth: stats.Summary{N: 1, Mean: 10}, Gain: stats.Difference{Summary: stats.Summary{N: 1, Mean: 5}}}, "It may pay or not if every boat sells"},
	} {
		v := &Invest{Study: &Study{Money: Money{Currency: "$"}}, Investment: money.Investment{Life: 5}, Dated: c.dated, Full: c.full}
		saying.Check(t, v.worthFinding(), c.want)
	}
}

// launched is a launch of "b" after ten of so many weeks, in which the
// repeats ship these boats of it a week; without the launch there are none.
func launched(weeks int, shut bool, boats ...int) *Launch {
	p := &sim.Plan{Start: shift.DateOf(2027, 1, 4), Length: clock.Time(weeks) * clock.Week, Models: []sim.Model{{Name: "a"}, {Name: "b"}}}
	l := &Launch{Launch: &study.Launch{Plan: p, Models: []int{1}, First: 10, Weeks: weeks, Shut: make([]bool, weeks)}}
	for w := range l.Launch.Shut {
		l.Launch.Shut[w] = shut
	}
	for _, n := range boats {
		with := study.NewWeekBook(p)
		for w := range with.Boats {
			with.Boats[w][1] = n
		}
		l.Launch.With, l.Launch.Without = append(l.Launch.With, with), append(l.Launch.Without, study.NewWeekBook(p))
	}
	return l
}

// The last stretch of weeks is told, a change only where it is clear, and no
// change where no week was open.
func TestLaunchFinding(t *testing.T) {
	for _, c := range []struct {
		l    *Launch
		want string
	}{
		{launched(52, false, 2, 3, 2, 3, 2), "b in weeks 27 to 42: 2.4 ± 0.7 boats a week more than without them"},
		{launched(18, false, 2, 3, 2, 3, 2), "b in weeks 5 to 8: 2.4 ± 0.7 boats a week more than without them"},
		{launched(52, false, 0, 9, 0, 0, 0), "b in weeks 27 to 42: with no clear change from the plant without them"},
		{launched(52, true, 2, 3, 2, 3, 2), "Boats around the launch of b"},
	} {
		saying.Check(t, c.l.finding(), c.want)
	}
}

// What is sure of the base is told, and what is sure of none is not.
func TestFrontierFinding(t *testing.T) {
	for _, c := range []struct {
		base float64
		want string
	}{
		{0.9, "2 of 3 different settings are beaten by no other in both boats per week and luster 9 parts in 10 reach, 2 of them surely; “today” is one of them."},
		{0.89, "whether “today” is one of them is not sure."},
		{0.1, "whether “today” is one of them is not sure."},
		{0.09, "“today” is beaten."},
	} {
		f := Frontier{all: []study.Figures{{Name: "today"}, {Name: "a 2"}, {Name: "a 3"}},
			Frontier: study.Frontier{X: *metric("boats_per_week"), Y: *metric("luster_p10"), Undominated: []bool{true, false, true}, Confidence: []float64{c.base, 0.5, 0.95}}}
		says(t, saying.Plain(f.Finding()), c.want)
		f.Undominated = []bool{true, false, false}
		says(t, saying.Plain(f.Finding()), "1 of 3 different settings is beaten by no other")
		f.all = f.all[:1]
		saying.Check(t, f.Finding(), "All settings come to the same boats per week and luster 9 parts in 10 reach, so none beats another.")
	}
}
