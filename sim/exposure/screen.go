package exposure

// Booth is one spray booth as it is screened.
type Booth struct {
	Face       float64 // m²
	Air        float64 // m³/h
	Crossdraft float64 // ft/min
	Small      bool    // sprayed into from outside
	KgPerHour  float64 // mean styrene from gel coat while it is in use
	Peak       float64 // at the gun over the mean
	LEL        float64 // % by volume
}

// Velocity is the mean at the face, ft/min, with the range of Table G-10; ok is
// false for a crossdraft that is not permitted.
func (b *Booth) Velocity() (fpm float64, asked Range, ok bool) {
	d, ok := Guns(b.Crossdraft)
	asked = d.Large
	if b.Small {
		asked = d.Small
	}
	return FaceFpm(b.Air, b.Face), asked, ok
}

// Needed is the air for the design velocity, but at least for LeastFace, m³/h.
func (b *Booth) Needed() float64 {
	_, asked, _ := b.Velocity()
	return AirM3h(max(asked.Design, LeastFace), b.Face)
}

// Exhaust is the concentration in the exhaust at the peak, ppm: all vapor mixed
// into all air.
func (b *Booth) Exhaust() float64 { return PPM(b.KgPerHour*b.Peak, b.Air, 1) }

// Explosive tells whether the exhaust is above a quarter of the LEL.
func (b *Booth) Explosive() bool { return b.Exhaust() > QuarterLEL(b.LEL) }

// Shop is the laminating shop as it is screened.
type Shop struct {
	Air       float64 // m³/h of fresh air; 0: not known
	KgPerHour float64 // mean styrene while people laminate
	Mixing    float64
}

// Needed is the air that would dilute the mean to a concentration in ppm, m³/h.
func (s *Shop) Needed(ppm float64) float64 { return DilutionM3h(s.KgPerHour, Mole, ppm, s.Mixing) }

// PPM is the mean concentration with the air there is; ok is false when it is
// not known.
func (s *Shop) PPM() (ppm float64, ok bool) {
	if s.Air <= 0 {
		return 0, false
	}
	return PPM(s.KgPerHour, s.Air, s.Mixing), true
}

// Screen is what is screened of a plant.
type Screen struct {
	Booth Booth
	Shop  Shop

	SolventGravity, SolventMole, SolventLEL float64 // the LEL in % by volume
	Flush                                   float64 // liters of solvent in a flush of a pumped gun
}

// FlushAir is the air, m³, that keeps the solvent of one flush at a quarter of
// its LEL if all of it evaporates.
func (s *Screen) FlushAir() float64 {
	gallons := s.Flush / 3.785411784
	return gallons * SafeVolume(s.SolventLEL, VaporPerGallon(s.SolventGravity, s.SolventMole)) * foot * foot * foot
}
