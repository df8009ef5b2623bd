// Package chart builds the figures of a page from numbers and names.
//
// Each type is one kind of figure: Scatter, Band, Lines, Stack, Heat,
// Intervals, Pareto, Gantt, Loads. Its Build checks the numbers, rounds and labels
// them once, and returns a page.Chart with the drawing, its legend and the
// table of the same numbers.
//
// Options come from go-echarts, used for building only: its page renderer is
// never called. What a caller names (points, rows, categories) is never a key,
// a series name, a template or a function inside echarts. Names travel as
// finished texts that the boot script of package page places as text.
//
// Every figure can be read without color: patterns, dashes and shapes differ
// too, and values or names stand in the drawing where they fit.
package chart
