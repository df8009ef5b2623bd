package csv_test

import (
	"bytes"
	stdcsv "encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"moldturn/reports/csv"
)

func TestRows(t *testing.T) {
	var b bytes.Buffer
	w, err := csv.New(&b, "model", "boats a week", "molds", "=sum")
	if err != nil {
		t.Fatal(err)
	}
	rows := [][]csv.Cell{
		{csv.Text("Sedge 20"), csv.Number(-1.5), csv.Int(-3), csv.Empty()},
		{csv.Text("=cmd|' /C calc'!A0"), csv.Number(1e21), csv.Int(0), csv.Text("+1")},
		{csv.Text("@x"), csv.Number(0.1), csv.Int(7), csv.Text("-x, \"y\"")},
		{csv.Text("\tx"), csv.Number(math.Copysign(0, -1)), csv.Int(7), csv.Text("\rx")},
	}
	for _, r := range rows {
		if err := w.Row(r...); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Flush(); err != nil {
		t.Fatal(err)
	}
	want := "model,boats a week,molds,'=sum\r\n" +
		"Sedge 20,-1.5,-3,\r\n" +
		"'=cmd|' /C calc'!A0,1000000000000000000000,0,'+1\r\n" +
		"'@x,0.1,7,\"'-x, \"\"y\"\"\"\r\n" +
		"'\tx,0,7,\"'x\"\r\n"
	if got := b.String(); got != want {
		t.Errorf("got\n%q\nwant\n%q", got, want)
	}
}

func TestRefusals(t *testing.T) {
	w, _ := csv.New(&bytes.Buffer{}, "a", "b")
	if err := w.Row(csv.Int(1)); err == nil || !strings.Contains(err.Error(), "1 cells") {
		t.Errorf("short row: %v", err)
	}
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if err := w.Row(csv.Int(1), csv.Number(v)); err == nil || !strings.Contains(err.Error(), "column 2") {
			t.Errorf("%v: %v", v, err)
		}
	}
}

// Whatever the text, the standard reader gives it back, at most one ' longer,
// and no cell starts like a formula. Numbers come back exactly.
func TestRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text")
		number := rapid.Float64Range(-1e300, 1e300).Draw(t, "number")
		var b bytes.Buffer
		w, _ := csv.New(&b, "text", "number")
		if err := w.Row(csv.Text(text), csv.Number(number)); err != nil {
			t.Fatal(err)
		}
		if err := w.Flush(); err != nil {
			t.Fatal(err)
		}
		got, err := stdcsv.NewReader(&b).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		cell := got[1][0]
		if cell != "" && strings.ContainsRune("=+-@\t\r\n", rune(cell[0])) {
			t.Fatalf("cell starts like a formula: %q", cell)
		}
		// A writer with CRLF line ends drops other carriage returns
		// (encoding/csv, Writer).
		if plain := strings.ReplaceAll(text, "\r", ""); cell != plain && cell != "'"+plain {
			t.Fatalf("text %q came back as %q", text, cell)
		}
		if v, err := strconv.ParseFloat(got[1][1], 64); err != nil || v != number {
			t.Fatalf("number %v came back as %q", number, got[1][1])
		}
	})
}
