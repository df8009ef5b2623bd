package main

import (
	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
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
hygienists and local codes.
With --out the folder gets exposure.csv, exposure.json and exposure.html.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			addAlternative(f, &which)
		},
		run: func(c *Context) error { return runExposure(c, o, which) },
	}
}

func runExposure(c *Context, o *common, which string) error {
	s, err := loadWith(c.Args[0], o, scenarios.PermitDefaults, scenarios.ExposureDefaults)
	if err != nil {
		return err
	}
	a, err := pickAlternative(s, which)
	if err != nil {
		return err
	}
	p, err := permitOf(c, o, s, a, "simulating the plant for its air")
	if err != nil {
		return err
	}
	screen, _ := a.Plant.Exposure()
	screen.Booth.KgPerHour = p.Ledger.BoothRate()
	screen.Shop.KgPerHour = p.Ledger.ShopRate(study.LayHours(a.Plant.Plan(), &a.Plant.Frame))
	e := &view.Exposure{Study: p.Study, Orders: p.Orders, Screen: screen, Units: s.Base.Units()}
	if err := saveAs(c, o.Out, []resultFile{
		resultOf("exposure.csv", e, reports.ExposureCSV),
		resultOf("exposure.json", e, reports.ExposureJSON),
		resultOf("exposure.html", e, reports.ExposureHTML),
	}); err != nil {
		return err
	}
	if o.JSON {
		return reports.ExposureJSON(c.Stdout, e)
	}
	return reports.ExposureText(c.Stdout, e, table.Style{})
}
