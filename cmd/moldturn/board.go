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
	If    []string
}

func boardCommand() *command {
	o := &boardFlags{}
	o.Inputs = inputPaths
	return &command{
		name:     "board",
		synopsis: "the next weeks day by day: pulls, strips, sprays, who is short",
		help: `Begins many futures from the floor as it stands and lays out, for each day, what
happens in most of them: the pulls with ready times and the crew, the strips with
the day that costs least, the spray list of each booth in an order of colors with
its flushes, parts that may miss their gel window, boats that leave, and who is
short.
With --if something happens to it: a booth is down, people are out, a mold is
stuck, a Saturday is worked. The board is drawn up with that, and held against the
same futures without it: the orders that move and by how many days, and, where
days are clearly lost, the ways to recover, each tried under the same luck: what
wins most of the lost days back first, and of equals what takes fewest hours.
With --out the folder gets board.html for the wall, one page a day, board.csv,
board.json and board.ics for calendars.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f, "the folder with the floor of this morning")
			f.Var(&whole[int]{flag: "weeks", to: &o.Weeks, low: 1, high: 8}, "weeks", "how many weeks, 3 by default")
			f.StringArrayVar(&o.If, "if", nil, "what happens, as 'booth 2 down mon..fri', 'sprayer out tue', 'mold RH-2 stuck', 'extra saturday'; may be given again")
		},
		run: func(c *Context) error { return runBoard(c, o) },
	}
}

// beyond is how many weeks the futures go on after those of a board, so that
// what is done in its last days is seen to its end.
const beyond = 1

// beyondIf is the same where orders that move are followed until they leave.
const beyondIf = 6

// mostWays is about how many times futures are looked at with --if.
const mostWays = 7

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
	further := beyond
	if len(o.If) > 0 {
		further = beyondIf
	}
	start, setup, err := f.from(c, &o.aheadFlags, scenarios.FloorOptions{Weeks: weeks + further})
	if err != nil {
		return nil, err
	}
	if len(o.If) > 0 {
		return o.weighed(c, f, start, setup, weeks)
	}
	end := o.told(c, setup, "looking ahead", 1)
	futures, err := setup.Run(c.Ctx)
	end()
	if err != nil {
		return nil, err
	}
	return o.view(f, start, ahead.BoardOf(setup, futures, 7*weeks)), nil
}

// weighed draws up the board under what is asked with --if.
func (o *boardFlags) weighed(c *Context, f *shopFloor, start *scenarios.FloorStart, setup *ahead.Setup, weeks int) (*board.View, error) {
	q := &whatIf{plan: setup.Plan, morning: f.Floor.Morning.Date, last: f.Floor.Morning.Date.AddDays(7*weeks - 1), molds: f.moldNames()}
	changes, err := q.read(o.If)
	if err != nil {
		return nil, err
	}
	end := o.told(c, setup, "looking ahead with and without", mostWays)
	effect, changed, futures, err := ahead.Weigh(c.Ctx, setup, changes)
	end()
	if err != nil {
		return nil, err
	}
	v := o.view(f, start, ahead.BoardOf(changed, futures, 7*weeks))
	v.If = effect
	return v, nil
}

// view joins a board with its names.
func (o *boardFlags) view(f *shopFloor, start *scenarios.FloorStart, b *ahead.Board) *board.View {
	v := &board.View{Board: b, Plant: f.Base.Value.At("name").Text(), Futures: b.Setup.Futures, Molds: f.moldNames(), Warned: f.Warned}
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
