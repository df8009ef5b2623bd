package scenarios

import (
	"testing"

	"moldturn/sim"
	"moldturn/sim/record"
)

// engineAlone are changes of the demo that leave weather, hourly conditions and
// flaws out: a table of months and no defects.
var engineAlone = []string{"climate.weather = months", "quality.flaws = false", "season.by = months"}

// A run of the demo, three years with orders always waiting, with the physics
// and without: what physics adds is to stay under a quarter. The air of a
// replication is made once for all alternatives and is timed by itself.
func BenchmarkPhysics(b *testing.B) {
	for _, c := range []struct {
		name    string
		changes []string
	}{{"engine alone", engineAlone}, {"all physics", nil}, {"all physics and a hardness", []string{"hold.barcol = 35"}}} {
		s := fenwater(b, 2, c.changes...)
		air, err := s.Base.Air(1, 0)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				if err := sim.Simulate(s.Base.Plan(), air, 1, 0, record.NewTally(s.Base.Frame)); err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run(c.name+", its air", func(b *testing.B) {
			for b.Loop() {
				if _, err := s.Base.Air(1, 0); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
