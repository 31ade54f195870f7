package command

import (
	"context"
	"errors"
	"os"
	"os/signal"
	"syscall"

	"tipline/geometry/fault"
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

// unlessStopped does what may wait for what comes in, or work long without looking up. When
// ctx is done it is given up, and the error is that of ctx.
func unlessStopped[T any](ctx context.Context, do func() (T, error)) (result T, err error) {
	over := make(chan *fault.Fault, 1)
	var done T
	var failed error
	go func() { over <- fault.Caught(func() { done, failed = do() }) }()
	select {
	case <-ctx.Done():
		return result, ctx.Err()
	case f := <-over:
		if f != nil {
			panic(f)
		}
		return done, failed
	}
}
