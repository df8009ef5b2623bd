// Package stats turns numbers into summaries: means with intervals, differences
// of alternatives, the length of a warm-up, the choice of the best. It knows
// nothing of plants.
//
// Rules of the whole package:
//
//   - A doubt travels with the number. What a reader should know about a result
//     is in its Warnings, in words; an empty list means no doubt.
//   - No result is NaN or infinite. Where there is none, fields are 0 and Known
//     or a warning says so. Values that are not finite are left out of a
//     summary, with a warning. (Squares must not overflow: values stay below
//     1e150 in size.)
//   - Nothing is concluded from too little: a difference is Clear only if its
//     interval leaves out 0.
//   - The same numbers in the same order give the same bits.
package stats
