package finish

import "math"

// BlackGlass is the refractive index of the polished black glass that reads
// 100 gloss units at every angle, by ISO 2813 and ASTM D523.
const BlackGlass = 1.567

// Reflectance is the share of unpolarized light that a polished surface of
// refractive index n above 0 throws back at an angle of incidence in degrees,
// 0 … 90.
//
// Source: Fresnel's equation as ISO 2813, "Paints and varnishes – Determination
// of gloss value at 20°, 60° and 85°", uses it for other standards than black
// glass.
func Reflectance(n, angle float64) float64 {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	s := math.Sqrt(n*n - sin*sin)
	across := (cos - s) / (cos + s)
	along := (n*n*cos - s) / (n*n*cos + s)
	return (across*across + along*along) / 2
}

// GlossUnits is what a gloss meter at that angle reads on a flawless surface
// of refractive index n: the ceiling for a gel coat of that index.
func GlossUnits(n, angle float64) float64 {
	return 100 * Reflectance(n, angle) / Reflectance(BlackGlass, angle)
}
