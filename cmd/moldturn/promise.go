package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/view/promise"
	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/ahead"
	"moldturn/sim/clock"
	"moldturn/sim/param/guess"
	"moldturn/sim/shift"
)

// promiseFlags say which boats a date is wanted for.
type promiseFlags struct {
	aheadFlags
	Boat   string
	Count  option[int]
	By     floor.Moment
	by     morningFlag
	Urgent option[int]
}

func promiseCommand() *command {
	o := &promiseFlags{}
	o.Inputs = inputPaths
	o.by.flag, o.by.to = "by", &o.By
	return &command{
		name:     "promise",
		synopsis: "the date by which some boats can leave, and whom that delays",
		help: `Begins many futures from the floor as it stands, with the boats asked for behind
the orders that are there, and counts: the day by which all of them have left in
half of the futures and in nine of ten, who leaves later because of them and by how
many days, or a plain no with the reason. With --by a date is judged.
With --out the folder gets promise.csv and promise.json.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f, "the folder with the floor of this morning")
			f.StringVar(&o.Boat, "boat", "", "the boat: model=NAME, and color=NAME and band=NAME where wanted")
			f.Var(&whole[int]{flag: "count", to: &o.Count, low: 1, high: 500}, "count", "how many, 1 by default")
			f.Var(&o.by, "by", "judge this date instead of looking for one")
			f.Var(&whole[int]{flag: "urgent", to: &o.Urgent, low: 0, high: 100}, "urgent", "their priority; higher goes first, 0 by default")
		},
		run: func(c *Context) error { return runPromise(c, o) },
	}
}

// farthest is how many weeks ahead a promise looks, one after the other until
// the boats are out.
var farthest = []int{13, 26, 52, 104}

func runPromise(c *Context, o *promiseFlags) error {
	f, err := openFloor(c.Args[0], &o.aheadFlags)
	if err != nil {
		return err
	}
	boat, err := boatNamed(f.Base.Plan(), o.Boat)
	if err != nil {
		return err
	}
	if !o.By.IsZero() && o.By.Date.Before(f.Floor.Morning.Date) {
		return failed("", "--by: found %s, allowed: from the morning of the floor on, %s", o.By.Date, f.Floor.Morning.Date)
	}
	v, err := o.promise(c, f, boat)
	if err != nil {
		return err
	}
	if err := savePromise(c, o.Out, v); err != nil {
		return err
	}
	if o.JSON {
		return reports.PromiseJSON(c.Stdout, v)
	}
	return reports.PromiseText(c.Stdout, v)
}

// promise looks further and further ahead until the boats are out.
func (o *promiseFlags) promise(c *Context, f *shopFloor, boat sim.StartOrder) (*promise.View, error) {
	boat.Urgent = int8(o.Urgent.Or(0))
	for i, weeks := range farthest {
		start, setup, err := f.from(c, &o.aheadFlags, scenarios.FloorOptions{Weeks: weeks, BookOnly: true})
		if err != nil {
			return nil, err
		}
		boats := make([]sim.StartOrder, o.Count.Or(1))
		for k := range boats {
			boats[k] = boat
			boats[k].Arrived = setup.Start.At
		}
		end := o.told(c, setup, fmt.Sprintf("looking %d weeks ahead", weeks), 2)
		p, err := ahead.Ask(c.Ctx, setup, boats)
		end()
		if err != nil {
			return nil, err
		}
		if p.All.Surely(0.9) == clock.Never && i+1 < len(farthest) {
			continue
		}
		return o.view(f, start, setup, p, boat), nil
	}
	return nil, nil
}

// view joins a promise with its names.
func (o *promiseFlags) view(f *shopFloor, start *scenarios.FloorStart, setup *ahead.Setup, p *ahead.Promise, boat sim.StartOrder) *promise.View {
	plan := setup.Plan
	v := &promise.View{Promise: p, Plant: f.Base.Value.At("name").Text(), Boat: boatWords(plan, boat), Names: orderNames(plan, start), Model: int(boat.Model),
		Paper: byHand(f.Base), Morning: setup.Start.At, First: plan.Start, By: clock.Never, Futures: setup.Futures, Warned: f.Warned}
	if !o.By.IsZero() {
		v.By = shift.Midnight(plan.Start, o.By.Date) + clock.Day
	}
	for _, n := range start.Notices {
		v.Assumed = append(v.Assumed, n.Message)
	}
	return v
}

// boatWords is "Rush 23 in navy".
func boatWords(p *sim.Plan, o sim.StartOrder) string {
	text := p.Models[o.Model].Name
	if o.Color != sim.None {
		text += " in " + p.Colors[o.Color].Name
	}
	if o.Band != sim.None {
		text += " with a band in " + p.Colors[o.Band].Name
	}
	return text
}

// boatNamed reads "model=Rush 23,color=navy".
func boatNamed(p *sim.Plan, text string) (sim.StartOrder, error) {
	o := sim.StartOrder{Model: sim.None, Color: sim.None, Band: sim.None, Arrived: sim.Unknown, Began: sim.Unknown, Due: clock.Never}
	if strings.TrimSpace(text) == "" {
		return o, failed("for example --boat 'model="+p.Models[0].Name+"'", "--boat is missing: which model")
	}
	models, colors := namesOf(p)
	var faults []string
	for _, pair := range strings.Split(text, ",") {
		key, value, ok := strings.Cut(pair, "=")
		key = strings.TrimSpace(key)
		var to *int16
		from := colors
		switch {
		case !ok:
			faults = append(faults, fmt.Sprintf("--boat: found %q, allowed: model=NAME, color=NAME, band=NAME", strings.TrimSpace(pair)))
			continue
		case key == "model":
			to, from = &o.Model, models
		case key == "color":
			to = &o.Color
		case key == "band":
			to = &o.Band
		default:
			faults = append(faults, fmt.Sprintf("--boat: found %q, allowed: model, color, band", key))
			continue
		}
		if *to = nameIn(from, value); *to == sim.None {
			faults = append(faults, unknownBoat(key, strings.TrimSpace(value), from))
		}
	}
	if o.Model == sim.None && len(faults) == 0 {
		faults = append(faults, "--boat: the model is missing, allowed: "+strings.Join(models, ", "))
	}
	if len(faults) > 0 {
		return o, failed("", "%s", strings.Join(faults, "\n"))
	}
	return o, nil
}

func unknownBoat(key, value string, names []string) string {
	text := fmt.Sprintf("--boat: there is no %s %q\n  allowed: %s", key, value, strings.Join(names, ", "))
	if near := guess.Near(value, names); near != "" {
		text += fmt.Sprintf("\n  hint: did you mean %q?", near)
	}
	return text
}

func namesOf(p *sim.Plan) (models, colors []string) {
	for i := range p.Models {
		models = append(models, p.Models[i].Name)
	}
	for i := range p.Colors {
		colors = append(colors, p.Colors[i].Name)
	}
	return models, colors
}

// nameIn finds a name without regard to case, spaces and dashes.
func nameIn(names []string, text string) int16 {
	for i, n := range names {
		if guess.Fold(n) == guess.Fold(text) {
			return int16(i)
		}
	}
	return sim.None
}

func savePromise(c *Context, folder string, v *promise.View) error {
	return saveAs(c, folder, []resultFile{
		{"promise.csv", func(w io.Writer) error { return reports.PromiseCSV(w, v) }},
		{"promise.json", func(w io.Writer) error { return reports.PromiseJSON(w, v) }},
	})
}
