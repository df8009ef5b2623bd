package floor

import (
	"fmt"
	"slices"
)

// otherPlant tells of a floor of which no row can be used because the scenario has
// none of its models: it is of another plant, most likely.
func (r *reader) otherPlant() {
	if len(r.molds)+len(r.work)+len(r.orders) > 0 {
		return
	}
	var found []string
	for _, n := range r.notices {
		if n.Rule == "unknown model" && !slices.ContainsFunc(found, func(s string) bool { return key(s) == key(n.Found) }) {
			found = append(found, n.Found)
		}
	}
	if len(found) == 0 {
		return
	}
	r.say(Notice{Level: Fatal, Rule: "another plant", Message: fmt.Sprintf("none of the models that the files name is in the scenario: %s", listed(found)),
		Allowed: listed(namesIn(r.names.plan.Models, modelName)),
		Hint:    fmt.Sprintf("the floor seems to be of another plant: its models are %s, those of the scenario %s", listed(found), listed(namesIn(r.names.plan.Models, modelName)))})
}
