package main

// plantOutputs are those of commands about permit, air and launch.
func plantOutputs() []outputFile {
	permit, exposure, launch := []string{"permit"}, []string{"exposure"}, []string{"launch"}
	return []outputFile{
		{permit, "permit.csv", "month-ends of every repeat, one material a row; rows without a material are of the whole plant. Heads end in _lb, and masses are in lb, where the scenario has US units", permitColumns()},
		{permit, "permit.json", "the same over all repeats; printed with --json", permitKeys()},
		pageOutput("permit.html", permit...),
		{exposure, "exposure.csv", "published limits of styrene, one a row", exposureColumns()},
		{exposure, "exposure.json", "the screening in full; printed with --json", exposureKeys()},
		pageOutput("exposure.html", exposure...),
		{launch, "launch.csv", "boats by repeat, week and model", launchColumns()},
		{launch, "launch.json", "the same over all repeats; printed with --json", launchKeys()},
		pageOutput("launch.html", launch...),
	}
}

func permitColumns() []outputRow {
	return []outputRow{
		{"repeat", "", "number of the run, from 1"},
		{"month", "", "number of the month, from 1"},
		{"name", "", "name of the month"},
		{"material", "", "name of the material; empty for the whole plant"},
		{"used_kg", "kg", "used in the month"},
		{"hap_kg", "kg", "hazardous air pollutants given off in the month"},
		{"used_12_months_kg", "kg", "used in twelve months; empty until twelve are known"},
		{"hap_12_months_kg", "kg", "given off in twelve months; empty until twelve are known"},
		{"averaged_kg", "kg", "averaged emissions of twelve months, 40 CFR 63.5710; only of the whole plant"},
		{"limit_kg", "kg", "what they may be; only of the whole plant"},
		{"boats", "boats", "shipped in the month; only of the whole plant"},
	}
}

func permitKeys() []outputRow {
	return allRows([]outputRow{
		{"caution", "", "what the estimate does not replace"},
		{"scenario", "", "name of the plant"},
		{"alternative", "", "way to run it"},
		{"dated_orders", "", "whether orders have dates; false: orders always waiting"},
		{"seed", "", "number all luck is drawn from"},
		{"replications", "", "number of repeats"},
		{"years", "years", "counted in each repeat"},
		{"cap_kg", "kg", "the permit's cap of twelve months; null without one"},
	}, level("hap_per_year", "kg/year", "hazardous air pollutants given off"),
		level("hap_per_boat", "kg/boat", "the same over boats"),
		level("boats_left_under_cap", "boats", "that the cap leaves room for at the worst; null without a cap"),
		[]outputRow{
			{"materials", "", "list of materials"},
			{"materials[].name", "", "name of the material"},
			{"materials[].operation", "", "what it is used for, 40 CFR 63 Subpart VVVV"},
			{"materials[].method", "", "how it is applied"},
			{"materials[].hap_percent", "%", "hazardous air pollutants in it, by weight"},
			{"materials[].filler_percent", "%", "filler in it, by weight"},
			{"materials[].averaged", "", "whether it takes part in averaging"},
			{"materials[].point_value_kg_per_mg", "kg/Mg", "its point value, 40 CFR 63.5714"},
			{"materials[].used_kg_per_year", "kg/year", "mean use"},
			{"materials[].hap_kg_per_year", "kg/year", "mean emissions"},
			{"month_ends", "", "list of month-ends"},
			{"month_ends[].month", "", "number of the month, from 1"},
			{"month_ends[].name", "", "name of the month"},
			{"month_ends[].boats", "boats", "shipped in the month, mean"},
			{"month_ends[].hap_kg", "kg", "given off in the month, mean"},
			{"month_ends[].hap_12_months_kg", "kg", "given off in twelve months, mean; null, as all that follow, until twelve are known"},
			{"month_ends[].hap_12_months_p10_kg", "kg", "one repeat in ten is below"},
			{"month_ends[].hap_12_months_p90_kg", "kg", "one repeat in ten is above"},
			{"month_ends[].averaged_kg", "kg", "averaged emissions of twelve months"},
			{"month_ends[].limit_kg", "kg", "what they may be"},
			{"month_ends[].repeats_not_keeping", "", "repeats in which they are more"},
			{"month_ends[].repeats_over_cap", "", "repeats over the permit's cap"},
			{"month_ends[].repeats_at_major_source_threshold", "", "repeats at or over the threshold of a major source"},
			{"levers", "", "list of changes that make room"},
			{"levers[].name", "", "the change"},
			{"levers[].keeps_subpart_vvvv", "", "whether the plant keeps to 40 CFR 63 Subpart VVVV with it"},
		},
		level("levers[].saves_per_year", "kg/year", "emissions that it saves"),
		level("levers[].boats_more_under_cap", "boats", "room that it makes; null without a cap"))
}

func exposureColumns() []outputRow {
	return []outputRow{
		{"limit", "", "who published it, and what it is"},
		{"ppm_8_h", "ppm", "mean of a shift of 8 h"},
		{"ppm_short_term", "ppm", "mean of 15 minutes"},
		{"since", "", "when it was published"},
		{"air_needed_m3_per_h", "m³/h", "fresh air that would dilute the shop to it"},
		{"shop_ppm", "ppm", "what the shop has by this estimate; empty if not known"},
		{"source", "", "where it is published"},
	}
}

func exposureKeys() []outputRow {
	return []outputRow{
		{"caution", "", "what the screening does not replace"},
		{"booth_face_fpm", "ft/min", "velocity of the air at the booth's face"},
		{"booth_face_least_fpm", "ft/min", "what it must be at least"},
		{"booth_range_low_fpm", "ft/min", "lower end of the range for its kind of draft"},
		{"booth_range_high_fpm", "ft/min", "upper end of that range"},
		{"crossdraft_permitted", "", "whether that velocity is permitted with cross drafts"},
		{"booth_air_m3_per_h", "m³/h", "air through the booth"},
		{"booth_air_needed_m3_per_h", "m³/h", "air that keeps it under a quarter of the lower explosive limit"},
		{"booth_styrene_kg_per_h", "kg/h", "given off in the booth while it sprays"},
		{"booth_exhaust_peak_ppm", "ppm", "in its exhaust; null where it has no end"},
		{"quarter_lel_ppm", "ppm", "a quarter of the lower explosive limit"},
		{"flush_air_m3", "m³", "air to dilute one flush of a gun to that"},
		{"shop_styrene_kg_per_h", "kg/h", "given off in the shop at lay-up"},
		{"shop_ppm", "ppm", "in the shop; null if not known"},
		{"limits", "", "list of published limits"},
		{"limits[].name", "", "who published it, and what it is"},
		{"limits[].ppm_8_h", "ppm", "mean of a shift of 8 h"},
		{"limits[].ppm_short_term", "ppm", "mean of 15 minutes"},
		{"limits[].since", "", "when it was published"},
		{"limits[].source", "", "where it is published"},
		{"limits[].air_needed_m3_per_h", "m³/h", "fresh air that would dilute the shop to it; null if not known"},
	}
}

func launchColumns() []outputRow {
	return []outputRow{
		{"repeat", "", "number of the run, from 1"},
		{"week", "weeks", "1 is the week of the first new mold, 0 the week before"},
		{"model", "", "name of the model"},
		{"boats_with", "boats", "shipped in the week with the new molds"},
		{"boats_without", "boats", "shipped in it without them, under the same luck"},
	}
}

func launchKeys() []outputRow {
	return allRows([]outputRow{
		{"scenario", "", "name of the plant"},
		{"alternative", "", "way to run it"},
		{"seed", "", "number all luck is drawn from"},
		{"replications", "", "number of repeats"},
		{"launched", "", "models of which all molds are new; null for none"},
		{"spans", "", "list of spans of weeks before and after"},
		{"spans[].from_week", "weeks", "the first; 1 is the week of the first new mold"},
		{"spans[].to_week", "weeks", "the last, included"},
		{"spans[].models", "", "list of models"},
		{"spans[].models[].model", "", "name of the model"},
	}, level("spans[].models[].boats_per_week", "boats/week", "with the new molds"),
		interval("spans[].models[].change", "boats/week", "what they change, under the same luck", bothRow, clearRow, narrowerRow),
		[]outputRow{
			{"weeks", "", "list of all weeks"},
			{"weeks[].week", "weeks", "1 is the week of the first new mold"},
			{"weeks[].new_molds", "molds", "that come in the week"},
			{"weeks[].break_in_turns", "turns", "of molds in break-in, mean"},
			{"weeks[].shut", "", "whether the plant is shut"},
		})
}
