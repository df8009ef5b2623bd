package main

import (
	"fmt"
	"math"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/exposure"
	"moldturn/sim/study"
)

func exposureCommand() *command {
	o := &common{Inputs: inputPaths}
	which := ""
	return &command{
		name:     "exposure",
		synopsis: "screen the air of booths and shop against published limits",
		help: `Estimates the styrene that the simulated plant's gel coat and resin give off and
holds it against the air there is: velocity at the booth's face, a quarter of the
lower explosive limit, and the fresh air that would dilute the shop to published
limits. Booths, air and mixing are inputs: moldturn list inputs, those that begin
with exposure. Screening only: it replaces no measurement; defer to industrial
hygienists and local codes.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			addAlternative(f, &which)
		},
		run: func(c *Context) error { return runExposure(c, o, which) },
	}
}

func runExposure(c *Context, o *common, which string) error {
	if o.Out != "" {
		return misuse("", "exposure prints its tables and writes no files, found --out %q", o.Out)
	}
	s, err := loadWith(c.Args[0], o, scenarios.PermitDefaults, scenarios.ExposureDefaults)
	if err != nil {
		return err
	}
	a, err := pickAlternative(s, which)
	if err != nil {
		return err
	}
	p, err := permitOf(c, o, s, a)
	if err != nil {
		return err
	}
	screen, _ := a.Plant.Exposure()
	screen.Booth.KgPerHour = p.Ledger.BoothRate()
	screen.Shop.KgPerHour = p.Ledger.ShopRate(study.LayHours(a.Plant.Plan(), &a.Plant.Frame))
	if o.JSON {
		return exposureJSON(c, &screen)
	}
	e := &view.Exposure{Screen: screen, Units: s.Base.Units()}
	if _, err := fmt.Fprintf(c.Stdout, "%s\n", table.Wrap(view.ExposureCaution, table.Style{})); err != nil {
		return err
	}
	return writeTables(c, e.Tables())
}

// exposureJSON writes the screening for machines; what has no end is null.
func exposureJSON(c *Context, s *exposure.Screen) error {
	type limit struct {
		Name      string   `json:"name"`
		PPM       float64  `json:"ppm_8_h"`
		Short     float64  `json:"ppm_short_term"`
		Since     string   `json:"since"`
		Source    string   `json:"source"`
		AirNeeded *float64 `json:"air_needed_m3_per_h"`
	}
	fpm, asked, ok := s.Booth.Velocity()
	out := struct {
		Caution    string   `json:"caution"`
		FaceFpm    float64  `json:"booth_face_fpm"`
		LeastFpm   float64  `json:"booth_face_least_fpm"`
		RangeLow   float64  `json:"booth_range_low_fpm"`
		RangeHigh  float64  `json:"booth_range_high_fpm"`
		CrossOK    bool     `json:"crossdraft_permitted"`
		BoothAir   float64  `json:"booth_air_m3_per_h"`
		BoothNeeds float64  `json:"booth_air_needed_m3_per_h"`
		BoothRate  float64  `json:"booth_styrene_kg_per_h"`
		Exhaust    *float64 `json:"booth_exhaust_peak_ppm"`
		Quarter    float64  `json:"quarter_lel_ppm"`
		FlushAir   float64  `json:"flush_air_m3"`
		ShopRate   float64  `json:"shop_styrene_kg_per_h"`
		ShopPPM    *float64 `json:"shop_ppm"`
		Limits     []limit  `json:"limits"`
	}{view.ExposureCaution, fpm, exposure.LeastFace, asked.Low, asked.High, ok, s.Booth.Air, s.Booth.Needed(), s.Booth.KgPerHour,
		finiteOrNil(s.Booth.Exhaust(), true), exposure.QuarterLEL(s.Booth.LEL), s.FlushAir(), s.Shop.KgPerHour, finiteOrNil(s.Shop.PPM()), nil}
	for _, l := range exposure.Limits() {
		out.Limits = append(out.Limits, limit{l.Name, l.PPM, l.Short, l.Dated, l.Source, finiteOrNil(s.Shop.Needed(l.PPM), true)})
	}
	return writeJSON(c, out)
}

// finiteOrNil is v, nil where it is not known or has no end.
func finiteOrNil(v float64, known bool) *float64 {
	if !known || math.IsInf(v, 0) || math.IsNaN(v) {
		return nil
	}
	return &v
}
