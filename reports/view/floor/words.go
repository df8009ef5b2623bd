package floor

import (
	"moldturn/reports/view"
	"moldturn/sim"
	"moldturn/sim/record"
)

// kind is what a bar of a mold can be. There are as many as can be told apart.
type kind int

const (
	inBooth kind = iota
	setting
	laminating
	curing
	pulling
	care
	waiting
	idle
	kinds
)

// kindNames say what each kind is; a wait is a thin bar.
var kindNames = [kinds]string{
	"in booth: masked, sprayed", "gelling, or setting between shots", "laminated", "curing in hold",
	"pulled; thin: ready to pull", "waxed, stripped, checked, mended", "thin: waits for people, place or air; line: for the next shift, or at night", "thin: no order, or not in rotation",
}

// state is what a mold does at a time, in words of the floor.
type state struct {
	kind  kind
	label string
	thin  bool
	what  string // of a wait: "the gel crew"
	night bool   // it waits for a shift, or at night
}

// notInUse is what a mold in reserve or retired does.
const notInUse = "in reserve or retired"

// doingWords say what is done to a mold.
var doingWords = [record.Doings]string{
	record.Waxing: "waxed", record.Stripping: "stripped", record.Checking: "checked", record.Repairing: "mended",
	record.Masking: "masked", record.Spraying: "sprayed", record.Gelling: "gelling", record.Laminating: "laminated",
	record.SkinCure: "setting", record.Curing: "curing", record.Pulling: "pulled", record.OutOfUse: notInUse,
}

var doingKinds = [record.Doings]kind{
	record.Idle: idle, record.Waxing: care, record.Stripping: care, record.Checking: care, record.Repairing: care,
	record.Masking: inBooth, record.Spraying: inBooth, record.Gelling: setting, record.Laminating: laminating,
	record.SkinCure: setting, record.Curing: curing, record.Pulling: pulling, record.OutOfUse: idle,
	record.Trimming: care, record.Finishing: care, record.Assembling: care, record.Background: care, record.Other: care,
}

// stateOf puts a span of a mold in words.
func stateOf(p *sim.Plan, s *record.Span) state {
	if s.Working {
		label := doingWords[s.Doing]
		if label == "" {
			label = s.Doing.String()
		}
		k := doingKinds[s.Doing]
		return state{kind: k, label: label, thin: k == idle}
	}
	what := waitsFor(p, s.Cause)
	x := state{kind: waiting, label: "waits for " + what, thin: true, what: what, night: forShift(s.Cause.Reason)}
	switch {
	case withoutOrder(s.Cause.Reason):
		x.kind = idle
	case s.Doing == record.Pulling:
		x.kind, x.label = pulling, "ready to pull, "+x.label
	}
	return x
}

// withoutOrder is true for what keeps a ready mold from starting.
func withoutOrder(r record.Reason) bool { return r >= record.NoOrder && r <= record.RotationFull }

// forShift is true for a wait that ends with the night.
func forShift(r record.Reason) bool { return r == record.OffShift || r == record.ShiftEnds }

// waitsFor ends the sentence "it waits for …".
func waitsFor(p *sim.Plan, c record.Cause) string {
	craft, place := "", ""
	if c.Of >= 0 {
		if int(c.Of) < len(p.Crafts) {
			craft = view.CrewName(p.Crafts[c.Of].Name)
		}
		if int(c.Of) < len(p.Places) {
			place = p.Places[c.Of].Name
		}
	}
	switch c.Reason {
	case record.NoCrew:
		return "the " + craft
	case record.OffShift:
		return "the next shift of the " + craft
	case record.ShiftEnds:
		return "the next shift, too little of this one is left for the " + craft
	case record.NoPlace, record.NoHoist:
		return "a free " + place
	case record.NoGun:
		return "a gun set that works"
	case record.Down:
		return "the repair of the " + place
	}
	return reasonWords[c.Reason]
}

// reasonWords are waits that are about no craft and no place.
var reasonWords = [record.Reasons]string{
	record.NoReason: "what was not recorded", record.NoOrder: "an order", record.NoPlain: "an order in one solid color",
	record.FloorLimit: "room on the floor: the limit of boats is reached", record.MateLimit: "the other parts of the boats to catch up",
	record.RotationFull: "its place in rotation", record.NoMold: "a mold", record.MateMissing: "the other parts of its boat",
	record.DewPoint: "the mold to be clear of the dew point", record.TooHumid: "drier air", record.TooCold: "a warmer mold",
	record.GelWindow: "the gel window: the skin coat could not follow in time", record.NeedsHeat: "heat to cure",
}
