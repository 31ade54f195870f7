package command

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"

	"tipline/app/keep"
)

// write puts a file together in memory first, so that nothing on the disk is
// touched unless it could be made, and then in its place. It refuses to write
// over the job itself. When ctx is done the file is as it was before, and the error that
// of ctx.
func (c *call) write(ctx context.Context, name string, make func(io.Writer) error) error {
	if sameFile(name, c.name) {
		return refuse("command.out-is-job", "file", name)
	}
	var made bytes.Buffer
	if err := make(&made); err != nil {
		return c.drawing(err)
	}
	err := keep.Write(name, func(w io.Writer) error {
		_, err := made.WriteTo(w)
		return errors.Join(err, ctx.Err())
	})
	if errors.Is(err, context.Canceled) {
		return err
	}
	if err != nil {
		return refuse("command.unwritable", "file", name, "reason", err)
	}
	return nil
}

func sameFile(a, b string) bool {
	first, err := os.Stat(a)
	if err != nil {
		return false
	}
	second, err := os.Stat(b)
	return err == nil && os.SameFile(first, second)
}
