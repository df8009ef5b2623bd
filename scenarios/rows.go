package scenarios

import (
	"moldturn/sim"
	"moldturn/sim/climate"
	"moldturn/sim/cure"
	"moldturn/sim/exposure"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/money"
	"moldturn/sim/param"
	"moldturn/sim/permit"
	"moldturn/sim/policy"
	"moldturn/sim/study"
)

// Rows lists every input of a plant, from the packages that use them.
func Rows() []param.Row {
	var rows []param.Row
	for _, part := range [][]param.Row{sim.Inputs(), sim.LearningInputs(), policy.Inputs(), climate.Inputs(), cure.Inputs(), finish.Inputs(), defect.Inputs(), money.Inputs(), permit.Inputs(), exposure.Inputs(), study.Inputs()} {
		rows = append(rows, part...)
	}
	return rows
}

// Inputs is the tree of all inputs of a plant.
func Inputs() (*Tree, error) { return NewTree(Rows()) }
