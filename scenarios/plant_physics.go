package scenarios

import (
	"moldturn/sim/cure"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/param"
)

// hardness reads the plant's own Barcol marks.
func (b *builder) hardness() {
	b.barcol = cure.DefaultBarcol()
	list := b.v.At("cure.barcol")
	if !list.Given() {
		return
	}
	var marks cure.Barcol
	for _, m := range list.Each("") {
		marks = append(marks, cure.Mark{Degree: m.At("degree").Share(), Barcol: m.At("hardness").Number()})
	}
	if !rise(len(marks), func(i int) (x, y float64) { return marks[i].Degree, marks[i].Barcol }) {
		b.complain(list, "hardness must rise with the degree of cure, mark by mark", "", "")
		return
	}
	b.barcol = marks
}

// rise says whether both numbers of each mark are above those of the one before.
func rise(n int, at func(i int) (x, y float64)) bool {
	for i := 1; i < n; i++ {
		x0, y0 := at(i - 1)
		if x, y := at(i); x <= x0 || y <= y0 {
			return false
		}
	}
	return true
}

// scales reads how gloss units and grades by eye stand for luster.
func (b *builder) scales() {
	f := &b.plan.Finish
	if list := b.v.At("finish.gloss_scale"); list.Given() {
		f.Gloss = nil
		for _, m := range list.Each("") {
			f.Gloss = append(f.Gloss, finish.Mark{Gloss: m.At("gloss").Number(), Points: m.At("luster").Number()})
		}
		if !rise(len(f.Gloss), func(i int) (x, y float64) { return f.Gloss[i].Gloss, f.Gloss[i].Points }) {
			b.complain(list, "luster must rise with gloss, mark by mark", "", "")
		}
	}
	if list := b.v.At("finish.by_eye"); list.Given() {
		f.Eye = nil
		for _, m := range list.Each("") {
			f.Eye = append(f.Eye, finish.Visual{Grade: m.At("grade").Text(), Points: m.At("luster").Number()})
		}
		if !rise(len(f.Eye), func(i int) (x, y float64) { return float64(i), -f.Eye[i].Points }) {
			b.complain(list, "grades by eye go from the best to the worst", "", "")
		}
	}
}

// defects sets the laws of flaws, unless the plant is to have none.
func (b *builder) defects() {
	b.plan.Film = b.v.At("gel_coat.film").Millimeters()
	if !b.v.At("quality.flaws").Flag() {
		return
	}
	p := defect.Numbers()
	rows := defect.Inputs()
	b.set(rows, p.Set)
	for _, row := range rows {
		if row.Kind == param.Dist {
			p.SetDist(row.Path, b.v.At(row.Path).Dist())
		}
	}
	b.plan.Defects = &p
}
