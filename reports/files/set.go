package files

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
)

// File is one file of a set: where it goes and what writes its content.
type File struct {
	Path  string
	Write func(io.Writer) error
}

// WriteAll makes the files of a set together: all of them are written and
// synced beside their names, and only then do they take the names, one right
// after the other. So a set is never half old and half new because a content
// could not be made, the disk was full, or ctx ended; then every old file is as
// it was, no temporary file is left, and the error is that of the file, with its
// path, or of ctx. ctx is looked at while content is written; once the first
// name is taken the set is finished.
//
// What stays possible is a program that is killed, or a folder that is taken
// away, between two names: each file is still whole.
//
// Paths follow the rules of Write. A path that cannot be replaced, such as a
// device, is written to when the others have their names.
func WriteAll(ctx context.Context, set []File) error {
	var ready []*ready
	defer func() {
		for _, r := range ready {
			r.discard()
		}
	}()
	for _, f := range set {
		r, err := prepare(f.Path, stopping(ctx, f.Write))
		if err != nil {
			if stopped := ctx.Err(); stopped != nil && errors.Is(err, stopped) {
				return stopped
			}
			return notWritten(f.Path, err)
		}
		ready = append(ready, r)
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	for i, r := range ready {
		if err := r.take(); err != nil {
			return notWritten(set[i].Path, err)
		}
	}
	return nil
}

func notWritten(path string, err error) error {
	return fmt.Errorf("%s: not written: %w", path, err)
}

// ready is a file that is complete but for its name.
type ready struct {
	target string
	temp   string                // "" when the name is taken, or for a device
	device func(io.Writer) error // what writes to a path that cannot be replaced
}

// take gives the file its name.
func (r *ready) take() error {
	if r.device != nil {
		return direct(r.target, r.device)
	}
	if err := os.Rename(r.temp, r.target); err != nil {
		return err
	}
	r.temp = ""
	return nil
}

// discard removes a file that did not get its name.
func (r *ready) discard() {
	if r.temp != "" {
		os.Remove(r.temp)
	}
}

// stopping makes write fail with the error of ctx from the moment it ends.
func stopping(ctx context.Context, write func(io.Writer) error) func(io.Writer) error {
	return func(w io.Writer) error {
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := write(until{ctx, w}); err != nil {
			return err
		}
		return ctx.Err()
	}
}

// until is a writer that ends with a context.
type until struct {
	ctx context.Context
	to  io.Writer
}

func (u until) Write(b []byte) (int, error) {
	if err := u.ctx.Err(); err != nil {
		return 0, err
	}
	return u.to.Write(b)
}
