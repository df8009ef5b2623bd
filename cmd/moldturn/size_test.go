package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/study"
)

// On a small plant where every size can be tried, the search finds one that
// meets the target on fresh luck, at the least cost or at most 2 % above it,
// with under a fifth of the runs.
func TestSizeAgainstEverySizeOfAPlant(t *testing.T) {
	if testing.Short() {
		t.Skip("runs 216 sizes of a plant; left out with -short")
	}
	text, err := os.ReadFile("testdata/size.txtar")
	if err != nil {
		t.Fatal(err)
	}
	_, plant, _ := strings.Cut(string(text), "-- plant.yaml --\n")
	file := filepath.Join(t.TempDir(), "plant.yaml")
	if err := os.WriteFile(file, []byte(plant), 0o644); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	code := run(context.Background(), strings.NewReader(""), &out, &errs, []string{"size", file, "--target", "4.5/week", "--weeks", "0%", "--may", "crew.finish,crew.gel,molds", "--json", "--quiet"}, nil)
	if code != 0 {
		t.Fatal(errs.String())
	}
	var got view.Sized
	if err := json.Unmarshal(out.Bytes(), &got); err != nil {
		t.Fatal(err)
	}
	if !got.Found.Met {
		t.Fatalf("the target was not met on fresh luck: %+v", got.Found.Confirmed)
	}
	cheapest := everySize(t, plant, got.Prices, 4.5)
	t.Logf("found %v for $%.0f a year in %d sizes, %d runs; the cheapest of all costs $%.0f", got.Found.Size, got.Found.Price, got.Found.Tried, got.Runs, cheapest)
	if got.Found.Price > 1.02*cheapest {
		t.Errorf("%.1f %% dearer than the cheapest", 100*(got.Found.Price/cheapest-1))
	}
	if all := 216 * got.Replications; got.Runs > all/5 {
		t.Errorf("%d runs, fresh luck and staircase included; every size takes %d", got.Runs, all)
	}
}

// everySize is the price of the cheapest of all sizes from 1 to 6 of each of
// three levers that meets a target, on luck of its own.
func everySize(t *testing.T, plant string, prices []float64, target float64) float64 {
	t.Helper()
	s, complaints := scenarios.Load("plant.yaml", []byte(plant), scenarios.Options{Years: 1})
	if len(complaints) > 0 {
		t.Fatal(complaints.Error())
	}
	z := &sizer{s: s}
	for _, l := range s.Levers() {
		if l.Key == "crew.finish" || l.Key == "crew.gel" || l.Kind == scenarios.Molds {
			z.levers = append(z.levers, l)
		}
	}
	setup := &study.Setup{First: 700_000, Replications: 4, Seed: 1, Workers: 2}
	var sizes [][]int
	for a := 1; a <= 6; a++ {
		for b := 1; b <= 6; b++ {
			for c := 1; c <= 6; c++ {
				if alternative, ok := z.alternative([]int{a, b, c}); ok {
					setup.Alternatives = append(setup.Alternatives, alternative)
					sizes = append(sizes, []int{a, b, c})
				}
			}
		}
	}
	runs, err := study.Compare(context.Background(), setup)
	if err != nil {
		t.Fatal(err)
	}
	g := study.Target{Boats: target}
	best, which := math.Inf(1), ""
	for i, size := range sizes {
		price := 0.0
		for k, n := range size {
			price += float64(n) * prices[k]
		}
		if trial := g.TrialOf(&runs[i]); trial.Meets() && price < best {
			best, which = price, fmt.Sprint(size)
		}
	}
	t.Logf("the cheapest of all sizes is %s", which)
	return best
}
