//go:build !cgo

package main

import (
	"fmt"
	"os"

	"tipline/app/command"
	"tipline/app/language"
)

// open says that this program was built without a window.
func open(o command.Opening) int {
	fmt.Fprintf(os.Stderr, "tipline: %s\n", language.Usual().Asked(o.Language).Say("window.not-built"))
	return command.Nothing
}
