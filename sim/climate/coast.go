package climate

// Coast is the climate of an invented stretch of warm, humid coast, where the
// bundled plants stand. No station measured it: the numbers were chosen to give
// mild winters and a hot season of some 22 weeks.
func Coast() Normals {
	n := Normals{PeakHour: DefaultPeakHour, Persistence: DefaultPersistence}
	for i, m := range [12][6]float64{
		// mean, range, spread of the days, dew point, its spread, tie
		{10.0, 10.5, 5.0, 5.5, 7.0, 0.90},
		{11.5, 10.5, 4.8, 6.5, 6.8, 0.90},
		{15.5, 10.5, 4.2, 10.0, 6.0, 0.85},
		{19.5, 10.5, 3.2, 13.5, 5.0, 0.80},
		{23.8, 10.0, 2.4, 18.3, 3.6, 0.75},
		{26.9, 9.0, 1.7, 21.9, 2.0, 0.60},
		{27.9, 8.5, 1.4, 23.2, 1.2, 0.45},
		{27.8, 8.5, 1.4, 23.1, 1.3, 0.45},
		{26.0, 9.0, 1.9, 21.0, 2.8, 0.65},
		{21.0, 10.5, 3.2, 15.0, 5.0, 0.80},
		{15.3, 10.5, 4.4, 10.0, 6.3, 0.88},
		{11.6, 10.3, 4.9, 7.0, 7.0, 0.90},
	} {
		n.Months[i] = Normal{m[0], m[1], m[2], m[3], m[4], m[5]}
	}
	return n
}
