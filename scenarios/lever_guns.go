package scenarios

import "fmt"

// gunLever is the lever of the gun sets of a place: one more, or one less, of the
// pumped sets that spray any color, in each of its booths. ok is false where no
// such set is listed: sets that nobody listed are always there, and one that is
// kept for a color or for bands says what it is for.
func (s *Scenario) gunLever(name string, place *Value) (l Lever, ok bool) {
	at, now, i := -1, 0, 0
	for _, g := range place.Each("guns") {
		if !g.At("pot").Flag() && !g.At("color").Given() {
			now, at = now+1, i
		}
		i++
	}
	listed := s.doc.root.get("places").get(name).get("guns")
	if now == 0 || listed == nil || listed.shape != list {
		return Lever{}, false
	}
	return Lever{Kind: GunSets, Key: "guns." + name, Label: name + " gun set", Unit: "gun set in each " + name, Now: now,
		paths: []string{place.At("guns").Path()}, now: []int{now}, guns: listed, gun: at,
		price: s.Base.Value.At("size.guns").Dollars() * float64(place.At("count").Count())}, true
}

// byGuns is the change that gives every booth some sets more, copies of the last
// one that sprays any color, or some less, the last of them first.
func (l *Lever) byGuns(steps int) (changes []Change, ok bool) {
	if l.Now+steps < 1 {
		return nil, false
	}
	sets := *l.guns
	sets.items = append([]*node{}, l.guns.items...)
	for n := range steps {
		set := sets.items[l.gun]
		label := &node{shape: scalar, text: fmt.Sprintf("gun set %d", len(l.guns.items)+n+1), at: set.at}
		sets.items = append(sets.items, set.with(key{name: "name", at: set.at}, label))
	}
	for i := len(sets.items) - 1; i >= 0 && steps < 0; i-- {
		set := sets.items[i]
		if set.get("color") == nil && (set.get("pot") == nil || set.get("pot").text == "false") {
			sets.items = append(sets.items[:i], sets.items[i+1:]...)
			steps++
		}
	}
	return []Change{{Path: l.paths[0], value: &sets, at: l.guns.at}}, true
}
