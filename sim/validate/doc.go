// Package validate holds the engine against what is known exactly: queues,
// closed loops, calendars, priorities, breakdowns, blocking, matching of parts,
// and start-up from an empty plant. Each Case is a skeleton plant, a plan like
// any other with most of a boat plant left out, together with numbers that were
// found without any run and the place where they are published.
//
// A number that is subject to luck passes if it lies within four standard
// errors of the exact one. The standard error is that of theory where the
// source gives it, otherwise of the means of batches, or of runs. With several
// hundred such numbers, some full checks in a hundred fail by bad luck alone,
// and the case passes under another seed; the same seed always gives the same
// result. Times of
// plants without luck must agree to the millisecond.
package validate
