package press

import (
	"context"
	"os/exec"
	"runtime"
	"time"
)

// Open opens a PDF in the program that the system opens PDFs with. What opens it may
// be that program itself: where it has not ended after a moment, or when ctx is done,
// it is left to run. What it says of its failure is its own affair. The error is a
// *Refusal.
func Open(ctx context.Context, file string) error {
	program, args := viewer(runtime.GOOS, file)
	c := exec.Command(program, args...)
	if err := c.Start(); err != nil {
		return &Refusal{Code: "press.no-viewer", Program: program}
	}
	over := make(chan error, 1)
	go func() { over <- c.Wait() }()
	ctx, stop := context.WithTimeout(ctx, moment)
	defer stop()
	select {
	case <-ctx.Done():
		return nil
	case err := <-over:
		if err != nil {
			return &Refusal{Code: "press.no-viewer", Program: program}
		}
		return nil
	}
}

// moment is how long a program that cannot open a file may take to say so.
const moment = 3 * time.Second

// viewer returns the program that opens files on a system, and its arguments.
func viewer(system, file string) (program string, args []string) {
	switch system {
	case "windows":
		return "rundll32", []string{"url.dll,FileProtocolHandler", file}
	case "darwin":
		return "open", []string{file}
	}
	return "xdg-open", []string{file}
}
