package defect

var sag = Defect{
	Key:    "sag",
	Doc:    "gel coat that ran before it gelled, and the small spray flaws put right with it",
	Source: "\"GelCoat trouble shooting guide\", supplier, items 2 – 18: thick pass, warm and thin",
	chance: 0.6, most: 0.95, scrap: 0.001, found: 0.95,
	hours: [3]float64{0.5, 0.75, 3},
	effects: [maxEffects]Effect{
		{Film, Above, 0.56, 20},
		{SprayC, Above, 27, 0.1},
	},
}
