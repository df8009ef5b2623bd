package permit

// Applied is one material over twelve months.
type Applied struct {
	Operation Operation
	Mg        float64 // megagrams (1,000 kg) used, filler included
	Point     float64 // kg of organic HAP per Mg, as applied
}

// Average is the averaging of Subpart VVVV over some materials.
type Average struct {
	Mg        [averaged]float64 // used by operation
	Limit     float64           // kg, §63.5698(b) Equation 1
	Emissions float64           // kg, §63.5710 Equation 1
	Points    [averaged]float64 // weighted-average point values, §63.5710 Equation 2; 0 for an operation not used
}

// AverageOf sums the materials of the operations that take part. Solvent is
// passed over. The weighted average of an operation is Σ M·PV / ΣM; the variables
// are those of §63.5710 Equation 2, the form is from memory.
func AverageOf(materials []Applied) Average {
	var a Average
	for _, x := range materials {
		if int(x.Operation) >= averaged {
			continue
		}
		a.Mg[x.Operation] += x.Mg
		a.Limit += x.Operation.Coefficient() * x.Mg
		a.Emissions += x.Point * x.Mg
		a.Points[x.Operation] += x.Point * x.Mg
	}
	for o := range a.Points {
		if a.Mg[o] > 0 {
			a.Points[o] /= a.Mg[o]
		}
	}
	return a
}

// Complies tells whether emissions are strictly less than the limit, as
// §63.5710(e) demands. Nothing used complies with a limit of nothing.
func (a *Average) Complies() bool {
	return a.Emissions < a.Limit || a.Limit == 0 && a.Emissions == 0
}
