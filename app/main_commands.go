//go:build !cgo

package main

import (
	"fmt"
	"os"

	"tipline/app/command"
	"tipline/assets/words"
)

// open says that this program was built without a window.
func open(string) int {
	fmt.Fprintf(os.Stderr, "tipline: %s\n", words.English().Say("window.not-built"))
	return command.Nothing
}
