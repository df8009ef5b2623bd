// Package finish says how a part looks when it comes out of its mold and what
// it costs to put that right. Everything is a pure function of numbers.
//
// Luster is a score of 0 … 100 points, 100 for a perfect mirror. A part as
// pulled has 100 minus the sum of its losses; each loss is one Term with a file
// of its own and a row in Terms. A mold gathers build-up with every pull (Grow)
// and gives it up when it is stripped. Inspection reads luster with an error
// (Reading), and buffing takes hours (BuffHours) and gives back a share of some
// losses (Part.Buffs).
//
// No published data were found for gloss against pulls, so the numbers are
// assumptions to be calibrated with a plant's own gloss log; the forms follow
// common practice.
package finish
