package scenarios

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"
)

// joinPath adds a name to a path. Names that are not of letters, digits, "_" and
// "-" are quoted: `models."Rush 23"`.
func joinPath(path, name string) string {
	plain := name != "" && strings.IndexFunc(name, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '_' && r != '-'
	}) < 0
	if !plain {
		name = strconv.Quote(name)
	}
	if path == "" {
		return name
	}
	return path + "." + name
}

// indexName is what stands for item i of a list in a path, counted from 1.
func indexName(i int) string { return "[" + strconv.Itoa(i+1) + "]" }

// splitPath takes a path apart that joinPath made.
func splitPath(path string) []string {
	words, _ := parsePath(path)
	return words
}

// parsePath takes a path apart as a user writes it: words with dots between,
// names in double quotes where they contain dots, list items as [1], [2], ….
// Spaces inside a word are kept, so that "models.Rush 23.area" does as well.
func parsePath(path string) ([]string, error) {
	var words []string
	rest := path
	for {
		word, tail, err := cutWord(rest)
		if err != nil {
			return nil, err
		}
		words = append(words, word)
		for strings.HasPrefix(tail, "[") {
			end := strings.IndexByte(tail, ']')
			if end < 0 {
				return nil, fmt.Errorf("the path %q has a [ without ]", path)
			}
			words, tail = append(words, tail[:end+1]), tail[end+1:]
		}
		if tail == "" {
			return words, nil
		}
		if tail[0] != '.' {
			return nil, fmt.Errorf("the path %q has no dot before %q", path, tail)
		}
		rest = tail[1:]
	}
}

// cutWord takes one word from the start of a path.
func cutWord(s string) (word, tail string, err error) {
	if strings.HasPrefix(s, `"`) {
		quoted, err := strconv.QuotedPrefix(s)
		if err != nil {
			return "", "", fmt.Errorf("the path has a quote without its end: %s", s)
		}
		word, err = strconv.Unquote(quoted)
		return word, s[len(quoted):], err
	}
	end := strings.IndexAny(s, ".[")
	if end < 0 {
		end = len(s)
	}
	word = strings.TrimSpace(s[:end])
	if word == "" {
		return "", "", fmt.Errorf("the path has an empty word before %q", s)
	}
	return word, s[end:], nil
}
