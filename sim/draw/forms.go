package draw

import "strings"

// form is one law that can be written by name.
type form struct {
	name   string
	params []string // cv is a ratio, more repeats the one before, all else are amounts
	make   func(v []float64) (Dist, error)
}

const (
	cv   = "cv"
	more = "…"
)

// forms lists the laws a user can name, the plain ones first.
func forms() []form {
	return []form{
		{"pert", []string{"low", "typical", "high"}, func(v []float64) (Dist, error) { return PERT(v[0], v[1], v[2]) }},
		{"triangular", []string{"low", "typical", "high"}, func(v []float64) (Dist, error) { return Triangular(v[0], v[1], v[2]) }},
		{"uniform", []string{"low", "high"}, func(v []float64) (Dist, error) { return Uniform(v[0], v[1]) }},
		{"lognormal", []string{"mean", cv}, func(v []float64) (Dist, error) { return Lognormal(v[0], v[1]) }},
		{"gamma", []string{"mean", cv}, func(v []float64) (Dist, error) { return Gamma(v[0], v[1]) }},
		{"weibull", []string{"mean", cv}, func(v []float64) (Dist, error) { return Weibull(v[0], v[1]) }},
		{"exponential", []string{"mean"}, func(v []float64) (Dist, error) { return Exponential(v[0]) }},
		{"normal", []string{"mean", "sd"}, func(v []float64) (Dist, error) { return Normal(v[0], v[1]) }},
		{"empirical", []string{"value", more}, func(v []float64) (Dist, error) { return Empirical(v...) }},
	}
}

// Forms lists everything Parse reads, "pert(low, typical, high)" and so on, in
// the order to show it in.
func Forms() []string {
	list := []string{"a single value", "low - typical - high"}
	for _, f := range forms() {
		list = append(list, f.usage())
	}
	return list
}

// Names lists the names of the laws Parse reads, for a guess at what was meant.
func Names() []string {
	var list []string
	for _, f := range forms() {
		list = append(list, f.name)
	}
	return list
}

// usage is the form as a user writes it.
func (f form) usage() string { return f.name + "(" + strings.Join(f.params, ", ") + ")" }

func findForm(name string) (form, bool) {
	for _, f := range forms() {
		if f.name == name {
			return f, true
		}
	}
	return form{}, false
}
