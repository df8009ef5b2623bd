package scenarios

import (
	_ "embed"
	"fmt"
	"strings"

	"moldturn/sim"
	"moldturn/sim/param"
)

//go:embed standard.yaml
var standardFile []byte

// standardRoutes are the lives of parts, molds and boats that hold where a
// scenario does not write its own.
func standardRoutes() (*Value, error) {
	var rows []param.Row
	for _, row := range sim.Inputs() {
		if strings.HasPrefix(row.Path, "routes") {
			rows = append(rows, row)
		}
	}
	tree, err := NewTree(rows)
	if err != nil {
		return nil, err
	}
	doc, complaints := Read("standard.yaml", standardFile)
	if len(complaints) > 0 {
		return nil, fmt.Errorf("standard routes: %w", complaints)
	}
	v, complaints := tree.Bind(doc)
	if len(complaints) > 0 {
		return nil, fmt.Errorf("standard routes: %w", complaints)
	}
	return v, nil
}
