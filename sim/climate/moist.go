package climate

import "math"

// StandardPressure is the pressure of the standard atmosphere at sea level, Pa.
const StandardPressure = 101325.0

// molarRatio is the molar mass of water over that of dry air, 18.015268 g/mol
// over 28.966 g/mol (ASHRAE Handbook, Fundamentals 2017, ch. 1, eq. 20).
const molarRatio = 0.621945

// triplePoint of water in °C: saturation is over ice below it, over liquid
// water from it on.
const triplePoint = 0.01

// kelvin is 0 °C in K.
const kelvin = 273.15

// Fahrenheit turns °C into °F.
func Fahrenheit(c float64) float64 { return c*1.8 + 32 }

// Celsius turns °F into °C.
func Celsius(f float64) float64 { return (f - 32) / 1.8 }

// Saturation is the pressure in Pa of water vapor in equilibrium with liquid
// water, or with ice below 0.01 °C, at a temperature in °C from −100 to 200.
//
// The equations are those of Hyland and Wexler (1983) as the ASHRAE Handbook,
// Fundamentals, chapter 1, eq. 5 and 6 prints them. They were chosen over a
// Magnus formula because they agree with steam tables within 0.03 % from 0 to
// 40 °C where Magnus is 0.06 … 0.23 % low, and the exact inverse costs nothing
// here: the vapor pressure carries over from outdoor air to plant air, so a dew
// point has to be searched for only where a dehumidifier or condensation
// changed it. Weather services give humidity below freezing over liquid water;
// a frost point here lies up to some 10 % nearer to the temperature. Both
// vanish in a plant warm enough to work in.
func Saturation(c float64) float64 { return math.Exp(logSaturation(c)) }

// logSaturation is the natural logarithm of Saturation.
func logSaturation(c float64) float64 {
	t := c + kelvin
	if c < triplePoint {
		return -5.6745359e3/t + 6.3925247 +
			t*(-9.677843e-3+t*(6.2215701e-7+t*(2.0747825e-9+t*-9.484024e-13))) +
			4.1635019*math.Log(t)
	}
	return -5.8002206e3/t + 1.3914993 +
		t*(-4.8640239e-2+t*(4.1764768e-5+t*-1.4452093e-8)) +
		6.5459673*math.Log(t)
}

// logSlope is the derivative of logSaturation in 1/K.
func logSlope(c float64) float64 {
	t := c + kelvin
	if c < triplePoint {
		return 5.6745359e3/(t*t) - 9.677843e-3 +
			t*(2*6.2215701e-7+t*(3*2.0747825e-9+t*4*-9.484024e-13)) + 4.1635019/t
	}
	return 5.8002206e3/(t*t) - 4.8640239e-2 +
		t*(2*4.1764768e-5+t*3*-1.4452093e-8) + 6.5459673/t
}

// driest is the lowest vapor pressure in Pa that a dew point is given for, that
// of ice at −90 °C.
const driest = 0.00967

// DewAt is the temperature in °C at which air of a vapor pressure in Pa is
// saturated (a frost point below 0.01 °C), the inverse of Saturation to 1e-8 K.
// A pressure so small that it would lie below −90 °C, or none at all, counts as
// that.
func DewAt(pv float64) float64 {
	l := math.Log(max(pv, driest))
	// The Magnus formula of Alduchov and Eskridge (1996: 17.625, 243.04 °C and
	// 610.94 Pa) is within 0.1 K over water and some 10 K over the coldest ice;
	// two to five steps of Newton's method do the rest.
	x := l - lnMagnus
	c := 243.04 * x / (17.625 - x)
	for range newtonSteps {
		d := (logSaturation(c) - l) / logSlope(c)
		c -= d
		if math.Abs(d) < 1e-6 {
			break
		}
	}
	return c
}

const (
	lnMagnus    = 6.4149988 // ln 610.94
	newtonSteps = 20
)

// DewPoint is the dew point in °C of air at a temperature in °C and a relative
// humidity 0 … 1.
func DewPoint(c, rh float64) float64 { return DewAt(rh * Saturation(c)) }

// RHFromDew is the relative humidity, 0 … 1, of air at a temperature and a dew
// point in °C; a dew point above the temperature gives 1.
func RHFromDew(c, dew float64) float64 { return min(1, Saturation(dew)/Saturation(c)) }

// HumidityRatio is the mass of vapor per mass of dry air in air of a vapor
// pressure at a total pressure, both in Pa.
func HumidityRatio(pv, pressure float64) float64 { return molarRatio * pv / (pressure - pv) }

// VaporPressure is the inverse of HumidityRatio: the vapor pressure in Pa of a
// humidity ratio at a total pressure.
func VaporPressure(w, pressure float64) float64 { return pressure * w / (molarRatio + w) }
