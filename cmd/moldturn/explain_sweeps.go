package main

// sweepTerms are the words of sweeps and of runs that end by themselves.
func sweepTerms() []entry {
	return []entry{
		{Name: "precision", also: []string{"--precision", "--budget"},
			Doc: "half the width of a figure's interval as a share of the figure; runs are added in rounds of five, from ten on, until it is small enough or the budget of years is used up",
			Notes: []string{"a half width of p/(1+p) of the estimate is within p of the true mean",
				"source: A. M. Law (2015), Simulation Modeling and Analysis, section 9.4.1; from memory"}},
		{Name: "matters", also: []string{"--matters", "clear decision"},
			Doc: "the smallest difference that counts, as a share of the base; runs end when every difference is clear or surely smaller. The k-th look asks for intervals that hold together with an error of 5 %/(k(k+1)), so that looking often finds nothing that is not there",
			Notes: []string{"over all looks, alternatives and figures the errors add up to 5 % at most (Bonferroni)",
				"assumes: means over runs are close to normal"}},
		{Name: "together", also: []string{"simultaneous", "Bonferroni"},
			Doc:   "intervals of several differences that all hold at once with 95 %: each is made wider, for an error of 5 % over their number",
			Notes: []string{"source: NIST/SEMATECH e-Handbook of Statistical Methods, section 7.4.7.3, Bonferroni's method"}},
		{Name: "MSER-5", also: []string{"settled"},
			Doc: "a rule for how much of the start of a run to leave out: means of five weeks, and the cut for which the spread of the rest over the square of their number is least. Used on boats a week less the mean of the same week of the year, to check the warm-up",
			Notes: []string{"it warns only if the weeks it would leave out after the cut differ clearly from those that follow",
				"source: White, Cobb and Spratt (2000), A comparison of five steady-state truncation heuristics for simulation, Winter Simulation Conference"}},
		{Name: "knee",
			Doc: "of the settings of a sweep, the one with the fewest steps from the worst that brings nine tenths of the gain from the worst to the best"},
		{Name: "ridge",
			Doc: "in a map of two inputs: the best value of one lies inside its range, not at an end, for every value of the other"},
		{Name: "frontier", also: []string{"beaten by no other", "undominated"},
			Doc: "the settings that no other beats in both of two figures; a setting is beaten if another is at least as good in both and better in one. How sure: the share of 1000 draws of the runs, with replacement and the same for all settings, in which nothing beats it",
			Notes: []string{"draws from few runs vary too little, by (n-1)/n",
				"source: Efron and Tibshirani (1993), An Introduction to the Bootstrap; from memory"}},
		{Name: "Latin hypercube", also: []string{"--latin"},
			Doc: "settings spread over several ranges at once: each range is cut into as many slices as there are settings, and each slice is used once",
			Notes: []string{"effects are slopes of straight lines put through all settings by least squares, run by run",
				"source: McKay, Beckman and Conover (1979), Technometrics 21:239–245"}},
		{Name: "one at a time", also: []string{"--each", "tornado"},
			Doc: "a sweep that changes one input and leaves the others as they are; the one that moves a figure most stands first"},
	}
}
