package permit

// Operation is a group of open-molding work that Subpart VVVV limits by itself.
type Operation uint8

// Operations, in the order of §63.5698(b), Equation 1. Solvent is cleaning,
// which the averaging leaves out.
const (
	ProductionResin Operation = iota
	PigmentedGel
	ClearGel
	ToolingResin
	ToolingGel
	Solvent
	Operations
)

// averaged is how many operations the averaging knows: those before Solvent.
const averaged = int(Solvent)

var operationNames = [Operations]string{
	"production resin", "pigmented gel coat", "clear gel coat", "tooling resin", "tooling gel coat", "solvent",
}

// String is the name in scenario files and tables.
func (o Operation) String() string { return operationNames[o] }

// OperationNames lists the operations in their order.
func OperationNames() []string { return append([]string(nil), operationNames[:]...) }

// OperationNamed finds an operation by its name.
func OperationNamed(name string) (Operation, bool) {
	for o, n := range operationNames {
		if n == name {
			return Operation(o), true
		}
	}
	return 0, false
}

// Gel tells whether the operation applies gel coat.
func (o Operation) Gel() bool { return o == PigmentedGel || o == ClearGel || o == ToolingGel }

// Resin tells whether the operation applies resin.
func (o Operation) Resin() bool { return o == ProductionResin || o == ToolingResin }

// coefficients are kg of organic HAP per Mg of material: 40 CFR 63.5698(b),
// Equation 1; printed as text in Maine 06-096 CMR ch. 162 section 3 Equation 2,
// 250-RICR-120-05-51.7 Equation 2 and Michigan R 336.1637 Equation 6-1.
var coefficients = [averaged]float64{46, 159, 291, 54, 214}

// Coefficient is what Equation 1 allows, kg of organic HAP per Mg of material;
// 0 for Solvent.
func (o Operation) Coefficient() float64 {
	if int(o) < averaged {
		return coefficients[o]
	}
	return 0
}

// Content is the highest weighted-average organic HAP content that an operation
// may have where it is judged by content, in weight percent: 40 CFR 63 Subpart
// VVVV, Table 2. Resins have one for atomized and one for nonatomized
// application. ok is false for Solvent.
func (o Operation) Content(m Method) (percent float64, ok bool) {
	switch o {
	case ProductionResin:
		if m.Atomized() {
			return 28, true
		}
		return 35, true
	case ToolingResin:
		if m.Atomized() {
			return 30, true
		}
		return 39, true
	case PigmentedGel:
		return 33, true
	case ClearGel:
		return 48, true
	case ToolingGel:
		return 40, true
	}
	return 0, false
}
