package policy

// Hold is how long a part stays in its mold after the last labor: every limit
// that is set must be reached. Most ends the wait whatever the part is like,
// but not before Clock. The zero Hold asks for nothing.
type Hold struct {
	Clock      float64 // clock hours
	Equivalent float64 // equivalent hours at 25 °C
	Degree     float64 // degree of cure, 0 … 1; a wanted Barcol hardness is one
	Most       float64 // clock hours after which it is warmed or pulled green; 0: no limit
}
