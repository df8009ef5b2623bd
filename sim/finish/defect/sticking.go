package defect

// sticking past the break-in: 0.0004 × 4 on the first part after a strip ×
// 2^(coats missing) × (1 + build-up/20) × (1 + 0.25 per °C of the mold below
// 16 °C), at most 0.3. On break-in turns Params.BreakIn stands for the whole law.
var sticking = Defect{
	Key:    "sticking",
	Doc:    "the part will not leave its mold, and both are hurt",
	Source: "more under 60 °F and without wax: \"Spring weather note\", composites distributor; \"Why Molds Stick\", R. Lacovara, Fabrication News, Feb 1991",
	chance: 0.0004, most: 0.3, scrap: 0.25, found: 1,
	hours: [3]float64{8, 24, 80},
	effects: [maxEffects]Effect{
		{AfterStrip, Step, 0, 4},
		{MissingCoats, Power, 0, 2},
		{BuildUp, Above, 0, 0.05},
		{PullC, Below, 16, 0.25},
	},
}

// breakIn is the chance on the first turns of a new or resurfaced mold. Together
// they are the published 13 – 15 % of new molds that stick one of their first
// three parts: R. Lacovara, "Why Molds Stick", Fabrication News, Feb 1991 (survey
// of 524 tooling workers). How it falls on the three turns is an assumption.
var breakIn = [3]float64{0.08, 0.04, 0.025}

// moldHours is the labor to repair a mold that a part stuck in, h: 10 – 60 by
// common practice, no source; the typical value is an assumption.
var moldHours = [3]float64{10, 25, 60}
