package scenarios

import (
	"context"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"moldturn/sim/study"
)

// effect is one thing that air, cure, gel coat or care does to the plant, with
// a value of its input at which it does nothing, a little, and much.
type effect struct {
	name                  string
	sets                  []string // of the plant it is tried on
	path                  string
	neutral, little, much string
	moves                 map[string]int // figures with the sign an expert expects
}

func effects() []effect {
	two := []string{"climate.areas = {plant: {heat: 21 C}, booth: {heat: 21 C, most_humidity: 55 %}}", "places.booth.area = booth", "strip.policy = every", "strip.every = 12"}
	dry := []string{"climate.areas.plant.most_humidity = 55 %", "strip.policy = every", "strip.every = 8", "crafts.lamination.people.day = 11"}
	grades := []string{"finish.grades = {premium: {luster_lost: 1.9, build_up: 1}}"}
	dark := []string{`models."Sedge 20".colors = {navy: 1, white: 0}`, `models."Sedge 20".bands = {}`, "strip.policy = every", "strip.every = 10"}
	hull := `models."Reed 26".parts.hull.grade`
	open := []string{"climate.areas.plant.heat = -30 C", "air.least_temperature = -10 C"}
	return []effect{
		{"a booth that is cooled", two, "climate.areas.booth.cool", "60 C", "28 C", "21 C", map[string]int{"luster_mean": +1, "buff_hours_per_boat": -1, "boats_per_week": +1}},
		{"a plant that is cooled and dry", dry, "climate.areas.plant.cool", "60 C", "32 C", "26 C", map[string]int{"luster_mean": +1, "boats_per_week": +1}},
		{"a night set-back", nil, "climate.areas.plant.night.heat", "21 C", "17 C", "12 C", map[string]int{"luster_mean": -1, "dark_at_target_share": -1, "buff_hours_per_boat": +1}},
		{"a night set-back where parts are pulled by hardness", []string{"hold.barcol = 35"}, "climate.areas.plant.night.heat", "21 C", "17 C", "12 C", map[string]int{"mold_turn_hours": +1, "boats_per_week": -1}},
		{"a cold shop that pulls by the clock", []string{"air.least_temperature = 5 C"}, "climate.areas.plant.heat", "21 C", "18 C", "14 C", map[string]int{"luster_mean": -1, "escaped_share": +1}},
		{"a cold shop that pulls by hardness", []string{"hold.barcol = 35"}, "climate.areas.plant.heat", "21 C", "18 C", "14 C", map[string]int{"boats_per_week": -1, "mold_cycle_hours": +1, "pulled_green_per_100_pulls": +1}},
		{"from dark to white", dark, `models."Sedge 20".colors.white`, "0", "1", "9", map[string]int{"luster_mean": +1, "buff_hours_per_boat": -1, "boats_per_week": +1}},
		{"a cheaper grade of gel coat", nil, hull, "premium", "medium", "entry", map[string]int{"luster_mean": -1, "buff_hours_per_boat": +1, "boats_per_week": -1}},
		{"a duller grade of gel coat for all", grades, "finish.grades.premium.luster_lost", "1.9", "3", "5", map[string]int{"luster_mean": -1, "buff_hours_per_boat": +1, "boats_per_week": -1, "conceded_share": +1}},
		{"a shorter hold", nil, "hold.clock", "24 h", "16 h", "10 h", map[string]int{"luster_mean": -1, "escaped_share": +1}},
		{"less wax", nil, "wax.every", "1", "2", "4", map[string]int{"luster_mean": -1}},
		{"fewer strips", []string{"strip.policy = every", "strip.every = 5"}, "strip.every", "5", "8", "12", map[string]int{"luster_mean": -1, "buff_hours_per_boat": +1, "strips_per_week": -1}},
		{"a thick film", nil, "gel_coat.film", "0.51 mm", "0.62 mm", "0.72 mm", map[string]int{"touch_up_hours_per_boat": +1, "first_pass_share": -1}},
		{"slow in the heat", nil, "crafts.lamination.slower_when_hot", "14 %", "30 %", "55 %", map[string]int{"boats_per_week": -1}},
		{"absent in the heat", nil, "crafts.lamination.absence_hot", "8 %", "20 %", "40 %", map[string]int{"boats_per_week": -1}},
		{"far from dew point", open, "air.dew_margin", "3 C", "5 C", "8 C", map[string]int{"boats_per_week": -1}},
		{"inspection that sees less", nil, "defects.porosity.found", "90 %", "60 %", "20 %", map[string]int{"escaped_share": +1, "touch_up_hours_per_boat": -1}},
	}
}

// Every effect: neutral changes nothing, bit for bit; more of it moves figures
// further, the way an expert expects (common practice, no source); and figures
// stay in their range.
func TestEffects(t *testing.T) {
	if testing.Short() {
		t.Skip("simulates a century")
	}
	for _, e := range effects() {
		t.Run(strings.ReplaceAll(e.name, " ", "_"), func(t *testing.T) { e.try(t) })
	}
}

func (e *effect) try(t *testing.T) {
	s := fenwater(t, 1, e.sets...)
	setup := &study.Setup{Alternatives: s.Study()[:1], Replications: 6, Seed: 11, Workers: 2}
	for _, value := range []string{e.neutral, e.little, e.much} {
		ch, complaints := ParseChange("--set", e.path+" = "+value)
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		a, complaints := s.With(value, ch)
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		setup.Alternatives = append(setup.Alternatives, study.Alternative{Name: value, Capacity: a.Plant.Capacity, Frame: a.Plant.Frame, Climate: a.Plant.Climate, Air: a.Plant.Air})
	}
	runs, err := study.Compare(context.Background(), setup)
	if err != nil {
		t.Fatal(err)
	}
	base, neutral, little, much := &runs[0], &runs[1], &runs[2], &runs[3]
	for i := range base.Outcomes {
		if !reflect.DeepEqual(base.Outcomes[i].Capacity, neutral.Outcomes[i].Capacity) {
			t.Errorf("%s = %s is not neutral", e.path, e.neutral)
		}
	}
	for _, m := range study.Metrics() {
		sign, asked := e.moves[m.Name]
		if !asked {
			continue
		}
		some, _ := little.Difference(base, &m)
		more, _ := much.Difference(base, &m)
		t.Logf("%s: %+.4f, then %+.4f (%.4f to %.4f)", m.Name, some.Mean, more.Mean, more.Low, more.High)
		up := float64(sign)
		if !more.Clear || up*more.Mean <= 0 || some.Clear && up*some.Mean < 0 || up*more.Mean < up*some.Mean {
			t.Errorf("%s: %+.4f at %s, %+.4f (%.4f to %.4f) at %s; want sign %+d", m.Name, some.Mean, e.little, more.Mean, more.Low, more.High, e.much, sign)
		}
	}
	if err := inRange(runs); err != nil {
		t.Error(err)
	}
}

// inRange holds every luster to 0 … 100 and every share to 0 … 1.
func inRange(runs []study.Runs) error {
	for i := range runs {
		for _, o := range runs[i].Outcomes {
			for _, l := range o.Capacity.Lusters {
				if !(l >= 0 && l <= 100) {
					return fmt.Errorf("%s: luster %v", runs[i].Name, l)
				}
			}
		}
		for _, m := range study.Metrics() {
			x, _ := runs[i].Values(&m)
			for _, v := range x {
				if v != v || m.Share && (v < 0 || v > 1) {
					return fmt.Errorf("%s: %s is %v", runs[i].Name, m.Name, v)
				}
			}
		}
	}
	return nil
}
