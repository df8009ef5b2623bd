package policy

// Hold is how long a part stays in its mold after the last labor: each limit
// that is set must be reached, and Most ends the wait whatever the part is
// like. The zero Hold asks for nothing.
type Hold struct {
	Clock      float64 // clock hours
	Equivalent float64 // equivalent hours at 25 °C
	Degree     float64 // degree of cure, 0 … 1
	Most       float64 // clock hours after which it is pulled green; 0: no limit
}
