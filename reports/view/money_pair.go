package view

import (
	"fmt"

	"moldturn/reports/cells"
	"moldturn/sim/money"
)

// PairTable is what stripping often instead of seldom costs and returns: the
// four classes, what else changes, and the sum, a year under the same luck. A
// plus is dearer, a minus cheaper.
func (v *Quality) PairTable() cells.Table {
	q := v.Main()
	often, seldom := v.name(q, v.Often), v.name(q, v.Seldom)
	t := cells.Table{Title: fmt.Sprintf("“%s” instead of “%s”, a year%s", often, seldom, v.orders(q)),
		Columns: []cells.Column{{Head: ""}, {Head: often, Align: cells.Right}, {Head: seldom, Align: cells.Right}, {Head: "difference", Align: cells.Right}}}
	a, b, more := &q.Policies[v.Often], &q.Policies[v.Seldom], q.Between(v.Often, v.Seldom)
	for _, c := range []money.Class{money.Prevention, money.Appraisal, money.InternalFailure, money.ExternalFailure} {
		t.Rows = append(t.Rows, cells.Texts(c.String(), v.Money.mean(a.Class[c]), v.Money.mean(b.Class[c]), v.Money.plus(more.Class[c])))
	}
	t.Rows = append(t.Rows, cells.Texts("four classes", v.Money.mean(a.Four), v.Money.mean(b.Four), v.Money.plus(more.Four)),
		cells.Texts("four classes, a boat", v.Money.mean(a.FourBoat), v.Money.mean(b.FourBoat), v.Money.plus(more.FourBoat)))
	t.Rows[len(classes())].Strong = true
	if q.Margins {
		one := func(x, half float64) string { return fixed(x, decimals(half, 1)) }
		t.Rows = append(t.Rows, cells.Texts("boats", one(a.Boats.Mean, a.Boats.Half), one(b.Boats.Mean, b.Boats.Half), plusBoats(more.Boats)),
			cells.Texts("in all", v.Money.mean(a.Total), v.Money.mean(b.Total), v.Money.plus(more.Total)))
		t.Rows[len(t.Rows)-1].Strong = true
	}
	note := "A plus is dearer, a minus cheaper"
	if !v.once() {
		note += "; ± holds the difference in 95 of 100 studies like this one"
	}
	noteHead(&t, len(t.Columns)-1, note+".")
	if q.Margins {
		t.Notes = append(t.Notes, "With margin given up and other costs beside the four classes.")
		t.Rows[len(t.Rows)-1].Cells[0].Notes = []int{1}
	}
	return t
}
