package reports

import (
	"fmt"
	"io"

	"moldturn/reports/csv"
	"moldturn/reports/page"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/stats"
)

// PermitText writes a permit ledger for a terminal.
func PermitText(w io.Writer, p *view.Permit, style table.Style) error {
	if _, err := fmt.Fprintf(w, "%s\n%s\n", table.Wrap(view.PermitCaution, style), table.Wrap(p.Headline(), style)); err != nil {
		return err
	}
	for _, t := range p.Tables() {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	return nil
}

// PermitHTML writes a permit ledger as one page.
func PermitHTML(w io.Writer, p *view.Permit) error {
	x, err := p.Page()
	if err != nil {
		return err
	}
	return page.Write(w, x)
}

// PermitCSV writes the month-ends of every repeat, one material a row, masses in
// kg or lb as the scenario has its units and the heads say. Figures of twelve months are empty until twelve are known; those of the
// whole plant stand in the rows without a material.
func PermitCSV(w io.Writer, p *view.Permit) error {
	unit, per := p.Mass()
	mass := func(kg float64) csv.Cell { return csv.Number(kg / per) }
	out, err := csv.New(w, "repeat", "month", "name", "material", "used_"+unit, "hap_"+unit, "used_12_months_"+unit, "hap_12_months_"+unit, "averaged_"+unit, "limit_"+unit, "boats")
	if err != nil {
		return err
	}
	for r, l := range p.Ledger.Ledgers {
		for n := range l.Months {
			m := &l.Months[n]
			head := []csv.Cell{csv.Int(int64(r + 1)), csv.Int(int64(n + 1)), csv.Text(m.Month.Month.String())}
			whole := append(head[:3:3], csv.Empty(), csv.Empty(), mass(m.HAP), csv.Empty(), csv.Empty(), csv.Empty(), csv.Empty(), csv.Int(m.Boats))
			if m.Known {
				whole[7], whole[8], whole[9] = mass(m.Rolling), mass(m.Average.Emissions), mass(m.Average.Limit)
			}
			if err := out.Row(whole...); err != nil {
				return err
			}
			for i := range m.Grams {
				x := &p.Ledger.Setup.Materials[i]
				used := float64(m.Grams[i]) / 1000
				row := append(head[:3:3], csv.Text(x.Name), mass(used), mass(x.Emitted(used)), csv.Empty(), csv.Empty(), csv.Empty(), csv.Empty(), csv.Empty())
				if m.Known {
					year := float64(m.Used[i]) / 1000
					row[6], row[7] = mass(year), mass(x.Emitted(year))
				}
				if err := out.Row(row...); err != nil {
					return err
				}
			}
		}
	}
	return out.Flush()
}

type permitDocument struct {
	Caution    string           `json:"caution"`
	Scenario   string           `json:"scenario"`
	Name       string           `json:"alternative"`
	Orders     bool             `json:"dated_orders"`
	Seed       uint64           `json:"seed"`
	Repeats    int              `json:"replications"`
	Years      int              `json:"years"`
	Cap        *float64         `json:"cap_kg"`
	HAPPerYear *level           `json:"hap_per_year"`
	HAPPerBoat *level           `json:"hap_per_boat"`
	Left       *level           `json:"boats_left_under_cap"`
	Materials  []permitMaterial `json:"materials"`
	Months     []permitMonth    `json:"month_ends"`
	Levers     []permitLever    `json:"levers"`
}

type permitMaterial struct {
	Name      string  `json:"name"`
	Operation string  `json:"operation"`
	Method    string  `json:"method"`
	HAP       float64 `json:"hap_percent"`
	Filler    float64 `json:"filler_percent"`
	Averaged  bool    `json:"averaged"`
	Point     float64 `json:"point_value_kg_per_mg"`
	Used      float64 `json:"used_kg_per_year"`
	Emitted   float64 `json:"hap_kg_per_year"`
}

type permitMonth struct {
	Month     int      `json:"month"`
	Name      string   `json:"name"`
	Boats     float64  `json:"boats"`
	HAP       float64  `json:"hap_kg"`
	Rolling   *float64 `json:"hap_12_months_kg"` // null, as all that follow, until twelve months are known
	Low       *float64 `json:"hap_12_months_p10_kg"`
	High      *float64 `json:"hap_12_months_p90_kg"`
	Emissions *float64 `json:"averaged_kg"`
	Limit     *float64 `json:"limit_kg"`
	Fails     *int     `json:"repeats_not_keeping"`
	Over      *int     `json:"repeats_over_cap"`
	Major     *int     `json:"repeats_at_major_source_threshold"`
}

type permitLever struct {
	Name  string `json:"name"`
	Saves *level `json:"saves_per_year"`
	Room  *level `json:"boats_more_under_cap"`
	Keeps bool   `json:"keeps_subpart_vvvv"`
}

// PermitJSON writes a permit ledger in full, in kg whatever the scenario says, as
// the names of its keys tell; what is not known is null.
func PermitJSON(w io.Writer, p *view.Permit) error {
	s := p.Ledger.Setup
	d := permitDocument{Caution: view.PermitCaution, Scenario: p.Study.Scenario, Name: p.Study.Base().Name, Orders: p.Orders, Seed: p.Study.Seed,
		Repeats: p.Study.Replications, Years: p.Study.Years, HAPPerYear: levelOf(p.Ledger.PerYear(), "kg/year"), HAPPerBoat: levelOf(p.Ledger.PerBoat(), "kg/boat")}
	if s.Cap > 0 {
		d.Cap, d.Left = &s.Cap, levelOf(p.Ledger.Left(s.Cap), "boats")
	}
	for i := range s.Materials {
		m := &s.Materials[i]
		used, hap := p.Ledger.Material(i)
		d.Materials = append(d.Materials, permitMaterial{m.Name, m.Operation.String(), m.Method.String(), m.HAP, m.Filler, m.Averaged, m.Point(), used, hap})
	}
	for n, m := range p.Ledger.Months() {
		x := permitMonth{Month: n + 1, Name: m.Month.Month.String(), Boats: m.Boats, HAP: m.HAP}
		if m.Known {
			x.Rolling, x.Low, x.High, x.Emissions, x.Limit, x.Fails, x.Over, x.Major = &m.Rolling, &m.Low, &m.High, &m.Emissions, &m.Limit, &m.Fails, &m.Over, &m.Major
		}
		d.Months = append(d.Months, x)
	}
	for _, l := range p.Ledger.Levers() {
		d.Levers = append(d.Levers, permitLever{l.Name, levelOf(l.Saves, "kg/year"), levelOf(l.Room, "boats"), l.Complying})
	}
	return Document(w, d)
}

// levelOf is a summary as JSON, nil for none.
func levelOf(x stats.Summary, unit string) *level {
	if x.N == 0 {
		return nil
	}
	low, high := ends(x)
	return &level{Mean: x.Mean, Low: low, High: high, N: x.N, Unit: unit}
}
