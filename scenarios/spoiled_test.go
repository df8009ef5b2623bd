package scenarios

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
)

// A file spoiled anywhere gives complaints or a plant, and never a crash: letters
// of a word swapped, a value replaced, a line left out or said twice.
func TestSpoiledFilesNeverCrash(t *testing.T) {
	for _, name := range []string{"small-shop", "fenwater"} {
		data, _ := BundledFile(name)
		good := strings.Split(string(data), "\n")
		rng := rand.New(rand.NewPCG(7, uint64(len(name))))
		for n := range 150 {
			lines := append([]string{}, good...)
			for range 1 + rng.IntN(3) {
				spoil(lines, rng)
			}
			text := strings.Join(lines, "\n")
			func() {
				defer func() {
					if p := recover(); p != nil {
						t.Errorf("%s, spoiled file %d: %v\n%s", name, n, p, changedLines(good, lines))
					}
				}()
				if s, complaints := Load(name+".yaml", []byte(text), Options{Years: 1}); s == nil && len(complaints) == 0 {
					t.Errorf("%s, spoiled file %d: neither a plant nor a complaint\n%s", name, n, changedLines(good, lines))
				}
			}()
		}
	}
}

func spoil(lines []string, rng *rand.Rand) {
	i := rng.IntN(len(lines))
	for strings.TrimSpace(lines[i]) == "" || strings.HasPrefix(strings.TrimSpace(lines[i]), "#") {
		i = rng.IntN(len(lines))
	}
	values := []string{"-3", "0", "1e9", "x", "24 h", "[]", "{}", "99 %", "'='", "none", "2 x 3 h", "dark", "Mon-Fri"}
	switch line := lines[i]; rng.IntN(5) {
	case 0:
		lines[i] = ""
	case 1:
		lines[i] = line + "\n" + line
	case 2:
		k := len(line) - len(strings.TrimLeft(line, " ")) + rng.IntN(len(strings.TrimSpace(line)))
		lines[i] = line[:k] + line[k+1:]
	default:
		words := strings.Fields(line)
		word := words[rng.IntN(len(words))]
		lines[i] = strings.Replace(line, word, values[rng.IntN(len(values))], 1)
	}
}

func changedLines(a, b []string) string {
	var out strings.Builder
	for i := range a {
		if a[i] != b[i] {
			fmt.Fprintf(&out, "line %d: %q\n", i+1, b[i])
		}
	}
	return out.String()
}
