package scenarios

import (
	"fmt"
	"slices"

	"moldturn/sim/param"
	"moldturn/sim/param/unit"
)

// dollar is the sign that amounts may carry in a scenario of any currency, as
// long as all of them do.
const dollar = "$"

// currencies complains about amounts in another currency than the scenario's, and
// about dollars among amounts that carry its own sign: no rate of exchange is
// known, so one of the two would be wrong. It looks at what was bound without
// fault, defaults aside; trees of inputs without a currency have none.
func (b *binder) currencies(root *Value) {
	has := func(kid *branch) bool { return kid.word == "currency" }
	if len(b.complaints) > 0 || !slices.ContainsFunc(b.tree.root.kids, has) {
		return
	}
	own := root.At("currency").Text()
	var amounts []*Value
	mixed := false
	root.leaves(false, func(v *Value, _ bool) {
		if v.branch.row.Kind == param.Money && v.given && !v.standard {
			amounts = append(amounts, v)
			mixed = mixed || unit.Currency(v.text) == own
		}
	})
	for _, v := range amounts {
		switch sign := unit.Currency(v.text); {
		case sign == "" || sign == own:
		case sign != dollar:
			b.complain(v, v.at, fmt.Sprintf("%s: %q is in %s, and the currency of the scenario is %s", v.path, v.text, sign, own), "amounts in "+own, "or set currency: "+sign)
		case mixed:
			b.complain(v, v.at, fmt.Sprintf("%s: %q is in dollars, and other amounts are in %s", v.path, v.text, own), "amounts in "+own, "amounts are not converted: write all of them in one currency")
		}
	}
}
