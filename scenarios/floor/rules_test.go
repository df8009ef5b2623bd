package floor_test

import (
	"fmt"
	"io/fs"
	"reflect"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"moldturn/scenarios"
	"moldturn/scenarios/floor"
)

// folder makes a folder of name, text, name, text …
func folder(files ...string) fs.FS {
	out := fstest.MapFS{}
	for i := 0; i < len(files); i += 2 {
		out[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	return out
}

func read(t testing.TB, files ...string) *floor.Reading {
	t.Helper()
	return floor.Read(folder(files...), fenwater(t), floor.Options{Name: "test", Morning: mustMorning("2027-05-11")})
}

// noticesOf are the notices of a rule.
func noticesOf(r *floor.Reading, rule string) []floor.Notice {
	var out []floor.Notice
	for _, n := range r.Notices {
		if n.Rule == rule {
			out = append(out, n)
		}
	}
	return out
}

// wants reports unless a rule spoke at exactly these places.
func wants(t *testing.T, r *floor.Reading, rule string, places ...string) {
	t.Helper()
	var got []string
	for _, n := range noticesOf(r, rule) {
		got = append(got, n.Place.String())
	}
	if !slices.Equal(got, places) {
		t.Errorf("%s at %q, want %q; all: %v", rule, got, places, r.Notices)
	}
}

const moldHeads = "id,model,part,turns total,turns since strip,where,since\n"

// Counters that all stand at zero would strip all molds in the same days: they
// are not used. Real counters are, zeros among them.
func TestCountersAllAtZero(t *testing.T) {
	log := func(since ...int) string {
		var b strings.Builder
		b.WriteString(moldHeads)
		for i, n := range since {
			fmt.Fprintf(&b, "M%d,Sedge 20,%s,%d,%d,ready,2027-05-10\n", i, []string{"hull", "deck"}[i%2], 100+i, n)
		}
		return b.String()
	}
	for _, c := range []struct {
		since []int
		told  bool
	}{
		{[]int{0, 0, 0, 0}, true}, {[]int{0, 0, 0, 2}, true}, {[]int{0, 0, 1, 2}, false}, {[]int{0, 0}, false}, {[]int{1, 2, 3, 4, 0}, false},
	} {
		r := read(t, "molds.csv", log(c.since...))
		if got := len(noticesOf(r, "counters all at zero")) == 1; got != c.told {
			t.Errorf("%v: told %v", c.since, got)
		}
		for i, m := range r.Floor.Molds {
			want := c.since[i]
			if c.told && want == 0 {
				want = floor.Unknown
			}
			if m.Since != want {
				t.Errorf("%v: mold %s has %d", c.since, m.ID, m.Since)
			}
		}
	}
}

func TestMissingWeeks(t *testing.T) {
	var b strings.Builder
	b.WriteString(moldHeads)
	for _, d := range []string{"03-01", "03-08", "03-15", "03-29", "04-05", "04-12", "04-19", "05-10"} {
		fmt.Fprintf(&b, "A,Sedge 20,hull,,,pulled,2027-%s\n", d)
	}
	r := read(t, "mold log.csv", b.String())
	wants(t, r, "weeks missing", "mold log.csv:8")
	if n := noticesOf(r, "weeks missing"); len(n) == 1 && !strings.Contains(n[0].Message, "3 weeks (from Monday 2027-03-22, 2027-04-26, 2027-05-03)") {
		t.Error(n[0].Message)
	}
	// The plant of the scenario is shut from 2027-07-01 to 07-07, but no whole week is.
	if len(r.Floor.Molds) != 1 || r.Floor.Molds[0].When.String() != "2027-05-10" || r.Sheets[0].Count(floor.Older) != 7 {
		t.Errorf("%+v", r.Floor.Molds)
	}
}

func TestImpossibleWork(t *testing.T) {
	molds := moldHeads + "H1,Sedge 20,hull,100,2,curing,2027-05-07\nH2,Sedge 20,hull,90,3,ready,2027-05-10\nR1,Rush 23,hull,80,1,hold,2027-05-07\n"
	heads := "serial,model,part,step,mold,started,sprayed,laminated,pulled,shipped\n"
	for _, c := range []struct {
		name, row, rule, place string
		used                   int
	}{
		{"cured before it was sprayed", "1,Sedge 20,hull,hold,H1,2027-05-05,2027-05-06 08:00,,,", "impossible sequence", "work.csv:2:6", 1},
		{"laminated before it was sprayed", "1,Sedge 20,hull,hold,H1,2027-05-07,2027-05-06,2027-05-05,,", "impossible sequence", "work.csv:2:8", 1},
		{"pulled after it was shipped", "1,Sedge 20,hull,finish,,,,,2027-05-07,2027-05-06", "pulled after shipped", "work.csv:2:10", 0},
		{"in a mold, and pulled", "1,Sedge 20,hull,hold,H1,2027-05-07,,,2027-05-08,", "step behind its dates", "work.csv:2:9", 1},
		{"in the future", "1,Sedge 20,hull,hold,H1,2027-05-12,,,,", "date in the future", "work.csv:2:6", 1},
		{"in a mold of another model", "1,Sedge 20,hull,hold,R1,2027-05-07,,,,", "mold of another part", "work.csv:2:5", 1},
		{"in a mold that the log calls ready", "1,Sedge 20,hull,hold,H2,2027-05-07,,,,", "part in an empty mold", "molds.csv:3:6", 1},
		{"two in one mold", "1,Sedge 20,hull,hold,H1,2027-05-06,,,,\n2,Sedge 20,hull,skin,H1,2027-05-10,,,,", "two parts in one mold", "work.csv:2:5", 1},
		{"twice the same part", "1,Sedge 20,hull,hold,H1,2027-05-06,,,,\n1,Sedge 20,hull,skin,H2,2027-05-10,,,,", "part listed twice", "work.csv:2:1", 1},
		{"one serial for two models", "1,Sedge 20,hull,hold,H1,2027-05-06,,,,\n1,Rush 23,hull,hold,R1,2027-05-07,,,,", "serial of two models", "work.csv:3:1", 1},
		{"in assembly with its hull in the mold", "1,Sedge 20,boat,assembly,,2027-05-06,,,,\n1,Sedge 20,hull,hold,H1,2027-05-07,,,,", "part of a boat in assembly", "work.csv:3:4", 1},
		{"without a mold", "1,Sedge 20,hull,hold,,2027-05-07,,,,", "no mold", "work.csv:2:5", 1},
		{"a hold without a date", "1,Sedge 20,hull,hold,H1,,,,,", "wait without a date", "work.csv:2:6", 1},
		{"no part of several", "1,Sedge 20,,hold,H1,,,,,", "cell missing", "work.csv:2:3", 0},
	} {
		r := read(t, "molds.csv", molds, "work.csv", heads+c.row+"\n")
		t.Run(c.name, func(t *testing.T) {
			wants(t, r, c.rule, c.place)
			if len(r.Floor.Work) != c.used {
				t.Errorf("work: %+v", r.Floor.Work)
			}
			for _, w := range r.Floor.Work {
				if w.Started.After(r.Floor.Morning) || w.Mold != floor.Unknown && r.Floor.Molds[w.Mold].Part != w.Part {
					t.Errorf("%+v", w)
				}
			}
		})
	}
}

// Sound rows say nothing.
func TestSoundWorkIsSilent(t *testing.T) {
	r := read(t, "molds.csv", moldHeads+"H1,Sedge 20,hull,100,2,curing,2027-05-10\n", "work.csv",
		"serial,model,part,color,step,mold,started,sprayed,laminated\n1,Sedge 20,hull,navy,hold,H1,2027-05-10 14:00,2027-05-07 08:00,2027-05-10 14:00\n",
		"orders.csv", "id,model,color,due\n1,Sedge 20,navy,2027-06-01\n")
	for _, n := range r.Notices {
		if n.Level > floor.Gap || n.Rule == "impossible sequence" {
			t.Errorf("%+v", n)
		}
	}
	if w := r.Floor.Work; len(w) != 1 || w[0].Order != 0 || w[0].Mold != 0 {
		t.Errorf("%+v", w)
	}
}

// The morning is the day after the last entry; one entry far ahead of all
// others is a slip and does not move it.
func TestMorning(t *testing.T) {
	for _, c := range []struct{ last, want string }{{"2027-05-10 22:15", "2027-05-11"}, {"2072-05-10", "2027-05-08"}, {"2027-05-20", "2027-05-08"}} {
		r := floor.Read(folder("molds.csv", moldHeads+"H1,Sedge 20,hull,100,2,curing,2027-05-07\nH2,Sedge 20,hull,1,1,ready,"+c.last+"\n"), fenwater(t), floor.Options{})
		if got := r.Floor.Morning.String(); got != c.want {
			t.Errorf("after %s: %s, want %s", c.last, got, c.want)
		}
	}
	r := floor.Read(folder("molds.csv", "id,model,part\nH1,Sedge 20,hull\n"), fenwater(t), floor.Options{})
	if r.Floor != nil || len(noticesOf(r, "no morning")) != 1 {
		t.Errorf("%+v", r)
	}
}

func TestFoldersThatAreNone(t *testing.T) {
	for _, c := range []struct {
		rule  string
		files []string
	}{
		{"no floor files", nil},
		{"no floor files", []string{"a.md", "x"}},
		{"nothing on the floor", []string{"molds.csv", "tool,day\n1,2\n"}},
		{"columns missing", []string{"molds.csv", "tool,day\n1,2\n"}},
		{"empty file", []string{"molds.csv", ""}},
		{"unreadable file", []string{"molds.xlsx", "PK no workbook"}},
		{"kind of file", []string{"molds.xls", "old"}},
	} {
		r := read(t, c.files...)
		if r.Floor != nil || len(noticesOf(r, c.rule)) == 0 {
			t.Errorf("%v: %v", c.files, r.Notices)
		}
	}
}

// The order of dates is told by other columns of the sheet, and dots are read
// day first.
func TestOrderOfDates(t *testing.T) {
	heads := "id,model,arrived,due\n"
	for _, c := range []struct{ row, due string }{
		{"1,Sedge 20,3/25/2027,5/6/2027", "2027-05-06"},
		{"1,Sedge 20,25/3/2027,5/6/2027", "2027-06-05"},
		{"1,Sedge 20,,5.6.2027", "2027-06-05"},
		{"1,Sedge 20,,5/6/2027", ""},
		{"1,Sedge 20,,5/6/2027\n2,Sedge 20,,25/6/2027", "2027-06-05"},
		{"1,Sedge 20,,5/6/2027\n2,Sedge 20,,25/6/2027\n3,Sedge 20,,6/25/2027", ""},
	} {
		r := read(t, "orders.csv", heads+c.row+"\n")
		if got := r.Floor.Orders[0].Due.String(); got != c.due {
			t.Errorf("%q is due on %q, want %q", c.row, got, c.due)
		}
		if told := len(noticesOf(r, "ambiguous date")) > 0; told != (c.due == "") {
			t.Errorf("%q: told %v", c.row, told)
		}
	}
}

// Reading twice gives the same, and every row has one fate.
func TestSameEveryTime(t *testing.T) {
	a, b := readThirty(t), readThirty(t)
	if !reflect.DeepEqual(a, b) || fmt.Sprintf("%+v %+v", *a.Floor, a.Notices) != fmt.Sprintf("%+v %+v", *b.Floor, b.Notices) {
		t.Error("two readings differ")
	}
	dir, _ := scenarios.BundledFloor("fenwater")
	if x, y := demo(t), floor.Read(dir, fenwater(t), floor.Options{Name: "fenwater"}); !reflect.DeepEqual(x, y) {
		t.Error("two readings of the demo differ")
	}
}
