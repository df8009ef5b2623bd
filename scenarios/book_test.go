package scenarios

import (
	"bytes"
	"context"
	"reflect"
	"testing"

	"moldturn/sim/study"
)

// Outcomes that went through a file are the same outcomes, to the last bit: what
// a run gives must have no field that a file would lose.
func TestOutcomesSurviveAFile(t *testing.T) {
	s := warmed(t, 1, 1)
	s.Alternatives = s.Alternatives[:2]
	runs, err := study.Compare(context.Background(), &study.Setup{Alternatives: s.Study(), Replications: 2, Seed: 5, Workers: 2})
	if err != nil {
		t.Fatal(err)
	}
	b := study.NewBook(study.Head{Kind: "compare"})
	for i := range runs {
		b.Add(study.NewEntry(runs[i].Name, &runs[i], 0))
	}
	var file bytes.Buffer
	if err := b.Write(&file, nil); err != nil {
		t.Fatal(err)
	}
	t.Logf("%d bytes for 4 replications", file.Len())
	again, _, err := study.ReadBook(file.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	for i := range runs {
		got, err := again.Outcomes(runs[i].Name, s.Alternatives[i].Plant.Frame)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(runs[i].Outcomes, got) {
			t.Errorf("%s: outcomes differ after a file", runs[i].Name)
		}
	}
	other := s.Alternatives[0].Plant.Frame
	other.Pools++
	if _, err := again.Outcomes(runs[0].Name, other); err == nil {
		t.Error("outcomes of another plant are accepted")
	}
}
