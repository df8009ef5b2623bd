// Package defect says which flaws a part has beside a loss of luster, whether
// inspection finds them, and what they cost. Everything is a pure function of
// numbers and of the part's own luck.
//
// A defect is a chance at reference conditions times the effects of what was
// done to the part: film, air, waiting, hold, mold (type Part). Each is one file
// and one row in All; its numbers are inputs with defaults. No published rates
// were found, so the chances are assumptions, set so that at reference
// conditions a shop sees what common practice tells, no source: 75 % of parts
// need some touch-up, 8 % take over 4 h, 0.4 % are scrapped. The causes are
// published troubleshooting advice, named in each file.
package defect
