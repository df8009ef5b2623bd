package hand

import "testing"

// Every kind of limit reads well after "limited by".
func TestLimitsInWords(t *testing.T) {
	for want, l := range map[string]Limit{
		"molds":                {Kind: ByMolds, Name: "molds"},
		"the people of gel":    {Kind: ByCraft, Name: "gel"},
		"the place lay-up bay": {Kind: ByPlace, Name: "lay-up bay"},
	} {
		if got := l.Words(); got != want {
			t.Errorf("%+v reads %q, want %q", l, got, want)
		}
	}
}
