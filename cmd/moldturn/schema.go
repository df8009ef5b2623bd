package main

import (
	"fmt"

	"moldturn/scenarios"
)

func schemaCommand() *command {
	return &command{
		name:     "schema",
		synopsis: "print the JSON Schema of scenario files, for editors",
		help: `An editor that knows it completes the names of inputs and shows what they mean:
  moldturn schema > moldturn.schema.json
and in the first line of a scenario:
  # yaml-language-server: $schema=moldturn.schema.json`,
		run: func(c *Context) error {
			tree, err := scenarios.Inputs()
			if err != nil {
				return err
			}
			text, err := tree.Schema()
			if err != nil {
				return err
			}
			_, err = fmt.Fprintf(c.Stdout, "%s\n", text)
			return err
		},
	}
}
