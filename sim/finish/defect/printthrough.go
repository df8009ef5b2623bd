package defect

var printThrough = Defect{
	Key:    "print_through",
	Doc:    "glass, core or stringers that show through the face, at the pull or weeks later",
	Source: "\"Improving composite part cosmetics for VIP\", Composites Manufacturing, Nov 2021: early pull, exotherm, thin gel coat",
	chance: 0.01, most: 0.95, scrap: 0.05, found: 0.5,
	hours: [3]float64{4, 10, 40},
	effects: [maxEffects]Effect{
		{Green, Above, 0, 60},
		{CureC, Above, 32, 0.1},
		{Film, Below, 0.41, 10},
	},
}
