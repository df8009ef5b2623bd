package stats

import "gonum.org/v1/gonum/stat/distuv"

// TQuantile gives the value that Student's t with df degrees of freedom, more
// than 0 and not always whole, stays below with probability p in (0, 1).
func TQuantile(p, df float64) float64 {
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: df}.Quantile(p)
}

// NormalQuantile gives the value that a standard normal stays below with
// probability p in (0, 1).
func NormalQuantile(p float64) float64 {
	return distuv.UnitNormal.Quantile(p)
}

// Bonferroni gives the confidence that each of k intervals needs so that all
// hold together with the confidence given. There are k-1 intervals when k
// alternatives are held against one of them, k(k-1)/2 when each is held against
// each. k below 1 counts as 1.
func Bonferroni(confidence float64, k int) float64 {
	return 1 - (1-confidence)/float64(max(k, 1))
}
