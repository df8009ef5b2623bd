package floor_test

import (
	"os"
	"testing"
	"testing/fstest"

	"moldturn/scenarios/floor"
)

// Whatever the bytes, reading ends without a panic, every row has one fate, and
// what is on the floor can be used: names are in the plan, numbers in range,
// nothing lies in the future, no mold holds two parts.
func FuzzRead(f *testing.F) {
	for _, name := range []string{"molds.csv", "traveler 2026-11-25.csv", "order book.tsv", "people out.csv", "downtime.csv", "calendar.csv"} {
		data, err := os.ReadFile("testdata/thirty/" + name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(name, data)
	}
	f.Add("molds.csv", []byte("id\tmodel\r\r\n\"\"\"\n=\"7\"\tSedge 20 hull\n"))
	f.Add("floor.xlsx", []byte("PK\x03\x04"))
	f.Add("molds.csv", []byte{0xff, 0xfe, 'i', 0, 'd', 0})
	p := fenwater(f)
	kinds := []string{"molds.csv", "work.csv", "orders.csv", "out.csv", "downtime.csv", "calendar.csv", "aliases.csv", "floor.xlsx"}
	f.Fuzz(func(t *testing.T, name string, data []byte) {
		dir := fstest.MapFS{}
		for _, kind := range kinds {
			dir[kind] = &fstest.MapFile{Data: data}
		}
		r := floor.Read(dir, p, floor.Options{Morning: mustMorning("2026-11-25")})
		for _, s := range r.Sheets {
			last := 0
			for _, row := range s.Rows {
				if row.Row <= last || row.Fate > floor.Skipped || row.Fate != floor.Used && row.Why == "" {
					t.Fatalf("%s: %+v after row %d", s.Place, row, last)
				}
				last = row.Row
			}
		}
		if r.Floor == nil {
			return
		}
		for i := range r.Floor.Molds {
			m := &r.Floor.Molds[i]
			if m.Part < 0 || int(m.Part) >= len(p.Parts) || int(m.Plan) >= len(p.Molds) || m.When.After(r.Floor.Morning) || m.Turns < floor.Unknown || m.Luster > 100 ||
				m.Since != floor.Unknown && m.Turns != floor.Unknown && m.Since > m.Turns {
				t.Fatalf("%+v", m)
			}
		}
		taken := map[int]bool{}
		for i := range r.Floor.Work {
			w := &r.Floor.Work[i]
			if w.Route < 0 || int(w.Step) >= len(p.Routes[w.Route].Steps) || w.Started.After(r.Floor.Morning) || w.Done > 1 {
				t.Fatalf("%+v", w)
			}
			if w.Mold != floor.Unknown && (taken[w.Mold] || r.Floor.Molds[w.Mold].Work != i || r.Floor.Molds[w.Mold].Part != w.Part) {
				t.Fatalf("%+v shares its mold", w)
			}
			taken[w.Mold] = true
		}
		for _, o := range r.Floor.Orders {
			if o.Model < 0 || int(o.Model) >= len(p.Models) || int(o.Color) >= len(p.Colors) || o.Priority < 0 || o.Priority > 100 {
				t.Fatalf("%+v", o)
			}
		}
	})
}
