package main

// moneyOutputs are those of commands about money.
func moneyOutputs() []outputFile {
	quality, invest := []string{"quality"}, []string{"invest"}
	return []outputFile{
		{append(quality, invest...), "ledger.csv", "every line of every ledger: the trace of each amount", ledgerColumns()},
		{quality, "quality.json", "the comparison in full; printed with --json", qualityKeys()},
		pageOutput("quality.html", quality...),
		{invest, "invest.json", "the look at the investment in full; printed with --json", investKeys()},
		pageOutput("invest.html", invest...),
	}
}

const inCurrency = "currency"

func ledgerColumns() []outputRow {
	return []outputRow{
		{"alternative", "", "name of the way to run the plant"},
		{"orders", "", `"always waiting" or "as they come"`},
		{"replication", "", "number of the run, from 1"},
		{"line", "", "name of the line, the same everywhere"},
		{"label", "", "the line in words"},
		{"kind", "", "cost, income, wear or purchase"},
		{"class", "", "prevention, appraisal, internal failure, external failure, or other work"},
		{"quantity", "see unit", "what was counted in the run"},
		{"unit", "", "its unit"},
		{"price", inCurrency, "of one unit"},
		{"amount", inCurrency, "quantity times price, rounded to cents once"},
		{"counted", "", "what the quantity is made of"},
		{"each", "see unit", "quantity of one of what was counted; empty where the quantity itself was"},
		{"from", "", "inputs behind the price"},
		{"years", "years of 365.25 days", "that were counted; amounts divided by it are those a year of the tables"},
	}
}

func ratioRows(key, unit, doc string) []outputRow {
	return []outputRow{{key, unit, doc}, {key + ".value", unit, "the value"},
		{key + ".low", unit, "lower end of its interval; null where runs do not bound it"}, {key + ".high", unit, "upper end of its interval; null where runs do not bound it"}}
}

func qualityKeys() []outputRow {
	const p = "books[].policies[]."
	a := inCurrency + " a year"
	return allRows([]outputRow{
		{"scenario", "", "name of the plant"},
		{"currency", "", "sign of the currency of all amounts"},
	}, headRows()[1:], []outputRow{
		{"books", "", "list: with orders always waiting, and as they come"},
		{"books[].orders", "", "which of the two"},
		{"books[].policies", "", "list of strip policies"},
		{p + "name", "", "name of the policy"},
		{p + "every", "turns", "between strips; 0 for another policy"},
		{p + "classes_per_year", a, "the four classes by name"},
	}, interval(p+"classes_per_year.*", a, "a class")[1:],
		[]outputRow{{p + "classes_per_boat", inCurrency + " a boat", "the four classes by name"}},
		interval(p+"classes_per_boat.*", inCurrency+" a boat", "a class")[1:],
		interval(p+"four_classes_per_year", a, "the four together"),
		interval(p+"four_classes_per_boat", inCurrency+" a boat", "the four together"),
		interval(p+"margin_given_up_per_year", a, "margin of boats not shipped, against the policy that ships most"),
		interval(p+"other_costs_per_year", a, "all other costs, against that policy"),
		interval(p+"total_per_year", a, "the sum of those"),
		interval(p+"more_than_least_per_year", a, "how much dearer than the policy that costs least", clearRow),
		[]outputRow{{p + "not_clearly_dearer", "", "whether it cannot be told from the one that costs least"}},
		interval(p+"boats_per_year", "boats/year", "shipped"),
		interval(p+"luster_mean", "points", "as pulled"),
		interval(p+"escapes_per_year", "boats/year", "shipped with an escape"),
		interval(p+"mold_days_in_strips_per_year", "days/year", "that molds spend in strips"),
		[]outputRow{
			{"books[].least", "", "name of the policy that costs least"},
			{"books[].molds_bind", "", "whether mold time costs boats"},
			{"books[].break_even_claim", "", "from which warranty claim on stripping often pays"},
			{"books[].break_even_claim.often", "", "the policy that strips often"},
			{"books[].break_even_claim.seldom", "", "the policy that strips seldom"},
		},
		interval("books[].break_even_claim.fewer_claims_per_year", "claims/year", "that stripping often saves", clearRow),
		ratioRows("books[].break_even_claim.claim", inCurrency, "that claim, all costs counted"),
		ratioRows("books[].break_even_claim.claim_four_classes_alone", inCurrency, "that claim, the four classes alone"))
}

func investKeys() []outputRow {
	a := inCurrency + " a year"
	return allRows([]outputRow{
		{"scenario", "", "name of the plant"},
		{"alternative", "", "what the plant would be with the purchase"},
		{"currency", "", "sign of the currency of all amounts"},
		{"answer", "", "the answer in words"},
		{"purchase", inCurrency, "its price"},
		{"lead_years", "years", "from paying to having it"},
		{"life_years", "years", "of use"},
		{"residual", inCurrency, "what it is worth at the end"},
		{"discount_rate", "share", "a year"},
		{"equivalent_annual_cost", a, "the purchase spread over its years"},
		{"books", "", "list: with orders always waiting, and as they come"},
		{"books[].orders", "", "which of the two"},
	}, interval("books[].gain_per_year", a, "contribution more", clearRow),
		interval("books[].boats_per_week_more", "boats/week", "shipped more", clearRow),
		interval("books[].net_present_value", inCurrency, "of the purchase"),
		[]outputRow{
			{"books[].pays_in_runs", "", "runs in which it is above zero"},
			{"books[].runs", "", "of so many"},
			{"books[].payback_years", "years", "null where it does not pay back"},
			{"books[].internal_rate_of_return", "share", "a year; null where there is none"},
			{"books[].boats_per_week_needed", "boats/week", "demand from which on it pays; null where there is none"},
		},
		ratioRows("books[].break_even_share_of_margins", "share", "of the margins from which on it pays"),
		interval("books[].wear_per_year_today", a, "wear of molds without it"),
		interval("books[].wear_per_year_with_it", a, "wear of molds with it"))
}
