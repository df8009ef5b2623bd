package finish

import (
	"slices"

	"moldturn/sim/param"
)

// Mark ties a reading of gloss at 60°, in gloss units, to points of luster.
type Mark struct {
	Gloss, Points float64
}

// Scale translates 60° gloss into luster by straight lines between marks, both
// rising; outside the marks the nearest mark holds. It needs one mark.
type Scale []Mark

// DefaultScale is an assumption around common practice, no source: off a fresh
// mold 85 – 90 – 94 units, acceptable from 80 – 85, visibly dull below 75 – 80,
// to be buffed again below 70.
func DefaultScale() Scale {
	return Scale{{0, 0}, {70, 93}, {77.5, 95}, {82.5, 97}, {90, 98}, {100, 100}}
}

// Points is the luster of a part that reads that many gloss units.
func (s Scale) Points(gloss float64) float64 {
	return line(s, gloss, func(x Mark) (float64, float64) { return x.Gloss, x.Points })
}

// Gloss is the reading in gloss units of a part with that luster.
func (s Scale) Gloss(points float64) float64 {
	return line(s, points, func(x Mark) (float64, float64) { return x.Points, x.Gloss })
}

// line reads y at x from straight lines between the marks.
func line(s Scale, x float64, axes func(Mark) (x, y float64)) float64 {
	x0, y0 := axes(s[0])
	if x <= x0 {
		return y0
	}
	for _, mark := range s[1:] {
		x1, y1 := axes(mark)
		if x <= x1 {
			return y0 + (x-x0)*(y1-y0)/(x1-x0)
		}
		x0, y0 = x1, y1
	}
	return y0
}

// Visual is a grade given by eye and the luster it stands for.
type Visual struct {
	Grade  string
	Points float64
}

// Visuals are the built-in grades by eye, best first; assumptions. The list is
// the caller's.
func Visuals() []Visual { return slices.Clone(visuals) }

var visuals = []Visual{{"A", 98}, {"B", 96.5}, {"C", 94}, {"D", 90}}

// ByEye is the grade that stands nearest to a luster, the better one of two;
// grades are best first and at least one.
func ByEye(grades []Visual, points float64) string {
	for i, g := range grades[:len(grades)-1] {
		if points >= (g.Points+grades[i+1].Points)/2 {
			return g.Grade
		}
	}
	return grades[len(grades)-1].Grade
}

func scaleInputs() []param.Row {
	return []param.Row{
		{Path: "finish.gloss_scale", Kind: param.List, Low: 1, High: 50, Optional: true,
			Doc:  "points of luster by gloss at 60°, both rising; without it 0→0, 70→93, 77.5→95, 82.5→97, 90→98, 100→100",
			Mark: param.Assumption, Source: "around common practice for gloss off fresh and dull molds"},
		{Path: "finish.gloss_scale[].gloss", Kind: param.Number, Low: 0, High: 200, Doc: "gloss at 60°, gloss units (ISO 2813, ASTM D523)", Mark: param.User, Source: "the plant's own gloss log"},
		{Path: "finish.gloss_scale[].luster", Kind: param.Number, Low: 0, High: 100, Doc: "points of luster", Mark: param.User, Source: "the plant's own gloss log"},
		{Path: "finish.by_eye", Kind: param.List, Low: 1, High: 26, Optional: true,
			Doc:  "grades given by eye, best first; without it A 98, B 96.5, C 94, D 90",
			Mark: param.Assumption, Source: "to be set with the plant's own sample boards"},
		{Path: "finish.by_eye[].grade", Kind: param.Text, Doc: "name of the grade", Mark: param.User, Source: "the plant's own sample boards"},
		{Path: "finish.by_eye[].luster", Kind: param.Number, Low: 0, High: 100, Doc: "points of luster it stands for", Mark: param.User, Source: "the plant's own sample boards"},
	}
}
