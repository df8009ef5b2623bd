package money

import "math"

// small prices what background work takes, such as small parts: so many grams
// a labor hour.
func (p *pricing) small(k int) {
	x := &p.Plant.Small[k]
	hours := float64(p.q.SmallTime[k]) / msPerHour
	for _, m := range []struct {
		key, label, input string
		take              int64
		price             float64
		prices            string
	}{
		{"small_gel_coat", "gel coat", "gel_coat", x.Gel, x.GelPrice, x.GelFrom},
		{"small_resin", "resin", "resin", x.Resin, p.Prices.Resin, "money.resin"},
		{"small_glass", "glass", "resin", x.Glass, p.Prices.Glass, "money.glass"},
	} {
		inputs := []string{m.prices, path("background", x.Name, m.input)}
		if m.key == "small_glass" {
			inputs = append(inputs, "money.laminate.glass")
		}
		p.g.add(Line{Name: name(m.key, x.Name), Label: m.label + ", " + x.Name, Model: -1, Quantity: int64(math.Round(hours * float64(m.take))),
			Per: gramsPerKilo, Unit: "kg", Price: m.price, Of: "labor hours", Each: m.take, Inputs: inputs})
	}
}
