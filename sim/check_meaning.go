package sim

import (
	"fmt"
	"slices"
)

// walker is what walks a route: it decides which steps have a meaning in it.
type walker uint8

const (
	walksPart walker = 1 << iota // in a mold up to the pull
	walksBare                    // a part that needs no mold
	walksCare
	walksBoat // or a piece of background work
)

// routeKinds says of each route what walks it.
func (p *Plan) routeKinds() []walker {
	kinds := make([]walker, len(p.Routes))
	for i := range p.Parts {
		if p.Parts[i].Care == None {
			kinds[p.Parts[i].Route] |= walksBare
			continue
		}
		kinds[p.Parts[i].Route] |= walksPart
		kinds[p.Parts[i].Care] |= walksCare
	}
	for i := range p.Models {
		kinds[p.Models[i].Boat] |= walksBoat
	}
	for i := range p.Background {
		kinds[p.Background[i].Route] |= walksBoat
	}
	return kinds
}

// ofMolds says whether the end of a step changes the state of a mold in care.
func (v Verb) ofMolds() bool {
	switch v {
	case MoldChecked, LightStripped, FullStripped, Waxed, Repaired, Renewed:
		return true
	}
	return false
}

// ofParts says whether the end of a step changes the state of a part.
func (v Verb) ofParts() bool { return v != NoVerb && !v.ofMolds() }

// ofMolds says whether a condition asks for the state of a mold.
func (c Cond) ofMolds() bool {
	switch c {
	case DueLight, DueFull, DueWax, CoatsLeft, Damaged, WornOut:
		return true
	}
	return false
}

// checkMeaning says what a step asks for that its route does not have: the
// state of a mold where there is none, or of a part on the way of a boat.
func checkMeaning(steps []Step, k int, kind walker) string {
	s := &steps[k]
	pulled := slices.ContainsFunc(steps[:k], func(s Step) bool { return s.Verb == Pulled })
	moldless := kind&(walksBare|walksBoat) != 0 || kind&walksPart != 0 && pulled
	noPart := kind&(walksCare|walksBoat) != 0
	switch {
	case s.Verb.ofMolds() && kind&^walksCare != 0:
		return fmt.Sprintf("%q belongs into the care of molds", s.Verb)
	case s.When.ofMolds() && moldless:
		return fmt.Sprintf("%q is about a mold, and there is none here", s.When)
	case s.Loop && s.Again.ofMolds() && moldless:
		return fmt.Sprintf("%q is about a mold, and there is none here", s.Again)
	case (s.Add == RepairHours || s.Scale == PerCoat) && moldless:
		return "its hours are about a mold, and there is none here"
	case s.Verb.ofParts() && noPart:
		return fmt.Sprintf("%q belongs into the way of a part", s.Verb)
	case s.Add != NoExtra && s.Add != RepairHours && noPart:
		return fmt.Sprintf("%q hours belong into the way of a part", s.Add)
	}
	return ""
}
