package finish

// Color says how much of a flaw a color lets the eye see.
type Color struct {
	Name     string
	Haze     float64 // share of the mold's haze that shows
	PostCure float64 // how strongly waviness shows, against a light color
	White    bool    // takes parts late in the strip cycle unharmed
}

// builtinColors are known to every scenario. A part with a color band counts
// as dark. That haze does not show on white is common practice, no source; the
// numbers are assumptions.
func builtinColors() []Color {
	return []Color{
		{"dark", 1, 1.5, false},
		{"pastel", 0.6, 1, false},
		{"white", 0.02, 1, true},
	}
}
