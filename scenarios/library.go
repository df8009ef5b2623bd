package scenarios

import (
	"embed"
	"slices"
	"strings"
)

//go:embed library/*.yaml
var library embed.FS

// Bundled lists the names of the scenarios that come with the program.
func Bundled() []string {
	entries, err := library.ReadDir("library")
	if err != nil {
		return nil
	}
	var names []string
	for _, e := range entries {
		names = append(names, strings.TrimSuffix(e.Name(), ".yaml"))
	}
	slices.Sort(names)
	return names
}

// BundledFile is the text of a bundled scenario; ok is false for other names.
func BundledFile(name string) (data []byte, ok bool) {
	data, err := library.ReadFile("library/" + name + ".yaml")
	return data, err == nil
}
