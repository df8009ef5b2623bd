package reports

import (
	"io"

	"moldturn/reports/csv"
	"moldturn/reports/table"
	"moldturn/reports/view/promise"
	"moldturn/sim/clock"
)

// PromiseText writes a promise for a terminal.
func PromiseText(w io.Writer, v *promise.View) error {
	style := table.Style{}
	if _, err := io.WriteString(w, table.Wrap(v.Headline(), style)+"\n"); err != nil {
		return err
	}
	if err := warned(w, v.Warned, style); err != nil {
		return err
	}
	if err := spaced(w, v.Dates(), style); err != nil {
		return err
	}
	if t := v.Delayed(); len(t.Rows) > 0 {
		if err := spaced(w, t, style); err != nil {
			return err
		}
	}
	for _, line := range v.Basis() {
		if _, err := io.WriteString(w, table.Wrap(line, style)); err != nil {
			return err
		}
	}
	return nil
}

// PromiseCSV writes when each boat leaves in each future, empty where it does
// not in the time looked at; boats and futures are counted from 1.
func PromiseCSV(w io.Writer, v *promise.View) error {
	out, err := csv.New(w, "boat", "future", "leaves")
	if err != nil {
		return err
	}
	for i, boat := range v.Boats {
		for f, at := range boat {
			if err := out.Row(csv.Int(int64(i+1)), csv.Int(int64(f+1)), csv.Text(v.Stamp(at))); err != nil {
				return err
			}
		}
	}
	return out.Flush()
}

type promiseDocument struct {
	Answer   string         `json:"answer"`
	Possible bool           `json:"possible"`
	Even     string         `json:"even_chance,omitempty"`      // date, empty for none
	Surely   string         `json:"nine_times_in_10,omitempty"` // date
	ByChance *float64       `json:"chance_by_date,omitempty"`   // with --by
	Futures  int            `json:"futures"`
	Warned   []string       `json:"mind"` // what a reader must know of the floor
	Boats    []promiseBoat  `json:"boats"`
	Later    []promiseLater `json:"orders_that_leave_later"`
}

type promiseBoat struct {
	Even   string `json:"even_chance,omitempty"`
	Surely string `json:"nine_times_in_10,omitempty"`
}

type promiseLater struct {
	Order       string  `json:"order"`
	Days        float64 `json:"days_later"`
	Half        float64 `json:"days_later_either_way"` // of 95 in 100
	LateWithout float64 `json:"chance_late_without"`
	LateWith    float64 `json:"chance_late_with"`
}

// PromiseJSON writes a promise in full.
func PromiseJSON(w io.Writer, v *promise.View) error {
	d := promiseDocument{Answer: v.Headline(), Possible: v.Possible(), Even: v.Date(v.All.Surely(0.5)), Surely: v.Date(v.All.Surely(0.9)),
		Futures: v.Futures, Warned: append([]string{}, v.Warned...), Boats: []promiseBoat{}, Later: []promiseLater{}}
	if v.By != clock.Never {
		p := v.All.By(v.By)
		d.ByChance = &p
	}
	for _, b := range v.Boats {
		d.Boats = append(d.Boats, promiseBoat{v.Date(b.Surely(0.5)), v.Date(b.Surely(0.9))})
	}
	for _, m := range v.Moved {
		x := promiseLater{Order: v.Names[m.Order], Days: m.Days, Half: m.Half}
		if m.Due != clock.Never {
			x.LateWithout, x.LateWith = 1-m.Without.By(m.Due), 1-m.With.By(m.Due)
		}
		d.Later = append(d.Later, x)
	}
	return Document(w, d)
}
