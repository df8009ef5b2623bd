package unit

import (
	"testing"

	"moldturn/sim/param"
)

// NIST Special Publication 811 (2008), appendix B.8: 25 °C is 77 °F, 1 mil is
// 0.0254 mm, 1 m² is 10.7639 ft².
func TestStyles(t *testing.T) {
	us, si := Style{US, "$"}, Style{Metric, "€"}
	for _, c := range []struct{ got, want string }{
		{us.Temperature(25), "77\u00a0°F"}, {si.Temperature(25), "25\u00a0°C"}, {si.Temperature(-0.3), "0\u00a0°C"},
		{si.Format(param.Money, 40000), "€40k"}, {us.Format(param.Money, 19.5), "$19.50"}, {Style{Metric, "EUR"}.Format(param.Money, -40000), "-EUR 40k"},
		{si.Text(param.Length, "36 mil"), "0.9144 mm"}, {us.Text(param.Length, "0.0254 mm"), "1 mil"}, {si.Text(param.Money, "$1,180"), "€1180"},
		{us.Text(param.Temperature, "21 C"), "69.8 F"}, {si.Text(param.Text, "36 mil"), "36 mil"}, {Style{}.Text(param.Money, "€7"), "$7"},
		{us.Format(param.Area, 28), "301.39 ft2"}, {us.Format(param.Length, 6.5), "255.91 mil"}, {us.Format(param.Mass, 0.012), "0.42329 oz"}, {us.Format(param.Mass, 1), "2.2046 lb"}, {si.Format(param.Volume, 2*3.785411784), "7.5708 L"},
		{si.Format(param.Duration, 336), "336 h"}, {us.Format(param.Rate, 3.9), "3.9/week"}, {us.Format(param.Date, 0), "1970-01-01"}, {si.Like(param.Money, 1e9, "€9k"), "€1000M"}, {si.Like(param.Length, 50.8, "0.5 mm"), "50.8 mm"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
	if x, sign := us.SquareMeters(1); sign != "ft²" || x < 10.7639 || x > 10.764 {
		t.Errorf("1 m² is %v %s", x, sign)
	}
}
