package scenarios

import (
	"moldturn/sim/study"
)

// Scenario is a file with its alternatives, ready to run.
type Scenario struct {
	Base         *Plant
	Alternatives []Alternative // the base first
}

// Alternative is the plant with some changes.
type Alternative struct {
	Name    string
	Changes []string // as written, for people
	Plant   *Plant
}

// Options are what a command line says beside the file.
type Options struct {
	Sets  []Change // changes of the base and of every alternative
	Years int      // below 0: as the scenario says
	Files func(name string) ([]byte, error)
}

// Load reads a scenario and makes a plan of it and of each of its
// alternatives. All complaints come together.
func Load(name string, data []byte, o Options) (*Scenario, Complaints) {
	tree, err := Inputs()
	if err != nil {
		return nil, Complaints{{File: name, Message: err.Error()}}
	}
	doc, complaints := Read(name, data)
	if len(complaints) > 0 {
		return nil, complaints
	}
	doc, complaints = tree.Apply(doc, o.Sets...)
	if len(complaints) > 0 {
		return nil, complaints
	}
	v, complaints := tree.Bind(doc)
	if len(complaints) > 0 {
		return nil, complaints
	}
	base, complaints := Build(v, o.Years, -1, o.Files)
	if len(complaints) > 0 {
		return nil, complaints
	}
	s := &Scenario{Base: base, Alternatives: []Alternative{{Name: v.At("base_name").Text(), Plant: base}}}
	for alternative, a := range v.Each("alternatives") {
		plant, faults := tree.alternative(doc, a.Changes(), o)
		for i := range faults {
			faults[i].Message = "with alternatives." + alternative + ": " + faults[i].Message
		}
		complaints = append(complaints, faults...)
		var changes []string
		for _, ch := range a.Changes() {
			changes = append(changes, ch.String())
		}
		s.Alternatives = append(s.Alternatives, Alternative{Name: alternative, Changes: changes, Plant: plant})
	}
	if len(complaints) > 0 {
		return nil, complaints.sorted()
	}
	return s, nil
}

// alternative makes the plan of the document with changes.
func (t *Tree) alternative(doc *Document, changes []Change, o Options) (*Plant, Complaints) {
	changed, complaints := t.Apply(doc, changes...)
	if len(complaints) > 0 {
		return nil, complaints
	}
	v, complaints := t.Bind(changed)
	if len(complaints) > 0 {
		return nil, complaints
	}
	return Build(v, o.Years, -1, o.Files)
}

// Study is the scenario as a study runs it.
func (s *Scenario) Study() []study.Alternative {
	var out []study.Alternative
	for _, a := range s.Alternatives {
		out = append(out, study.Alternative{Name: a.Name, Changes: a.Changes, Capacity: a.Plant.Capacity, Dated: a.Plant.Dated,
			Frame: a.Plant.Frame, Climate: a.Plant.Climate, Air: a.Plant.Air})
	}
	return out
}
