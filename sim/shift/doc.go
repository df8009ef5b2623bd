// Package shift says when people work. A Pattern is what a plant writes down:
// shifts by weekday, breaks, holidays, shutdowns and extra days. Compile turns
// it into a Calendar: sorted half-open working intervals over a horizon, and
// exact arithmetic on them in whole milliseconds.
//
// The conventions, once for the whole package:
//
//   - An interval [From, To) is on at From and off at To. Work that is done
//     exactly at To ends there and carries nothing into the next shift.
//   - A shift belongs to the day it starts on. A night shift of Friday,
//     22:00–06:00, is Friday's work on Saturday morning; a holiday or a
//     shutdown on Saturday does not stop it, one on Friday does.
//   - A break is inside a shift: the same people come back. The end of a shift
//     sends them home, even if the next shift starts at the same instant, so
//     touching shifts stay two intervals.
//   - Before instant 0 and from the horizon on, every calendar is off, and an
//     instant that would lie there is clock.Never.
//
// Calendars do not change after they are made and may be shared by any number
// of runs at once.
package shift
