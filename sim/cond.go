package sim

import "moldturn/sim/policy"

// Cond is a condition under which a step applies. To add one: a constant, and
// a row in conds.
type Cond uint8

// Conditions.
const (
	Always Cond = iota
	Banded
	BelowTarget
	DueLight
	DueFull
	DueWax
	CoatsLeft
	Damaged
	WornOut
	TooLate
	StuckPart
	NeedHeat
	Flawed
	conditions
)

// cond is a condition with its name in scenario files and its meaning.
type cond struct {
	name, doc string
	of        func(r *Run, j int32) bool
}

var conds = [conditions]cond{
	Always:      {"always", "the step is always done", func(*Run, int32) bool { return true }},
	Banded:      {"banded", "the part carries an accent band", func(r *Run, j int32) bool { return r.jobs[j].piece.banded }},
	BelowTarget: {"below target", "the reading is below the luster target and a round of rework is left", belowTarget},
	DueLight:    {"light strip due", "the strip policy asks for a light strip", func(r *Run, j int32) bool { return r.moldOf(j).due == policy.Light }},
	DueFull:     {"full strip due", "the strip policy asks for a full strip", func(r *Run, j int32) bool { return r.moldOf(j).due == policy.Full }},
	DueWax:      {"wax due", "coats of wax are due", func(r *Run, j int32) bool { return r.moldOf(j).coatsDue > 0 }},
	CoatsLeft:   {"coats left", "more coats of wax are due", func(r *Run, j int32) bool { return r.moldOf(j).coatsDue > 0 }},
	Damaged:     {"damaged", "the mold needs a repair", func(r *Run, j int32) bool { return r.moldOf(j).repair > 0 }},
	WornOut:     {"worn out", "the mold is to be resurfaced or replaced", func(r *Run, j int32) bool { return r.moldOf(j).worn }},
	TooLate:     {"window missed", "the gel coat is too old for lay-up and is washed out", func(r *Run, j int32) bool { return r.washOut(j) }},
	StuckPart:   {"stuck", "the part was stuck in its mold", func(r *Run, j int32) bool { return r.jobs[j].piece.stuck }},
	NeedHeat:    {"needs heat", "the longest hold is over and the part is not as hard as wanted", func(r *Run, j int32) bool { return r.jobs[j].piece.made.warm }},
	Flawed:      {"flawed", "inspection found flaws that are to be put right", func(r *Run, j int32) bool { return r.jobs[j].piece.made.mend > 0 }},
}

func (r *Run) holds(c Cond, j int32) bool { return conds[c].of(r, j) }

// String is the name in scenario files.
func (c Cond) String() string { return conds[c].name }

// CondNames lists the conditions a step may name, in their order.
func CondNames() []string { return namesOf(conds[:], func(c *cond) string { return c.name }) }

// Term is a word of scenario files with its meaning.
type Term struct{ Name, Doc string }

// CondTerms explains the conditions a step may name, in the order of CondNames.
func CondTerms() []Term {
	return termsOf(conds[:], func(c *cond) Term { return Term{c.name, c.doc} })
}

// CondNamed finds a condition by name.
func CondNamed(name string) (Cond, bool) {
	for i := range conds {
		if conds[i].name == name {
			return Cond(i), true
		}
	}
	return 0, false
}

func namesOf[T any](rows []T, name func(*T) string) []string {
	out := make([]string, 0, len(rows))
	for i := range rows {
		if n := name(&rows[i]); n != "" {
			out = append(out, n)
		}
	}
	return out
}

func termsOf[T any](rows []T, term func(*T) Term) []Term {
	out := make([]Term, 0, len(rows))
	for i := range rows {
		if t := term(&rows[i]); t.Name != "" {
			out = append(out, t)
		}
	}
	return out
}

func belowTarget(r *Run, j int32) bool {
	p := &r.jobs[j].piece
	return p.reading < r.plan.Rework.Target && int(p.rounds) < r.plan.Rework.Rounds
}
