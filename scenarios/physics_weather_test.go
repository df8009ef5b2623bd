package scenarios

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
)

// weatherFaults reads a plant whose weather is in a file of this text.
func weatherFaults(text string) Complaints {
	plant := strings.Replace(roomyPlant, "alternatives:\n", "climate:\n  weather: file\n  file: week.csv\nalternatives:\n", 1)
	_, complaints := Load("plant.yaml", []byte(plant), Options{Years: 1, Files: func(string) ([]byte, error) {
		if text == "" {
			return nil, fs.ErrNotExist
		}
		return []byte(text), nil
	}})
	return complaints
}

// What is wrong in a weather file is told at its place in that file.
func TestWeatherFaultsHavePlaces(t *testing.T) {
	compare(t, weatherFaults("time,dry bulb (C),RH (%)\n2027-01-01 00:00,cold,500\n2027-01-01 01:00,20\n"), []string{
		`week.csv:2:18: dry bulb "cold"|-70 … 70 C, or empty for missing|`,
		`week.csv:2:23: relative humidity "500"|0 … 110 %, or empty for missing|`,
		`week.csv:3:1: 2 fields|as many as the header has|`,
	})
	compare(t, weatherFaults("time,dry bulb,RH (%)\n"), []string{
		`week.csv:1:6: no unit in "dry bulb"|columns "time", "dry bulb (C)" and "RH (%)" or "dew point (C)"; units C, F, K, %, share|write it as "dry bulb (C)"`,
	})
	compare(t, weatherFaults("time,dry bulb (C),RH (%)\n"), []string{`week.csv: no hours of weather|rows of weather under a head: columns "time", "dry bulb (C)" and "RH (%)" or "dew point (C)"; units C, F, K, %, share; or an EPW file|`})
}

// Of many faults twenty are told, and how many more there are.
func TestWeatherFaultsAreCounted(t *testing.T) {
	found := weatherFaults("time,dry bulb (C),RH (%)\n" + strings.Repeat("soon,20,50\n", 30))
	if len(found) != 20 || !strings.HasSuffix(found[19].Message, "; and 10 more mistakes in this file") {
		t.Errorf("%d complaints:\n%s", len(found), found.Error())
	}
}

// A file that cannot be opened is told by its name, in the scenario.
func TestWeatherFileMissing(t *testing.T) {
	found := weatherFaults("")
	if len(found) != 1 || found[0].File != "plant.yaml" || found[0].Message != `weather file "week.csv": file does not exist` {
		t.Errorf("%+v", found)
	}
}

// Gaps that were filled are told, and a file without gaps is not spoken of.
func TestFilledGapsAreTold(t *testing.T) {
	whole := string(coldWeek(14))
	for _, c := range []struct {
		file string
		want []string
	}{
		{whole, nil},
		{strings.NewReplacer("2027-03-05 07:00,22,", "2027-03-05 07:00,,", "2027-03-05 08:00,22,", "2027-03-05 08:00,,").Replace(whole),
			[]string{`weather file "week.csv": 2 hours of dry bulb and 2 hours of dew point are missing and filled in straight lines, first dry bulb: 2 hours filled from 03-05 07:00`}},
	} {
		plant := strings.Replace(roomyPlant, "alternatives:\n", "climate:\n  weather: file\n  file: week.csv\nalternatives:\n", 1)
		s, complaints := Load("plant.yaml", []byte(plant), Options{Years: 1, Files: func(string) ([]byte, error) { return []byte(c.file), nil }})
		if len(complaints) > 0 {
			t.Fatal(complaints.Error())
		}
		var got []string
		for _, w := range s.Base.AirWarnings() {
			got = append(got, w.Text)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("found %q, want %q", got, c.want)
		}
	}
}
