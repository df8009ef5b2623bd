package exposure

import "math"

// VaporPerGallon is the ft³ of vapor that a gallon of liquid makes: 8.33 · SG ·
// 387 / MW.
func VaporPerGallon(gravity, mole float64) float64 {
	if mole <= 0 {
		return 0
	}
	return 8.33 * gravity * poundMole / mole
}

// SafeVolume is the ft³ of air for each gallon of solvent that evaporates, to
// stay at a quarter of the lower explosive limit, lel in % by volume: 4 · (100 −
// LEL) · vapor / LEL, OSHA 29 CFR 1910.94(c)(6)(ii), form from memory. vapor is
// in ft³ per gallon.
func SafeVolume(lel, vapor float64) float64 {
	if lel <= 0 {
		return math.Inf(1)
	}
	return 4 * (100 - lel) * vapor / lel
}

// DilutionM3h is the air that dilutes kg of vapor an hour to a concentration in
// ppm, in m³/h, at 25 °C: 24.45 · 10⁹ · kg / (MW · ppm) liters, times the mixing
// factor k, 1 for perfect mixing and 3 to 10 for real rooms. ppm above 0.
func DilutionM3h(kgPerHour, mole, ppm, k float64) float64 {
	if mole <= 0 || ppm <= 0 {
		return math.Inf(1)
	}
	return kgPerHour * 1000 / mole * molarVolume / 1000 / (ppm / 1e6) * k
}

// DilutionCfm is the air for pints of liquid a minute, ft³/min: 403·10⁶ · SG · ER
// · K / (MW · C), the dilution formula of ventilation manuals (University of
// Toledo, A. Kumar, course sheet Form_ChapX; ABIH formula sheet).
func DilutionCfm(pintsPerMinute, gravity, mole, ppm, k float64) float64 {
	if mole <= 0 || ppm <= 0 {
		return math.Inf(1)
	}
	return 403e6 * gravity * pintsPerMinute * k / (mole * ppm)
}

// DilutionCfmOfPounds is the air for pounds of vapor a minute, ft³/min: 387 · lb ·
// K · 10⁶ / (MW · C).
func DilutionCfmOfPounds(poundsPerMinute, mole, ppm, k float64) float64 {
	if mole <= 0 || ppm <= 0 {
		return math.Inf(1)
	}
	return poundMole * poundsPerMinute * k * 1e6 / (mole * ppm)
}

// PPM is the concentration that kg of styrene an hour reach in an air flow in
// m³/h once it is steady; +Inf without air.
func PPM(kgPerHour, m3h, k float64) float64 {
	if kgPerHour <= 0 {
		return 0
	}
	if m3h <= 0 {
		return math.Inf(1)
	}
	return DilutionM3h(kgPerHour, Mole, 1, k) / m3h
}

// Purged is what is left of a concentration after some hours with fresh air:
// C·e^(−Q't/V), with Q' = m3h/k and the room's volume in m³ (ABIH formula sheet).
func Purged(ppm, m3h, k, volume, hours float64) float64 {
	return ppm * math.Exp(-m3h/k*hours/volume)
}

// Built is the concentration, in ppm, that kg of styrene an hour have built up
// in a room that was clean after some hours: steady · (1 − e^(−Q't/V)).
func Built(kgPerHour, m3h, k, volume, hours float64) float64 {
	return PPM(kgPerHour, m3h, k) * (1 - math.Exp(-m3h/k*hours/volume))
}
