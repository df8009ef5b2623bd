package defect

var alligatoring = Defect{
	Key:    "alligatoring",
	Doc:    "wrinkled gel coat, softened by the laminate behind it",
	Source: "\"Alligatoring causes\", fiberglass trade blog 2009: film under 12 mil, undercure, cold",
	chance: 0.01, most: 0.95, scrap: 0.15, found: 0.95,
	hours: [3]float64{1, 4, 12},
	effects: [maxEffects]Effect{
		{Film, Below, 0.41, 45}, // six times as often at 12 mil
		{SprayC, Below, 18, 0.25},
		{Humidity, Above, 0.80, 3},
	},
}
