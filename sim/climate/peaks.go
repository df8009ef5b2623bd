package climate

// hoursPerDay is the length of a day; there is no daylight saving.
const hoursPerDay = 24

// peakDays is how many past days a season is judged by.
const peakDays = 7

// Days is the number of started days of the Path, at least 1.
func (p *Path) Days() int { return (p.hours + hoursPerDay - 1) / hoursPerDay }

// HotDay is the highest heat index in °F of a day of the run, in an area. Day 0
// is the start date; days outside the Path read its first or last.
func (p *Path) HotDay(area, day int) float64 {
	return float64(p.area(area).peak[p.day(day)])
}

// PeakMean7 is the mean in °F of the daily peaks of the seven days before a
// day: what is known on its morning, and what a season of frequent strips is
// switched by. In the first week of the run, whose past is not known, it is the
// mean of that week.
func (p *Path) PeakMean7(area, day int) float64 {
	return float64(p.area(area).meanPeaksPast[p.day(day)])
}

// day is the index of a day inside the Path.
func (p *Path) day(d int) int { return min(max(d, 0), p.Days()-1) }

// finish works out the daily series from the hourly ones; every builder of a
// Path ends with it.
func (p *Path) finish() *Path {
	for i := range p.areas {
		s := &p.areas[i]
		s.peak = dailyPeaks(s.heat)
		s.meanPeaksPast = meansBefore(s.peak, peakDays)
	}
	return p
}

// dailyPeaks is the highest value of each started day.
func dailyPeaks(hourly []float32) []float32 {
	peaks := make([]float32, 0, len(hourly)/hoursPerDay+1)
	for len(hourly) > 0 {
		n := min(hoursPerDay, len(hourly))
		top := hourly[0]
		for _, x := range hourly[1:n] {
			top = max(top, x)
		}
		peaks = append(peaks, top)
		hourly = hourly[n:]
	}
	return peaks
}

// meansBefore is, for each i, the mean of the n values before x[i], and that of
// the first n values where there are fewer. Each mean is summed afresh, so no
// rounding is carried along.
func meansBefore(x []float32, n int) []float32 {
	means := make([]float32, len(x))
	n = min(n, len(x))
	for i := range x {
		sum := 0.0
		for _, v := range x[max(0, i-n):][:n] {
			sum += float64(v)
		}
		means[i] = float32(sum / float64(n))
	}
	return means
}
