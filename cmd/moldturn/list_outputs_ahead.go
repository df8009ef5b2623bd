package main

// aheadOutputs are those of commands that look ahead from a floor.
func aheadOutputs() []outputFile {
	promise := []string{"promise"}
	return []outputFile{
		{promise, "promise.csv", "when each boat leaves in each future", []outputRow{
			{"boat", "", "number of the boat asked for, from 1"},
			{"future", "", "number of the future, from 1"},
			{"leaves", "", "date and time; empty: not in the time looked at"},
		}},
		{promise, "promise.json", "the same over all futures; printed with --json", []outputRow{
			{"answer", "", "the answer as a sentence"},
			{"possible", "", "whether all are out in nine futures of ten"},
			{"even_chance", "", "day by which all are out in half of the futures; left out: in fewer"},
			{"nine_times_in_10", "", "the same in nine of ten"},
			{"chance_by_date", "share", "with --by: share of futures in which all are out by then"},
			{"futures", "", "how many were looked at"},
			{"boats", "", "list of the boats asked for"},
			{"boats[].even_chance", "", "day by which it is out in half of the futures"},
			{"boats[].nine_times_in_10", "", "the same in nine of ten"},
			{"orders_that_leave_later", "", "list of orders that leave later because of them"},
			{"orders_that_leave_later[].order", "", "its name, and its model"},
			{"orders_that_leave_later[].days_later", "days", "mean over the futures in which it leaves either way"},
			{"orders_that_leave_later[].chance_late_without", "share", "that it leaves after its date; 0 without one"},
			{"orders_that_leave_later[].chance_late_with", "share", "the same with the boats asked for"},
		}},
	}
}
