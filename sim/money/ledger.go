package money

import (
	"math"
	"strings"
)

// Cents is an amount of money in hundredths of the currency.
type Cents int64

// Amount is the amount in whole units of the currency.
func (c Cents) Amount() float64 { return float64(c) / 100 }

// Line is one row of a ledger: Amount = Quantity / Per × Price, rounded to
// cents once, half away from zero.
type Line struct {
	Name     string // snake_case with dots, unique in a ledger: "labor.gel.spraying"
	Label    string // for people
	Kind     Kind
	Class    Class
	Model    int      // -1 for what belongs to no model
	Quantity int64    // whole units of the finest kind: ms, g, ml, parts
	Per      float64  // how many of them make one Unit
	Unit     string   // of the price: "h", "kg", "boat"
	Price    float64  // of one Unit
	Amount   Cents    //
	Of       string   // what was counted, in words: "parts pulled"
	Each     int64    // quantity of one of them, such as grams a part; 0 where the quantity itself was counted
	Inputs   []string // paths of the inputs behind the price and behind Each; a path may be of a group of them
}

// Size is the quantity in units of the price.
func (l *Line) Size() float64 { return float64(l.Quantity) / l.Per }

// Ledger is the priced quantities of one run.
type Ledger struct {
	Lines    []Line
	Currency string
	Years    float64
	Open     int     // counted weeks
	Shipped  []int64 // boats by model
	Escaped  int64   // boats shipped with an escape
	MoldDays float64 // days of molds in rotation
	Claimed  float64 // expected cost of the claims that came in, see Setup.Claimed
	Margins  bool    // the margin of every model is known

	MoldUse []float64 // mold-days by activity, as Quantities.MoldTime
}

// add appends a line. Lines without a quantity are left out; those without a
// price stay, so that what was not priced can be seen.
func (g *Ledger) add(l Line) {
	if l.Quantity == 0 {
		return
	}
	l.Amount = Cents(math.Round(float64(l.Quantity) / l.Per * l.Price * 100))
	g.Lines = append(g.Lines, l)
}

// Sum adds up the lines that pick takes.
func (g *Ledger) Sum(pick func(*Line) bool) Cents {
	var sum Cents
	for i := range g.Lines {
		if pick(&g.Lines[i]) {
			sum += g.Lines[i].Amount
		}
	}
	return sum
}

// Total adds up the lines of a kind.
func (g *Ledger) Total(k Kind) Cents { return g.Sum(func(l *Line) bool { return l.Kind == k }) }

// Quality adds up the costs of a class.
func (g *Ledger) Quality(c Class) Cents {
	return g.Sum(func(l *Line) bool { return l.Kind == Cost && l.Class == c })
}

// Contribution is what boats brought in less what was spent while the plant
// ran; neither wear nor purchases of molds are in it.
func (g *Ledger) Contribution() Cents { return g.Total(Income) - g.Total(Cost) }

// Boats is the number shipped.
func (g *Ledger) Boats() int64 {
	var n int64
	for _, k := range g.Shipped {
		n += k
	}
	return n
}

// OfModel is what the boats of a model cost: its own lines, and a share of those
// of no model in proportion to the model's own labor, which is how overhead is
// commonly spread ("direct labor cost" base; common practice). Wear is in it,
// purchases are not. False when none was shipped.
func (g *Ledger) OfModel(m int) (perBoat float64, ok bool) {
	var own, shared, labor, all Cents
	for i := range g.Lines {
		l := &g.Lines[i]
		if l.Kind != Cost && l.Kind != Wear {
			continue
		}
		work := strings.HasPrefix(l.Name, laborLines) && l.Model >= 0
		switch {
		case l.Model == m:
			own += l.Amount
		case l.Model < 0:
			shared += l.Amount
		}
		if work {
			all += l.Amount
			if l.Model == m {
				labor += l.Amount
			}
		}
	}
	if m < 0 || m >= len(g.Shipped) || g.Shipped[m] == 0 {
		return 0, false
	}
	share := 0.0
	if all > 0 {
		share = float64(labor) / float64(all)
	}
	return (own.Amount() + share*shared.Amount()) / float64(g.Shipped[m]), true
}
