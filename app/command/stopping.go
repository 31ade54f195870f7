package command

import (
	"context"
	"errors"
	"os"
	"os/signal"
	"syscall"
)

// untilStopped does what writes a file until it is done or the program is asked to end:
// then the file is as it was before and that is refused in one sentence. Asked a second
// time the program ends at once.
func untilStopped(file string, do func(context.Context) (int, error)) (int, error) {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	context.AfterFunc(ctx, stop)
	code, err := do(ctx)
	if errors.Is(err, context.Canceled) {
		return Nothing, refuse("command.stopped", "file", file)
	}
	return code, err
}
