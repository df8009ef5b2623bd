package scenarios

import "testing"

func TestSet(t *testing.T) {
	tree, doc, root := sample(t, sampleFile)
	before := root.Hash()
	for _, c := range []struct {
		set  string
		path string
		want string
	}{
		{"hold.clock=16 h", "hold.clock", "16 h"},
		{"hold.limit = 50 F", "hold.limit", "10 C"},
		{"strip.every=3", "strip.every", "3"},
		{"hold.clock=null", "hold.clock", "24 h"},
		{"heat.set_point=21 C", "heat.set_point", "21 C"},
		{`heat={set_point: 70 F, night: no}`, "heat.night", "false"},
		{"colors[2]=red", "colors", ""},
		{"calendar.shutdowns[1].length=10 d", "", ""},
		{`models."Rush 23".length=24 ft`, "", ""},
		{"models.rush-23.parts.Hull.area=40 m2", "", ""},
		{"models.Rush 23.price=", "", ""},
		{"models.Rush 23.parts.hull.color=primer", "", ""},
		{"crafts.pull={people: 4}", "", ""},
	} {
		ch, complaints := ParseChange("--set", c.set)
		changed, more := tree.Apply(doc, ch)
		v, most := tree.Bind(changed)
		if all := append(append(complaints, more...), most...); len(all) > 0 && c.set != "colors[2]=red" {
			t.Errorf("%s: %v", c.set, all)
			continue
		} else if len(all) > 0 {
			// navy is gone and the hull refers to it
			compare(t, all, []string{`plant.yaml:21:16: unknown color "navy"|primer, white, red|`})
			continue
		}
		if v.Hash() == before {
			t.Errorf("%s changed nothing", c.set)
		}
		if c.path != "" && v.At(c.path).Format(0) != c.want {
			t.Errorf("%s gives %q, want %q", c.set, v.At(c.path).Format(0), c.want)
		}
	}
	if again, _ := tree.Bind(doc); again.Hash() != before {
		t.Error("changes reached the document they started from")
	}
}

func TestSetComplaints(t *testing.T) {
	tree, doc, _ := sample(t, sampleFile)
	for set, want := range map[string]string{
		"hold.clok=16 h":            `--set hold.clok: unknown input "clok" in hold|clock, rule, limit|did you mean "clock"?`,
		"hlod.clock=16 h":           `--set hlod.clock: unknown input "hlod"|version, name, start, hold, strip, crafts, colors, models, heat, calendar, alternatives|did you mean "hold"?`,
		"hold.clock=16":             `--set hold.clock: hold.clock: 16 has no unit|h, min, s, d, wk, ms|write 16 h`,
		"hold.clock":                `--set hold.clock: no value is given||write path=value, for example hold.clock=16 h`,
		"hold.clock.x=1":            `--set hold.clock.x: hold.clock is a length of time and has no "x" in it||`,
		"models.Rush 32.length=1 m": `--set models.Rush 32.length: unknown model "Rush 32"|Rush 23|did you mean "Rush 23"?`,
		"models.Reed=1 m":           `--set models.Reed: unknown model "Reed"|Rush 23|`,
		"colors[3]=red":             `--set colors[3]: colors has no item [3]; it has 2, counted from [1]||`,
		`models."Rush.length=1`:     `--set models."Rush.length=1: no value is given||write path=value, for example hold.clock=16 h`,
		"heat={set_point: 70":       `--set heat: not readable as YAML: did not find expected ',' or '}'||`,
		"heat={night: no}":          `--set heat: heat.set_point is missing||it has no default: invented for a test`,
		"a[1=2":                     `--set a[1: the path "a[1" has a [ without ]||`,
		"strip={every: 50}":         `--set strip: strip.every: 50 is out of range|1 to 40|`,
		"version=2":                 `--set version: unknown version "2" of the scenario format|1|the file may be made for a newer release of this program`,
	} {
		ch, complaints := ParseChange("--set", set)
		if complaints == nil {
			var changed *Document
			if changed, complaints = tree.Apply(doc, ch); complaints == nil {
				_, complaints = tree.Bind(changed)
			}
		}
		compare(t, complaints, []string{want})
	}
}

func TestAlternatives(t *testing.T) {
	tree, doc, root := sample(t, sampleFile)
	alternative, _ := root.At("alternatives").Item("more gel")
	changed, complaints := tree.Apply(doc, alternative.Changes()...)
	if complaints != nil {
		t.Fatal(complaints)
	}
	v, complaints := tree.Bind(changed)
	if complaints != nil {
		t.Fatal(complaints)
	}
	gel, _ := v.At("crafts").Item("gel")
	if gel.At("people").Count() != 6 || gel.At("people").Place() != "plant.yaml:39:24" {
		t.Errorf("people %d at %s", gel.At("people").Count(), gel.At("people").Place())
	}
}

// A fault inside an alternative is found when the file is read, at its place.
func TestAlternativeComplaints(t *testing.T) {
	tree := sampleTree(t)
	doc, _ := Read("plant.yaml", []byte(sampleFile+"    hold.clok: 3 h\n  cold:\n    hold.limit: 60\n    crafts.gel: null\n"))
	_, complaints := tree.Bind(doc)
	compare(t, complaints, []string{
		`plant.yaml:24:20: with alternatives.cold: unknown craft "gel"|lamination|`,
		`plant.yaml:41:5: with alternatives."more gel": unknown input "clok" in hold|clock, rule, limit|did you mean "clock"?`,
		`plant.yaml:43:17: with alternatives.cold: hold.limit: 60 has no unit|C, F, K|write 60 C or 60 F`,
	})
}

func TestPaths(t *testing.T) {
	for _, name := range []string{"Rush 23", "a.b", `say "x"`, "[1]", "plain", "ü", "a=b", "\t"} {
		if got := splitPath(joinPath("models", name)); len(got) != 2 || got[1] != name {
			t.Errorf("%q comes back as %q", name, got)
		}
	}
}
