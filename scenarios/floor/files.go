package floor

// File is one kind of file, or of sheet, that a floor folder may hold.
type File struct {
	Name    string   // "molds"; the file is molds.csv, or a sheet of that name
	Doc     string   // what one row is
	Also    []string // other names that are understood
	Missing string   // what it does to the answer when there is none; "" for nothing
	Lost    string   // what a row that is not used does to it
	Columns []Column
}

// Column is one column of a File.
type Column struct {
	Name   string
	Doc    string
	Also   []string // other heads that are understood
	Needed bool     // a row without it is not used
	Same   bool     // blank means the same as in the row above
	Gap    string   // what it does to the answer where it is blank; "" if blank is a usual thing to say

	date bool // is one
}

// Files lists what a floor folder may hold, in the order in which it is read.
func Files() []File {
	return []File{aliasFile(), moldFile(), workFile(), orderFile(), outFile(), downFile(), calendarFile()}
}

func aliasFile() File {
	return File{Name: "aliases", Doc: "a name of a mold, model, color, step, craft or place that is written otherwise",
		Lost: "the name stays unknown in the other files",
		Also: []string{"alias", "renamed", "renamed molds", "names"},
		Columns: []Column{
			{Name: "old", Doc: "the name as it is written", Needed: true, Also: []string{"old name", "old id", "was", "alias", "from", "written"}},
			{Name: "new", Doc: "the name that is meant", Needed: true, Also: []string{"new name", "new id", "now", "name", "to", "means", "today"}},
		}}
}

func moldFile() File {
	return File{Name: "molds", Doc: "a mold; of several rows for one mold the newest counts",
		Also:    []string{"mold", "mold log", "moldlog", "mould log", "moulds", "mold list", "tooling"},
		Lost:    "the mold is taken as if nothing were written of it: ready, with a counter spread over the strip interval",
		Missing: "all molds start with counters spread over the strip interval: which molds are stripped in the next weeks is a guess",
		Columns: []Column{
			{Name: "id", Doc: "of the mold", Needed: true, Also: []string{"mold", "mold id", "mold no", "mold number", "mould", "mould id", "tool", "tool id", "tool no"}},
			{Name: "model", Doc: "of the boat; may carry the part: Rush 23 hull", Needed: true, Same: true, Also: []string{"boat", "boat model", "for model"}},
			{Name: "part", Doc: "hull, deck, liner; left out where a model has one part", Same: true, Also: []string{"part type", "component", "piece", "type"}},
			{Name: "turns total", Doc: "turns since the mold was new", Also: []string{"turns", "total turns", "total", "pulls total", "total pulls", "pulls", "parts pulled", "lifetime turns", "life"},
				Gap: "its age is spread over the life of a mold: its surface and the day it is resurfaced are a guess"},
			{Name: "turns since strip", Doc: "turns since the last strip", Also: []string{"since strip", "turns since last strip", "pulls since strip", "since last strip", "strip count", "since strip turns"},
				Gap: "its counter is spread over the strip interval: its next strip may be early or late by up to the whole interval"},
			{Name: "where", Doc: "ready, pulled, a step, a place, reserve, out, or resurfacing: then it is broken in when it is back", Also: []string{"state", "status", "location", "place", "doing", "at"},
				Gap: "it is taken as ready unless the work on the floor has a part in it: the first part in it may be promised too early"},
			{Name: "since", Doc: "date, or date and time, since when it is there", Also: []string{"since when", "date", "as of", "updated", "last change", "last entry", "from", "when"}, date: true,
				Gap: "what it does is taken as just begun: it is free later than in truth"},
			{Name: "last luster", Doc: "of the last part pulled, 0 to 100", Also: []string{"luster", "last reading", "gloss", "reading", "luster last part", "luster pts"},
				Gap: "its surface is worked out from its turns alone: the luster of its next parts is less certain"},
			{Name: "back", Doc: "when a mold that is out comes back", Also: []string{"back on", "expected back", "returns", "out until"}, date: true},
		}}
}

func workFile() File {
	return File{Name: "work", Doc: "a part or boat on the floor",
		Also:    []string{"work on the floor", "wip", "traveler", "travelers", "traveller", "travellers", "on the floor", "floor", "work in progress"},
		Lost:    "the part is not on the floor: its boat is promised as if it were begun anew",
		Missing: "the plant starts without a part on it: the first boats are promised too late by about the time a boat takes, and the next pulls are missing",
		Columns: []Column{
			{Name: "serial", Doc: "of the boat; its parts share it", Needed: true, Same: true, Also: []string{"serial no", "serial number", "hull no", "hull number", "boat no", "boat number", "hin", "traveler no"}},
			{Name: "model", Doc: "of the boat; may carry the part: Rush 23 hull", Needed: true, Same: true, Also: []string{"boat", "boat model"}},
			{Name: "part", Doc: "hull, deck, liner; blank for a boat in assembly", Also: []string{"part type", "component", "piece", "type"}},
			{Name: "color", Doc: "of the boat", Also: []string{"colour", "hull color", "gel color", "gel coat color", "gelcoat color", "base color"},
				Gap: "it takes the color of its order, and without one that its model is ordered in first: flushes and the luster of dark boats are a guess"},
			{Name: "band", Doc: "accent color", Also: []string{"accent", "stripe", "accent color", "band color", "accent band"}},
			{Name: "step", Doc: "that it is in or waits for; see list steps", Needed: true, Also: []string{"status", "state", "stage", "operation", "op", "station", "at step", "where"}},
			{Name: "mold", Doc: "that it is in", Also: []string{"mold id", "mold no", "mould", "tool", "in mold"}},
			{Name: "started", Doc: "when the step began; blank while it waits for it", Also: []string{"start", "begun", "since", "step started", "started at", "in since", "time started"}, date: true},
			{Name: "sprayed", Doc: "when its gel coat was sprayed", Also: []string{"gel coated", "gelcoated", "gel date", "gel coat", "spray date", "sprayed at"}, date: true},
			{Name: "skinned", Doc: "when its skin coat was laid", Also: []string{"skin", "skin coat", "skin date", "skinned at"}, date: true},
			{Name: "laminated", Doc: "when its last shot was laid", Also: []string{"lamination", "lam date", "laid up", "lay-up", "layup", "last shot"}, date: true},
			{Name: "pulled", Doc: "when it left its mold", Also: []string{"pull", "pull date", "demolded", "pulled at"}, date: true},
			{Name: "shipped", Doc: "when it left the plant; such a row is not on the floor", Also: []string{"ship date", "shipped on", "gone"}, date: true},
			{Name: "hours left", Doc: "that the step still takes with its usual people", Also: []string{"left", "remaining", "hours remaining", "time left", "h left"}},
			{Name: "done", Doc: "share of the step that is done", Also: []string{"percent done", "complete", "percent complete", "done share", "progress"}},
		}}
}

func orderFile() File {
	return File{Name: "orders", Doc: "an order, or several alike",
		Also:    []string{"order", "order book", "orderbook", "backlog", "orders open", "open orders", "book"},
		Lost:    "the boat is not in the book: all others are promised too early",
		Missing: "nothing is due: no date can be promised or missed, and molds go to the models of the scenario's own demand",
		Columns: []Column{
			{Name: "id", Doc: "serial or order number; the same as the serial of its work on the floor", Also: []string{"order", "order no", "order id", "order number", "serial", "serial no", "so", "sales order", "boat no", "hull no"}},
			{Name: "model", Doc: "of the boat", Needed: true, Same: true, Also: []string{"boat", "boat model", "item"}},
			{Name: "color", Doc: "of the boat", Also: []string{"colour", "hull color", "gel color", "base color"},
				Gap: "it is built in the color its model is ordered in first: flushes and the luster of dark boats are a guess"},
			{Name: "band", Doc: "accent color", Also: []string{"accent", "stripe", "accent color", "band color"}},
			{Name: "quantity", Doc: "boats of the row, 1 where nothing is said", Also: []string{"qty", "count", "boats", "number of boats", "pcs"}},
			{Name: "arrived", Doc: "when it was taken", Also: []string{"order date", "ordered", "taken", "received", "entered"}, date: true},
			{Name: "due", Doc: "the date promised", Also: []string{"due date", "promised", "promise date", "ship by", "delivery", "delivery date", "ship date", "needed by", "wanted"}, date: true,
				Gap: "it is never late and waits behind all orders with a date"},
			{Name: "priority", Doc: "0 to 100, or low, normal, high, rush; higher first", Also: []string{"prio", "urgent", "urgency", "rush", "hot"}},
			{Name: "price", Doc: "of the boat; read and checked, and not used in any answer", Also: []string{"value", "amount", "selling price", "net price"}},
		}}
}

func outFile() File {
	return File{Name: "out", Doc: "people of one craft who are out on a day",
		Also:    []string{"people out", "absent", "absence", "absences", "vacation", "off", "people", "leave", "time off"},
		Lost:    "these people count as there: work is promised too early",
		Missing: "everybody is expected but for the usual absence of the scenario",
		Columns: []Column{
			{Name: "date", Doc: "the day, or the first of them", Needed: true, Same: true, Also: []string{"day", "from", "first day", "on"}, date: true},
			{Name: "until", Doc: "the last day, the same where nothing is said", Also: []string{"to", "last day", "through", "thru", "till"}, date: true},
			{Name: "craft", Doc: "of the scenario", Needed: true, Same: true, Also: []string{"crew", "trade", "department", "dept", "team", "group"}},
			{Name: "number", Doc: "of people, 1 where nothing is said", Also: []string{"people", "count", "out", "persons", "how many", "headcount", "no"}},
		}}
}

func downFile() File {
	return File{Name: "downtime", Doc: "a booth, hoist or other place that cannot be used",
		Lost: "the place counts as up: what goes through it is promised too early",
		Also: []string{"down", "booth down", "booths", "maintenance", "outages", "booth downtime", "equipment"},
		Columns: []Column{
			{Name: "place", Doc: "booth 2, hoist; without a number: all of them", Needed: true, Same: true, Also: []string{"booth", "equipment", "machine", "what", "where"}},
			{Name: "from", Doc: "date, or date and time", Needed: true, Also: []string{"start", "begin", "down from", "date", "since"}, date: true},
			{Name: "to", Doc: "date (that whole day), or date and time", Also: []string{"until", "end", "down to", "back", "till", "through"}, date: true,
				Gap: "it stays down for all the weeks asked for: what goes through it comes late"},
			{Name: "note", Doc: "why", Also: []string{"reason", "remark", "remarks", "comment", "why"}},
		}}
}

func calendarFile() File {
	return File{Name: "calendar", Doc: "a day off, or an extra day",
		Lost: "the day is as the scenario has it",
		Also: []string{"calendar changes", "days", "holidays", "days off", "extra days", "overtime", "saturdays"},
		Columns: []Column{
			{Name: "date", Doc: "the day, or the first of them", Needed: true, Also: []string{"day", "from", "first day", "on"}, date: true},
			{Name: "until", Doc: "the last day, the same where nothing is said", Also: []string{"to", "last day", "through", "thru", "till"}, date: true},
			{Name: "change", Doc: "off or extra", Needed: true, Also: []string{"kind", "what", "type", "work", "worked", "off or extra", "day off"}},
			{Name: "craft", Doc: "for this craft only; blank for all", Also: []string{"crew", "for", "who", "trade", "department", "dept"}},
			{Name: "note", Doc: "why", Also: []string{"reason", "remark", "remarks", "comment", "why", "name", "holiday"}},
		}}
}
