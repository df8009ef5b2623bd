package scenarios

import (
	"fmt"

	"moldturn/sim/clock"
)

// missedShare is the share of days of a year on which a hold is out of reach from
// which it is warned of. Assumption, no source.
const missedShare = 0.2

// HoldMissed tells on how many of the 365 days from the start the hold of a part
// whose last labor ends at noon is not met within hold.most, under the weather
// to be expected: such parts are warmed where there is a warm place, or else
// pulled green. Often is whether that is worth a warning, Text what it says.
func (p *Plant) HoldMissed() (days int, often bool, text string) {
	const year = 365
	plan, air := p.Plan(), p.Forecast()
	if plan.Hold.Most <= 0 {
		return 0, false, ""
	}
	for d := range year {
		if _, missed := air.Ready(0, &plan.Hold, clock.Time(d)*clock.Day+12*clock.Hour); missed {
			days++
		}
	}
	text = fmt.Sprintf("parts made on %d of %d days of a year of the weather to be expected are not hard enough within hold.most of %.4g h, and are warmed or pulled green", days, year, plan.Hold.Most)
	return days, float64(days) > missedShare*year, text
}
