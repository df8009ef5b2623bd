package scenarios

import (
	"testing"
	"unicode"

	"moldturn/sim/param/unit"
)

// FuzzRead: whatever is in a file, reading and binding it does not panic,
// complaints lie inside the file and print without control characters, and what
// binds can be written out and read again with the same meaning.
func FuzzRead(f *testing.F) {
	tree := sampleTree(f)
	for _, seed := range []string{sampleFile, twelveMistakes, "a: &x [*x]\n", "? {}\n: 1\n", "a: |\n  b\r\u2028c\n",
		"version: 1\nalternatives: {a: {\"hold[1]\": ~, ? x : {}}}", "\ufeff--- # c\n...\n", "version: 1\ncolors: [~, {}, []]\n"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		doc, complaints := Read("f.yaml", data)
		var root *Value
		if doc != nil {
			var more Complaints
			root, more = tree.Bind(doc)
			complaints = append(complaints, more...)
		}
		src := newSource("f.yaml", string(data))
		for _, c := range complaints {
			inside(t, src, c)
		}
		if len(complaints) == 0 {
			readAgain(t, tree, root)
		}
	})
}

// inside checks the place and the text of a complaint.
func inside(t *testing.T, src *source, c Complaint) {
	if c.Line < 1 || c.Line > len(src.lines) || c.Column < 1 || c.Column > len([]rune(src.lines[c.Line-1]))+1 {
		t.Errorf("outside the file: %s", c)
	}
	for _, r := range c.String() {
		if r != '\n' && !unicode.IsPrint(r) {
			t.Errorf("%q prints %q", c.String(), r)
		}
	}
}

// readAgain writes a scenario out and reads it.
func readAgain(t *testing.T, tree *Tree, root *Value) {
	text, err := root.YAML(unit.US)
	if err != nil {
		t.Fatal(err)
	}
	doc, complaints := Read("again.yaml", []byte(text))
	if complaints != nil {
		t.Fatalf("%v in\n%s", complaints, text)
	}
	again, complaints := tree.Bind(doc)
	if complaints != nil {
		t.Fatalf("%v in\n%s", complaints, text)
	}
	if again.Hash() != root.Hash() {
		t.Errorf("says something else:\n%s", text)
	}
}

// FuzzChange: no path or value given on a command line makes a panic.
func FuzzChange(f *testing.F) {
	tree, doc, _ := sample(f, sampleFile)
	for _, seed := range []string{"hold.clock=16 h", `models."Rush 23".parts.hull.steps[1].work=8 - 10 - 16 h`, "colors=[a, b]",
		`heat={set_point: 70 F}`, "x=", "=", `a."b`, "colors[0]=x", "hold=[]", "version=~"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		ch, complaints := ParseChange("--set", text)
		if complaints != nil {
			return
		}
		changed, complaints := tree.Apply(doc, ch)
		if complaints != nil {
			return
		}
		tree.Bind(changed)
	})
}
