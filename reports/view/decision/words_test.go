package decision

import (
	"testing"

	"moldturn/reports/view/saying"
)

func TestChangesInWords(t *testing.T) {
	for want, changes := range map[string][]string{
		"Rush 23 hull: 3 molds; held 16.5 h in the mold": {`models."Rush 23".parts.hull.molds = 3`, "hold.clock = 16.5 h"},
		"A. B deck: 1 mold":             {`models."A. B".parts.deck.molds = 1`},
		"a strip every 3 turns":         {"strip.policy = every", "strip.every = 3"},
		"a strip every turn":            {"strip.policy = every", "strip.every = 1"},
		"strip every":                   {"strip.policy = every"},
		"strip seasonal":                {"strip.policy = seasonal"},
		"assembly, day shift: 2 people": {"crafts.assembly.people.day = 2"},
		"assembly, day shift: 1 person": {"crafts.assembly.people.day = 1"},
		"window sag hot = 2 min":        {"window.sag_hot = 2 min"},
		"odd key":                       {"odd.key"},
		"pulled at a Barcol hardness of 35; waxed every turn":       {"hold.barcol = 35", "wax.every = 1"},
		"Reed 26 hull: entry gel coat; booth cooled to 24 °C":       {`models."Reed 26".parts.hull.grade = entry`, "climate.areas.booth.cool = 24 °C"},
		"booth: 3 of them; crafts lamination late = 0.5 h; plain x": {"places.booth.count = 3", "crafts.lamination.late = 0.5 h", "plain.x"},
	} {
		got := plain(changes)
		if got != want {
			t.Errorf("%q: %q, want %q", changes, got, want)
		}
	}
}

func TestGuessesInWords(t *testing.T) {
	saying.Check(t, guessed("life.turns", "turns after which a mold is resurfaced; 0: never", "300", "it decides"),
		"A guess, 300: turns after which a mold is resurfaced. It matters: it decides.")
	saying.Check(t, guessed(`crafts."gel coat".late`, "how late it runs", "0.5 h", "x"), "A guess, 0.5 h: gel coat: how late it runs. It matters: x.")
	saying.Check(t, guessed(`models."A. B".parts.deck.area`, "area of its mold", "9 m²", "x"), "A guess, 9 m²: A. B deck: area of its mold. It matters: x.")
}
