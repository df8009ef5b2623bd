package scenarios

import (
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// orderBook reads the dated orders of a CSV file with the columns model, color,
// arrives, due and, where it has them, band and priority. Every row that cannot
// be used is complained about.
func (b *builder) orderBook(d *sim.Demand, v *Value, files func(string) ([]byte, error)) {
	data, err := files(v.Text())
	if err != nil {
		b.complain(v, "the order book cannot be read: "+err.Error(), "", "")
		return
	}
	r := csv.NewReader(strings.NewReader(strings.TrimPrefix(string(data), "\ufeff")))
	r.FieldsPerRecord = -1
	r.TrimLeadingSpace = true
	src := newSource(v.Text(), string(data))
	head, err := r.Read()
	if err != nil {
		b.complaints = append(b.complaints, src.at(1, 1).complaint("the order book is empty"))
		return
	}
	columns := map[string]int{}
	for i, h := range head {
		columns[strings.ToLower(strings.TrimSpace(h))] = i
	}
	for _, must := range []string{"model", "arrives", "due"} {
		if _, ok := columns[must]; !ok {
			c := src.at(1, 1).complaint("no column " + quoted(must))
			c.Allowed = "model, color, arrives, due, band, priority"
			b.complaints = append(b.complaints, c)
			return
		}
	}
	for {
		row, err := r.Read()
		if err == io.EOF {
			break
		}
		line, _ := r.FieldPos(0)
		if err != nil {
			b.complaints = append(b.complaints, src.at(line, 1).complaint(err.Error()))
			return
		}
		o := bookRow{b: b, src: src, r: r, row: row, columns: columns, line: line}
		if order, ok := o.order(); ok {
			d.Dated = append(d.Dated, order)
		}
	}
	slices.SortStableFunc(d.Dated, func(x, y sim.DatedOrder) int { return int(x.Arrives - y.Arrives) })
}

// bookRow is one row of an order book.
type bookRow struct {
	b       *builder
	src     *source
	r       *csv.Reader
	row     []string
	columns map[string]int
	line    int
	bad     bool
}

func (o *bookRow) text(column string) string {
	if i, ok := o.columns[column]; ok && i < len(o.row) {
		return strings.TrimSpace(o.row[i])
	}
	return ""
}

func (o *bookRow) fault(column, message, allowed string) {
	line, col := o.line, 1
	if i, ok := o.columns[column]; ok && i < len(o.row) {
		line, col = o.r.FieldPos(i)
	}
	c := o.src.at(line, col).complaint(message)
	c.Allowed = allowed
	o.b.complaints = append(o.b.complaints, c)
	o.bad = true
}

func (o *bookRow) order() (sim.DatedOrder, bool) {
	out := sim.DatedOrder{Color: sim.None, Band: sim.None}
	model := slices.IndexFunc(o.b.plan.Models, func(m sim.Model) bool { return m.Name == o.text("model") })
	if model < 0 {
		var names []string
		for _, m := range o.b.plan.Models {
			names = append(names, m.Name)
		}
		o.fault("model", fmt.Sprintf("unknown model %q", o.text("model")), short(names))
		return out, false
	}
	out.Model = int16(model)
	out.Color = o.color("color")
	if out.Color == sim.None {
		out.Color = o.b.plan.Models[model].Colors[0].Color
	}
	out.Band = o.color("band")
	out.Arrives, out.Due = o.day("arrives"), o.day("due")+clock.Day
	if p := o.text("priority"); p != "" {
		n, err := strconv.Atoi(p)
		if err != nil || n < 0 || n > 100 {
			o.fault("priority", fmt.Sprintf("priority %q", p), "0 to 100")
		}
		out.Urgent = int8(n)
	}
	return out, !o.bad
}

func (o *bookRow) color(column string) int16 {
	name := o.text(column)
	if name == "" {
		return sim.None
	}
	c, ok := o.b.colors[name]
	if !ok {
		o.fault(column, fmt.Sprintf("unknown color %q", name), short(o.b.colorNames))
		return sim.None
	}
	return c
}

// day reads a date; days before the start of the run count as its start.
func (o *bookRow) day(column string) clock.Time {
	d, err := shift.ParseDate(o.text(column))
	if err != nil {
		o.fault(column, fmt.Sprintf("%s %q is not a date", column, o.text(column)), "2027-01-31")
		return 0
	}
	return max(shift.Midnight(o.b.plan.Start, d), 0)
}
