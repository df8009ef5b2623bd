package scenarios

import (
	"context"
	"strings"
	"testing"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// A small invented plant in which nothing is scarce but molds; each case makes
// one other thing scarce.
const roomyPlant = `version: 1
name: Roomy
shifts:
  day: {days: Mon-Fri, from: 06:00, to: 14:00}
crafts:
  gel: {people: {day: 6}}
  lamination: {people: {day: 24}}
  mold: {people: {day: 8}}
  pull: {people: {day: 6}}
  finish: {people: {day: 8}}
  assembly: {people: {day: 30}}
places:
  booth: {kind: booth, count: 3}
  hoist: {kind: hoist, count: 2}
colors:
  navy: {look: dark}
models:
  Teal 22:
    colors: {navy: 1}
    work: {assembly: 4 x 10 h}
    parts:
      hull: {area: 30 m2, molds: 4, work: {base: 2 x 1 h, skin: 4 x 1.25 h, shot 1: 4 x 3 h, wait after shot 1: 1.5 h, shot 2: 4 x 3 h, finish: 1 x 4 h}}
      deck: {area: 28 m2, molds: 4, shape: deck, work: {base: 2 x 1 h, skin: 3 x 1.25 h, shot 1: 3 x 3.5 h, finish: 1 x 3 h}}
demand: {book: full, floor_limit: 30}
strip: {policy: every, every: 10}
chips: {share: 0 %}
life: {turns: 0, surface_limit: 0}
run: {replications: 6, years: 1, warm_up: 1}
alternatives:
`

// against runs a plant with changes of its own against one alternative and
// gives the paired difference of some figures, alternative less base.
func against(t *testing.T, sets []string, alternative string, figures ...string) []stats.Difference {
	t.Helper()
	var changes []Change
	for _, s := range sets {
		ch, complaints := ParseChange("--set", s)
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		changes = append(changes, ch)
	}
	s, complaints := Load("roomy.yaml", []byte(roomyPlant+"  changed: {"+alternative+"}\n"), Options{Years: -1, Sets: changes})
	if len(complaints) > 0 {
		t.Fatal("\n" + complaints.Error())
	}
	runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study(), Replications: 6, Seed: 7, Workers: 2})
	if err != nil {
		t.Fatal(err)
	}
	var out []stats.Difference
	for _, name := range figures {
		m, ok := study.MetricNamed(name)
		if !ok {
			t.Fatalf("no figure %q", name)
		}
		d, _ := runs[1].Difference(&runs[0], &m)
		base, _ := runs[0].Summary(&m)
		t.Logf("%s: base %.3f, changed by %+.3f (%.3f to %.3f)", name, base.Mean, d.Mean, d.Low, d.High)
		out = append(out, d)
	}
	return out
}

// What the trade knows of the direction of a change on a plant where the thing
// binds; common practice, no source. Each runs the plant.
func TestDirections(t *testing.T) {
	for _, c := range []struct {
		name, alternative string
		sets              []string
		figures           []string
		signs             []int // +1 up, -1 down, 0 either
	}{
		{"strip every 10 to every 3: finish up, boats down where molds bind", "strip.every: 3", nil,
			[]string{"luster_mean", "boats_per_week"}, []int{+1, -1}},
		{"a second booth where one binds", "places.booth.count: 2", []string{"places.booth.count=1"},
			[]string{"boats_per_week"}, []int{+1}},
		{"one more laminator where laminators bind", "crafts.lamination.people.day: 7", []string{"crafts.lamination.people.day=6"},
			[]string{"boats_per_week"}, []int{+1}},
		{"one more in finishing where finishing binds", "crafts.finish.people.day: 2", []string{"crafts.finish.people.day=1"},
			[]string{"boats_per_week"}, []int{+1}},
		{"a third more molds where molds bind", "models.\"Teal 22\".parts.hull.molds: 6, models.\"Teal 22\".parts.deck.molds: 6", nil,
			[]string{"boats_per_week"}, []int{+1}},
		{"a longer hold: finish up", "hold.clock: 24 h", []string{"hold.clock=10 h", "strip.every=5"},
			[]string{"luster_mean", "boats_per_week"}, []int{+1, 0}},
	} {
		t.Run(strings.ReplaceAll(c.name, " ", "_"), func(t *testing.T) {
			for i, d := range against(t, c.sets, c.alternative, c.figures...) {
				if c.signs[i] != 0 && (!d.Clear || (d.Mean > 0) != (c.signs[i] > 0)) {
					t.Errorf("%s: difference %+.4f (%.4f to %.4f), want it clear with sign %+d", c.figures[i], d.Mean, d.Low, d.High, c.signs[i])
				}
			}
		})
	}
}
