package scenarios

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"moldturn/sim"
	"moldturn/sim/draw"
	"moldturn/sim/param"
	"moldturn/sim/record"
)

// routeBuilder makes the routes of one part or boat, with the people and hours
// that its work gives the steps.
type routeBuilder struct {
	b    *builder
	work *Value
	area float64
	used map[string]bool
}

// route makes the route that a value names: the scenario's own, or a standard
// one.
func (r *routeBuilder) route(name string, which *Value) int16 {
	own := true
	route, ok := r.b.v.At("routes").Item(which.Text())
	if !ok {
		own = false
		route, ok = r.b.standard.At("routes").Item(which.Text())
	}
	if !ok {
		var names []string
		for n := range r.b.v.Each("routes") {
			names = append(names, n)
		}
		for n := range r.b.standard.Each("routes") {
			names = append(names, n)
		}
		r.b.unknownName(which, "route", which.Text(), names)
		return 0
	}
	var steps []sim.Step
	var backs []*Value
	number := int16(0)
	for _, v := range route.Each("steps") {
		number++
		if s, ok := r.step(v, own); ok {
			s.Number = number
			steps = append(steps, s)
			backs = append(backs, v.At("back_to"))
		}
	}
	for i, back := range backs {
		if !back.Given() {
			continue
		}
		to := slices.IndexFunc(steps, func(s sim.Step) bool { return s.Name == back.Text() })
		if to < 0 || to > i {
			if own {
				r.b.complain(back, "no earlier step "+quoted(back.Text())+" in this route", "", "")
			}
			continue
		}
		steps[i].Loop, steps[i].Back = true, int16(to)
	}
	r.b.plan.Routes = append(r.b.plan.Routes, sim.Route{Name: name, Steps: steps})
	return int16(len(r.b.plan.Routes) - 1)
}

var workText = regexp.MustCompile(`^(\d+)\s*(?:\(\s*(\d+)\s*\))?\s*[x×]\s*(.+)$`)

// step makes one step; ok is false when it is left out.
func (r *routeBuilder) step(v *Value, own bool) (s sim.Step, ok bool) {
	name := v.At("step").Text()
	s = sim.Step{Name: name, Craft: sim.None, Slow: v.At("slower").Number(), Urgent: int8(v.At("first").Count()), Opens: v.At("opens_window").Flag()}
	s.Doing, _ = record.DoingNamed(v.At("does").Text())
	s.When, _ = sim.CondNamed(v.At("when").Text())
	s.Again, _ = sim.CondNamed(v.At("while").Text())
	s.Pace = map[string]sim.Pace{"labor": sim.Labor, "clock": sim.ByClock, "cure": sim.ByCure, "hold": sim.ByPolicy}[v.At("time").Text()]
	s.End = map[string]sim.EndRule{"pause": sim.Pause, "finish": sim.Finish, "fit": sim.Fit}[v.At("end").Text()]
	s.Gate = map[string]sim.Gate{"any": 0, "dry": sim.Dry, "dry and warm": sim.Dry | sim.Warm}[v.At("air").Text()]
	if v.At("means").Given() {
		s.Verb, _ = sim.VerbNamed(v.At("means").Text())
	}
	if v.At("extra").Given() {
		s.Add, _ = sim.ExtraNamed(v.At("extra").Text())
	}
	if v.At("sprays").Given() {
		s.Spray = map[string]sim.Spray{"base": sim.SprayBase, "band": sim.SprayBand}[v.At("sprays").Text()]
	}
	s.Want = int16(v.At("people").Count())
	s.Least = max(s.Want-1, 1)
	if v.At("least").Given() {
		s.Least = int16(v.At("least").Count())
	}
	var hours draw.Dist
	if v.At("hours").Given() {
		hours = v.At("hours").Dist()
		if v.At("per").Given() && r.area > 0 {
			if d, err := draw.Scaled(hours, r.area/v.At("per").SquareMeters()); err == nil {
				hours = d
			}
		}
	}
	if item, has := r.work.Item(name); has {
		r.used[name] = true
		if strings.TrimSpace(item.Text()) == "none" {
			return s, false
		}
		if d := r.workOf(item, &s); d != nil {
			hours = d
		}
	}
	if v.At("craft").Given() {
		c, known := r.b.crafts[v.At("craft").Text()]
		switch {
		case known:
			s.Craft = c
		case own:
			r.b.unknownName(v.At("craft"), "craft", v.At("craft").Text(), r.b.craftNames)
		case hours != nil && s.Pace == sim.Labor && s.Add == sim.NoExtra && s.When == sim.Always:
			r.b.complain(r.work, "the standard step "+quoted(name)+" needs the craft "+quoted(v.At("craft").Text())+", which the plant does not have", short(r.b.craftNames), "add the craft, leave the step out with "+name+": none, or write the route out")
		default:
			return s, false
		}
	}
	if hours == nil {
		if s.Pace == sim.Labor && s.Add == sim.NoExtra {
			return s, false
		}
		hours = constant(0)
	}
	if s.Pace == sim.Labor {
		hours = r.b.vary(hours)
	}
	s.SetTime(hours)
	s.Take = r.placesOf(v.At("takes"), own)
	s.Swap = r.placesOf(v.At("swaps"), own)
	s.Use = r.placesOf(v.At("uses"), own)
	s.Free = r.placesOf(v.At("frees"), own)
	if s.When == sim.NeedHeat && !r.b.warms(s.Take) {
		if own {
			r.b.complain(v, "a step for parts that need heat takes no place that is warm", "takes: a place with warm: 30 C", "")
		}
		return s, false
	}
	return s, true
}

// workOf reads "people x hours" of a part's work, or only hours.
func (r *routeBuilder) workOf(v *Value, s *sim.Step) draw.Dist {
	text := v.Text()
	if m := workText.FindStringSubmatch(text); m != nil {
		n, err := strconv.Atoi(m[1])
		if err != nil || n < 1 || n > 100 {
			r.b.complain(v, "people must be 1 to 100", "4 x 3.75 h", "")
			return nil
		}
		s.Want, s.Least = int16(n), int16(max(n-1, 1))
		if m[2] != "" {
			least, err := strconv.Atoi(m[2])
			if err != nil || least < 1 || least > n {
				r.b.complain(v, "the least people must be 1 to "+m[1], "4 (3) x 3.75 h", "")
				return nil
			}
			s.Least = int16(least)
		}
		text = m[3]
	}
	d, err := r.b.laws.parse(param.Row{Path: v.Path(), Kind: param.Dist, High: 10000}, text)
	if err != nil {
		r.b.problem(v, err)
		return nil
	}
	return d
}

// placesOf names places; those a standard route names and the plant does not
// have are without limit.
func (r *routeBuilder) placesOf(v *Value, own bool) []int16 {
	var out []int16
	for _, p := range v.Each("") {
		i, ok := r.b.places[p.Text()]
		if ok {
			out = append(out, i)
		} else if own {
			r.b.unknownName(p, "place", p.Text(), r.b.placeNames)
		}
	}
	return out
}

// unused complains about work for steps that the routes do not have.
func (r *routeBuilder) unused() {
	var names []string
	for _, s := range []*Value{r.b.v, r.b.standard} {
		for _, route := range s.Each("routes") {
			for _, v := range route.Each("steps") {
				names = append(names, v.At("step").Text())
			}
		}
	}
	for name, v := range r.work.Each("") {
		if !r.used[name] {
			r.b.unknownName(v, "step", name, names)
		}
	}
}
