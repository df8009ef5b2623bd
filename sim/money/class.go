package money

// Class is one of the four classes of the cost of quality. The classes are
// those of A. V. Feigenbaum, "Total Quality Control" (McGraw-Hill), and of J. M.
// Juran's "Quality Control Handbook"; from memory.
type Class uint8

// Classes. Work is for most of what a plant does.
const (
	Work            Class = iota // no cost of quality
	Prevention                   // wax, strip, training
	Appraisal                    // mold check, inspection
	InternalFailure              // found in the plant: rework, scrap, repair of a mold that a part stuck in
	ExternalFailure              // found by the customer: warranty
	Classes
)

var classNames = [Classes]string{"work", "prevention", "appraisal", "internal failure", "external failure"}

// String is the name in words.
func (c Class) String() string { return classNames[c] }

// Kind says in which sum a line belongs.
type Kind uint8

// Kinds.
const (
	Cost     Kind = iota // spent while the plant runs
	Income               // margin of boats shipped
	Wear                 // the price of molds, spread over the turns of their life
	Purchase             // cash paid for molds that replace worn ones
	Kinds
)

var kindNames = [Kinds]string{"cost", "income", "wear", "purchase"}

// String is the name in files.
func (k Kind) String() string { return kindNames[k] }
