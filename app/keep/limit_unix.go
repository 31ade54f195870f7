//go:build unix

package keep

import (
	"os/signal"
	"syscall"
)

// A file that grows past what the shell allows (ulimit -f) is then an error of writing
// it, and not the end of the program.
func init() { signal.Ignore(syscall.SIGXFSZ) }
