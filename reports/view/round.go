package view

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// decimals is how many decimals a number known to ± half supports, at most
// most. Of the half width one digit is kept, two where its first three digits
// are 100 to 354, as the Particle Data Group rounds (Review of Particle
// Physics, Introduction, section Rounding; from memory). Without a half width
// it is most.
func decimals(half float64, most int) int {
	if !(half > 0) || math.IsInf(half, 0) {
		return most
	}
	power := int(math.Floor(math.Log10(half)))
	lead := math.Round(half / math.Pow10(power) * 100) // 100 … 1000
	kept := 0
	switch {
	case lead <= 354:
		kept = 1
	case lead >= 950:
		kept = 1
		power++
	}
	return max(0, min(most, kept-power))
}

// together is one number of decimals for numbers that are read side by side:
// what the middle one of their intervals supports.
func together(halves []float64, most int) int {
	var all []int
	for _, h := range halves {
		if h > 0 {
			all = append(all, decimals(h, most))
		}
	}
	if len(all) == 0 {
		return most
	}
	slices.Sort(all)
	return all[(len(all)-1)/2]
}

// fixed prints v with a number of decimals. A value that rounds to zero has no
// sign.
func fixed(v float64, digits int) string {
	s := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Trim(s, "-0.") == "" {
		return strings.TrimPrefix(s, "-")
	}
	return strings.Replace(s, "-", "−", 1)
}

// signed is fixed with a sign before what is above zero.
func signed(v float64, digits int) string {
	s := fixed(v, digits)
	if v > 0 && strings.Trim(s, "0.") != "" {
		return "+" + s
	}
	return s
}

// plusMinus prints a half width; one that rounds to zero is shown as smaller
// than the last digit.
func plusMinus(half float64, digits int) string {
	if vanishes(half, digits) {
		return nb + "±" + nb + "<" + fixed(math.Pow10(-digits), digits)
	}
	return nb + "±" + nb + fixed(half, digits)
}

// vanishes tells whether v above zero is printed as zero.
func vanishes(v float64, digits int) bool {
	return v > 0 && strings.Trim(fixed(v, digits), "0.") == ""
}

// own is digits, or what half supports where it would vanish with them.
func own(half float64, digits, most int) int {
	if vanishes(half, digits) {
		return decimals(half, most)
	}
	return digits
}

// scale is what a figure is multiplied by for people: shares become percent.
func scale(m *study.Metric) float64 {
	if m.Share {
		return 100
	}
	return 1
}

// most is the largest number of decimals that a figure is shown with.
func most(m *study.Metric) int {
	if m.Share {
		return max(0, m.Digits-2)
	}
	return m.Digits
}

// amount prints a summary of a figure, "8.73 ± 0.08"; a dash for none. A share
// whose interval would leave 0 to 100 % is printed with the ends that it can
// have, "95 (88–100)".
func amount(m *study.Metric, x stats.Summary, digits int) string {
	if x.N == 0 {
		return "–"
	}
	k := scale(m)
	digits = own(k*x.Half, digits, most(m))
	s := fixed(k*x.Mean, digits)
	low, high := within(m, x)
	switch {
	case low != x.Low || high != x.High:
		s += nb + "(" + end(k*low, digits) + "–" + end(k*high, digits) + ")"
	case x.Half > 0:
		s += plusMinus(k*x.Half, digits)
	}
	return s
}

// end is fixed, but a share that is all or nothing has no decimals.
func end(v float64, digits int) string {
	if v == 0 || v == 100 {
		digits = 0
	}
	return fixed(v, digits)
}

// within is the interval of a figure inside the range that the figure can have:
// that of a share ends at 0 and 1, where Student's t knows no end.
func within(m *study.Metric, x stats.Summary) (low, high float64) {
	if !m.Share {
		return x.Low, x.High
	}
	return max(x.Low, min(x.Mean, 0)), min(x.High, max(x.Mean, 1))
}

// change prints a difference, "+0.44 ± 0.12"; "not clear" where its interval
// includes zero, a dash where there is none to judge. A clear difference that
// rounds to zero is shown as zero.
func change(m *study.Metric, d stats.Difference, digits int) string {
	switch {
	case d.N == 0 || !d.Known():
		return "–"
	case !d.Clear:
		return notClear
	}
	k := scale(m)
	digits = own(k*d.Half, digits, most(m))
	s := signed(k*d.Mean, digits)
	if d.Half > 0 && s != fixed(0, digits) {
		s += plusMinus(k*d.Half, digits)
	}
	return s
}

const notClear = "not" + nb + "clear"

// nb is a space at which no line breaks; where a writer does not know it, it is
// a plain space.
const nb = "\u00a0"

// alone prints one figure with the decimals of its own interval.
func alone(m *study.Metric, x stats.Summary) string {
	return amount(m, x, decimals(scale(m)*x.Half, most(m)))
}

// mean prints the mean of a figure with the decimals of its interval, without
// the interval.
func mean(m *study.Metric, x stats.Summary) string {
	return fixed(scale(m)*x.Mean, decimals(scale(m)*x.Half, most(m)))
}
