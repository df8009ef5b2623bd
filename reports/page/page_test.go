package page

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"html"
	"math"
	"regexp"
	"strings"
	"testing"

	"moldturn/reports/cells"
)

// evil is a text with something for every place it could be put in.
const evil = `</script><script>alert(1)</script><img src=x onerror=alert(2)>"'&{{.Title}}{a}__f__alert(3)__f__=cmd|x`

// sample is a page with every block, where every text is s.
func sample(s string) Page {
	table := cells.Table{Title: s, Columns: []cells.Column{{Head: s}}, Notes: []string{s},
		Rows: []cells.Row{{Cells: []cells.Cell{{Text: s, Notes: []int{0}}}}}}
	return Page{Title: s, Lead: s, Lang: s, Foot: []string{s}, Sections: []Section{{Heading: s, Blocks: []Block{
		Text(s), Remark(s), List{s}, Facts{{s, s, s}}, Table{table},
		Chart{ID: "one", Finding: s, Caption: s, Alt: s, Kind: Lines, Height: 200, AxisX: s, AxisY: s, Table: table,
			Legend:  []Key{{s, Line, 0, 0}, {s, Fill, 1, 1}, {s, Mark, 2, 2}, {s, Cloud, 3, 0}, {s, Ramp, 0, 0}},
			Options: map[string]any{"series": []any{}, "xAxis": map[string]any{"data": []any{s}}}, Data: map[string]any{"labels": []string{s}}},
	}}, {Heading: s}, {Heading: s}, {Heading: s}}}
}

func render(t *testing.T, p Page) string {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, p); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestChartScriptIsTheReleasedOne(t *testing.T) {
	script := asset("echarts.min.js")
	sum := sha256.Sum256([]byte(script))
	if got := hex.EncodeToString(sum[:]); got != echartsSHA256 {
		t.Errorf("SHA-256 %s, want %s", got, echartsSHA256)
	}
	if !strings.Contains(script, `.version="`+echartsVersion+`"`) {
		t.Errorf("the script is not version %s", echartsVersion)
	}
	for _, name := range []string{"LICENSE", "NOTICE", "LICENSE-d3"} {
		if asset(name) == "" {
			t.Errorf("%s is missing", name)
		}
	}
}

// TestScriptsMatchThePolicy takes the scripts out of the written page, as a
// browser does, and compares their hashes with those of the policy.
func TestScriptsMatchThePolicy(t *testing.T) {
	out := render(t, sample("plain"))
	_, rest, _ := strings.Cut(out, `http-equiv="Content-Security-Policy" content="`)
	got, _, ok := strings.Cut(rest, `"`)
	if !ok {
		t.Fatal("the page has no policy")
	}
	want := "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; script-src"
	for _, part := range strings.Split(out, "<script>")[1:] {
		script, _, _ := strings.Cut(part, "</script>")
		sum := sha256.Sum256([]byte(script))
		want += " 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	}
	if html.UnescapeString(got) != want {
		t.Errorf("policy\n%s\nwant\n%s", got, want)
	}
	if n := strings.Count(want, "sha256-"); n != 2 {
		t.Errorf("%d scripts run, want 2", n)
	}
}

func TestTextsStayTexts(t *testing.T) {
	tags := regexp.MustCompile(`<[a-zA-Z!/][^>]*>`)
	plain, hostile := tags.FindAllString(bare(render(t, sample("x"))), -1), tags.FindAllString(bare(render(t, sample(evil))), -1)
	if len(plain) != len(hostile) {
		t.Fatalf("%d tags with plain texts, %d with hostile ones", len(plain), len(hostile))
	}
	out := render(t, sample(evil))
	if !strings.Contains(out, html.EscapeString("<img")) || strings.Contains(bare(out), "<img") {
		t.Error("a text became an element")
	}
	_, block, _ := strings.Cut(out, `id="one-data">`)
	block, _, _ = strings.Cut(block, "</script>")
	var payload struct {
		Data struct{ Labels []string }
	}
	if err := json.Unmarshal([]byte(block), &payload); err != nil || payload.Data.Labels[0] != evil {
		t.Errorf("the data block holds %q (%v)", payload.Data.Labels, err)
	}
}

// bare is the page without its two scripts and its styles, which hold "<".
func bare(out string) string {
	out = regexp.MustCompile(`(?s)<script>.*?</script>`).ReplaceAllString(out, "")
	return regexp.MustCompile(`(?s)<style>.*?</style>`).ReplaceAllString(out, "")
}

func TestSamePageSameBytes(t *testing.T) {
	first := render(t, sample(evil))
	if second := render(t, sample(evil)); first != second {
		t.Error("two renderings differ")
	}
}

func TestSizeAndPageWithoutCharts(t *testing.T) {
	if n := len(render(t, sample("x"))); n > 1_300_000 {
		t.Errorf("an almost empty page has %d bytes", n)
	}
	p := Page{Title: "x", Sections: []Section{{Blocks: []Block{Text("x")}}}}
	out := render(t, p)
	if strings.Contains(out, "<script") || strings.Contains(out, "script-src") || len(out) > 20_000 {
		t.Errorf("a page without charts has %d bytes and scripts", len(out))
	}
}

func TestRefusals(t *testing.T) {
	chart := sample("x").Sections[0].Blocks[5].(Chart)
	change := func(f func(*Chart)) Block { c := chart; f(&c); return c }
	option := func(o map[string]any) Block { return change(func(c *Chart) { c.Options = o }) }
	for want, blocks := range map[string][]Block{
		"used twice":                           {chart, chart},
		"chart id":                             {change(func(c *Chart) { c.ID = `x" onload="` })},
		"needs a finding":                      {change(func(c *Chart) { c.Alt = "" })},
		"unknown kind":                         {change(func(c *Chart) { c.Kind = "pie" })},
		"height":                               {change(func(c *Chart) { c.Height = 0 })},
		"no columns":                           {change(func(c *Chart) { c.Table = cells.Table{} })},
		"no such color":                        {change(func(c *Chart) { c.Legend = []Key{{Color: Colors}} })},
		"title is refused":                     {option(map[string]any{"title": map[string]any{"link": "x"}})},
		"toolbox is refused":                   {option(map[string]any{"toolbox": map[string]any{}})},
		"[0].formatter is refused":             {option(map[string]any{"series": []any{map[string]any{"formatter": "{a}"}}})},
		"renderItem is refused":                {option(map[string]any{"series": []any{map[string]any{"renderItem": "x"}}})},
		"rich is refused":                      {option(map[string]any{"xAxis": map[string]any{"axisLabel": map[string]any{"rich": 1}}})},
		"is an image":                          {option(map[string]any{"series": []any{map[string]any{"symbol": "image://x"}}})},
		"json: unsupported value":              {change(func(c *Chart) { c.Data = map[string]any{"x": math.NaN()} })},
		"section 1, block 1: the block is nil": {nil},
	} {
		err := Write(&bytes.Buffer{}, Page{Title: "x", Sections: []Section{{Blocks: blocks}}})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
	if err := (Page{}).Check(); err == nil || !strings.Contains(err.Error(), "no title") || !strings.Contains(err.Error(), "no sections") {
		t.Errorf("empty page: %v", err)
	}
}
