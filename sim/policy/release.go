package policy

// ReleaseKind says which of the waiting orders a mold takes.
type ReleaseKind uint8

// Kinds of release.
const (
	Oldest   ReleaseKind = iota // by arrival
	DueDate                     // by due date
	ColorRun                    // the color last sprayed, as long as the run lasts
)

// Release is the order in which waiting orders get a mold.
type Release struct {
	Kind    ReleaseKind
	Run     int  // longest run of one color, for ColorRun
	Look    int  // how far down the list a run may look for its color
	ByColor bool // darks to molds fresh from a strip, whites to those late in their cycle
}

// Waiting is what a release policy sees of an order.
type Waiting struct {
	Color int16
	Dark  bool
	Plain bool // one solid color, no band
}

// Pick says which of the waiting orders, sorted by urgency and then arrival or
// due date, a mold takes: an index, or -1 for none. plain asks for a solid
// color; last and run are the color sprayed last on this kind of part and how
// often in a row; late says that the mold is in the second half of its turns
// between strips.
func (r *Release) Pick(orders []Waiting, plain bool, last int16, run int, late bool) int {
	first := -1
	look := len(orders)
	if r.Look > 0 {
		look = min(look, r.Look)
	}
	for i := range orders {
		if plain && !orders[i].Plain {
			continue
		}
		if first < 0 {
			first = i
		}
		if i >= look {
			break
		}
		if r.Kind == ColorRun && run < r.Run && orders[i].Color == last {
			return i
		}
		if r.ByColor && orders[i].Dark != late {
			return i
		}
	}
	return first
}
