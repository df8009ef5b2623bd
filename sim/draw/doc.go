// Package draw is the luck of a run: keyed streams of uniform numbers and the
// laws that turn a uniform number into a length of work, a wait or a cost.
//
// A stream is a [Key]. It is made from the seed, the replication, a [Purpose]
// and the ids of whatever the luck belongs to: an order's part, a person's day,
// a booth's failure. The n-th number of a stream is a function of the key and
// n alone, so nothing is stored, streams may be read in any order, and a stream
// that an alternative adds moves no number of any other. The numbers of two
// alternatives stay paired as long as they ask for the same keys.
//
// A law is a [Dist]. Every draw takes exactly one uniform number and inverts
// the distribution function, so that a longer or a shorter law uses up the same
// luck and a bad day stays a bad day in every alternative.
//
//	const lamination draw.Purpose = 3
//	root := draw.Root(seed, replication)
//	hours := work.Quantile(root.At3(lamination, order, part, step).U(attempt))
//
// All laws here describe amounts that cannot be negative. For signed noise use
// [Normal01]. Parameters and values have the unit of the caller, in moldturn
// hours for work and waits.
package draw
