package stats

import (
	"fmt"
	"math"
	"testing"
)

// Upper points of Student's t, computed at 30 digits; three-decimal tables in
// print agree (Fisher and Yates, Statistical Tables, table III).
func TestTQuantile(t *testing.T) {
	ps := []float64{.90, .95, .975, .99, .995}
	for _, row := range []struct {
		df   float64
		want [5]float64
	}{
		{1, [5]float64{3.07768353718, 6.31375151468, 12.7062047362, 31.8205159538, 63.6567411629}},
		{2, [5]float64{1.88561808316, 2.91998558035, 4.30265272975, 6.96455673428, 9.92484320092}},
		{3, [5]float64{1.6377443537, 2.3533634348, 3.18244630528, 4.54070285857, 5.84090930973}},
		{4, [5]float64{1.53320627406, 2.13184678633, 2.7764451052, 3.74694738798, 4.60409487135}},
		{5, [5]float64{1.47588404882, 2.01504837333, 2.57058183564, 3.36492999891, 4.03214298356}},
		{9, [5]float64{1.3830287384, 1.83311293266, 2.2621571628, 2.82143792503, 3.24983554159}},
		{10, [5]float64{1.37218364111, 1.81246112281, 2.22813885199, 2.76376945811, 3.16927267262}},
		{15, [5]float64{1.34060560785, 1.75305035569, 2.13144954556, 2.60248029501, 2.94671288348}},
		{19, [5]float64{1.32772820903, 1.72913281152, 2.09302405441, 2.53948319062, 2.86093460646}},
		{20, [5]float64{1.32534070699, 1.72471824292, 2.08596344727, 2.52797700274, 2.84533970979}},
		{29, [5]float64{1.3114336473, 1.69912702653, 2.04522964213, 2.46202136015, 2.75638590367}},
		{30, [5]float64{1.31041502539, 1.69726088659, 2.0422724563, 2.4572615424, 2.74999565357}},
		{60, [5]float64{1.29582109352, 1.6706488649, 2.00029782201, 2.39011947262, 2.66028302886}},
		{120, [5]float64{1.28864623366, 1.65765089936, 1.97993040508, 2.35782461265, 2.61742114511}},
	} {
		for i, p := range ps {
			within(t, fmt.Sprintf("t(%v), %v df", p, row.df), TQuantile(p, row.df), row.want[i], 1e-11*row.want[i])
			within(t, "the lower point", TQuantile(1-p, row.df), -row.want[i], 1e-10*row.want[i])
		}
	}
	for i, want := range []float64{1.28155156554, 1.64485362695, 1.95996398454, 2.32634787404, 2.57582930355} {
		within(t, fmt.Sprintf("normal(%v)", ps[i]), NormalQuantile(ps[i]), want, 1e-11*want)
	}
}

// Bonferroni's constants for k intervals, computed from the t distribution.
func TestBonferroni(t *testing.T) {
	for _, row := range []struct {
		confidence, df float64
		k              []int
		want           []float64
	}{
		{.95, 9, []int{1, 2, 3, 4, 5, 6, 10}, []float64{2.26216, 2.68501, 2.93332, 3.11093, 3.24984, 3.36420, 3.68966}},
		{.90, 4, []int{1, 2, 4, 10}, []float64{2.13185, 2.77645, 3.49541, 4.60409}},
	} {
		for i, k := range row.k {
			each := Bonferroni(row.confidence, k)
			within(t, fmt.Sprintf("%d intervals", k), TQuantile(.5+each/2, row.df), row.want[i], 5.1e-6)
		}
	}
	if Bonferroni(.9, 0) != Bonferroni(.9, 1) || math.Abs(Bonferroni(.9, 1)-.9) > 1e-15 {
		t.Error("one interval needs another confidence than its own")
	}
}
