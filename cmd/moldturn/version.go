package main

import (
	"errors"
	"fmt"
	"runtime"
	"runtime/debug"
	"strings"

	_ "moldturn/sim/clock" // so that the build information names the event kernel
)

// kernelModule is the event kernel; its version is part of a result, since the
// order of events at one instant depends on it.
const kernelModule = "github.com/fschuetz04/simgo"

func versionCommand() *command {
	return &command{
		name:     "version",
		synopsis: "print the versions of the program, of Go and of the event kernel",
		run: func(c *Context) error {
			info, ok := debug.ReadBuildInfo()
			if !ok {
				return errors.New("this program was built without module information")
			}
			_, err := fmt.Fprintf(c.Stdout, "moldturn %s\ngo %s\nsimgo %s\n",
				info.Main.Version, strings.TrimPrefix(runtime.Version(), "go"), moduleVersion(info, kernelModule))
			return err
		},
	}
}

// moduleVersion is the version of a module that is linked into the program, or
// "not linked".
func moduleVersion(info *debug.BuildInfo, path string) string {
	for _, m := range info.Deps {
		if m.Path != path {
			continue
		}
		if m.Replace != nil {
			return strings.TrimSpace(m.Replace.Path + " " + m.Replace.Version)
		}
		return m.Version
	}
	return "not linked"
}
