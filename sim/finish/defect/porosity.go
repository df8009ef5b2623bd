package defect

var porosity = Defect{
	Key:    "porosity",
	Doc:    "pinholes and small air in the gel coat, seen after the pull and on sanding",
	Source: "\"GelCoat trouble shooting guide\", supplier, items 2 – 18: air in the spray, thick passes, moisture",
	chance: 0.45, most: 0.95, scrap: 0.002, found: 0.9,
	hours: [3]float64{1, 1, 8},
	effects: [maxEffects]Effect{
		{Film, Above, 0.56, 7},     // twice as often at 28 mil
		{Humidity, Above, 0.70, 5}, // half as often again at 80 %
	},
}
