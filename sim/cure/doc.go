// Package cure says how far a laminate has hardened, from the temperature of
// its mold alone. Everything is a pure function of numbers.
//
// Two clocks are kept. Equivalent hours count time at the speed of an Arrhenius
// law against 25 °C and serve for waits that are short against the whole cure:
// gel, skin, between shots (type Hours). The degree of cure, 0 … 1, is what a
// hardness reading follows; it stops at a plateau that depends on temperature,
// so it is no function of equivalent hours alone (type Degree).
//
// Temperatures are °C and constant within each clock hour; lengths of time are
// hours where they are float64, and milliseconds where they are clock.Time.
package cure
