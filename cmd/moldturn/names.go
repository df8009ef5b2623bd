package main

import (
	"slices"
	"strconv"
	"strings"
)

// nameList writes names with commas between them, in quotes where a name has a
// comma of its own.
func nameList(names []string) string {
	if slices.ContainsFunc(names, func(n string) bool { return strings.Contains(n, ",") }) {
		names = slices.Clone(names)
		for i := range names {
			names[i] = strconv.Quote(names[i])
		}
	}
	return strings.Join(names, ", ")
}
