// Package permit estimates what a plant's gel coat, resin and solvent mean for
// its air permit, from facts of a run.
//
// The world model. A Book listens to a run and counts, by calendar month, how
// often each part type was sprayed, banded and laid up, what was done on molds,
// and how often a gun was flushed: whole numbers, no masses. Use turns counts
// into kilograms of each Material, by area, film, density and transfer. A
// Ledger adds what was used before the run and looks back over twelve months at
// every month's end: the averaging of 40 CFR 63 Subpart VVVV, its limits of
// content, and tons of organic HAP (hazardous air pollutants, for this trade
// mostly styrene) from emission factors. Because counts hold no masses, a lever
// such as a thinner film is computed again on the same counts.
//
// Two scales that must not be mixed: a point value of Subpart VVVV is a
// surrogate for judging compliance, an emission factor is an estimate of what
// goes into the air.
//
// Everything here is a planning estimate. Compliance is shown by the plant's own
// records and its permit, judged by licensed people.
package permit
