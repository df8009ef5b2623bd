package money

import (
	"cmp"
	"iter"
	"maps"
	"slices"
)

// sorted walks a map in the order of its keys.
func sorted[K cmp.Ordered, V any](m map[K]V) iter.Seq2[K, V] {
	return func(yield func(K, V) bool) {
		for _, k := range slices.Sorted(maps.Keys(m)) {
			if !yield(k, m[k]) {
				return
			}
		}
	}
}
