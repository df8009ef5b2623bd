package exposure

import (
	"math"
	"testing"
)

func near(t *testing.T, what string, got, want, relative float64) {
	t.Helper()
	if math.Abs(got/want-1) > relative {
		t.Errorf("%s: %.10g, want %.10g", what, got, want)
	}
}

// OSHA 29 CFR 1910.94(c)(6)(ii): toluol, LEL 1.4 %, 30.4 ft³/gal, gives 8,564 ft³
// a gallon (from memory); 4 · 98.6 · 30.4 / 1.4 = 8564.114…
func TestToluolVolume(t *testing.T) {
	near(t, "ft³ per gallon", SafeVolume(1.4, 30.4), 8564.11428571, 1e-10)
}

// Styrene with SG 0.91 and MW 104.2: 28.1533215 ft³/gal; 12399.974 ft³ of air at
// LEL 0.9 %, 10124.958 at 1.1 %. Computed from the stated formulas.
func TestStyreneVolume(t *testing.T) {
	vapor := VaporPerGallon(0.91, 104.2)
	near(t, "vapor", vapor, 28.1533215, 1e-8)
	near(t, "air at 0.9 %", SafeVolume(LEL, vapor), 12399.974, 1e-7)
	near(t, "air at 1.1 %", SafeVolume(LELOther, vapor), 10124.958, 1e-7)
}

// A quarter of an LEL of 0.9 % is 2250 ppm, of 1.1 % 2750 ppm.
func TestQuarterOfTheExplosiveLimit(t *testing.T) {
	near(t, "0.9 %", QuarterLEL(LEL), 2250, 1e-12)
	near(t, "1.1 %", QuarterLEL(LELOther), 2750, 1e-12)
}

// Styrene, 1 pint an hour, SG 0.91, MW 104.2, K 5; 1 lb an hour, K 5, 50 ppm; 1
// kg an hour, MW 104.15, 50 ppm, K 1, 24.45 L/mol. Computed from the formulas of
// the course sheet Form_ChapX (University of Toledo, A. Kumar) and of the ABIH
// formula sheet.
func TestDilution(t *testing.T) {
	for _, c := range []struct{ ppm, cfm float64 }{{100, 2932.9015}, {50, 5865.8029}, {20, 14664.5074}, {10, 29329.0147}} {
		near(t, "pint an hour", DilutionCfm(1.0/60, 0.91, 104.2, c.ppm, 5), c.cfm, 1e-8)
	}
	near(t, "pound an hour", DilutionCfmOfPounds(1.0/60, 104.2, 50, 5), 6190.0192, 1e-8)
	near(t, "kg an hour", DilutionM3h(1, Mole, 50, 1), 4695.1512, 1e-8)
	near(t, "1 ppm", MgPerM3, 4.2597137, 1e-8)
}

// The concentration of an air flow that dilutes to a limit is that limit, and
// the metric and the US form agree within what their rounded gas volumes differ:
// 387 ft³ per pound-mole at 70 °F is 24.16 L/mol, 24.45 at 25 °C.
func TestFormsAgree(t *testing.T) {
	near(t, "back again", PPM(2, DilutionM3h(2, Mole, 20, 3), 3), 20, 1e-12)
	us := M3h(DilutionCfmOfPounds(1/0.45359237/60, Mole, 50, 1))
	near(t, "metric against US", us*24.45/24.16, DilutionM3h(1, Mole, 50, 1), 1e-3)
	if PPM(0, 0, 1) != 0 || !math.IsInf(PPM(1, 0, 1), 1) {
		t.Error("no vapor is no concentration; no air is no end")
	}
}

// Build-up ends at the steady concentration, and what is purged in the time
// constant V/Q' is 1/e of it.
func TestPurgeAndBuildUp(t *testing.T) {
	near(t, "after one time constant", Purged(100, 5000, 5, 2000, 2), 100/math.E, 1e-12)
	near(t, "in the end", Built(1, 5000, 5, 2000, 1000), PPM(1, 5000, 5), 1e-12)
	near(t, "both add up", Built(1, 5000, 5, 2000, 2)+Purged(PPM(1, 5000, 5), 5000, 5, 2000, 2), PPM(1, 5000, 5), 1e-12)
}

// 100 ft/min over an open front of 20 by 12 ft is 24,000 ft³/min, 11.3 m³/s.
func TestBoothAir(t *testing.T) {
	face := 20 * foot * 12 * foot
	near(t, "ft³/min", Cfm(AirM3h(LeastFace, face)), 24000, 1e-12)
	near(t, "m³/s", AirM3h(LeastFace, face)/3600, 11.3, 0.003)
	near(t, "back again", FaceFpm(AirM3h(150, face), face), 150, 1e-12)
	near(t, "ft³/min there and back", Cfm(M3h(24000)), 24000, 1e-12)
	near(t, "100 ft/min in m/s", AirM3h(100, 1)/3600, 0.51, 0.004)
}

// OSHA 29 CFR 1910.94(c)(6)(i), Table G-10 (WAC 296-62-11019, Table 14); the
// letter of 2001-10-22 gives its span as 50 to 250 ft/min.
func TestBoothVelocities(t *testing.T) {
	low, high := math.Inf(1), 0.0
	for _, d := range Drafts() {
		for _, r := range []Range{d.Large, d.Small} {
			if r.Low > r.Design || r.Design > r.High {
				t.Errorf("%s: %v", d.Work, r)
			}
			low, high = min(low, r.Low), max(high, r.High)
		}
	}
	if low != 50 || high != 250 {
		t.Errorf("span %v to %v", low, high)
	}
	if d, ok := Guns(50); !ok || d.Large.Design != 100 || d.Small.Design != 150 {
		t.Errorf("crossdraft of 50: %+v", d)
	}
	if d, ok := Guns(51); !ok || d.Large.Design != 150 || d.Small.Design != 200 {
		t.Errorf("crossdraft of 51: %+v", d)
	}
	if _, ok := Guns(100.5); ok {
		t.Error("crossdrafts over 100 ft/min are not permitted")
	}
}

// NIOSH Pocket Guide: 50 ppm are 215 mg/m³, 100 are 425; ACGIH 1996: 20 ppm are
// 85 mg/m³, 40 are 170; as printed, rounded to 5 mg/m³.
func TestLimitsInMass(t *testing.T) {
	for _, c := range []struct{ ppm, mg float64 }{{50, 215}, {100, 425}, {20, 85}, {40, 170}} {
		if got := math.Round(c.ppm*MgPerM3/5) * 5; got != c.mg {
			t.Errorf("%v ppm are %v mg/m³, want %v", c.ppm, got, c.mg)
		}
	}
	before := math.Inf(1)
	for _, l := range Limits() {
		if l.PPM > before || l.Short < l.PPM || l.Source == "" || l.Dated == "" {
			t.Errorf("%+v", l)
		}
		before = l.PPM
	}
}

// A booth with less air than its design velocity needs more; twice the vapor in
// the same air is twice the concentration, and a booth without air is explosive.
func TestScreen(t *testing.T) {
	b := Booth{Face: 22.3, Air: 41000, Crossdraft: 40, KgPerHour: 3, Peak: 2, LEL: LEL}
	fpm, asked, ok := b.Velocity()
	if !ok || asked.Design != 100 || math.Abs(fpm-100.5) > 0.5 {
		t.Errorf("%v ft/min, %v, %v", fpm, asked, ok)
	}
	near(t, "needed over there is", b.Needed()/b.Air, 100/fpm, 1e-12)
	double := b
	double.KgPerHour *= 2
	near(t, "twice the vapor", double.Exhaust(), 2*b.Exhaust(), 1e-12)
	if b.Explosive() || !(&Booth{KgPerHour: 1, Peak: 1, LEL: LEL}).Explosive() || (&Booth{LEL: LEL}).Explosive() {
		t.Error("explosive exhaust")
	}
	b.Crossdraft = 120
	if _, _, ok := b.Velocity(); ok {
		t.Error("a crossdraft of 120 ft/min is permitted")
	}
	s := Shop{KgPerHour: 2, Mixing: 5}
	if _, ok := s.PPM(); ok {
		t.Error("a concentration without known air")
	}
	s.Air = s.Needed(20)
	ppm, _ := s.PPM()
	near(t, "ppm with the air for 20", ppm, 20, 1e-12)
	x := Screen{SolventGravity: 0.867, SolventMole: 92.14, SolventLEL: 1.4, Flush: 3.785411784}
	near(t, "one gallon of toluol by its molar mass", x.FlushAir()/(foot*foot*foot), SafeVolume(1.4, VaporPerGallon(0.867, 92.14)), 1e-12)
}
