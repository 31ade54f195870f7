// Command tipline turns a plan's numbers into a shop packet: it opens a window, or
// does what its arguments ask for without one.
package main

import (
	"os"

	"tipline/app/command"
	"tipline/app/language"
)

func main() {
	if o, ok := command.Opens(os.Args[1:]); ok {
		os.Exit(open(o))
	}
	os.Exit(command.Run(language.Usual().Spoken(), os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
