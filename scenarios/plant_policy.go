package scenarios

import (
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
		Kind:  map[string]policy.StripKind{"never": policy.StripNever, "every": policy.StripEvery, "seasonal": policy.StripSeasonal}[s.At("policy").Text()],
		Every: s.At("every").Count(), Hot: s.At("hot").Count(), Cool: s.At("cool").Count(),
		FullEvery: s.At("full_every").Count(), FullAt: s.At("full_at").Number(),
		LightCoats: s.At("light_coats").Count(), FullCoats: s.At("full_coats").Count(),
		LightLoss: s.At("light_loss").Number(), FullLoss: s.At("full_loss").Number(),
	}
	p.Wax = policy.Wax{Every: v.At("wax.every").Count(), Coats: v.At("wax.coats").Count()}
	h := v.At("hold")
	p.Hold = policy.Hold{Clock: h.At("clock").Hours(), Equivalent: h.At("equivalent").Hours(), Most: h.At("most").Hours()}
	r := v.At("release")
	p.Release = policy.Release{
		Kind: map[string]policy.ReleaseKind{"oldest": policy.Oldest, "due date": policy.DueDate, "color run": policy.ColorRun}[r.At("order").Text()],
		Run:  r.At("run").Count(), Look: r.At("look").Count(), ByColor: r.At("dark_after_strip").Flag(),
	}
	p.BreakIn = policy.BreakIn{Hold: v.At("break_in.hold").Hours()}
	for _, c := range v.Each("break_in.coats") {
		p.BreakIn.Coats = append(p.BreakIn.Coats, c.Count())
	}
	for _, c := range v.Each("break_in.sticks") {
		p.BreakIn.Stick = append(p.BreakIn.Stick, c.Share())
	}
	if n := len(p.BreakIn.Stick); n != 0 && n != len(p.BreakIn.Coats) {
		b.complain(v.At("break_in.sticks"), "break_in.sticks and break_in.coats must have as many entries", "", "")
	}
	l := v.At("life")
	p.Life = policy.Life{Limit: l.At("turns").Count(), Resurfaces: l.At("resurfaces").Count(), Surface: l.At("surface_after").Number(),
		SurfaceHigh: l.At("surface_limit").Number(), ReserveIdle: l.At("reserve_idle").Hours() / 24, CallAfter: l.At("call_reserve_after").Hours()}
	b.season()
	k := v.At("sticking")
	p.Sticking = policy.Sticking{Base: k.At("base").Share(), AfterStrip: k.At("after_strip").Number(), PerCoat: k.At("per_coat").Number(),
		PerBuildUp: k.At("per_build_up").Number(), PerCold: k.At("per_cold_degree").Number(), ColdC: k.At("cold").Celsius(), Most: k.At("most").Share()}
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
	p.Rework = sim.Rework{Target: v.At("quality.target").Number(), Rounds: v.At("quality.rounds").Count()}
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
