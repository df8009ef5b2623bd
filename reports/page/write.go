package page

import (
	"encoding/json"
	"fmt"
	"html/template"
	"io"
	"strconv"

	"moldturn/reports/cells"
)

// Write writes p as one HTML file. It fails when p.Check does, when a number in
// a chart is not finite, or when w does.
func Write(w io.Writer, p Page) error {
	if err := p.Check(); err != nil {
		return err
	}
	v, err := viewOf(p)
	if err != nil {
		return err
	}
	t, err := template.New("page").Parse(asset("page.html"))
	if err != nil {
		return err
	}
	return t.Execute(w, v)
}

// view is what the template reads. The typed strings hold only text of this
// package; everything of the caller stays a plain string or JSON.
type view struct {
	Title, Lead, Lang string
	Policy            template.HTMLAttr
	Style             template.CSS
	Scripts           []template.JS
	Sections          []sectionView
	Sheet             bool // the head of the page is printed with the first section
	Wall              bool // neither head nor foot is printed
	Foot              []string
}

type sectionView struct {
	ID, Heading string
	Sheet       bool
	Wall        int
	Blocks      []blockView
}

// blockView has exactly one field set.
type blockView struct {
	Text, Remark string
	Small        string
	Beside       []*tableView
	List         []string
	Facts        []Fact
	Table        *tableView
	Chart        *chartView
	Diary        *diaryView
	Choice       *choiceView
	Panels       Panels
	Fold         *foldView
}

type foldView struct {
	Line   string
	Blocks []blockView
}

type tableView struct {
	Title string
	Heads []cellView
	Rows  []rowView
	Notes []string
}

type rowView struct {
	Strong bool
	Cells  []cellView
}

type cellView struct {
	Text  string
	Marks string // "1 3", the numbers of the footnotes
	Right bool
}

type chartView struct {
	Chart
	Numbers *tableView
	Payload json.RawMessage
}

func viewOf(p Page) (view, error) {
	v := view{Title: p.Title, Lead: p.Lead, Lang: p.Lang, Foot: p.Foot, Style: template.CSS(asset("page.css"))}
	if v.Lang == "" {
		v.Lang = "en"
	}
	for i, s := range p.Sections {
		blocks, err := blocksOf(s.Blocks)
		if err != nil {
			return view{}, err
		}
		v.Sections = append(v.Sections, sectionView{"section-" + strconv.Itoa(i+1), s.Heading, s.Sheet, s.Wall, blocks})
	}
	v.Sheet, v.Wall = p.Sections[0].Sheet, p.Sections[0].Wall > 0
	var scripts []string
	if p.drawn() {
		scripts = []string{asset("echarts.min.js"), boot()}
	}
	for _, s := range scripts {
		v.Scripts = append(v.Scripts, template.JS(s))
	}
	v.Policy = template.HTMLAttr(`content="` + policy(scripts) + `"`)
	return v, nil
}

func blocksOf(list []Block) ([]blockView, error) {
	var out []blockView
	for _, b := range list {
		v, err := blockOf(b)
		if err != nil {
			return nil, err
		}
		out = append(out, v)
	}
	return out, nil
}

func blockOf(b Block) (blockView, error) {
	switch b := b.(type) {
	case Text:
		return blockView{Text: string(b)}, nil
	case Small:
		return blockView{Small: string(b)}, nil
	case Beside:
		var v blockView
		for _, t := range b {
			v.Beside = append(v.Beside, tableOf(t.Table))
		}
		return v, nil
	case Remark:
		return blockView{Remark: string(b)}, nil
	case List:
		return blockView{List: b}, nil
	case Facts:
		return blockView{Facts: b}, nil
	case Table:
		return blockView{Table: tableOf(b.Table)}, nil
	case Chart:
		payload, err := json.Marshal(map[string]any{"kind": b.Kind, "option": b.Options, "data": b.Data})
		if err != nil {
			return blockView{}, fmt.Errorf("chart %s: %w", b.ID, err)
		}
		return blockView{Chart: &chartView{Chart: b, Numbers: tableOf(b.Table), Payload: payload}}, nil
	case Diary:
		v, err := diaryOf(b)
		return blockView{Diary: v}, err
	case Choice:
		return blockView{Choice: choiceOf(b)}, nil
	case Panels:
		return blockView{Panels: b}, nil
	case Fold:
		blocks, err := blocksOf(b.Blocks)
		return blockView{Fold: &foldView{b.Line, blocks}}, err
	}
	return blockView{}, fmt.Errorf("unknown block %T", b)
}

func tableOf(t cells.Table) *tableView {
	v := &tableView{Title: t.Title, Notes: t.Notes}
	for _, c := range t.Columns {
		v.Heads = append(v.Heads, cellView{Text: c.Head, Right: c.Align == cells.Right})
	}
	for _, r := range t.Rows {
		row := rowView{Strong: r.Strong}
		for j, c := range r.Cells {
			cv := cellView{Text: c.Text, Right: t.Columns[j].Align == cells.Right}
			for k, n := range c.Notes {
				if k > 0 {
					cv.Marks += " "
				}
				cv.Marks += strconv.Itoa(n + 1)
			}
			row.Cells = append(row.Cells, cv)
		}
		v.Rows = append(v.Rows, row)
	}
	return v
}
