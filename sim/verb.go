package sim

import (
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/record"
)

// Verb is what the end of a step means to the plant. To add one: a constant,
// and a row in verbs.
type Verb uint8

// Verbs.
const (
	NoVerb Verb = iota
	Sprayed
	SkinBegun
	WashedOut
	LaborEnded
	Pulled
	MoldChecked
	LightStripped
	FullStripped
	Waxed
	Repaired
	Renewed
	Inspected
	Reworked
	Held
	TouchedUp
	verbCount
)

// verb is a meaning with its name in scenario files. do returns false when the
// job has ended.
type verb struct {
	name, doc string
	do        func(r *Run, j int32) bool
}

var verbs = [verbCount]verb{
	NoVerb:        {"", "", nil},
	Sprayed:       {"sprayed", "the base color is on; the gel window runs", (*Run).verbSprayed},
	SkinBegun:     {"skin coat", "the skin coat closes the gel window", (*Run).verbSkin},
	WashedOut:     {"washed out", "old gel coat is off; the part is sprayed again", (*Run).verbWashed},
	LaborEnded:    {"laminated", "a shot is done; the hold begins after the last", (*Run).verbLaminated},
	Pulled:        {"pulled", "the part leaves the mold; the mold goes to its care", (*Run).verbPulled},
	MoldChecked:   {"mold checked", "strip, wax and repair are decided", (*Run).verbChecked},
	LightStripped: {"light strip", "build-up is off, with light coats", (*Run).verbLightStrip},
	FullStripped:  {"full strip", "build-up is off, compounded, with full coats", (*Run).verbFullStrip},
	Waxed:         {"coat of wax", "one coat is on", (*Run).verbWaxed},
	Repaired:      {"mold repaired", "the damage is gone", (*Run).verbRepaired},
	Renewed:       {"mold renewed", "resurfaced or replaced; the break-in begins", (*Run).verbRenewed},
	Inspected:     {"inspected", "luster is read", (*Run).verbInspected},
	Reworked:      {"buffed", "a round of rework took most of the haze away", (*Run).verbReworked},
	Held:          {"held", "the hold is over: the part may be pulled, or needs heat", (*Run).verbHeld},
	TouchedUp:     {"touched up", "flaws that inspection found are put right", (*Run).verbTouchedUp},
}

// String is the name in scenario files.
func (v Verb) String() string { return verbs[v].name }

// VerbNames lists the meanings a step may name.
func VerbNames() []string { return namesOf(verbs[:], func(v *verb) string { return v.name }) }

// VerbTerms explains the meanings a step may name, in the order of VerbNames.
func VerbTerms() []Term {
	return termsOf(verbs[:], func(v *verb) Term { return Term{v.name, v.doc} })
}

// VerbNamed finds a verb by name.
func VerbNamed(name string) (Verb, bool) {
	for i := range verbs {
		if i > 0 && verbs[i].name == name {
			return Verb(i), true
		}
	}
	return 0, false
}

func (r *Run) verbSprayed(j int32) bool {
	b := &r.jobs[j]
	b.piece.sprayed = r.clk.Now()
	b.piece.heat, b.piece.heats = r.air.HeatIndexF(r.step(b).Area, r.clk.Now()), 1
	r.sprayedIn(b, r.step(b).Area)
	r.opens(b)
	return true
}

// verbSkin closes the gel window. Lateness was judged when the step began.
func (r *Run) verbSkin(j int32) bool {
	b := &r.jobs[j]
	began := r.clk.Now()
	if s := r.step(b); s.Pace == Labor {
		began = b.begun
	}
	b.piece.made.skinned = began
	if b.piece.sprayed > 0 {
		b.piece.late = (began - b.piece.sprayed).Hours()
		if over := b.piece.late - r.plan.Window.Limit; over > 0 && r.plan.Window.Limit > 0 {
			r.note(record.Note{Kind: record.WindowMiss, Order: b.order, Mold: b.mold, Part: b.part, Place: None, Value: over})
		}
		b.piece.sprayed = 0
		r.flaw(b, defect.Alligatoring)
	}
	r.closes(b)
	return r.verbLaminated(j)
}

func (r *Run) verbWashed(j int32) bool {
	b := &r.jobs[j]
	r.note(record.Note{Kind: record.Resprayed, Order: b.order, Mold: b.mold, Part: b.part, Place: None})
	b.piece.sprayed = 0
	b.piece.made.sprays++
	r.closes(b)
	return true
}

func (r *Run) verbLaminated(j int32) bool {
	b := &r.jobs[j]
	b.piece.laborEnded = r.clk.Now()
	r.cures(b, r.step(b).Area)
	b.piece.heat += r.air.HeatIndexF(r.step(b).Area, r.clk.Now())
	b.piece.heats++
	return true
}

// washOut says whether the gel coat is too old now to be laid up.
func (r *Run) washOut(j int32) bool {
	p := &r.jobs[j].piece
	return r.plan.Window.Wash > 0 && p.sprayed > 0 && (r.clk.Now()-p.sprayed).Hours() > r.plan.Window.Wash
}

func (r *Run) verbInspected(j int32) bool {
	b := &r.jobs[j]
	p := &b.piece
	first := !p.made.seen
	if !r.inspectFlaws(j) {
		return false
	}
	luster := finish.Luster(&r.plan.Finish, &p.fin)
	p.reading = finish.Reading(&r.plan.Finish, luster, b.key.U(luckReading+uint64(p.rounds)))
	if first {
		p.made.seen = true
		clean := 0.0
		if p.made.mend == 0 && p.reading >= r.plan.Rework.Target {
			clean = 1
		}
		r.note(record.Note{Kind: record.Inspected, Order: b.order, Mold: None, Part: b.part, Place: None, Value: clean})
	}
	if p.reading < r.plan.Rework.Target && int(p.rounds) >= r.plan.Rework.Rounds && !p.conceded {
		p.conceded = true
		r.note(record.Note{Kind: record.Conceded, Order: b.order, Mold: None, Part: b.part, Place: None, Value: p.reading})
	}
	return true
}

func (r *Run) verbReworked(j int32) bool {
	b := &r.jobs[j]
	b.piece.rounds++
	b.piece.fin.Buffs++
	r.note(record.Note{Kind: record.Buffed, Order: b.order, Mold: None, Part: b.part, Place: None, Value: b.full.Hours() * float64(r.step(b).Want)})
	return true
}

// Extra is an amount of hours that depends on the state of things, on top of
// the time of a step. To add one: a constant, and a row in extras.
type Extra uint8

// Extras.
const (
	NoExtra Extra = iota
	Scuffing
	BuffHours
	RepairHours
	StuckHours
	TouchUpHours
	extraCount
)

type extra struct {
	name, doc string
	of        func(r *Run, j int32) float64
}

var extras = [extraCount]extra{
	NoExtra:     {"", "", nil},
	Scuffing:    {"scuff", "gel coat past its window is scuffed", scuffHours},
	BuffHours:   {"buff", "hours to buff up to the target", buffHours},
	RepairHours: {"mold repair", "hours to repair the mold", func(r *Run, j int32) float64 { return r.moldOf(j).repair / float64(max(r.step(&r.jobs[j]).Want, 1)) }},
	StuckHours: {"stuck part", "hours to mend a part that stuck", func(r *Run, j int32) float64 {
		return r.jobs[j].piece.stuckHours / float64(max(r.step(&r.jobs[j]).Want, 1))
	}},
	TouchUpHours: {"touch-up", "hours to put right the flaws that inspection found", func(r *Run, j int32) float64 {
		return r.jobs[j].piece.made.mend / float64(max(r.step(&r.jobs[j]).Want, 1))
	}},
}

// String is the name in scenario files.
func (e Extra) String() string { return extras[e].name }

// ExtraNames lists the extra hours a step may name.
func ExtraNames() []string { return namesOf(extras[:], func(e *extra) string { return e.name }) }

// ExtraTerms explains the extra hours a step may name, in the order of
// ExtraNames.
func ExtraTerms() []Term {
	return termsOf(extras[:], func(e *extra) Term { return Term{e.name, e.doc} })
}

// ExtraNamed finds an extra by name.
func ExtraNamed(name string) (Extra, bool) {
	for i := range extras {
		if i > 0 && extras[i].name == name {
			return Extra(i), true
		}
	}
	return 0, false
}

func scuffHours(r *Run, j int32) float64 {
	b := &r.jobs[j]
	if b.piece.sprayed == 0 || r.plan.Window.Limit <= 0 || (r.clk.Now()-b.piece.sprayed).Hours() <= r.plan.Window.Limit {
		return 0
	}
	return r.plan.Window.Scuff * r.plan.Parts[b.part].Area / float64(max(r.step(b).Want, 1))
}

func buffHours(r *Run, j int32) float64 {
	b := &r.jobs[j]
	u := b.key.U(luckBuff + uint64(b.piece.rounds))
	return finish.BuffHours(&r.plan.Finish, b.piece.reading, r.plan.Rework.Target, r.plan.Parts[b.part].Area, u) / float64(max(r.step(b).Want, 1))
}

// Scale is a factor on the time of a step that depends on the state of things.
type Scale uint8

// Scales.
const (
	NoScale Scale = iota
	PerCoat
	scaleCount
)

type scale struct {
	name string
	of   func(r *Run, b *job) float64
}

var scales = [scaleCount]scale{
	NoScale: {"", nil},
	PerCoat: {"per coat", func(r *Run, b *job) float64 { return float64(max(r.molds[b.mold].coatsDue, 1)) }},
}
