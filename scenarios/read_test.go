package scenarios

import (
	"strings"
	"testing"
)

func TestReadComplaints(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"empty":          {"# nothing\n", []string{"f.yaml:1:1: the file is empty||"}},
		"open bracket":   {"a: [1\nb: 2\n", []string{"f.yaml:2:2: not readable as YAML: did not find expected ',' or ']'||while parsing a flow sequence that begins in line 1"}},
		"tab":            {"a:\n\tb: 1\n", []string{"f.yaml:2:1: not readable as YAML: found character that cannot start any token||indent with spaces, not with tabs"}},
		"second":         {"a: 1\n---\nb: 2\n", []string{"f.yaml:2:1: a second document begins here||a scenario is one document; remove the line with three dashes"}},
		"not UTF-8":      {"a: b\nc: é\xff\n", []string{"f.yaml:2:5: the text is not UTF-8||save the file as plain text in UTF-8"}},
		"control":        {"a: b\x1b[31m\n", []string{"f.yaml:1:5: control character '\\x1b' in the file||scenario files are plain text"}},
		"hidden name":    {"\"a\\x1b\": 1\n", []string{"f.yaml:1:1: the name \"a\\x1b\" has control characters||"}},
		"anchor, alias":  {"a: &x 1\nb: *x\n", []string{"f.yaml:1:4: anchor &x: anchors are not read||remove it; write repeated values out", "f.yaml:2:4: alias *x: aliases are not read||write the value out, or change it in an alternative"}},
		"unknown anchor": {"a: *x\n", []string{"f.yaml:1:4: not readable as YAML: unknown anchor 'x' referenced||"}},
		"merge":          {"a: 1\n<<: {b: 2}\n", []string{"f.yaml:2:1: merge key <<: merging is not read||write the values out"}},
		"tag":            {"a: !crew 3\nb: !!str 4\n", []string{"f.yaml:1:4: tag !crew: tags are not read||remove it; kinds of values are known from their names", "f.yaml:2:4: tag !!str: tags are not read||remove it; kinds of values are known from their names"}},
		"twice":          {"a: 1\nä:\n  b: 1\n  b: 2\n", []string{"f.yaml:4:3: \"b\" is given twice||the first is in line 3"}},
		"no name":        {"~: 1\n? [a]\n: 2\n", []string{"f.yaml:1:1: a name is missing before the colon||", "f.yaml:2:3: a list or map cannot be a name||"}},
		"wide letters":   {"a: {ü名: 1, b: *c}\n", []string{"f.yaml:1:15: not readable as YAML: unknown anchor 'c' referenced||"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, complaints := Read("f.yaml", []byte(c.text))
			compare(t, complaints, c.want)
		})
	}
	if _, c := Read("f.yaml", make([]byte, maxSize+1)); len(c) != 1 || c[0].Allowed != "at most 4 MB" {
		t.Errorf("large file: %v", c)
	}
	if _, c := Read("f.yaml", []byte("\ufeffa: 1\r\nb: 2\r\n")); c != nil {
		t.Errorf("byte order mark and carriage returns: %v", c)
	}
}

func TestComplaintText(t *testing.T) {
	c := newSource("plant\x1b.yaml", "x: 1\n\tné名: gel\x07").at(2, 6).complaint("unknown craft \"ge\u202el\"")
	c.Allowed, c.Hint = "gel, lamination", `did you mean "gel"?`
	want := `plant\x1b.yaml:2:6: unknown craft "ge\u202el"
     né名: gel\x07
          ^
  allowed: gel, lamination
  hint: did you mean "gel"?
`
	if c.String() != want {
		t.Errorf("got\n%swant\n%s", c.String(), want)
	}
	long := newSource("f", strings.Repeat("a", 300)+"X"+strings.Repeat("b", 300)).at(1, 301).complaint("here")
	lines := strings.Split(long.String(), "\n")
	if caret := strings.IndexByte(lines[2], '^'); []rune(lines[1])[caret] != 'X' || len([]rune(lines[1])) > 120 {
		t.Errorf("the caret misses X in\n%s", long)
	}
}

// An unknown version ends the reading, since other names may have other
// meanings; a missing one is one complaint among the others.
func TestVersions(t *testing.T) {
	tree := sampleTree(t)
	for text, want := range map[string][]string{
		"version: 7\nhold: nonsense\n": {`f.yaml:1:10: unknown version "7" of the scenario format|1|the file may be made for a newer release of this program`},
		"# first\nname: x\ncrafts: {gel: {people: 1}}\nstart: 2027-01-04\n": {
			"f.yaml:2:1: models is missing||it has no default: invented for a test",
			"f.yaml:2:1: version is missing|1|it has no default: version of the scenario format; it fixes the names and the defaults",
		},
	} {
		doc, _ := Read("f.yaml", []byte(text))
		_, complaints := tree.Bind(doc)
		compare(t, complaints, want)
	}
}
