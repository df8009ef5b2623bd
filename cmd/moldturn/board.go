package main

import (
	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view/board"
	"moldturn/scenarios"
	"moldturn/sim/ahead"
)

// boardFlags say how far a board looks.
type boardFlags struct {
	aheadFlags
	Weeks option[int]
}

func boardCommand() *command {
	o := &boardFlags{}
	o.Inputs = inputPaths
	return &command{
		name:     "board",
		synopsis: "the next weeks day by day: pulls, strips, spray lists, who is short",
		help: `Begins many futures from the floor as it stands and lays out, for each day, what
happens in most of them: the pulls with ready times and the crew, the strips with
the day that costs least, the spray list of each booth in an order of colors with
its flushes, parts that may miss their gel window, boats that leave, and who is
short.
With --out the folder gets board.html for the wall, one page a day, board.csv,
board.json and board.ics for calendars.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f, "the folder with the floor of this morning")
			f.Var(&whole[int]{flag: "weeks", to: &o.Weeks, low: 1, high: 8}, "weeks", "how many weeks, 3 by default")
		},
		run: func(c *Context) error { return runBoard(c, o) },
	}
}

// beyond is how many weeks the futures go on after those of a board, so that
// what is done in its last days is seen to its end.
const beyond = 1

func runBoard(c *Context, o *boardFlags) error {
	f, err := openFloor(c.Args[0], &o.aheadFlags)
	if err != nil {
		return err
	}
	v, err := o.board(c, f)
	if err != nil {
		return err
	}
	if err := saveBoard(c, o.Out, v); err != nil {
		return err
	}
	if o.JSON {
		return reports.BoardJSON(c.Stdout, v)
	}
	return reports.BoardText(c.Stdout, v, table.Style{})
}

func (o *boardFlags) board(c *Context, f *shopFloor) (*board.View, error) {
	weeks := o.Weeks.Or(3)
	start, setup, err := f.from(c, &o.aheadFlags, scenarios.FloorOptions{Weeks: weeks + beyond})
	if err != nil {
		return nil, err
	}
	end := o.told(c, setup, "looking ahead", 1)
	futures, err := setup.Run(c.Ctx)
	end()
	if err != nil {
		return nil, err
	}
	return o.view(f, start, ahead.BoardOf(setup, futures, 7*weeks)), nil
}

// view joins a board with its names.
func (o *boardFlags) view(f *shopFloor, start *scenarios.FloorStart, b *ahead.Board) *board.View {
	v := &board.View{Board: b, Plant: f.Base.Value.At("name").Text(), Futures: b.Setup.Futures, Molds: f.moldNames()}
	for _, order := range start.Orders {
		v.Orders = append(v.Orders, order.Name)
	}
	for _, n := range start.Notices {
		v.Assumed = append(v.Assumed, n.Message)
	}
	return v
}

// moldNames are what the shop calls the molds of the plan; those it does not
// list keep the names of the plan.
func (f *shopFloor) moldNames() []string {
	var out []string
	for i := range f.Base.Plan().Molds {
		out = append(out, f.Base.Plan().Molds[i].Name)
	}
	for i := range f.Floor.Molds {
		if m := &f.Floor.Molds[i]; m.Plan >= 0 {
			out[m.Plan] = m.ID
		}
	}
	return out
}

func saveBoard(c *Context, folder string, v *board.View) error {
	return saveAs(c, folder, []resultFile{
		resultOf("board.csv", v, reports.BoardCSV),
		resultOf("board.ics", v, reports.BoardICS),
		resultOf("board.html", v, reports.BoardHTML),
		resultOf("board.json", v, reports.BoardJSON),
	})
}
