package climate

// Coast is the climate of an invented stretch of warm, humid coast, where the
// bundled plants stand. No station measured it: the numbers were chosen to give
// mild winters and a hot season of some 22 weeks.
func Coast() Normals {
	n := Normals{PeakHour: DefaultPeakHour, Persistence: DefaultPersistence}
	for i, m := range [12][6]float64{
		// mean, range, spread of the days, dew point, its spread, tie
		{10.0, 10.5, 4.2, 5.0, 5.2, 0.90},
		{11.5, 10.5, 4.0, 6.2, 5.0, 0.90},
		{15.0, 10.5, 3.4, 9.5, 4.4, 0.85},
		{19.3, 10.5, 2.5, 13.8, 3.4, 0.80},
		{24.0, 10.0, 2.0, 18.9, 2.6, 0.70},
		{26.9, 9.0, 1.5, 22.0, 1.6, 0.55},
		{27.9, 8.5, 1.2, 23.3, 1.1, 0.45},
		{27.8, 8.5, 1.2, 23.2, 1.1, 0.45},
		{25.9, 9.0, 1.6, 21.2, 2.0, 0.60},
		{20.6, 10.5, 2.4, 15.0, 3.6, 0.75},
		{15.0, 10.5, 3.6, 9.5, 4.8, 0.88},
		{11.2, 10.3, 4.1, 6.4, 5.2, 0.90},
	} {
		n.Months[i] = Normal{m[0], m[1], m[2], m[3], m[4], m[5]}
	}
	return n
}
