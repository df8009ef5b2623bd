package draw

import "math/bits"

// Key names one stream of uniform numbers. Two keys made from different seeds,
// replications, purposes or ids give streams that behave as independent ones;
// a key made from the same ones gives the same stream on every machine. The
// zero Key is a stream like any other, but comes from no seed.
type Key uint64

// Purpose tells apart the kinds of luck that belong to one thing, such as the
// length of a task and whether its result has a defect. Users of this package
// declare theirs as constants: distinct, never zero, and never changed later,
// because a changed purpose changes the luck of every recorded study.
type Purpose uint64

// golden is 2^64 divided by the golden ratio, rounded to an odd number: the
// step of SplitMix64.
const golden = 0x9e3779b97f4a7c15

// Odd steps that keep an id, a purpose and the n of a stream from meeting in
// the argument of mix. They are the multipliers of xxHash64 (Collet 2012).
const (
	idStep      = 0xc2b2ae3d27d4eb4f
	purposeStep = 0x165667b19e3779f9
)

// mix is the finalizer of SplitMix64: a one-to-one map of 64 bits in which
// every bit of the argument moves about half of the result. Source: Steele,
// Lea, Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA 2014,
// with the constants of variant 13 of Stafford's mixers.
func mix(z uint64) uint64 {
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// Root is the key that all keys of one replication come from. Any seed and any
// replication number, negative ones too, are allowed.
func Root(seed uint64, replication int) Key {
	return Key(seed).id(0).id(uint64(replication))
}

// id is the key below k for one id. It is one-to-one in id for a given k, and
// the turn of k makes the order of ids matter.
func (k Key) id(id uint64) Key {
	return Key(mix(bits.RotateLeft64(uint64(k), 23) + (id+1)*idStep))
}

// purpose is the key below k for a purpose with a number of ids to come, so
// that a purpose is never taken for an id nor a short chain for a long one.
func (k Key) purpose(p Purpose, ids uint64) Key {
	return Key(mix(bits.RotateLeft64(uint64(k), 41) ^ (uint64(p)<<3+ids+1)*purposeStep))
}

// At0 is the stream of a purpose that belongs to k itself, such as the weather
// of a replication. Purposes below 2^61 are told apart.
func (k Key) At0(p Purpose) Key { return k.purpose(p, 0) }

// At1 is the stream of a purpose for one id.
func (k Key) At1(p Purpose, a uint64) Key { return k.purpose(p, 1).id(a) }

// At2 is the stream of a purpose for two ids; their order matters.
func (k Key) At2(p Purpose, a, b uint64) Key { return k.purpose(p, 2).id(a).id(b) }

// At3 is the stream of a purpose for three ids; their order matters.
func (k Key) At3(p Purpose, a, b, c uint64) Key { return k.purpose(p, 3).id(a).id(b).id(c) }

// At4 is the stream of a purpose for four ids; their order matters.
func (k Key) At4(p Purpose, a, b, c, d uint64) Key {
	return k.purpose(p, 4).id(a).id(b).id(c).id(d)
}

// Bits is the n-th word of the stream. Words 1, 2, 3, … are the output of
// SplitMix64 seeded with the key; word 0 is as good as they are.
func (k Key) Bits(n uint64) uint64 { return mix(uint64(k) + n*golden) }

// U is the n-th uniform number of the stream, strictly between 0 and 1: the
// upper 52 bits of the n-th word and half a step. Every value is an odd multiple
// of 2^-53, so 1-U is exact and never 0 or 1, and the law is symmetric about a
// half. (With 53 bits and half a step the largest value would round to 1.)
func (k Key) U(n uint64) float64 {
	return (float64(int64(k.Bits(n)>>12)) + 0.5) * 0x1p-52
}
