package main

import (
	"fmt"
	"slices"
	"strings"

	"moldturn/scenarios"
	paper "moldturn/sim/hand"
)

// heed is a group of inputs that a plant looks at only under some choices.
type heed struct {
	path   string   // an input, or a group
	choice string   // the input that decides
	under  []string // choices under which path counts
}

func heeds() []heed {
	return []heed{
		{"strip.every", "strip.policy", []string{"every", "opportunistic", "by build-up", "by luster"}},
		{"strip.hot", "strip.policy", []string{"seasonal"}},
		{"strip.cool", "strip.policy", []string{"seasonal"}},
		{"strip.haze", "strip.policy", []string{"by build-up"}},
		{"strip.luster", "strip.policy", []string{"by luster"}},
		{"climate.file", "climate.weather", []string{"file"}},
		{"climate.normals", "climate.weather", []string{"normals"}},
		{"climate.months", "climate.weather", []string{"months"}},
		{"climate.areas", "climate.weather", []string{"normals", "file"}},
		{"season.hot_months", "season.by", []string{"months"}},
		{"season.on", "season.by", []string{"heat index"}},
		{"season.off", "season.by", []string{"heat index"}},
	}
}

// unheeded are inputs that are given and that no way to run the plant looks at,
// settings that the plant itself does not look at, and changes of an alternative
// that it does not look at. Groups that a file keeps for another choice are left
// alone.
func unheeded(s *scenarios.Scenario, _ *paper.Table) []warning {
	var all []warning
	for _, h := range heeds() {
		v := s.Base.Value.At(h.path)
		if v.Len() == 0 && v.Given() && !v.IsDefault() && !h.heededBy(s.Base) && (strings.HasPrefix(v.Place(), "--set") || !h.heededByAny(s)) {
			all = append(all, warning{v.Place(), h.text(h.path, s.Base)})
		}
	}
	for _, a := range s.Alternatives[1:] {
		v, _ := s.Base.Value.At("alternatives").Item(a.Name)
		for _, ch := range v.Changes() {
			for _, h := range heeds() {
				if within(ch.Path, h.path) && !h.heededBy(a.Plant) {
					all = append(all, warning{v.Place(), fmt.Sprintf("alternative %q: %s", a.Name, h.text(ch.Path, a.Plant))})
				}
			}
		}
	}
	return all
}

func (h heed) heededByAny(s *scenarios.Scenario) bool {
	return slices.ContainsFunc(s.Alternatives, func(a scenarios.Alternative) bool { return h.heededBy(a.Plant) })
}

func (h heed) heededBy(p *scenarios.Plant) bool {
	return slices.Contains(h.under, p.Value.At(h.choice).Text())
}

func (h heed) text(path string, p *scenarios.Plant) string {
	return fmt.Sprintf("%s is given, and %s is %s: it is not used", path, h.choice, p.Value.At(h.choice).Text())
}

// within tells whether a path is an input or lies in its group.
func within(path, of string) bool {
	rest, below := strings.CutPrefix(strings.TrimSpace(path), of)
	return below && (rest == "" || rest[0] == '.' || rest[0] == '[')
}
