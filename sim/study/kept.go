package study

import (
	"encoding/binary"
	"encoding/json"
	"fmt"
	"math"

	"moldturn/sim/clock"
	"moldturn/sim/money"
	"moldturn/sim/record"
)

// kept is an outcome as a book keeps it: nothing is lost but the frame, which
// the plan gives.
type kept struct {
	Capacity       *keptResult   `json:"capacity,omitempty"`
	Dated          *keptResult   `json:"dated,omitempty"`
	CapacityLedger *money.Ledger `json:"capacity_ledger,omitempty"`
	DatedLedger    *money.Ledger `json:"dated_ledger,omitempty"`
}

// NewEntry is the results of some replications of an alternative with all that
// happened in them, from replication first on.
func NewEntry(key string, r *Runs, first int) *Entry {
	e := &Entry{Key: key, Names: []string{r.Name}, Changes: r.Changes, First: first}
	for _, o := range r.Outcomes[first:] {
		e.Outcomes = append(e.Outcomes, kept{(*keptResult)(o.Capacity), (*keptResult)(o.Dated), o.CapacityLedger, o.DatedLedger})
	}
	return e
}

// outcome gives what was kept; it fails if that does not fit the frame.
func (k *kept) outcome(frame record.Frame) (Outcome, error) {
	for _, r := range []*keptResult{k.Capacity, k.Dated} {
		if r != nil && !r.fits(&frame) {
			return Outcome{}, fmt.Errorf("results that do not fit the plant")
		}
	}
	return Outcome{k.Capacity.result(frame), k.Dated.result(frame), k.CapacityLedger, k.DatedLedger}, nil
}

// fits tells whether lists are as long as the frame says.
func (k *keptResult) fits(f *record.Frame) bool {
	fresh := record.NewTally(*f).Result()
	ok := len(k.Models) == f.Models && len(k.Parts) == f.Parts && len(k.Load) == f.Pools && len(k.MoldHours) == f.Parts &&
		len(k.WeekShips) == len(fresh.WeekShips) && len(k.WeekOpen) == len(k.WeekShips) && len(k.WeekYear) == len(k.WeekShips) &&
		len(k.RunShips) == len(fresh.RunShips) &&
		(len(k.ByWeek) == 0 || len(k.ByWeek) == f.Pools) && (len(k.MoldWaits) == 0 || len(k.MoldWaits) == len(fresh.MoldWaits))
	for m := range k.Waits {
		ok = ok && len(k.Waits[m]) == len(fresh.Waits[m])
	}
	for _, y := range k.WeekYear {
		ok = ok && y >= 0 && y < weeksOfYear
	}
	return ok
}

// keptResult is a Result whose long lists are written more shortly.
type keptResult record.Result

func (k *keptResult) result(frame record.Frame) *record.Result {
	if k == nil {
		return nil
	}
	r := *(*record.Result)(k)
	r.Frame = frame
	return &r
}

// short is the JSON of a keptResult. Lusters are float64 in 8 bytes each, most
// significant first (IEEE 754, as package encoding/json writes bytes: base64);
// mold hours are part type, month, state and milliseconds of those not zero; for
// the weeks of pools see weeksOf.
type short struct {
	Result    record.Result `json:"result"`
	Lusters   []byte        `json:"lusters"`
	Parts     int           `json:"part_types"`
	MoldHours [][4]int64    `json:"mold_hours"`
	Weeks     []byte        `json:"weeks,omitempty"`
}

// MarshalJSON writes r without its frame.
func (k *keptResult) MarshalJSON() ([]byte, error) {
	s := short{Result: record.Result(*k), Parts: len(k.MoldHours)}
	s.Result.Frame, s.Result.Lusters, s.Result.MoldHours, s.Result.ByWeek = record.Frame{}, nil, nil, nil
	s.Weeks = weeksOf(k.ByWeek)
	for _, x := range k.Lusters {
		s.Lusters = binary.BigEndian.AppendUint64(s.Lusters, math.Float64bits(x))
	}
	for p := range k.MoldHours {
		for m := range k.MoldHours[p] {
			for state, h := range k.MoldHours[p][m] {
				if h != 0 {
					s.MoldHours = append(s.MoldHours, [4]int64{int64(p), int64(m), int64(state), int64(h)})
				}
			}
		}
	}
	return json.Marshal(s)
}

// UnmarshalJSON reads what MarshalJSON wrote.
func (k *keptResult) UnmarshalJSON(b []byte) error {
	var s short
	if err := json.Unmarshal(b, &s); err != nil {
		return err
	}
	*k = keptResult(s.Result)
	for i := 0; i+8 <= len(s.Lusters); i += 8 {
		k.Lusters = append(k.Lusters, math.Float64frombits(binary.BigEndian.Uint64(s.Lusters[i:])))
	}
	var err error
	if k.ByWeek, err = readWeeks(s.Weeks); err != nil {
		return err
	}
	if s.Parts < 0 || s.Parts > math.MaxInt16 {
		return fmt.Errorf("%d part types", s.Parts)
	}
	k.MoldHours = make([][12][record.States]clock.Time, s.Parts)
	for _, h := range s.MoldHours {
		if h[0] < 0 || h[0] >= int64(s.Parts) || h[1] < 0 || h[1] > 11 || h[2] < 0 || h[2] >= int64(record.States) {
			return fmt.Errorf("mold hours of part type %d, month %d, state %d", h[0], h[1], h[2])
		}
		k.MoldHours[h[0]][h[1]][h[2]] = clock.Time(h[3])
	}
	return nil
}
