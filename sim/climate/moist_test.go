package climate

import (
	"testing"

	"pgregory.net/rapid"
)

// Reference implementation: npm package psychrolib 1.1.1 (MIT), SI units. Its
// dew points are searched for to 0.001 °C, so they are compared to 0.002 °C.
func TestMoistAirAgainstReferenceImplementation(t *testing.T) {
	for _, c := range []struct{ c, rh, pws, dew, w float64 }{
		{0, .50, 611.1536, -8.163625, 0.001881341},
		{10, .60, 1227.9953, 2.599831, 0.004555677},
		{20, .50, 2338.8037, 9.272392, 0.007261737},
		{20, .65, 2338.8037, 13.227215, 0.009473442},
		{25, .50, 3169.2165, 13.863973, 0.009881044},
		{25, .60, 3169.2165, 16.701132, 0.011895049},
		{30, .40, 4246.0302, 14.935827, 0.010602781},
		{30, .70, 4246.0302, 23.927892, 0.018795179},
		{40, .30, 7383.4600, 19.125240, 0.013900034},
	} {
		within(t, "saturation", Saturation(c.c), c.pws, 6e-5)
		within(t, "dew point", DewPoint(c.c, c.rh), c.dew, 2e-3)
		within(t, "humidity ratio", HumidityRatio(c.rh*Saturation(c.c), StandardPressure), c.w, 6e-10)
	}
	for _, c := range [][3]float64{{20, 10, 0.52505273}, {25, 15, 0.53812916}, {30, 20, 0.55082125}, {35, 25, 0.56313400}} {
		within(t, "humidity from dew point", RHFromDew(c[0], c[1]), c[2], 6e-9)
	}
	within(t, "at 95461 Pa", HumidityRatio(.7*Saturation(30), 95461), 0.0199868364, 6e-10)
}

// CRC Handbook of Chemistry and Physics, 73rd ed. (1992-93), vapor pressure of
// water, kPa; copy at lcm91.tripod.com/documents/vp_H2O.htm. Hyland and Wexler
// agree to 0.05 % up to 50 °C.
func TestSaturationAgainstHandbook(t *testing.T) {
	for _, c := range [][2]float64{
		{0.01, 0.61165}, {5, 0.8726}, {10, 1.2281}, {15, 1.7056}, {20, 2.3388}, {22, 2.6447}, {25, 3.1690},
		{26, 3.3629}, {28, 3.7818}, {30, 4.2455}, {32, 4.7578}, {35, 5.6267}, {40, 7.3814}, {50, 12.344},
	} {
		within(t, "saturation, kPa", Saturation(c[0])/1000, c[1], 5e-4*c[1])
	}
}

// Dew point tables in °C, breeqo.io/en/taupunkt-tabelle (DIN 4108) and
// halesowenweather.co.uk. They use Magnus formulas over liquid water, which are
// within 0.04 K of these above 0 °C; with the rounding to 0.1 that is 0.09 K.
// The cells below freezing are frost points here and are left out.
func TestDewPointTable(t *testing.T) {
	for _, c := range [][3]float64{
		{10, 60, 2.6}, {14, 45, 2.2}, {15, 80, 11.6}, {20, 40, 6.0}, {20, 50, 9.3}, {20, 65, 13.2},
		{20, 90, 18.3}, {22, 55, 12.5}, {25, 20, 0.5}, {25, 60, 16.7}, {25, 80, 21.3}, {28, 85, 25.2},
		{30, 40, 14.9}, {30, 70, 23.9}, {30, 80, 26.2},
	} {
		within(t, "dew point", DewPoint(c[0], c[1]/100), c[2], 0.09)
	}
}

// Paint applicator's chart in °F (handypdf.com; last row ranachem.com).
func TestDewPointPaintChart(t *testing.T) {
	for _, c := range [][3]float64{{70, 65, 57}, {80, 90, 77}, {60, 80, 54}, {40, 85, 36}, {75, 35, 45}} {
		within(t, "dew point, °F", Fahrenheit(DewPoint(Celsius(c[0]), c[1]/100)), c[2], 1.5)
	}
}

// Çengel and Boles, "Thermodynamics", example 14-1: room air of 25 °C, 100 kPa
// and 75 % with saturation 3.1698 kPa.
func TestHumidityRatioOfARoom(t *testing.T) {
	pv := .75 * 3169.8
	within(t, "vapor pressure, kPa", pv/1000, 2.38, .005)
	within(t, "humidity ratio", HumidityRatio(pv, 100e3), 0.0152, 1e-4)
	// The exact value follows from the ratio 0.622 of the book.
	within(t, "humidity ratio, exact", HumidityRatio(pv, 100e3), 0.0151472, 2e-6)
	within(t, "and back, Pa", VaporPressure(HumidityRatio(pv, 100e3), 100e3), pv, 1e-9)
	within(t, "of Saturation here", Saturation(25), 3169.8, 0.7)
}

func TestDewAtInvertsSaturation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Float64Range(-89, 90).Draw(t, "c")
		pv := Saturation(c)
		got := DewAt(pv)
		// At 0.01 °C, ice and water agree to 4e-6 of the pressure, 5e-5 K.
		tol := 1e-8
		if c > -0.001 && c < 0.02 {
			tol = 1e-4
		}
		if !(got > c-tol && got < c+tol) {
			t.Fatalf("dew point of saturated air at %v °C is %v", c, got)
		}
	})
}

func TestMoistAirRanges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Float64Range(-40, 60).Draw(t, "c")
		rh := rapid.Float64Range(0, 1).Draw(t, "rh")
		dew := DewPoint(c, rh)
		if !(dew <= c+1e-4) || dew < -90.1 {
			t.Fatalf("dew point %v of air at %v °C and %v", dew, c, rh)
		}
		if back := RHFromDew(c, dew); rh > 1e-3 && (back < rh-1e-5 || back > rh+1e-5) {
			t.Fatalf("humidity %v comes back as %v", rh, back)
		}
		if Saturation(c+0.1) <= Saturation(c) {
			t.Fatalf("saturation does not rise at %v °C", c)
		}
	})
}

func TestDryAirHasADewPoint(t *testing.T) {
	within(t, "of no vapor at all", DewAt(0), -90, 0.1)
	within(t, "of vapor below nothing", DewPoint(20, -1), -90, 0.1)
}

func TestScales(t *testing.T) {
	within(t, "212 °F", Celsius(212), 100, 1e-12)
	within(t, "−40", Fahrenheit(-40), -40, 1e-12)
}
