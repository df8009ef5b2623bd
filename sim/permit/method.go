package permit

// Method is how a material is put on.
type Method uint8

// Methods. Manual work, with brush, bucket or roller, counts as nonatomized in
// Subpart VVVV (§63.5779, from memory) and has an emission factor of its own.
const (
	Atomized Method = iota
	AtomizedRolled
	AtomizedBagged
	Nonatomized
	NonatomizedRolled
	NonatomizedBagged
	Manual
	ManualRolled
	ManualBagged
	Methods
)

var methodNames = [Methods]string{
	"atomized", "atomized vacuum bag with roll-out", "atomized vacuum bag without roll-out",
	"nonatomized", "nonatomized vacuum bag with roll-out", "nonatomized vacuum bag without roll-out",
	"manual", "manual vacuum bag with roll-out", "manual vacuum bag without roll-out",
}

// String is the name in scenario files and tables.
func (m Method) String() string { return methodNames[m] }

// MethodNames lists the methods in their order.
func MethodNames() []string { return append([]string(nil), methodNames[:]...) }

// MethodNamed finds a method by its name.
func MethodNamed(name string) (Method, bool) {
	for m, n := range methodNames {
		if n == name {
			return Method(m), true
		}
	}
	return 0, false
}

// Bag is what a vacuum bag does to a laminate.
type Bag uint8

// Bags.
const (
	Open    Bag = iota
	Rolled      // rolled out, then bagged
	Bagged      // bagged without roll-out
	bagging     // how many
)

// Bag is how the method bags.
func (m Method) Bag() Bag { return Bag(m) % bagging }

// Atomized tells whether the material is broken into droplets.
func (m Method) Atomized() bool { return m <= AtomizedBagged }

// ByHand tells whether the material is put on manually.
func (m Method) ByHand() bool { return m >= Manual }

// Calmer is the same method without droplets: atomized becomes nonatomized, the
// others stay.
func (m Method) Calmer() Method {
	if m.Atomized() {
		return m + Nonatomized
	}
	return m
}
