package floor_test

import (
	"math/rand/v2"
	"os"
	"testing"
	"testing/fstest"

	"moldturn/scenarios/floor"
	"moldturn/sim"
)

// seeds are the files that any bytes begin with.
func seeds(t testing.TB) [][]byte {
	t.Helper()
	out := [][]byte{[]byte("id\tmodel\r\r\n\"\"\"\n=\"7\"\tSedge 20 hull\n"), []byte("PK\x03\x04"), {0xff, 0xfe, 'i', 0, 'd', 0}}
	for _, name := range []string{"molds.csv", "traveler 2026-11-25.csv", "order book.tsv", "people out.csv", "downtime.csv", "calendar.csv"} {
		data, err := os.ReadFile("testdata/thirty/" + name)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, data)
	}
	return out
}

func FuzzRead(f *testing.F) {
	for _, data := range seeds(f) {
		f.Add(data)
	}
	p := fenwater(f)
	f.Fuzz(func(t *testing.T, data []byte) { judge(t, p, data) })
}

// nasty are texts that hurt readers of sheets.
var nasty = []string{"\"", ",", ";", "\t", "\n", "\r", "#REF!", "total", "46352.999999", "1e999", "-1", "29/02/2027", "5/6/27", "ditto", "hold", "S20-H1", "Sedge 20", "\xff", "\u00a0", "2026-11-24", "NaN", "=\"", "F1"}

// Many spoiled files, the same every time: what a longer search finds
// is added here.
func TestSpoiledFiles(t *testing.T) {
	p, all := fenwater(t), seeds(t)
	luck := rand.New(rand.NewPCG(8, 1))
	for range 150 {
		data := append([]byte{}, all[luck.IntN(len(all))]...)
		for range 1 + luck.IntN(12) {
			at := luck.IntN(len(data))
			end := min(at+luck.IntN(12), len(data))
			word := nasty[luck.IntN(len(nasty))]
			data = append(append(append([]byte{}, data[:at]...), word...), data[end:]...)
		}
		if judge(t, p, data); t.Failed() {
			t.Fatalf("%q", data)
		}
	}
}

// judge holds for whatever bytes: reading ends without a panic, every row has
// one fate, and what is on the floor can be used: names are in the plan, numbers
// in range, nothing lies in the future, no mold holds two parts.
func judge(t *testing.T, p *sim.Plan, data []byte) {
	dir := fstest.MapFS{}
	for _, kind := range []string{"aliases.csv", "molds.csv", "floor.xlsx"} {
		dir[kind] = &fstest.MapFile{Data: data}
	}
	r := floor.Read(dir, p, floor.Options{Morning: mustMorning("2026-11-25")})
	for _, s := range r.Sheets {
		last := 0
		for _, row := range s.Rows {
			if row.Row <= last || row.Fate > floor.Skipped || row.Fate != floor.Used && row.Why == "" {
				t.Errorf("%s: %+v after row %d", s.Place, row, last)
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
			t.Errorf("%+v", m)
		}
	}
	taken := map[int]bool{}
	for i := range r.Floor.Work {
		w := &r.Floor.Work[i]
		if w.Route < 0 || int(w.Step) >= len(p.Routes[w.Route].Steps) || w.Started.After(r.Floor.Morning) || w.Done > 1 {
			t.Errorf("%+v", w)
		}
		if w.Mold != floor.Unknown && (taken[w.Mold] || r.Floor.Molds[w.Mold].Work != i || r.Floor.Molds[w.Mold].Part != w.Part) {
			t.Errorf("%+v shares its mold", w)
		}
		taken[w.Mold] = true
	}
	for _, o := range r.Floor.Orders {
		if o.Model < 0 || int(o.Model) >= len(p.Models) || int(o.Color) >= len(p.Colors) || o.Priority < 0 || o.Priority > 100 {
			t.Errorf("%+v", o)
		}
	}
}
