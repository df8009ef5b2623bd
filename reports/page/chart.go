package page

import "moldturn/reports/cells"

// Kind names the functions that the boot script adds to a chart.
type Kind string

// The kinds that the boot script knows. Package reports/chart builds them.
const (
	Points    Kind = "points"    // named points with error bars on both axes
	Band      Kind = "band"      // lines with a band around them
	Lines     Kind = "lines"     // several lines
	Segments  Kind = "segments"  // rectangles in rows: stacked bars
	Grid      Kind = "grid"      // heat map
	Intervals Kind = "intervals" // values with intervals, one a row
	Pareto    Kind = "pareto"    // sorted shares and their running sum
	Gantt     Kind = "gantt"     // what each row does, hour by hour
	Loads     Kind = "loads"     // use and waits of each row, week by week
)

// Chart is a figure: heading, legend, drawing, and the numbers behind it.
type Chart struct {
	ID      string // a-z, 0-9 and -, starts with a letter, once in a page
	Finding string // the heading: what the chart shows, as a sentence
	Caption string // how to read it: units, intervals, counts
	Alt     string // what the drawing shows, for who cannot see it
	Kind    Kind
	// Options are an echarts option. Values of color keys may be roles such as
	// "@accent", "@ink", "@c0"; they are replaced by the colors of the theme.
	// Functions, links, rich texts and images are refused.
	Options map[string]any
	// Data is what the functions of Kind read: labels, tips, points.
	Data   map[string]any
	Height int    // CSS pixels, 80 to 4000
	AxisX  string // title of the horizontal axis, set below the drawing
	AxisY  string // title of the vertical axis, set above the drawing
	Legend []Key
	Table  cells.Table // the numbers behind the drawing, required
}

// Form is how a legend key looks.
type Form string

// A key looks like what it explains.
const (
	Fill  Form = "fill"  // rectangle with a pattern
	Line  Form = "line"  // line with dashes
	Mark  Form = "mark"  // point symbol
	Cloud Form = "cloud" // band around a line
	Ramp  Form = "ramp"  // scale of a heat map, low to high
	Dim   Form = "dim"   // shaded ground
)

// Key is one entry of a legend. Color and Pattern are indexes: 0 to Colors-1
// and 0 to Patterns-1 (pattern of a Fill, dashes of a Line, shape of a Mark).
type Key struct {
	Label   string
	Form    Form
	Color   int
	Pattern int
}

// Colors, Patterns, Dashes and Shapes are how many of each the page has.
const (
	Colors   = 8
	Patterns = 8
	Dashes   = 4
	Shapes   = 4
)
