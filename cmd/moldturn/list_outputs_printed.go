package main

func bestKeys() []outputRow {
	return []outputRow{
		{"metric", "", "name of the figure that is best"},
		{"unit", "", "its unit"},
		{"chance", "share", "wanted chance of being right, 0 to 1"},
		{"matters", "as the figure", "a difference that matters"},
		{"names", "", "ways to run the plant; the lists that follow are in their order"},
		{"means", "as the figure", "of each; null for one that has none"},
		{"runs", "", "of each"},
		{"best", "", "name of the best"},
		{"decided", "", "whether it is the best with that chance"},
		{"left", "", "those not told apart from it"},
		{"dropped", "", "list of those that fell out; null for none"},
		{"dropped[].alternative", "", "its name"},
		{"dropped[].by", "", "name of what beat it"},
		{"dropped[].after_runs", "", "so many runs of each"},
		{"dropped[].behind", "as the figure", "by so much"},
		{"kept_after_first_look", "", "ways that were left after the first look"},
		{"share_of_runs_saved", "share", "against as many runs of all, 0 to 1"},
		{"years_per_run", "years", "counted in each run"},
	}
}

func whyKeys() []outputRow {
	const step = "lives[].steps[]."
	return []outputRow{
		{"scenario", "", "name of the plant"},
		{"alternative", "", "way to run it"},
		{"seed", "", "number all luck is drawn from"},
		{"replication", "", "number of the run, from 1"},
		{"orders_always_waiting", "", "false: orders with dates"},
		{"order", "", "number of the order, from 1; not for a mold"},
		{"mold", "", "number of the mold, from 1; not for an order"},
		{"name", "", "of the model, or of the mold"},
		{"from", "", "local date and time"},
		{"to", "", "local date and time"},
		{"ms", "ms", "between them"},
		{"ended", "", "of an order: shipped, given up or open"},
		{"lives", "", "list: one for each part of the boat, or one for the mold"},
		{"lives[].part", "", "name of the part"},
		{"lives[].sums", "", "list of what the time went into; adds up to ms"},
		{"lives[].sums[].what", "", "work of a kind, or wait"},
		{"lives[].sums[].reason", "", "of a wait"},
		{"lives[].sums[].ms", "ms", "so long"},
		{"lives[].steps", "", "list of steps"},
		{step + "route", "", "name of the route; left out where there is none"},
		{step + "step", "", "name of the step; left out where there is none"},
		{step + "doing", "", "what is done"},
		{step + "from", "", "local date and time"},
		{step + "to", "", "local date and time"},
		{step + "worked_ms", "ms", "of work or cure"},
		{step + "people", "", "the most at work at once"},
		{step + "waits", "", "list of waits"},
		{step + "waits[].reason", "", "why it waited"},
		{step + "waits[].ms", "ms", "so long"},
		{step + "waits[].held_by", "", "list of who had what it waited for"},
		{step + "waits[].held_by[].who", "", "in words"},
		{step + "waits[].held_by[].order", "", "number of the order, from 1"},
		{step + "waits[].held_by[].mold", "", "number of the mold, from 1"},
		{step + "waits[].held_by[].ms", "ms", "so long"},
	}
}

func holdKeys() []outputRow {
	return []outputRow{
		{"barcol_wanted", "Barcol", "hardness to wait for"},
		{"clock_hours", "h", "hold by the clock"},
		{"rows", "", "list by shop temperature"},
		{"rows[].shop_c", "°C", "shop temperature"},
		{"rows[].hold_hours", "h", "to hold; null where no time is enough"},
		{"rows[].hard_enough_after_hours", "h", "after which it is hard enough; null where it never is"},
		{"rows[].barcol_after_clock_hours", "Barcol", "hardness after the hold by the clock"},
		{"rows[].barcol_at_most", "Barcol", "hardness it reaches at most"},
		{"rows[].needs_heat", "", "whether it needs heat"},
		{"cautions", "", "what the card does not cover"},
	}
}
