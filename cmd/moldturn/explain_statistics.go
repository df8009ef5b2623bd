package main

// statisticsTerms are the words of results that statistics brings along.
func statisticsTerms() []entry {
	const methods = "source: NIST/SEMATECH e-Handbook of Statistical Methods, "
	return []entry{
		{Name: "interval", also: []string{"confidence interval", "±", "+-"},
			Doc: "the range that holds the true mean of a figure in 95 of 100 studies like this one; written as mean ± half its width",
			Notes: []string{"from: the spread of the figure over replications, by Student's t",
				methods + "section 1.3.5.2, Confidence Limits for the Mean"}},
		{Name: "paired difference", also: []string{"against the base", "difference"},
			Doc: "the mean, over replications, of a figure of an alternative less the same figure of the base under the same luck; luck that both share drops out, so that small effects show in few runs",
			Notes: []string{"unit: that of the figure; of shares, percentage points",
				methods + "section 7.3.1.1, Analysis of paired observations"}},
		{Name: "not clear",
			Doc:   "the interval of a paired difference includes zero: the runs do not show which of the two is better; more replications may",
			Notes: []string{"it does not say that both are equal"}},
		{Name: "replication", also: []string{"repeat", "run"},
			Doc:   "one run of a plant with its own luck: weather, orders, absences, times, failures; all alternatives meet the same luck in the same replication",
			Notes: []string{"set by: run.replications, or --replications"}},
		{Name: "warm-up", also: []string{"run.warm_up"},
			Doc:   "the first simulated years of each run, in which the floor fills; they are not counted. Whole years, so that seasons stay in step",
			Notes: []string{"set by: run.warm_up"}},
		{Name: "simulated year",
			Doc:   "a year on the plant's calendar inside a run, which takes a moment on the computer",
			Notes: []string{"set by: run.years, or --years"}},
		{Name: "counted week", also: []string{"open week"},
			Doc: "a week from Monday to Sunday after the warm-up in which the plant is not shut down; the denominator of figures per week of the calendar"},
		{Name: "seed", also: []string{"run.seed"},
			Doc:   "the number that all luck is drawn from; the same seed, scenario and program give the same results to the last digit",
			Notes: []string{"set by: run.seed, or --seed"}},
		{Name: "percentile", also: []string{"P10", "P90"},
			Doc:   "the value that a share of cases lies below: one luster in ten is below P10. Taken in each run, then averaged over runs",
			Notes: []string{methods + "section 7.2.6.2, Percentiles"}},
		{Name: "mean", also: []string{"average"},
			Doc: "the sum of values over their number; of a figure, over replications"},
		{Name: "standard deviation", also: []string{"sd", "cv"},
			Doc:   "how far values lie from their mean, in their own unit; cv is it over the mean",
			Notes: []string{methods + "section 1.3.5.6, Measures of Scale"}},
		{Name: "by hand", also: []string{"hand formula", "capacity table"},
			Doc:   "what a plant could make if nothing waited: molds times turns, and hours there are over hours a boat takes; an upper bound that \"moldturn check\" works out without simulation",
			Notes: []string{"queues and shifts usually cost 20 to 40 % of it (common practice, no source)"}},
	}
}
