package sim

// randomFeatures are the features random plants have, each in at least a tenth
// of them.
var randomFeatures = []string{
	"several shifts", "two shifts of one crew", "shift over midnight", "never off", "absence", "hot slowdown", "helping crafts", "helping each other",
	"overtime cap", "pause", "finish", "fit", "fewer people than wanted", "slow exponent",
	"pot guns", "gun kept for a color", "bands", "gun failures", "booth failures", "failures of other places", "fails any time", "fails at work",
	"finite bays", "finite cure positions", "finite stalls", "finite store", "unlimited places", "hoist", "swap of places held",
	"one part", "two parts", "three parts", "part without mold", "mate limit", "reserve molds", "new molds", "life limit",
	"light strip", "full strip", "strip by season", "hot season", "wax interval above 1", "flaws", "sticking", "scrap", "hold by degree of cure", "warm place", "chips",
	"gel window", "limit of sprayed parts", "air limits",
	"orders always waiting", "floor limit", "generated orders", "listed orders", "urgent orders", "cancellation",
	"release oldest", "release by due date", "release by color run", "background per week", "background per boat",
}
