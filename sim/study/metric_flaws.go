package study

import "moldturn/sim/record"

// flawMetrics are the figures of what inspection finds, and does not.
var flawMetrics = []Metric{
	{Name: "dark_at_target_share", Label: "dark parts at target", Unit: "share", Digits: 3, Better: 1, Share: true,
		Doc: "parts in a dark color or with a band at or above the luster target as pulled, over all such parts pulled", Of: capacity(darkAtTarget)},
	{Name: "first_pass_share", Label: "first pass", Unit: "share", Digits: 3, Better: 1, Share: true,
		Doc: "parts with nothing to be done at their first inspection, neither flaws nor buffing, over parts inspected", Of: capacity(firstPass)},
	{Name: "touch_up_hours_per_boat", Label: "touch-up per boat", Unit: "h/boat", Digits: 2, Better: -1,
		Doc: "labor hours to put right flaws that inspection found over boats shipped", Of: capacity(touchUp)},
	{Name: "scrapped_per_100_pulls", Label: "scrapped parts", Unit: "per 100 pulls", Digits: 2, Better: -1,
		Doc: "parts thrown away per 100 pulls", Of: capacity(scrapped)},
	{Name: "escaped_share", Label: "escaped", Unit: "share", Digits: 3, Better: -1, Share: true,
		Doc: "boats shipped with a missed defect, or whose luster once all post-cure has come out is under the target by more than quality.slack, over boats shipped", Of: capacity(escaped)},
	{Name: "pulled_green_per_100_pulls", Label: "pulled green", Unit: "per 100 pulls", Digits: 2, Better: -1,
		Doc: "parts pulled without the hardness wanted after the longest hold, per 100 pulls", Of: capacity(pulledGreen)},
}

func darkAtTarget(r *record.Result) (float64, bool) {
	return ratio(float64(r.Dark.AtTarget), float64(r.Dark.N))
}

func firstPass(r *record.Result) (float64, bool) {
	return ratio(r.Values[record.Inspected], float64(r.Notes[record.Inspected]))
}

func touchUp(r *record.Result) (float64, bool) { return ratio(r.Values[record.TouchedUp], shipped(r)) }

func scrapped(r *record.Result) (float64, bool) {
	return ratio(100*float64(r.Notes[record.Scrapped]), float64(len(r.Lusters)))
}

func escaped(r *record.Result) (float64, bool) {
	return ratio(float64(r.Notes[record.Escaped]), shipped(r))
}

func pulledGreen(r *record.Result) (float64, bool) {
	return ratio(100*float64(r.Notes[record.PulledGreen]), float64(len(r.Lusters)))
}
