package reports

import (
	"io"
	"math"

	"moldturn/reports/csv"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/exposure"
)

// ExposureText writes a screening of air for a terminal.
func ExposureText(w io.Writer, x *view.Exposure, style table.Style) error {
	if _, err := io.WriteString(w, table.Wrap(view.ExposureCaution, style)+"\n"); err != nil {
		return err
	}
	for _, t := range x.Tables() {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	return nil
}

// ExposureHTML writes a screening of air as one page.
func ExposureHTML(w io.Writer, x *view.Exposure) error { return written(w, x.Page) }

// ExposureCSV writes the published limits of styrene, one a row, with the fresh
// air that would dilute the shop to each and what the shop has. Unknown cells
// are empty.
func ExposureCSV(w io.Writer, x *view.Exposure) error {
	out, err := csv.New(w, "limit", "ppm_8_h", "ppm_short_term", "since", "air_needed_m3_per_h", "shop_ppm", "source")
	if err != nil {
		return err
	}
	known := func(v *float64) csv.Cell {
		if v == nil {
			return csv.Empty()
		}
		return csv.Number(*v)
	}
	s := &x.Screen.Shop
	for _, l := range exposure.Limits() {
		if err := out.Row(csv.Text(l.Name), csv.Number(l.PPM), csv.Number(l.Short), csv.Text(l.Dated),
			known(finiteOrNil(s.Needed(l.PPM), true)), known(finiteOrNil(s.PPM())), csv.Text(l.Source)); err != nil {
			return err
		}
	}
	return out.Flush()
}

// ExposureJSON writes a screening in full; what has no end is null. It is in
// metric units whatever the scenario says, as the names of its keys tell.
func ExposureJSON(w io.Writer, x *view.Exposure) error {
	s := &x.Screen
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
	return Document(w, out)
}

// finiteOrNil is v, nil where it is not known or has no end.
func finiteOrNil(v float64, known bool) *float64 {
	if !known || math.IsInf(v, 0) || math.IsNaN(v) {
		return nil
	}
	return &v
}
