package sim

import "moldturn/sim/draw"

// Purposes of random streams. Luck belongs to what exists in every alternative
// compared: an order and its parts, a person's day, a booth's failures; never
// to the mold or person that happened to serve. A number, once given, stays.
const (
	luckOrder draw.Purpose = iota + 1
	luckPart
	luckArrival
	luckPerson
	luckFailure
	luckBackground
	luckMold
	luckBoat
	luckFlaw // with the defect and how often the part was sprayed
	luckTurnover
)

// Numbers of the draws of one part, beside the times of its steps, which use
// the numbers below luckLuster: step times 65536 plus the repetition.
const (
	luckLuster uint64 = 1<<40 + iota
	luckStick
	luckStickPart
	luckStickMold
	luckChip
	luckChipHours
	luckPullReading
)

// Draws of a part that come once for each round of rework begin here.
const (
	luckReading uint64 = 1 << 41
	luckBuff    uint64 = 1 << 42
)

// Numbers of the draws of one order.
const (
	luckColor uint64 = iota
	luckBandColor
	luckDue
	luckBandPart // plus the index of the part
)

// personSlot numbers the people of a craft. Each crew counts from a number of
// its own, so that one more person on a shift moves nobody's luck on another.
func personSlot(crew int, person uint64) uint64 { return uint64(crew)<<32 | person }

// failureSlot numbers what can break down by where it is, so that one more
// booth, or gun set, moves the luck of none that were there.
func failureSlot(f *Failure) uint64 {
	return uint64(f.Place)<<40 | uint64(f.Gun-None)<<20 | uint64(f.Unit)
}
