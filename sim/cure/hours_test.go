package cure

import (
	"math"
	"testing"

	"moldturn/sim/clock"

	"pgregory.net/rapid"
)

// Relative rates at Ea 50 kJ/mol. Source: arithmetic of the Arrhenius law, as
// printed to two decimals in trade tables (°F 60 … 100); the growth over
// 20 → 30 °C for 40, 50, 60, 80 kJ/mol likewise.
func TestSpeedTable(t *testing.T) {
	f := []float64{60, 65, 70, 75, 77, 80, 85, 90, 95, 100}
	want := []float64{0.52, 0.63, 0.77, 0.93, 1.00, 1.12, 1.34, 1.61, 1.92, 2.29}
	for i := range f {
		if got := Speed((f[i]-32)/1.8, 50_000); math.Abs(got-want[i]) > 0.00501 {
			t.Errorf("%v °F: speed %.4f, want %.2f", f[i], got, want[i])
		}
	}
	for ea, want := range map[float64]float64{40e3: 1.72, 50e3: 1.97, 60e3: 2.25, 80e3: 2.95} {
		if got := Speed(30, ea) / Speed(20, ea); math.Abs(got-want) > 0.00501 {
			t.Errorf("Ea %v: 20 → 30 °C × %.4f, want %.2f", ea, got, want)
		}
	}
	if Speed(25, 50_000) != 1 || Speed(25, 123_456.789) != 1 {
		t.Error("speed at 25 °C is not exactly 1")
	}
}

func TestConstant25IsClockTime(t *testing.T) {
	h := NewHours([]float64{25, 25, 25, 25, 25, 25, 25, 25}, Default())
	rapid.Check(t, func(t *rapid.T) {
		from := clock.Time(rapid.Int64Range(-5e7, 4e7).Draw(t, "from"))
		wait := clock.Time(rapid.Int64Range(0, 4e8).Draw(t, "wait"))
		if got := h.Ready(from, wait.Hours()); got != from+wait {
			t.Fatalf("ready %v after %v, want %v", got, from, from+wait)
		}
		if got := h.Equivalent(from, from+wait); math.Abs(got-wait.Hours()) > 1e-12*(1+got) {
			t.Fatalf("equivalent %v, want %v", got, wait.Hours())
		}
	})
}

// A long way of doing the same: every hour on its own.
func TestEquivalentAgainstSlowSum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		temps := rapid.SliceOfN(rapid.Float64Range(-10, 50), 0, 60).Draw(t, "temps")
		h := NewHours(temps, Default())
		from := clock.Time(rapid.Int64Range(-10*int64(clock.Hour), 80*int64(clock.Hour)).Draw(t, "from"))
		to := from + clock.Time(rapid.Int64Range(0, 80*int64(clock.Hour)).Draw(t, "wait"))
		want := slowEquivalent(temps, from, to)
		got := h.Equivalent(from, to)
		if math.Abs(got-want) > 1e-9 {
			t.Fatalf("equivalent %v, slow sum %v", got, want)
		}
		if back := h.Equivalent(to, from); math.Abs(back+got) > 1e-9 {
			t.Fatalf("backwards %v, forwards %v", back, got)
		}
		// Half a millisecond of rounding at the speed of the hour it falls in.
		if r := h.Ready(from, got); math.Abs(h.Equivalent(from, r)-got) > 0.51/3.6e6*Speed(50, 50_000) {
			t.Fatalf("ready %v gives %v equivalent hours, want %v", r, h.Equivalent(from, r), got)
		}
	})
}

func slowEquivalent(temps []float64, from, to clock.Time) float64 {
	sum := 0.0
	for at := from; at < to; {
		i := int(math.Floor(at.Hours()))
		end := min(to, clock.Time(i+1)*clock.Hour)
		temp := ReferenceC
		if len(temps) > 0 {
			temp = temps[min(max(i, 0), len(temps)-1)]
		}
		sum += (end - at).Hours() * Speed(temp, Default().ActivationEnergy)
		at = end
	}
	return sum
}

// In a constant climate the wait is the equivalent hours over the speed.
func TestReadyAtOtherTemperatures(t *testing.T) {
	p := Default()
	for _, c := range []float64{5, 15, 21, 35} {
		h := NewHours([]float64{c}, p)
		want := clock.FromHours(10 / Speed(c, p.ActivationEnergy))
		if got := h.Ready(3*clock.Hour+1, 10) - (3*clock.Hour + 1); got != want {
			t.Errorf("%v °C: 10 equivalent hours take %v, want %v", c, got, want)
		}
	}
}

func TestReadyEdges(t *testing.T) {
	h := NewHours([]float64{20, 30}, Default())
	for _, e := range []float64{0, -1, math.NaN()} {
		if got := h.Ready(77, e); got != 77 {
			t.Errorf("ready after %v equivalent hours: %v, want the start", e, got)
		}
	}
	for _, e := range []float64{1e15, math.Inf(1)} {
		if got := h.Ready(77, e); got != clock.Never {
			t.Errorf("ready after %v equivalent hours: %v, want never", e, got)
		}
	}
}

func BenchmarkReady24(b *testing.B) {
	h := NewHours(waves(10*8760), Default())
	b.ReportAllocs()
	var sink clock.Time
	for i := 0; i < b.N; i++ {
		sink += h.Ready(clock.Time(i%80000)*clock.Hour+12345, 24)
	}
	_ = sink
}

func BenchmarkEquivalent24(b *testing.B) {
	h := NewHours(waves(10*8760), Default())
	sink := 0.0
	for i := 0; i < b.N; i++ {
		from := clock.Time(i%80000)*clock.Hour + 12345
		sink += h.Equivalent(from, from+clock.Day)
	}
	_ = sink
}

// waves is a made-up shop: a day wave on a year wave, °C.
func waves(n int) []float64 {
	t := make([]float64, n)
	for i := range t {
		t[i] = 22 + 5*math.Sin(float64(i)*2*math.Pi/24) + 6*math.Sin(float64(i)*2*math.Pi/8760)
	}
	return t
}
