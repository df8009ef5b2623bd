package sim

import (
	"encoding/json"
	"fmt"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
	"moldturn/sim/state"
)

// SnapshotVersion is the version of the form of snapshots. It goes up when what
// the numbers of a state mean is changed; a changed layout of tables is noticed
// by its fingerprint.
const SnapshotVersion = 1

// derivedFields of the state of a run are not saved: what the plan and the air
// give, the way facts leave, the clock, which saves itself, and room for lists
// that are filled anew each time.
var derivedFields = state.Derived{
	"Run.plan", "Run.air", "Run.obs", "Run.clk", "Run.verbs", "Run.steps", "Run.hours",
	"Run.list", "Run.waitingOrders", "Run.ends", "Run.fact",
}

// Snapshot is the whole state of a run between two instants. With the plan and
// the air of its replication it has one future: the one the run would have had.
type Snapshot struct {
	Version     int             `json:"moldturn_snapshot"` // SnapshotVersion
	Layout      string          `json:"layout"`            // of the tables, which depends on the version of the program
	Plan        string          `json:"plan"`              // fingerprint of everything in the plan
	Air         string          `json:"air"`               // fingerprint of the conditions of the replication
	Seed        uint64          `json:"seed"`
	Replication int             `json:"replication"`
	At          clock.Time      `json:"at_ms"` // ms since midnight of the start date
	Clock       json.RawMessage `json:"clock"` // pending events in their order
	Tables      json.RawMessage `json:"tables"`
}

// Snapshot saves the state of a run between two calls of Until, in a form that
// json.Marshal writes and json.Unmarshal reads without loss.
func (r *Run) Snapshot() (*Snapshot, error) {
	s := &Snapshot{Version: SnapshotVersion, Seed: r.seed, Replication: r.replication, At: r.clk.Now()}
	var err error
	if s.Layout, err = layout(); err != nil {
		return nil, err
	}
	if s.Plan, err = r.plan.Fingerprint(); err != nil {
		return nil, err
	}
	s.Air = r.air.fingerprint(r.plan.Length)
	if s.Clock, err = r.clk.Save(); err != nil {
		return nil, err
	}
	s.Tables, err = state.Write(r, derivedFields)
	return s, err
}

// Resume gives the run that a snapshot was taken of, in the same plan and the
// air of the same replication. obs gets the facts that the run would have handed
// over from then on, the spans that were going on in full length. A snapshot of
// anything else is a *Mismatch.
func Resume(p *Plan, air *Air, s *Snapshot, obs record.Observer) (*Run, error) {
	if err := s.fits(p, air); err != nil {
		return nil, err
	}
	r := &Run{plan: p, air: air, obs: obs, verbs: &verbs, root: draw.Root(s.Seed, s.Replication)}
	r.derive()
	var err error
	if r.clk, err = clock.Restore(s.Clock); err != nil {
		return nil, err
	}
	if err := state.Read(s.Tables, r, derivedFields); err != nil {
		return nil, fmt.Errorf("snapshot: %w", err)
	}
	if r.clk.Now() != s.At || r.seed != s.Seed || r.replication != s.Replication {
		return nil, &Mismatch{"damaged: its head and its tables differ"}
	}
	return r, nil
}

// Mismatch is the error of a snapshot that cannot be resumed: it is damaged, of
// another plan, another air, or another version of the program.
type Mismatch struct{ What string }

func (m *Mismatch) Error() string { return "the snapshot is " + m.What }

// fits finds what keeps a snapshot from being resumed.
func (s *Snapshot) fits(p *Plan, air *Air) error {
	if s.Version != SnapshotVersion {
		return &Mismatch{fmt.Sprintf("of version %d of its form; this program reads version %d", s.Version, SnapshotVersion)}
	}
	now, err := layout()
	if err != nil {
		return err
	}
	if s.Layout != now {
		return &Mismatch{"of another version of the program, which kept its tables differently"}
	}
	if now, err = p.Fingerprint(); err != nil {
		return err
	}
	if s.Plan != now {
		return &Mismatch{"of another plant, or of this one with other inputs"}
	}
	if s.Air != air.fingerprint(p.Length) {
		return &Mismatch{"of other weather, or of another seed or replication"}
	}
	return nil
}

// layout is the fingerprint of everything that is saved.
func layout() (string, error) {
	tables, err := state.Layout(&Run{}, derivedFields)
	if err != nil {
		return "", err
	}
	events, err := clock.Layout()
	return tables + events, err
}

// Fingerprint is the same for plans of equal content: what a run depends on
// beside its air, seed and replication, names included.
func (p *Plan) Fingerprint() (string, error) { return state.Hash(p) }

// fingerprint is of the conditions a run can meet, every hour in every area.
func (a *Air) fingerprint(length clock.Time) string {
	var seen []float64
	for area := range a.cure {
		for t := clock.Time(0); t < length; t += clock.Hour {
			seen = append(seen, a.MoldC(area, t), a.RH(area, t), a.DewMargin(area, t), a.HeatIndexF(area, t))
		}
	}
	sum, err := state.Hash(&seen)
	if err != nil { // numbers always have one
		panic(err)
	}
	return sum
}
