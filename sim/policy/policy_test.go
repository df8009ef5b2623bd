package policy

import "testing"

// Each kind of strip policy at and beside the point where a mold is due.
func TestStripDue(t *testing.T) {
	for _, c := range []struct {
		name  string
		strip Strip
		look  Look
		want  Care
	}{
		{"never", Strip{}, Look{Turns: 500, Haze: 25}, NoStrip},
		{"every, not yet", Strip{Kind: StripEvery, Every: 5}, Look{Turns: 4}, NoStrip},
		{"every", Strip{Kind: StripEvery, Every: 5}, Look{Turns: 5}, Light},
		{"hot months", Strip{Kind: StripSeasonal, Hot: 3, Cool: 5}, Look{Turns: 3, Hot: true}, Light},
		{"cool months", Strip{Kind: StripSeasonal, Hot: 3, Cool: 5}, Look{Turns: 4}, NoStrip},
		{"build-up shows", Strip{Kind: StripByBuildUp, Haze: 0.6}, Look{Turns: 4, Haze: 0.61}, Light},
		{"build-up does not show", Strip{Kind: StripByBuildUp, Haze: 0.6}, Look{Turns: 40, Haze: 0.6}, NoStrip},
		{"one reading under the limit", Strip{Kind: StripByLuster, Limit: 97}, Look{Turns: 9, Low: 1, Reading: 96.2}, NoStrip},
		{"two in a row", Strip{Kind: StripByLuster, Limit: 97}, Look{Turns: 9, Low: 2, Reading: 96.9}, Light},
		{"one far under it", Strip{Kind: StripByLuster, Limit: 97}, Look{Turns: 9, Low: 1, Reading: 95.9}, Light},
		{"missed: one turn before", Strip{Kind: StripOpportunistic, Every: 5}, Look{Turns: 4}, NoStrip},
		{"not missed: one turn before", Strip{Kind: StripOpportunistic, Every: 5}, Look{Turns: 4, Slack: true}, Light},
		{"not missed: two turns before", Strip{Kind: StripOpportunistic, Every: 5}, Look{Turns: 3, Slack: true}, NoStrip},
		{"due whether missed or not", Strip{Kind: StripOpportunistic, Every: 5}, Look{Turns: 5}, Light},
		{"every sixth is a full one", Strip{Kind: StripEvery, Every: 5, FullEvery: 6}, Look{Turns: 5, Strips: 5}, Full},
		{"the fifth is not", Strip{Kind: StripEvery, Every: 5, FullEvery: 6}, Look{Turns: 5, Strips: 4}, Light},
		{"a worn surface asks for a full one", Strip{Kind: StripEvery, Every: 5, FullAt: 0.3}, Look{Turns: 5, Surface: 0.31}, Full},
	} {
		if got := c.strip.After(c.look); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// The hot season begins above one limit and ends below another; in between it
// stays what it was.
func TestSeasonHysteresis(t *testing.T) {
	s := Season{Kind: ByHeatPeak, On: 90, Off: 85}
	hot := false
	for i, c := range []struct {
		peak float64
		want bool
	}{{84, false}, {89, false}, {90, false}, {90.1, true}, {88, true}, {85, true}, {84.9, false}, {89, false}, {95, true}} {
		if hot = s.Hot(7, c.peak, hot); hot != c.want {
			t.Errorf("day %d at %v °F: hot is %v", i, c.peak, hot)
		}
	}
	months := Season{Kind: ByMonths}
	months.Months[6] = true
	if !months.Hot(7, 0, false) || months.Hot(8, 200, true) {
		t.Error("by months it is hot in the named ones alone")
	}
}

// Darks go to molds soon after a strip, whites to those late in their cycle;
// who has the choice of one color only takes the first order.
func TestReleaseByColor(t *testing.T) {
	r := Release{Kind: Oldest, ByColor: true, Look: 8}
	white, dark := Waiting{Color: 0}, Waiting{Color: 1, Dark: true}
	for _, c := range []struct {
		orders []Waiting
		late   bool
		want   int
	}{
		{[]Waiting{white, dark, dark}, false, 1},
		{[]Waiting{dark, white, dark}, true, 1},
		{[]Waiting{white, white}, false, 0},
		{[]Waiting{dark, dark}, true, 0},
		{nil, true, -1},
	} {
		if got := r.Pick(c.orders, false, 0, 0, c.late); got != c.want {
			t.Errorf("late %v: takes %d of %v, want %d", c.late, got, c.orders, c.want)
		}
	}
}
