// Package weekly shows what limits a plant through the year: use and waits of
// each craft and place by week, and what the waits of molds are worth in boats.
//
// Its input is the runs of one way to run the plant with the plan that names
// them. Findings are rules of their own, each tested on both sides of its
// switches.
package weekly
