package permit

// Use is what a material is used for. The uses up to lastOfPart come once a
// part.
type Use uint8

// Uses.
const (
	NoUse        Use = iota
	GelCoat          // the base color of a part
	Band             // an accent band
	Barrier          // barrier coat
	Skin             // resin of the skin coat
	Laminate         // resin of all later shots
	SmallGel         // gel coat of background work
	SmallResin       // resin of background work
	MoldGel          // gel coat of new and resurfaced molds
	MoldResin        // resin of new molds
	FlushGel         // gel coat lost when a gun changes color
	FlushSolvent     // solvent of such a flush
	Cleaning         // solvent for tools and rollers
	Uses
)

const lastOfPart = Laminate

var useNames = [Uses]string{
	"", "gel coat", "accent band", "barrier coat", "skin coat", "laminate", "small parts gel coat", "small parts resin",
	"mold gel coat", "mold resin", "gel coat flushed", "gun flush", "tool cleaning",
}

// String is the name in scenario files and tables; empty for NoUse.
func (u Use) String() string { return useNames[u] }

// UseNames lists the uses a material may have.
func UseNames() []string { return append([]string(nil), useNames[1:]...) }

// UseNamed finds a use by its name.
func UseNamed(name string) (Use, bool) {
	for u := NoUse + 1; u < Uses; u++ {
		if useNames[u] == name {
			return u, true
		}
	}
	return NoUse, false
}

// wants is what a material must be to serve a use.
func (u Use) wants() func(Operation) bool {
	switch u {
	case Skin, Laminate, SmallResin, MoldResin:
		return Operation.Resin
	case FlushSolvent, Cleaning:
		return func(o Operation) bool { return o == Solvent }
	case Barrier: // a resin or a gel coat, as the plant's permit sees it
		return func(o Operation) bool { return o != Solvent }
	}
	return Operation.Gel
}
