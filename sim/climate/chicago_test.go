package climate

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

// recordDay is a day with its mean relative humidity in percent.
type recordDay struct {
	Day
	rh float64
}

// chicago reads the record described in testdata/README.md.
func chicago(t *testing.T) []recordDay {
	t.Helper()
	f, err := os.Open("testdata/chicago_daily.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var days []recordDay
	for _, row := range rows[1:] {
		date, err := shift.ParseDate(row[0])
		if err != nil {
			t.Fatal(err)
		}
		var x [5]float64
		for i := range x {
			if x[i], err = strconv.ParseFloat(row[i+1], 64); err != nil {
				t.Fatal(err)
			}
		}
		days = append(days, recordDay{Day{date, Celsius(x[0]), Celsius(x[1]), Celsius(x[2]), Celsius(x[3])}, x[4]})
	}
	return days
}

// daily makes days of hourly air.
func daily(o *Outdoor) []recordDay {
	var days []recordDay
	for h := 0; h+24 <= len(o.AirC); h += 24 {
		d := recordDay{Day: Day{Date: o.Start.AddDays(h / 24), MinC: o.AirC[h], MaxC: o.AirC[h]}}
		for i := h; i < h+24; i++ {
			d.MinC, d.MaxC = min(d.MinC, o.AirC[i]), max(d.MaxC, o.AirC[i])
			d.MeanC += o.AirC[i] / 24
			d.DewC += o.DewC[i] / 24
			d.rh += 100 * RHFromDew(o.AirC[i], o.DewC[i]) / 24
		}
		days = append(days, d)
	}
	return days
}

// monthly holds what is compared of one month of the year.
type monthly struct {
	n                                       float64
	mean, rng, dew, rh, sd, dewSD, lag, tie float64
	yearSD                                  float64 // standard deviation of the month's mean between years
	years                                   float64
	humidYearSD, dewYearSD                  float64
}

// describe works out the months of a record. The spread, lag and tie are those
// of deviations from the month's mean of all years.
func describe(days []recordDay) (m [12]monthly) {
	sums := map[[2]int][4]float64{} // read by key below, in order of years
	first, last := days[0].Date.Year, days[len(days)-1].Date.Year
	for _, d := range days {
		s := &m[d.Date.Month-1]
		s.n++
		s.mean += d.MeanC
		s.rng += d.MaxC - d.MinC
		s.dew += d.DewC
		s.rh += d.rh
		k := [2]int{d.Date.Year, int(d.Date.Month) - 1}
		y := sums[k]
		sums[k] = [4]float64{y[0] + 1, y[1] + d.MeanC, y[2] + d.DewC, y[3] + d.rh}
	}
	for i := range m {
		s := &m[i]
		s.mean, s.rng, s.dew, s.rh = s.mean/s.n, s.rng/s.n, s.dew/s.n, s.rh/s.n
		for y := first; y <= last; y++ {
			k := sums[[2]int{y, i}]
			if k[0] < 20 {
				continue
			}
			s.years++
			s.yearSD += math.Pow(k[1]/k[0]-s.mean, 2)
			s.dewYearSD += math.Pow(k[2]/k[0]-s.dew, 2)
			s.humidYearSD += math.Pow(k[3]/k[0]-s.rh, 2)
		}
		s.yearSD = math.Sqrt(s.yearSD / (s.years - 1))
		s.dewYearSD = math.Sqrt(s.dewYearSD / (s.years - 1))
		s.humidYearSD = math.Sqrt(s.humidYearSD / (s.years - 1))
	}
	var pairs [12]float64
	for j, d := range days {
		i := d.Date.Month - 1
		x, y := d.MeanC-m[i].mean, d.DewC-m[i].dew
		m[i].sd += x * x
		m[i].dewSD += y * y
		m[i].tie += x * y
		if j > 0 && days[j-1].Date.Month == d.Date.Month && d.Date.DaysSince(days[j-1].Date) == 1 {
			m[i].lag += x * (days[j-1].MeanC - m[i].mean)
			pairs[i]++
		}
	}
	for i := range m {
		s := &m[i]
		s.tie /= math.Sqrt(s.sd * s.dewSD)
		s.lag /= pairs[i] * s.sd / s.n
		s.sd, s.dewSD = math.Sqrt(s.sd/s.n), math.Sqrt(s.dewSD/s.n)
	}
	return m
}

// split parts a record before a year.
func split(days []recordDay, year int) (before, after []recordDay) {
	for _, d := range days {
		if d.Date.Year < year {
			before = append(before, d)
		} else {
			after = append(after, d)
		}
	}
	return before, after
}

func fitted(t *testing.T, days []recordDay) Normals {
	t.Helper()
	plain := make([]Day, len(days))
	for i, d := range days {
		plain[i] = d.Day
	}
	n, err := Fit(plain)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// Normals are fitted on 2001 – 2008 and the weather made from them is held
// against 2009 – 2016, which the fit has not seen.
func TestMadeWeatherAgainstRecord(t *testing.T) {
	record := chicago(t)
	before, after := split(record, 2009)
	n := fitted(t, before)
	made := describe(daily(n.Outdoor(draw.Root(1, 0), shift.DateOf(2001, 1, 1), 40*8766)))
	seen, unseen := describe(before), describe(after)
	t.Logf("persistence %.3f", n.Persistence)
	t.Log("month: fitted, unseen, made | mean, range, sd, lag 1 | dew point, sd, tie | RH | sd of the month's mean between years")
	var sd, dewSD, lag, tie, rng, humid, between float64
	for i := range 12 {
		s, u, m := seen[i], unseen[i], made[i]
		for _, x := range []monthly{s, u, m} {
			t.Logf("%2d: %6.2f %5.2f %5.2f %5.2f | %6.2f %5.2f %5.2f | %5.1f | %4.2f", i+1, x.mean, x.rng, x.sd, x.lag, x.dew, x.dewSD, x.tie, x.rh, x.yearSD)
		}
		within(t, "mean temperature", m.mean, u.mean, manyErrors*standardError(s.yearSD, u.yearSD, m.yearSD, s.years, u.years, m.years))
		within(t, "mean dew point", m.dew, u.dew, manyErrors*standardError(s.dewYearSD, u.dewYearSD, m.dewYearSD, s.years, u.years, m.years))
		within(t, "mean humidity", m.rh, u.rh, manyErrors*standardError(s.humidYearSD, u.humidYearSD, m.humidYearSD, s.years, u.years, m.years))
		sd += m.sd / u.sd / 12
		dewSD += m.dewSD / u.dewSD / 12
		lag += (m.lag - u.lag) / 12
		tie += (m.tie - u.tie) / 12
		rng += (m.rng - u.rng) / 12
		humid += (m.rh - u.rh) / 12
		between += m.yearSD / u.yearSD / 12
	}
	t.Logf("made against unseen: sd × %.3f, sd of dew point × %.3f, lag 1 %+.3f, tie %+.3f", sd, dewSD, lag, tie)
	t.Logf("what it misses: range %+.2f K (fronts that pass add to the sine), RH %+.2f points, sd between years × %.2f", rng, humid, between)
	// A month has some 240 days with a correlation near 0.7, worth 83 free ones
	// for a spread: 8 % standard error in each record, 3.3 % over the year for
	// a ratio of two. Correlations have 0.05 a month likewise, 0.02 over the year.
	within(t, "spread of temperature", sd, 1, 3*.033)
	within(t, "spread of dew point", dewSD, 1, 3*.033)
	within(t, "lag 1", lag, 0, 3*.02)
	within(t, "tie", tie, 0, 3*.02)
}

// manyErrors is how many standard errors a month may be off: 36 comparisons
// are made, of which one in a hundred passes 3.7 by chance together.
const manyErrors = 3.7

// standardError is that of a difference between the unseen years and weather
// made for many years from a fit on the seen ones.
func standardError(seen, unseen, made, nSeen, nUnseen, nMade float64) float64 {
	return math.Sqrt(seen*seen/nSeen + unseen*unseen/nUnseen + made*made/nMade)
}

// The record's own means, worked out apart from this reader: January 25.352526
// °F and 72.368421 % (475 days), July 75.166129 °F and 63.311492 % (496 days).
func TestRecordIsReadWhole(t *testing.T) {
	m := describe(chicago(t))
	within(t, "January days", m[0].n, 475, 0)
	within(t, "January °F", Fahrenheit(m[0].mean), 25.352526, 5e-7)
	within(t, "January RH", m[0].rh, 72.368421, 5e-7)
	within(t, "July days", m[6].n, 496, 0)
	within(t, "July °F", Fahrenheit(m[6].mean), 75.166129, 5e-7)
	within(t, "July RH", m[6].rh, 63.311492, 5e-7)
}
