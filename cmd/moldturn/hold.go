package main

import (
	"fmt"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/cure"
)

func holdCommand() *command {
	o := &common{Inputs: inputPaths}
	return &command{
		name:     "hold",
		synopsis: "print the hold card: hours in the mold by shop temperature",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. The card
is for the hardness of hold.barcol or hold.degree, a Barcol hardness of 35 where
neither is given, and the hours of hold.clock.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			f.Var(&settings{flag: "set", to: &o.Settings, paths: o.Inputs}, "set", "change one input for this card; may be given again")
			f.BoolVar(&o.JSON, "json", false, "print the card as JSON")
			f.BoolVarP(&o.Quiet, "quiet", "q", false, "changes nothing: there is no progress to show")
		},
		run: func(c *Context) error { return hold(c, o) },
	}
}

// heldCard is the card as JSON.
type heldCard struct {
	Hardness float64   `json:"barcol_wanted"`
	Clock    float64   `json:"clock_hours"`
	Rows     []heldRow `json:"rows"`
	Cautions []string  `json:"cautions"`
}

// heldRow is a line of the card as JSON; hours that are never reached are null.
type heldRow struct {
	ShopC     float64  `json:"shop_c"`
	Hold      *float64 `json:"hold_hours"`
	Wait      *float64 `json:"hard_enough_after_hours"`
	AtClock   float64  `json:"barcol_after_clock_hours"`
	Ceiling   float64  `json:"barcol_at_most"`
	NeedsHeat bool     `json:"needs_heat"`
}

func hold(c *Context, o *common) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	card := s.Base.HoldCard()
	if o.JSON {
		return writeJSON(c, heldCard{card.Hardness, card.Clock.Hours(), heldRows(card.Rows(cure.CardTemperatures())), view.HoldCautions()})
	}
	if err := table.Write(c.Stdout, view.HoldCard(&card, s.Base.Style()), table.Style{}); err != nil {
		return err
	}
	fmt.Fprintln(c.Stdout)
	for _, line := range view.HoldCautions() {
		fmt.Fprint(c.Stdout, table.Wrap("- "+line, table.Style{}))
	}
	return nil
}

func heldRows(rows []cure.CardRow) []heldRow {
	var out []heldRow
	for _, r := range rows {
		row := heldRow{ShopC: r.TempC, AtClock: r.AtClock, Ceiling: r.Ceiling, NeedsHeat: r.NeedsHeat}
		if !r.NeedsHeat {
			hold, wait := r.Hold.Hours(), r.Wait.Hours()
			row.Hold, row.Wait = &hold, &wait
		}
		out = append(out, row)
	}
	return out
}
