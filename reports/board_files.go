package reports

import (
	"io"

	"moldturn/reports/csv"
	"moldturn/reports/ical"
	"moldturn/reports/view/board"
	"moldturn/sim/clock"
	"moldturn/sim/stats"
)

// BoardCSV writes every line of a board. For people, people is how many are out,
// and hours is how long work waits; for the rest hours is labor.
func BoardCSV(w io.Writer, v *board.View) error {
	out, err := csv.New(w, "date", "kind", "mold", "part", "order", "chance", "early", "likely", "late", "nine_in_10_by",
		"craft", "people", "hours", "turns", "days_either_way", "costs_least", "booth", "in_list", "color", "band")
	if err != nil {
		return err
	}
	for day := range v.Days {
		for _, r := range v.Rows(day) {
			if err := out.Row(csv.Text(r.Date), csv.Text(r.Kind), csv.Text(r.Mold), csv.Text(r.Part), csv.Text(r.Order), csv.Number(r.Chance),
				csv.Text(r.Early), csv.Text(r.Likely), csv.Text(r.Late), csv.Text(r.By), csv.Text(r.Craft), some(r.People), hoursOr(r.Hours), some(r.Turns),
				csv.Int(int64(r.Apart)), csv.Text(r.Least), csv.Text(r.Booth), some(r.InList), csv.Text(r.Color), csv.Text(r.Band)); err != nil {
				return err
			}
		}
	}
	return out.Flush()
}

// some is a number, or nothing for 0.
func some(n int) csv.Cell {
	if n == 0 {
		return csv.Empty()
	}
	return csv.Int(int64(n))
}

func hoursOr(h float64) csv.Cell {
	if h == 0 {
		return csv.Empty()
	}
	return csv.Number(h)
}

type boardDocument struct {
	Answer  string     `json:"answer"`
	Morning string     `json:"morning"`
	Warned  []string   `json:"mind"` // what a reader must know of the floor
	Futures int        `json:"futures"`
	Left    int        `json:"left_out"`
	Days    []boardDay `json:"days"`
	If      *boardIf   `json:"if,omitempty"`
}

type boardIf struct {
	Changes []string       `json:"changes"`
	Answer  string         `json:"answer"`
	Net     boardSpan      `json:"days_later_in_all"`
	Hurt    []string       `json:"orders_that_lose"`
	Lost    boardSpan      `json:"days_lost"`          // by those
	Costs   bool           `json:"clearly_costs_days"` // ways to recover are tried only then
	Before  float64        `json:"boats_late_without"`
	Late    float64        `json:"boats_late_with"`
	Moved   []promiseLater `json:"orders_that_move"`
	Options []boardOption  `json:"ways_to_recover"`
}

// boardSpan is a number of days with the interval of 95 in 100.
type boardSpan struct {
	Mean float64 `json:"days"`
	Low  float64 `json:"low"`
	High float64 `json:"high"`
}

func spanOf(s stats.Summary) boardSpan { return boardSpan{s.Mean, s.Low, s.High} }

type boardOption struct {
	Way    string    `json:"way"`
	Clear  bool      `json:"clearly_helps"`
	Back   boardSpan `json:"days_won_back"` // never more than days_lost; 0 where it does not clearly help
	Beyond float64   `json:"days_beyond"`
	Won    boardSpan `json:"days_won_by_orders_that_lose"`
	All    boardSpan `json:"days_won_by_all_orders"`
	Hours  float64   `json:"people_hours_more"`
	Late   float64   `json:"boats_late"`
}

func ifOf(v *board.View) *boardIf {
	if v.If == nil {
		return nil
	}
	d := &boardIf{Answer: v.Answer(), Net: spanOf(v.If.Net), Hurt: []string{}, Lost: spanOf(v.If.Lost), Costs: v.If.Costs(), Before: v.If.Before, Late: v.If.Late, Moved: []promiseLater{}, Options: []boardOption{}}
	for _, c := range v.If.Changes {
		d.Changes = append(d.Changes, c.Words)
	}
	for _, order := range v.If.Hurt {
		d.Hurt = append(d.Hurt, v.OrderName(order))
	}
	for _, m := range v.If.Moved {
		x := promiseLater{Order: v.OrderName(m.Order), Days: m.Days, Half: m.Half}
		if m.Due != clock.Never {
			x.LateWithout, x.LateWith = 1-m.Without.By(m.Due), 1-m.With.By(m.Due)
		}
		d.Moved = append(d.Moved, x)
	}
	for i := range v.If.Options {
		o := &v.If.Options[i]
		d.Options = append(d.Options, boardOption{o.Words, o.Helps(), boardSpan{o.Back, o.Least, o.Most}, o.Beyond, spanOf(o.Won), spanOf(o.All), o.Hours, o.Late})
	}
	return d
}

type boardDay struct {
	Date   string       `json:"date"`
	Works  bool         `json:"worked"`
	Things []board.Row  `json:"things"`
	Booths []boardBooth `json:"booths"`
}

type boardBooth struct {
	Booths       []string `json:"booths"`
	Flushes      int      `json:"flushes"`
	Minutes      float64  `json:"minutes"`
	AsRun        int      `json:"flushes_as_they_come"`
	AsRunMinutes float64  `json:"minutes_as_they_come"`
}

// BoardJSON writes a board in full.
func BoardJSON(w io.Writer, v *board.View) error {
	d := boardDocument{Answer: v.Headline(), Morning: v.Date(v.Setup.Start.At).String(), Warned: append([]string{}, v.Warned...), Futures: v.Futures, Left: v.Left, Days: []boardDay{}, If: ifOf(v)}
	for i := range v.Days {
		day := boardDay{Date: v.Date(v.Days[i].From).String(), Works: v.Days[i].Works, Things: append([]board.Row{}, v.Rows(i)...), Booths: []boardBooth{}}
		for _, b := range v.Days[i].Booths {
			row := boardBooth{Flushes: b.Flushes, Minutes: b.Flushing.Hours() * 60, AsRun: b.AsRun, AsRunMinutes: b.AsRunTime.Hours() * 60}
			for _, u := range b.Units {
				row.Booths = append(row.Booths, v.Booth(b.Place, u))
			}
			day.Booths = append(day.Booths, row)
		}
		d.Days = append(d.Days, day)
	}
	return Document(w, d)
}

// BoardICS writes a board as a calendar file.
func BoardICS(w io.Writer, v *board.View) error { return ical.Write(w, v.Calendar()) }
