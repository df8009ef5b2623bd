package main

import (
	_ "embed"
	"fmt"
	"io"
	"strings"

	"moldturn/sim/param/guess"
)

// The scripts only ask "moldturn complete" and hand the answer to the shell.
var (
	//go:embed shell/completion.bash
	bashScript string
	//go:embed shell/completion.zsh
	zshScript string
	//go:embed shell/completion.fish
	fishScript string
)

// shells are the shells there is a script for.
func shells() []string { return []string{"bash", "zsh", "fish"} }

func scriptFor(shell string) string {
	switch shell {
	case "bash":
		return bashScript
	case "zsh":
		return zshScript
	case "fish":
		return fishScript
	}
	return ""
}

func completionCommand() *command {
	return &command{
		name:     "completion",
		synopsis: "print a script for the shell to complete commands and names",
		help: `For the running shell:
  bash  source <(moldturn completion bash)
  zsh   source <(moldturn completion zsh)
  fish  moldturn completion fish | source
For every later one, put that line into ~/.bashrc, ~/.zshrc (after compinit) or
~/.config/fish/config.fish.`,
		args: argSpec{names: "bash|zsh|fish", min: 1, max: 1, offer: func(*Context, []string) offer {
			return offerWords(shells()...)
		}},
		run: func(c *Context) error {
			script := scriptFor(c.Args[0])
			if script == "" {
				return unknownShell(c.Args[0])
			}
			_, err := io.WriteString(c.Stdout, script)
			return err
		},
	}
}

func unknownShell(name string) error {
	hint := ""
	if near := guess.Near(name, shells()); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return misuse(hint, "unknown shell %q\n  allowed: %s", name, strings.Join(shells(), ", "))
}
