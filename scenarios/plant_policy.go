package scenarios

import (
	"fmt"
	"time"

	"moldturn/sim"
	"moldturn/sim/draw"
	"moldturn/sim/policy"
)

// policies sets what people choose.
func (b *builder) policies() {
	p, v := b.plan, b.v
	s := v.At("strip")
	p.Strip = policy.Strip{
		Kind: map[string]policy.StripKind{"never": policy.StripNever, "every": policy.StripEvery, "seasonal": policy.StripSeasonal,
			"by build-up": policy.StripByBuildUp, "by luster": policy.StripByLuster, "opportunistic": policy.StripOpportunistic}[s.At("policy").Text()],
		Every: s.At("every").Count(), Hot: s.At("hot").Count(), Cool: s.At("cool").Count(),
		Haze: s.At("haze").Number(), Limit: s.At("luster").Number(),
		FullEvery: s.At("full_every").Count(), FullAt: s.At("full_at").Number(),
		LightCoats: s.At("light_coats").Count(), FullCoats: s.At("full_coats").Count(),
		LightLoss: s.At("light_loss").Number(), FullLoss: s.At("full_loss").Number(),
	}
	p.Wax = policy.Wax{Every: v.At("wax.every").Count(), Coats: v.At("wax.coats").Count()}
	b.hold()
	r := v.At("release")
	p.Release = policy.Release{
		Kind: map[string]policy.ReleaseKind{"oldest": policy.Oldest, "due date": policy.DueDate, "color run": policy.ColorRun}[r.At("order").Text()],
		Run:  r.At("run").Count(), Look: r.At("look").Count(), ByColor: r.At("dark_after_strip").Flag(),
	}
	p.BreakIn = policy.BreakIn{Hold: v.At("break_in.hold").Hours()}
	for _, c := range v.Each("break_in.coats") {
		p.BreakIn.Coats = append(p.BreakIn.Coats, c.Count())
	}
	l := v.At("life")
	p.Life = policy.Life{Limit: l.At("turns").Count(), Resurfaces: l.At("resurfaces").Count(), Replacement: l.At("replacement").Hours(), Surface: l.At("surface_after").Number(),
		SurfaceHigh: l.At("surface_limit").Number(), ReserveIdle: l.At("reserve_idle").Hours() / 24, CallAfter: l.At("call_reserve_after").Hours(), RepairCoats: l.At("repair_coats").Count()}
	b.season()
	p.Chip = draw.Compile(v.At("chips.hours").Dist())
	w := v.At("window")
	p.Window = sim.Window{Limit: w.At("limit").Hours(), Wash: w.At("wash_after").Hours(), Scuff: w.At("scuff").Number(), Slots: w.At("slots").Count(), Craft: sim.None}
	if c, ok := b.crafts[w.At("craft").Text()]; ok {
		p.Window.Craft = c
	} else if !w.At("craft").IsDefault() {
		b.unknownName(w.At("craft"), "craft", w.At("craft").Text(), b.craftNames)
	}
	a := v.At("air")
	p.Limits = sim.Limits{DewMargin: a.At("dew_margin").Kelvins(), MostRH: a.At("most_humidity").Share(), LeastC: a.At("least_temperature").Celsius()}
	p.Rework = sim.Rework{Target: b.target(), Slack: v.At("quality.slack").Number(), Rounds: v.At("quality.rounds").Count()}
}

// hold sets the hold rule; a Barcol hardness is wanted as the degree of cure at
// which it reads.
func (b *builder) hold() {
	h := b.v.At("hold")
	hold := policy.Hold{Clock: h.At("clock").Hours(), Equivalent: h.At("equivalent").Hours(), Degree: h.At("degree").Share(), Most: h.At("most").Hours()}
	hold.Degree = max(hold.Degree, b.barcol.Degree(h.At("barcol").Number()))
	if hold.Most > 0 && hold.Most < hold.Clock {
		b.complain(h.At("most"), "hold.most is shorter than hold.clock", "0 h, or at least hold.clock", "")
	}
	if most := b.plan.Cure.PlateauMost; hold.Degree >= most {
		for _, asked := range []struct {
			at      *Value
			degree  float64
			allowed string
		}{
			{h.At("degree"), h.At("degree").Share(), fmt.Sprintf("below %.4g %%", 100*most)},
			{h.At("barcol"), b.barcol.Degree(h.At("barcol").Number()), fmt.Sprintf("below a Barcol hardness of %.0f", b.barcol.At(most))},
		} {
			if asked.degree >= most {
				b.complain(asked.at, "no part ever gets as hard as "+asked.at.Path()+" asks", asked.allowed, "")
			}
		}
	}
	b.plan.Hold = hold
}

// target is the luster that is promised, also when it is given as gloss or by
// eye.
func (b *builder) target() float64 {
	q := b.v.At("quality")
	points := q.At("target").Number()
	if g := q.At("target_gloss"); g.Given() {
		points = b.plan.Finish.Gloss.Points(g.Number())
	}
	if e := q.At("target_by_eye"); e.Given() {
		var names []string
		for _, v := range b.plan.Finish.Eye {
			if v.Grade == e.Text() {
				return v.Points
			}
			names = append(names, v.Grade)
		}
		b.unknownName(e, "grade by eye", e.Text(), names)
	}
	return points
}

func (b *builder) season() {
	s := b.v.At("season")
	b.plan.Season = policy.Season{
		Kind: map[string]policy.SeasonKind{"none": policy.NoSeason, "months": policy.ByMonths, "heat index": policy.ByHeatPeak}[s.At("by").Text()],
		On:   fahrenheit(s.At("on").Celsius()), Off: fahrenheit(s.At("off").Celsius()),
	}
	for m := time.January; m <= time.December; m++ {
		b.plan.Season.Months[m-1] = s.At("hot_months").HasMonth(m)
	}
	if b.plan.Season.Off > b.plan.Season.On {
		b.complain(s.At("off"), "season.off must not be above season.on", "", "")
	}
}

func fahrenheit(c float64) float64 { return c*1.8 + 32 }
