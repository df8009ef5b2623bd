// Package money makes a ledger of the facts of one run.
//
// The world model. A Book listens to a run and keeps whole quantities: person-
// milliseconds by craft and activity, parts sprayed and pulled by type, coats,
// strips, flushes, boat-milliseconds on the floor, boats with an escape. Nothing
// in it is money. Price turns quantities into lines, each a quantity times one
// price, rounded to whole cents once; every total is a sum of such lines. So a
// ledger adds up to the cent, a price never changes what the plant does, and
// every amount can be traced to what happened.
//
// Three kinds of lines are never added to each other: what is spent and earned
// while the plant runs (Cost, Income); the wear of molds, their price spread
// over the turns of their life (Wear); and what is paid for molds when they are
// bought (Purchase). A cost per boat takes Cost and Wear, a contribution Income
// less Cost, an investment Purchase and contributions.
//
// Amounts are in the scenario's currency; which sign it has is text only.
package money
