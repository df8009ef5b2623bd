// Package hand works out what a plant could make a week the way a foreman does
// on paper: hours there are over hours a boat takes, molds times turns, without
// running the plant. It is a check of the inputs and an upper bound of the
// plant, not an answer: nothing waits in it, nobody is late and nothing breaks.
//
// The paper has four rules.
//
//   - Everything takes its mean time, with the people wanted. What happens on
//     some turns only (a strip, a band, a chip repair) counts with its share,
//     and flaws as on parts made as they should be.
//   - A mold alone in the plant is walked through the calendar: labor in the
//     shifts of its craft, waits by the clock. Beside it stands the shop rule:
//     work and hold each rounded up to whole shifts (common practice, no source).
//   - A week is a mean week in which the plant is open: holidays are taken out,
//     shutdown weeks are not counted.
//   - The boats share crafts and places in the proportions of their orders; of
//     each model the molds allow what the scarcest part allows.
//
// Not on the paper: waiting, changing colors, buffing, parts that stick, break-in
// of new molds, heat and failures.
package hand
