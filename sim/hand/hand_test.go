package hand

import (
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// shop is one hull with two molds: sprayed 2 x 1 h in the booth, 3 h of gel wait
// there, laid up 3 x 4 h, held, pulled 2 x 1 h; then checked 1 h by one person
// and stripped 1 x 4 h every fourth turn. Everybody works calendar c.
func shop(c *shift.Calendar, people int, hold float64) *sim.Plan {
	step := func(name string, pace sim.Pace, craft int16, people int16, hours float64) sim.Step {
		s := sim.Step{Name: name, Pace: pace, Craft: craft, Want: people, Least: people, Slow: 1}
		d, err := draw.Constant(hours)
		if err != nil {
			panic(err)
		}
		s.SetTime(d)
		return s
	}
	crew := func(name string) sim.Craft {
		return sim.Craft{Name: name, Crews: []sim.Crew{{Hours: c, People: people}}, Late: clock.Never, Overtime: clock.Never}
	}
	p := &sim.Plan{Name: "shop", Start: shift.DateOf(2027, 1, 4), Length: 40 * clock.Week, Areas: []string{"plant"},
		Crafts: []sim.Craft{crew("gel"), crew("lamination"), crew("mold")},
		Places: []sim.Place{{Name: "booth", Kind: sim.Booth, Count: 1}, {Name: "position", Count: 2}, {Name: "yard", Count: -1}},
		Cure:   cure.Default(), Finish: finish.Default(),
		Strip:  policy.Strip{Kind: policy.StripEvery, Every: 4, FullEvery: 1, FullCoats: 3},
		Hold:   policy.Hold{Clock: hold},
		Demand: sim.Demand{Full: true},
	}
	spray := step("spray", sim.Labor, 0, 2, 1)
	spray.Take = []int16{0}
	gel := step("gel wait", sim.ByCure, sim.None, 1, 3)
	gel.Free = []int16{0}
	held := step("hold", sim.ByPolicy, sim.None, 1, 0)
	held.Take = []int16{1}
	pull := step("pull", sim.Labor, 1, 2, 1)
	pull.Verb, pull.Free = sim.Pulled, []int16{1}
	check := step("check", sim.Labor, 2, 1, 1)
	check.Verb = sim.MoldChecked
	strip := step("strip", sim.Labor, 2, 1, 4)
	strip.When, strip.Verb = sim.DueFull, sim.FullStripped
	p.Routes = []sim.Route{
		{Name: "hull", Steps: []sim.Step{spray, gel, step("lay-up", sim.Labor, 1, 3, 4), held, pull, step("trim", sim.Labor, 1, 1, 2)}},
		{Name: "care", Steps: []sim.Step{check, strip}},
		{Name: "boat", Steps: []sim.Step{step("fit out", sim.Labor, 2, 2, 5)}},
	}
	p.Parts = []sim.Part{{Name: "hull", Area: 30, Color: sim.None, Zone: 1, Route: 0, Care: 1, InUse: 2, Visible: true}}
	p.Models = []sim.Model{{Name: "Sedge", Parts: []int16{0}, Boat: 2}}
	p.Molds = []sim.Mold{{Part: 0, Turns: -1, Since: -1}, {Part: 0, Turns: -1, Since: -1}}
	return p
}

func steady(tempC, rh float64) *sim.Air { return sim.NewAir(climate.Steady(tempC, rh), cure.Default()) }

func frame(p *sim.Plan) record.Frame {
	return record.Frame{Start: p.Start, From: 10 * clock.Week, To: p.Length, Crafts: 3, Pools: 6, Parts: 1, Models: 1, Molds: 2}
}

func dayShift(t *testing.T) *shift.Calendar {
	t.Helper()
	c, err := shift.Compile(shift.Pattern{Shifts: []shift.Shift{{Name: "day", Days: shift.DaysOf(1, 2, 3, 4, 5),
		Hours: shift.Hours{From: 6 * clock.Hour, To: 14 * clock.Hour}}}}, shift.DateOf(2027, 1, 4), 50*clock.Week)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9*max(math.Abs(want), 1) {
		t.Errorf("%s is %.6f, by hand %.6f", what, got, want)
	}
}

// Every line worked out on paper: one turn is 1 + 3 + 4 + 1 + 1 + 4/4 = 11 h, so
// two shifts of 8 h; 24 h of hold are one day's slot; five shifts a week over
// three give 1.67 turns.
func TestPaperOfAShop(t *testing.T) {
	p := shop(dayShift(t), 6, 24)
	p.Crafts[1].Crews[0].Absence, p.Crafts[1].Crews[0].AbsenceHot = 0.05, 0.05
	p.Background = []sim.Background{{Name: "small parts", Craft: 1, PerWeek: 40, PerBoat: 2, Place: sim.None}}
	got := Work(p, steady(25, 0.5), frame(p))
	m := got.Molds[0]
	near(t, "labor", m.Labor, 8)
	near(t, "waits", m.Waits, 3)
	near(t, "hold", m.Hold, 24)
	if m.WorkShifts != 2 || m.HoldShifts != 1 || m.Craft != "lamination" {
		t.Errorf("cycle of %d + %d shifts of %s", m.WorkShifts, m.HoldShifts, m.Craft)
	}
	near(t, "turns by whole shifts", m.WholeTurns, 5.0/3)
	lam := got.Crafts[1]
	near(t, "planned", lam.Planned, 240)
	near(t, "available", lam.Available, 240*0.95-40)
	near(t, "a boat", lam.PerBoat, 3*4+2+2+2)
	near(t, "boats by lamination", lam.Boats, (240*0.95-40)/18)
	near(t, "a boat of the mold shop", got.Crafts[2].PerBoat, 1+1+10)
	booth, position := got.Places[0], got.Places[1]
	near(t, "booth a boat", booth.PerBoat, 4)
	near(t, "boats by booth", booth.Boats, 10)
	near(t, "boats by position", position.Boats, 5) // 1 h + 24 h are two slots of five a week, twice
	if len(got.Places) != 2 {
		t.Errorf("%d places, want the two with a limit", len(got.Places))
	}
}

// The mold count check of the trade: one boat a day from molds that take 24, 48
// or 72 h needs one, two or three of them. It is Little's law, L = λW: J. D. C.
// Little, "A Proof for the Queuing Formula: L = λW", Operations Research 9
// (1961) 383.
func TestMoldCountByLittlesLaw(t *testing.T) {
	for days := 1; days <= 3; days++ {
		p := shop(shift.Always(), 100, float64(24*days-16)) // with 11 h of work: two shifts of 8 h
		p.Parts[0].InUse = days
		got := Work(p, steady(25, 0.5), frame(p)).Molds[0]
		near(t, "shifts in days", float64(got.WorkShifts+got.HoldShifts)/3, float64(days))
		near(t, "boats a week by whole shifts", got.WholeTurns*float64(days), 7)
		near(t, "cycle", got.Cycle(), 11+float64(24*days-16))
		near(t, "boats a week", got.Boats, 168/got.Cycle()*float64(days))
	}
}

// Where nothing waits and the cycle is whole shifts, the run of the plant and
// the paper agree: 3 h of gel wait, 9 h of labor, a strip of 4 h each turn and 8
// h of hold are 24 h; two molds give 14 boats a week.
func TestPaperAgreesWithARunWithoutWaits(t *testing.T) {
	p := shop(shift.Always(), 100, 8)
	p.Places[0].Count = 2
	p.Strip.Every = 1
	p.Routes[0].Steps[2].SetTime(constantHours(t, 6))
	f := frame(p)
	got := Work(p, steady(25, 0.5), f)
	near(t, "boats by molds", got.Molds[0].Boats, 14)
	tally := record.NewTally(f)
	if err := sim.Simulate(p, steady(25, 0.5), 1, 0, tally); err != nil {
		t.Fatal(err)
	}
	r := tally.Result()
	if want := 14 * f.Open(); math.Abs(float64(r.Shipped-want)) > 2 {
		t.Errorf("%d boats in %d weeks, by hand %d", r.Shipped, f.Open(), want)
	}
}

func constantHours(t *testing.T, hours float64) draw.Dist {
	t.Helper()
	d, err := draw.Constant(hours)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// A cold shop is slower: at the mean speed of cure the gel wait stretches.
func TestWaitsFollowTheMeanSpeedOfCure(t *testing.T) {
	p := shop(shift.Always(), 6, 24)
	got := Work(p, steady(15, 0.5), frame(p))
	speed := cure.Speed(15, p.Cure.ActivationEnergy)
	near(t, "speed", got.CureSpeed, speed)
	near(t, "waits", got.Molds[0].Waits, 3/speed)
	p.Hold = policy.Hold{Clock: 4, Equivalent: 12}
	if hold := Work(p, steady(15, 0.5), frame(p)).Molds[0].Hold; math.Abs(hold-12/speed) > 0.001 {
		t.Errorf("hold of 12 equivalent hours is %.4f h, want %.4f", hold, 12/speed)
	}
}

// One mold alone, walked by hand from a Monday at 6: sprayed 6 – 7, gel wait to
// 10, laid up 10 – 14; held to Tuesday 14, pulled Wednesday 6 – 7, checked 7 – 8;
// sprayed again Wednesday 8 – 9, gel wait to 12, laid up 12 – 14 and Thursday
// 6 – 8; held to Friday 8, pulled to 9, checked to 10; sprayed 10 – 11, gel wait
// to 14, and laid up Monday 6 – 10; held to Tuesday 10, checked at 12, sprayed
// to 13, gel wait to 16, laid up Wednesday 6 – 10, held to Thursday 10, checked
// at 12.
func TestWalkThroughTheCalendar(t *testing.T) {
	p := shop(dayShift(t), 6, 24)
	p.Strip.Kind = policy.StripNever
	h := &paper{plan: p, frame: record.Frame{Start: p.Start, To: p.Length}, weeks: 40, speed: []float64{1}}
	var ends []float64
	at := clock.Time(0)
	for range 4 {
		for _, s := range h.turn(&p.Parts[0]) {
			hours, _ := h.hours(s)
			at = h.after(s, at, clock.FromHours(hours*h.often(s.When, &p.Parts[0])))
		}
		ends = append(ends, at.Hours())
	}
	want := []float64{2*24 + 8, 4*24 + 10, 8*24 + 12, 10*24 + 12}
	for i := range want {
		near(t, "end of a turn", ends[i], want[i])
	}
}

// A step that must fit, or that is finished, waits for a shift with room.
func TestEndRulesOfTheWalk(t *testing.T) {
	p := shop(dayShift(t), 6, 24)
	h := &paper{plan: p}
	step := p.Routes[0].Steps[2] // 4 h of lamination
	p.Crafts[1].Late = clock.Hour / 2
	for _, x := range []struct {
		end      sim.EndRule
		at, want float64
	}{
		{sim.Pause, 12, 24 + 8}, {sim.Fit, 12, 24 + 10}, {sim.Fit, 10, 14},
		{sim.Finish, 12, 24 + 10}, {sim.Finish, 10.5, 14.5}, {sim.Finish, 11, 24 + 10},
	} {
		step.End = x.end
		near(t, "end", h.after(&step, clock.FromHours(x.at), clock.FromHours(4)).Hours(), x.want)
	}
}

// Flaws of parts made as they should be: the sum over defects of chance, share
// seen, share worth saving and mean hours, from the table of defects.
func TestTouchUpIsCounted(t *testing.T) {
	p := shop(dayShift(t), 6, 24)
	d := defect.Default()
	p.Defects, p.Film = &d, 0.51
	touch := p.Routes[0].Steps[5]
	touch.When, touch.Add, touch.Want = sim.Flawed, sim.TouchUpHours, 2
	touch.SetTime(constantHours(t, 0))
	p.Routes[0].Steps = append(p.Routes[0].Steps, touch)
	want := 0.0
	for i, law := range d.Each {
		if i != defect.Sticking {
			want += law.Chance * law.Found * (1 - law.Scrap) * law.Hours.Mean()
		}
	}
	if want <= 0 {
		t.Fatal("the table of defects asks for no labor")
	}
	near(t, "a boat", Work(p, steady(25, 0.5), frame(p)).Crafts[1].PerBoat, 3*4+2+2+want)
}

// Help: 40 h of A, who takes 10 h a boat, and 40 h of B, who takes 2 h and helps
// A, make 80 / 12 boats.
func TestHelpIsCounted(t *testing.T) {
	p := shop(dayShift(t), 1, 24)
	p.Crafts[2].Helps = []int16{1}
	got := Work(p, steady(25, 0.5), frame(p))
	lam, mold := got.Crafts[1], got.Crafts[2]
	near(t, "boats with help", lam.Boats, (lam.Available+mold.Available)/(lam.PerBoat+mold.PerBoat))
	if len(lam.Helpers) != 1 || lam.Helpers[0] != "mold" {
		t.Errorf("helpers are %q", lam.Helpers)
	}
}

// Shares of the hot season: by months, 153 days of May to September.
func TestSeasonShares(t *testing.T) {
	p := shop(shift.Always(), 6, 24)
	p.Length = 365 * clock.Day
	p.Strip = policy.Strip{Kind: policy.StripSeasonal, Hot: 2, Cool: 4, FullEvery: 2}
	p.Season = policy.Season{Kind: policy.ByMonths, Months: [12]bool{4: true, 5: true, 6: true, 7: true, 8: true}}
	f := frame(p)
	f.From, f.To = 0, p.Length
	got := Work(p, steady(25, 0.5), f)
	near(t, "hot share", got.HotShare, 153.0/365)
	near(t, "strips per pull", got.StripShare, 153.0/365/2+212.0/365/4)
	p.Season = policy.Season{Kind: policy.ByHeatPeak, On: 90, Off: 85}
	near(t, "hot share by heat", Work(p, steady(40, 0.7), f).HotShare, 1)
	near(t, "cool share by heat", Work(p, steady(20, 0.5), f).HotShare, 0)
}

// Without orders the mix follows the molds; orders come first.
func TestMix(t *testing.T) {
	p := shop(shift.Always(), 6, 24)
	p.Parts = append(p.Parts, p.Parts[0])
	p.Parts[1].Model, p.Parts[1].InUse = 1, 6
	p.Models = append(p.Models, sim.Model{Name: "Rush", Parts: []int16{1}, Boat: 2})
	got := Work(p, steady(25, 0.5), frame(p))
	near(t, "share by molds", got.Models[1].Share, 0.75)
	p.Demand.Models = []sim.ModelDemand{{PerWeek: 3}, {PerWeek: 2}}
	got = Work(p, steady(25, 0.5), frame(p))
	near(t, "share by orders", got.Models[1].Share, 0.4)
}
