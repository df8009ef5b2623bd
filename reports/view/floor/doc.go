// Package floor shows one typical run of a plant from near: what each mold does
// over some weeks, and a diary of the floor to step through. It is for finding
// mistakes of a model together with those who know the floor.
//
// Its input is a study.Typical: a replication that was run again with a
// recorder. The package rounds and labels; it counts nothing that is not in the
// facts.
package floor
