package defect

var preRelease = Defect{
	Key:    "prerelease",
	Doc:    "gel coat that let go of the mold before its time: lifted edges, dimples, wavy patches",
	Source: "\"Gel coat troubleshooting guide\", supplier: thick film, long wait before laminating, heat",
	chance: 0.008, most: 0.95, scrap: 0.1, found: 0.95,
	hours: [3]float64{3, 7, 20},
	effects: [maxEffects]Effect{
		{Film, Above, 0.64, 9},
		{Window, Step, 8, 3}, // three times as often once the same shift is over
		{CureC, Above, 29, 0.1},
	},
}
