package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"moldturn/scenarios"
)

// newFloor writes the floor files that come with the program into a folder,
// which is made if it is not there. No file is ever written over: if one of
// them exists, none is written.
func newFloor(c *Context, path, name, from string) error {
	if from != "" {
		return misuse("", "--floor and --from do not go together: one writes a folder, the other a file")
	}
	if strings.TrimSpace(path) == "" {
		return misuse("", "FILE is empty; with --floor it is the name of a folder")
	}
	dir, _ := scenarios.BundledFloor(name)
	entries, err := fs.ReadDir(dir, ".")
	if err != nil {
		return err
	}
	for _, e := range entries {
		if _, err := os.Lstat(filepath.Join(path, e.Name())); err == nil {
			return failed("choose another folder; files are never overwritten", "%s exists already", filepath.Join(path, e.Name()))
		}
	}
	if err := makeFolder(path); err != nil {
		return err
	}
	for _, e := range entries {
		data, err := fs.ReadFile(dir, e.Name())
		if err != nil {
			return err
		}
		file := filepath.Join(path, e.Name())
		if err := writeOnce(file, data); err != nil {
			return err
		}
		c.Wrote(file)
	}
	fmt.Fprintf(c.Stderr, "%s has %s; next: moldturn check %s --floor %s\n", path, count(len(entries), "floor file", "floor files"), name, path)
	return nil
}

// makeFolder makes a folder in one that exists, unless it is there.
func makeFolder(path string) error {
	err := os.Mkdir(path, 0o777)
	switch {
	case err == nil:
		return nil
	case errors.Is(err, fs.ErrNotExist):
		return failed("make the folder around it first", "%s: there is no such folder", filepath.Dir(path))
	}
	if info, found := os.Stat(path); found == nil && info.IsDir() {
		return nil
	}
	return failed("choose another name", "%s cannot be made a folder: %v", path, plain(err))
}
