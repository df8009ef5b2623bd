package finish

// Grade is a quality of gel coat.
type Grade struct {
	Name    string
	Loss    float64 // points of luster it cannot reach
	BuildUp float64 // how fast it builds up on the mold, against premium
}

// builtinGrades are known to every scenario. All numbers are assumptions.
func builtinGrades() []Grade {
	return []Grade{
		{"entry", 5, 1.6},
		{"medium", 3, 1.25},
		{"premium", 1.9, 1},
	}
}

func gradeLoss(p *Params, part *Part) float64 { return p.Grades[part.Grade].Loss }
