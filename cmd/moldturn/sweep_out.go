package main

import (
	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/study"
)

// sweepOf joins figures with the names of the scenario; missing is how many
// points have none.
func sweepOf(op *opened, h *study.Head, d *study.Design, of []study.Metric, values func(i int) map[string]study.Values) (v *view.Sweep, missing int) {
	v = &view.Sweep{Scenario: op.Base.Value.At("name").Text(), Seed: h.Seed, Replications: h.Replications, Years: op.Base.Years, Warm: op.Base.Warm,
		Design: d, Of: of, Version: h.Program, Hash: h.Fingerprint}
	if note := op.Base.Value.At("note"); note.Given() {
		v.Note = note.Text()
	}
	v.Currency = op.Base.Currency()
	for i := range v.Of {
		v.Of[i].Unit = v.UnitOf(&v.Of[i])
	}
	plan := op.Base.Plan()
	for i := range len(plan.Crafts) + len(plan.Places) {
		v.Pools = append(v.Pools, view.PoolName(plan, i))
	}
	v.Inputs = inputsOf(op.Base.Assumptions())
	v.Base = study.Figures{Name: op.baseName(), Values: values(0)}
	if len(v.Base.Values) == 0 {
		missing++
	}
	for i := range d.Points {
		f := study.Figures{Name: d.Name(i), Values: values(i + 1)}
		for k, value := range d.Points[i].Values {
			if value != "" {
				f.Changes = append(f.Changes, d.Factors[k].Path+" = "+value)
			}
		}
		if len(f.Values) == 0 {
			missing++
		}
		v.Points = append(v.Points, f)
	}
	return v, missing
}

// sweepOut writes the files of a sweep, and prints it.
func sweepOut(c *Context, asJSON bool, folder string, v *view.Sweep) error {
	if err := saveAs(c, folder, []resultFile{
		resultOf("results.csv", v, reports.SweepCSV),
		resultOf("results.json", v, reports.SweepJSON),
		resultOf("report.html", v, reports.SweepHTML),
	}); err != nil {
		return err
	}
	if asJSON {
		return reports.SweepJSON(c.Stdout, v)
	}
	return reports.SweepText(c.Stdout, v, table.Style{})
}
