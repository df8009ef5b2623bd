package main

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"strings"
	"sync/atomic"

	"github.com/spf13/pflag"

	resultfiles "moldturn/reports/files"

	"moldturn/reports/view"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

// pausing are the flags of a run that is stopped on a day, saved, and gone on
// with later.
type pausing struct{ save, resume, until string }

func (p *pausing) add(f *pflag.FlagSet) {
	f.StringVar(&p.save, "save", "", "save the state of the runs in this `FILE`, to go on with --resume; packed if it ends in .gz")
	f.StringVar(&p.until, "until", "", "with --save: stop at the beginning of this `DAY`, such as 2028-03-06")
	f.StringVar(&p.resume, "resume", "", "go on from the state in this `FILE`; the same scenario, seed and program give what an unbroken run gives")
}

func (p *pausing) given() bool { return p.save != "" || p.resume != "" || p.until != "" }

// judge complains of flags that do not go together.
func (p *pausing) judge(facts *factsFlag) error {
	switch {
	case p.until != "" && p.save == "":
		return misuse("add --save FILE", "--until stops the runs and needs a file to save them in")
	case facts.replication.Given:
		return misuse("leave --facts out", "--facts needs whole runs, without --save and --resume")
	}
	return nil
}

// runPaused simulates until a day, or to the end, from the beginning or from a
// file. The study is nil for runs that were stopped before their end.
func runPaused(c *Context, o *common, p *pausing) (*view.Study, error) {
	if err := mayWrite(o.Out); err != nil {
		return nil, err
	}
	op, err := openScenario(c.Args[0], o)
	if err != nil {
		return nil, err
	}
	op.Alternatives = op.Alternatives[:1]
	setup := &study.Setup{Alternatives: op.Study(), Replications: op.replications(o), Seed: op.seed(o), Workers: o.workers()}
	var from *study.Paused
	if p.resume != "" {
		if from, err = readPaused(p.resume); err != nil {
			return nil, err
		}
		if err := goesOn(p.resume, op, o, from, setup); err != nil {
			return nil, err
		}
	}
	until, err := p.day(op, from)
	if err != nil {
		return nil, err
	}
	told := newProgress(c, "simulating the plant as it is", o.Quiet)
	var done atomic.Int64
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), setup.Total()) }
	runs, to, err := study.GoOn(c.Ctx, setup, from, until)
	told.Close()
	if err != nil {
		return nil, err
	}
	if p.save != "" {
		to.Head = op.head("run", setup.Seed, setup.Replications)
		if err := writePaused(p.save, to); err != nil {
			return nil, err
		}
		c.Wrote(p.save)
		fmt.Fprintf(c.Stderr, "the runs stand at the beginning of %s; go on with --resume %s\n", dayIn(op.Base.Plan().Start, until), p.save)
	}
	if until < op.Base.Plan().Length {
		return nil, nil
	}
	return studyOf(op.Scenario, setup, []study.Runs{runs}), nil
}

// goesOn holds paused runs against the scenario and takes their number over.
func goesOn(path string, op *opened, o *common, from *study.Paused, setup *study.Setup) error {
	setup.Replications = from.Head.Replications
	if !o.Seed.Given {
		setup.Seed = from.Head.Seed
	}
	if o.Replications.Given && o.Replications.Value != setup.Replications {
		return failed("leave --replications out", "%s: holds %d repeats, not %d", path, setup.Replications, o.Replications.Value)
	}
	now := op.head("run", setup.Seed, setup.Replications)
	return same(path, "the state fits only what it was saved from; give the same scenario and --set, --years and --seed as then", &from.Head, &now)
}

// day is the instant at which to stop.
func (p *pausing) day(op *opened, from *study.Paused) (clock.Time, error) {
	plan := op.Base.Plan()
	if p.until == "" {
		return plan.Length, nil
	}
	first := clock.Time(0)
	if from != nil {
		first = from.At
	}
	allowed := fmt.Sprintf("allowed: a day from %s to %s", dayIn(plan.Start, first), dayIn(plan.Start, plan.Length))
	d, err := shift.ParseDate(strings.TrimSpace(p.until))
	if err != nil {
		return 0, misuse("", "--until: found %q, %s", p.until, allowed)
	}
	t := shift.Midnight(plan.Start, d)
	if t < first || t > plan.Length {
		return 0, misuse("more --years make the runs longer", "--until: found %q, %s", p.until, allowed)
	}
	return t, nil
}

// readPaused reads a file of paused runs, packed or not.
func readPaused(path string) (*study.Paused, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, plain(err))
	}
	if bytes.HasPrefix(data, []byte{0x1f, 0x8b}) { // RFC 1952, section 2.3.1
		if data, err = gunzip(data); err != nil {
			return nil, fmt.Errorf("%s: cannot be unpacked: %w", path, err)
		}
	}
	content, err := opened256(path, data)
	if err != nil {
		return nil, err
	}
	p := &study.Paused{}
	if err := json.Unmarshal(content, p); err != nil || p.Version == 0 {
		return nil, failed("", "%s: this is no file of saved runs", path)
	}
	return p, nil
}

// sealed is the form of a file of paused runs: its content, and the SHA-256
// (FIPS 180-4) over the bytes of it, in hexadecimal digits.
type sealed struct {
	Sum     string          `json:"sha256"`
	Content json.RawMessage `json:"saved"`
}

// opened256 is the content of a file, which must be what was saved to the byte.
func opened256(path string, data []byte) ([]byte, error) {
	s := &sealed{}
	if err := json.Unmarshal(data, s); err != nil || s.Sum == "" || len(s.Content) == 0 {
		if bytes.Contains(data, []byte(`"moldturn_paused"`)) {
			return nil, failed("save the runs again with --save", "%s: is cut short or altered, or saved by another version of the program: it has no readable checksum", path)
		}
		return nil, failed("", "%s: this is no file of saved runs", path)
	}
	if sum := sumOf(s.Content); sum != s.Sum {
		return nil, failed("save the runs again with --save, or take a copy that was not touched",
			"%s: was altered after it was saved: its SHA-256 is %s…, and the file says %.12s…", path, sum[:12], s.Sum)
	}
	return s.Content, nil
}

func sumOf(content []byte) string { return fmt.Sprintf("%x", sha256.Sum256(content)) }

// writePaused writes a file of paused runs as a whole or not at all.
func writePaused(path string, p *study.Paused) error {
	content, err := json.Marshal(p)
	if err != nil {
		return err
	}
	s := &sealed{sumOf(content), content}
	return resultfiles.Write(path, func(w io.Writer) error {
		if !strings.HasSuffix(path, ".gz") {
			return json.NewEncoder(w).Encode(s)
		}
		z := gzip.NewWriter(w)
		if err := json.NewEncoder(z).Encode(s); err != nil {
			return err
		}
		return z.Close()
	})
}
