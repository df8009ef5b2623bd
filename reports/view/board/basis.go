package board

import "fmt"

// Headline is the coming days in a sentence.
func (v *View) Headline() string {
	pulls, strips, boats := 0, 0, 0
	for i := range v.Days {
		pulls, strips, boats = pulls+len(v.Days[i].Pulls), strips+len(v.Days[i].Strips), boats+len(v.Days[i].Leaves)
	}
	n := len(v.Days)
	return fmt.Sprintf("%s, %s to %s: %d likely pulls, %d strips, %d boats that leave.",
		v.Plant, v.Day(v.Days[0].From), v.Day(v.Days[n-1].From), pulls, strips, boats)
}

// Basis says what the board stands on and how to read it.
func (v *View) Basis() []string {
	lines := []string{
		fmt.Sprintf("%d futures from the floor of %s under other luck and weather, with the orders of the book first and such as usually come after them. Chances are those of the model, not proven on a real shop.",
			v.Futures, v.LongDay(v.Setup.Start.At)),
		fmt.Sprintf("A thing stands on the day on which it is begun most often, with the chance of that day; %s under 1 in 10 on theirs left out. Ready: the middle, and what holds 8 times in 10. 9 in 10 by: the day on which it is done 9 times in 10.", are(v.Left)),
		"Costs least, for strips: of the days on which the mold is empty in most futures, from one turn before it is due until its next part after that, the one on which those who strip have most time free.",
		"Work waits: hours of all pieces together for people who are at work with something else.",
	}
	return append(lines, v.Assumed...)
}

func are(n int) string {
	if n == 1 {
		return "1 that is"
	}
	return fmt.Sprintf("%d that are", n)
}

// Caution is for everybody who reads a board beside a mold.
const Caution = "A likely time is no permission: pull when the part is hard enough by your own test. Lift with rated gear, nobody under the load. Strippers, styrene, peroxides and dust: labels, safety sheets, ventilation, gloves, eyes, lungs. Local rules go before this board."
