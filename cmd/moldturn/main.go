// Command moldturn answers questions about a plant that molds boats in open
// molds: which change to the plant is worth its money, in boats, days and
// dollars. It only wires things together: command lines, files, progress and
// exit codes. Everything it knows about plants is in package sim.
//
// A command is one file with one function that returns a command; the table in
// commands.go lists them. Help, completion and the guess for a misspelled name
// read the same table.
package main

import "os"

func main() {
	os.Exit(run(untilInterrupt(), os.Stdin, os.Stdout, os.Stderr, os.Args[1:], os.Getenv))
}
