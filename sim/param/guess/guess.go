// Package guess finds the name that a mistyped word most likely meant, for the
// second line of a complaint. It imports nothing of ours.
package guess

import "strings"

// Near is the candidate closest to word, or "" when none is close enough to be
// worth proposing. Case, spaces, "-" and "_" do not count. Close enough means
// at most one slip in three letters (one slip for shorter words), or that word
// is the beginning of exactly one candidate. Of equally close candidates the
// first is taken, so the answer depends on the order of the candidates only.
func Near(word string, candidates []string) string {
	w := []rune(Fold(word))
	if len(w) == 0 || len(w) > longest {
		return ""
	}
	best, limit := "", max(1, len(w)/3)
	if len(w) == 1 {
		limit = 0
	}
	for _, c := range candidates {
		d := Distance(w, []rune(Fold(c)))
		if d < limit || d == limit && best == "" {
			best, limit = c, d
		}
	}
	if best == "" {
		best = onlyBeginning(string(w), candidates)
	}
	return best
}

// longest bounds the work spent on a hostile file: no name of ours is longer.
const longest = 64

// onlyBeginning is the one candidate that starts with w, or "".
func onlyBeginning(w string, candidates []string) string {
	found := ""
	for _, c := range candidates {
		if strings.HasPrefix(Fold(c), w) {
			if found != "" {
				return ""
			}
			found = c
		}
	}
	return found
}

// Fold removes what people get wrong in names without noticing: case, spaces,
// "-" and "_". "Rush 23" and "rush-23" fold to the same text.
func Fold(s string) string {
	return strings.Map(func(r rune) rune {
		switch r {
		case ' ', '-', '_':
			return -1
		}
		return r
	}, strings.ToLower(s))
}

// Distance is the number of slips that lead from a to b: a letter left out,
// added, exchanged, or two neighbors swapped, no letter touched twice (the
// restricted distance of F. J. Damerau, "A technique for computer detection and
// correction of spelling errors", Communications of the ACM 7(3), 1964). Texts
// over 64 letters count as infinitely far.
func Distance(a, b []rune) int {
	if len(a) > longest || len(b) > longest {
		return 1 << 30
	}
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
