package view

import (
	"fmt"
	"strings"

	"moldturn/reports/cells"
	measures "moldturn/sim/param/unit"
	"moldturn/sim/permit"
)

// Tables are the tables of the ledger in order.
func (p *Permit) Tables() []cells.Table {
	out := []cells.Table{p.MonthEnds(), p.Materials()}
	if t := p.Contents(); len(t.Rows) > 0 {
		out = append(out, t)
	}
	out = append(out, p.Thresholds())
	if t := p.Levers(); len(t.Rows) > 0 {
		out = append(out, t)
	}
	return out
}

func right(heads ...string) []cells.Column {
	var out []cells.Column
	for i, h := range heads {
		c := cells.Column{Head: h, Align: cells.Right}
		if i == 0 {
			c.Align = cells.Left
		}
		out = append(out, c)
	}
	return out
}

// MonthEnds is the ledger by month: what is used up to each month's end, as 40
// CFR 63 Subpart VVVV looks at it.
func (p *Permit) MonthEnds() cells.Table {
	t := p.ton()
	table := cells.Table{Title: "Month-ends, each looking back over twelve months", Columns: right("end of", "boats", "HAP, "+t.name, "12 months, "+t.name, "8 of 10",
		"averaged, "+p.small().name, "limit, "+p.small().name, "of limit", "keeps")}
	for n, m := range p.Ledger.Months() {
		row := cells.Texts(p.monthShort(n), fixed(m.Boats, 1), t.of(m.HAP), "–", "–", "–", "–", "–", "–")
		if m.Known {
			keeps := "yes"
			if m.Fails > 0 {
				keeps = fmt.Sprintf("no: %d of %d", m.Fails, len(p.Ledger.Ledgers))
			}
			share := "–"
			if m.Limit > 0 {
				share = perHundred(m.Emissions / m.Limit)
			}
			row = cells.Texts(p.monthShort(n), fixed(m.Boats, 1), t.of(m.HAP), t.of(m.Rolling), t.of(m.Low)+" to "+t.of(m.High),
				fixed(m.Emissions/p.small().kg, 0), fixed(m.Limit/p.small().kg, 0), share, keeps)
			if len(p.Ledger.Ledgers) == 1 {
				row.Cells[4].Text = "–" // one repeat has no range
			}
			if m.Over > 0 {
				row.Cells[3].Notes = []int{1}
			}
		}
		table.Rows = append(table.Rows, row)
	}
	table.Notes = []string{"HAP is the estimate of what goes into the air, by emission factors. Averaged and limit are point values and Equation 1 of 40 CFR 63 Subpart VVVV, surrogates of compliance: the two must not be compared with each other. Averaged must be less than the limit." + p.tonNote()}
	table.Columns[2].Head += "¹"
	for _, r := range table.Rows {
		if len(r.Cells[3].Notes) > 0 {
			table.Notes = append(table.Notes, fmt.Sprintf("Above the cap of %s in some repeats.", t.with(p.Ledger.Setup.Cap)))
			break
		}
	}
	return table
}

// Materials is the use of each material in a year.
func (p *Permit) Materials() cells.Table {
	s, t := p.small(), p.ton()
	table := cells.Table{Title: "Materials in a year", Columns: right("material", "what it is", "HAP", "used, "+s.name, "HAP, "+t.name, "point value", "in the limit")}
	table.Columns[1].Align = cells.Left
	var unused []string
	for i := range p.Ledger.Setup.Materials {
		m := &p.Ledger.Setup.Materials[i]
		used, hap := p.Ledger.Material(i)
		if used == 0 {
			unused = append(unused, quoted(m.Name))
			continue
		}
		what, point, allowed := m.Operation.String(), "–", "–"
		if m.Operation != permit.Solvent {
			what += ", " + m.Method.String()
			point, allowed = fixed(m.Point(), 1), fixed(m.Operation.Coefficient(), 0)
		}
		table.Rows = append(table.Rows, cells.Texts(m.Name, what, fixed(m.HAP, 1)+nb+"%", s.of(used), t.of(hap), point, allowed))
		if m.Filler > 0 {
			row := &table.Rows[len(table.Rows)-1]
			row.Cells[5].Notes = []int{len(table.Notes)}
			verdict := "keeps to"
			if !permit.FilledComplies(m.Operation, m.Point()) {
				verdict = "is above"
			}
			table.Notes = append(table.Notes, fmt.Sprintf("With %s %% filler, as applied; judged by itself it %s the %s kg/Mg of §63.5714.", fixed(m.Filler, 1), verdict, fixed(m.Operation.Coefficient(), 0)))
		}
	}
	if len(unused) > 0 {
		noteHead(&table, 0, "Not used: "+and(unused)+".")
	}
	for _, text := range p.leftOut() {
		noteHead(&table, 0, text)
	}
	return table
}

// tonNote says which ton is meant.
func (p *Permit) tonNote() string {
	if p.Units == measures.US {
		return " Short tons are of 2,000 lb; y1 is the first counted year."
	}
	return " Mg are megagrams of 1,000 kg; y1 is the first counted year."
}

// leftOut says what no material is counted for.
func (p *Permit) leftOut() []string {
	a := &p.Ledger.Setup.Amounts
	var names []string
	for k, name := range p.background() {
		if a.SmallGel[k]+a.SmallResin[k] == 0 {
			names = append(names, quoted(name))
		}
	}
	if len(names) == 0 {
		return nil
	}
	return []string{"Not in the ledger, since its material is not given (background.*.gel_coat and .resin): " + and(names) + "."}
}

func (p *Permit) background() []string {
	var names []string
	for _, g := range p.Study.Base().Plan.Background {
		names = append(names, g.Name)
	}
	return names
}

// Contents is the option of content at the last month-end of the first repeat,
// for every group, whichever option the plant has chosen.
func (p *Permit) Contents() cells.Table {
	table := cells.Table{Title: "By content instead of averaging, in the last twelve months", Columns: right("group", "weighted HAP content", "limit of Table 2", "fits")}
	months := p.Ledger.Ledgers[0].Months
	if len(months) == 0 || !months[len(months)-1].Known {
		return table
	}
	for _, g := range months[len(months)-1].Groups {
		name := g.Operation.String()
		if g.Operation.Resin() {
			name += map[bool]string{true: ", atomized", false: ", nonatomized"}[g.Atomized]
		}
		fits := "yes"
		if !g.Complies() {
			fits = "no"
		}
		table.Rows = append(table.Rows, cells.Texts(name, fixed(g.Percent, 2)+nb+"%", fixed(g.Limit, 0)+nb+"%", fits))
	}
	for i := range p.Ledger.Setup.Materials {
		if m := &p.Ledger.Setup.Materials[i]; m.Operation == permit.Solvent && m.HAP > permit.SolventLimit {
			noteHead(&table, 0, fmt.Sprintf("%s has %s %% HAP; cleaning solvents may have %s %% (§63.5734, from memory).", m.Name, fixed(m.HAP, 1), fixed(permit.SolventLimit, 0)))
		}
	}
	return table
}

// Thresholds holds the highest twelve months against those of a major source.
func (p *Permit) Thresholds() cells.Table {
	t := p.ton()
	table := cells.Table{Title: "Major source of HAP?", Columns: right("twelve months with the most", "one HAP, "+t.name, "all HAP, "+t.name, "threshold reached in")}
	for _, x := range []struct {
		name string
		of   *Permit
	}{{p.what(), p}, {"orders always waiting", p.full()}} {
		if x.of == nil {
			continue
		}
		one, all, major := 0.0, 0.0, 0
		for _, l := range x.of.Ledger.Ledgers {
			if n := l.Highest(); n >= 0 {
				one, all = one+l.Months[n].One, all+l.Months[n].Rolling
				if permit.Major(l.Months[n].One, l.Months[n].Rolling) {
					major++
				}
			}
		}
		n := float64(len(x.of.Ledger.Ledgers))
		table.Rows = append(table.Rows, cells.Texts(strings.TrimPrefix(x.name, "with "), t.of(one/n), t.of(all/n), x.of.repeats(major)))
	}
	table.Notes = []string{fmt.Sprintf("A major source can emit %s of one HAP or %s of all in a year (Subpart VVVV, Table 1). What a plant can emit, with limits it must keep, decides, not what it does.",
		t.with(permit.MajorOne), t.with(permit.MajorAll))}
	table.Columns[3].Head += "¹"
	return table
}

func (p *Permit) full() *Permit {
	if p.Full == nil || !p.Orders {
		return nil
	}
	q := *p
	q.Ledger = p.Full
	return &q
}

// Levers is what each lever saves, computed again on the same boats.
func (p *Permit) Levers() cells.Table {
	t := p.ton()
	table := cells.Table{Title: "What gives room, each alone, on the same boats", Columns: right("change", "saves a year, "+t.name, "of all", "boats more under the cap", "averaging keeps")}
	year := p.Ledger.PerYear().Mean
	for _, x := range p.Ledger.Levers() {
		if x.Saves.Mean == 0 {
			continue
		}
		room, share := "–", "–"
		if x.Room.N > 0 {
			room = significant(x.Room.Mean, 2)
		}
		if year > 0 {
			share = perHundred(x.Saves.Mean / year)
		}
		keeps := "yes"
		if !x.Complying {
			keeps = "no"
		}
		table.Rows = append(table.Rows, cells.Texts(x.Name, t.of(x.Saves.Mean), share, room, keeps))
	}
	return table
}
