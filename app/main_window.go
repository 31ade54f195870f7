//go:build cgo

package main

import (
	"fmt"
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"github.com/adrg/xdg"

	"tipline/app/command"
	"tipline/app/window"
	"tipline/app/window/desk"
	"tipline/assets/icon"
	"tipline/assets/words"
)

// open opens the window with a job, "" for none, and returns the exit code.
func open(name string) int {
	d := desk.New(words.English(), desk.Recent{File: filepath.Join(xdg.StateHome, "tipline", "recent")})
	if name != "" {
		if err := d.Open(name); err != nil {
			fmt.Fprintf(os.Stderr, "tipline: %s\n", err)
			return command.Nothing
		}
	}
	a := app.NewWithID("tipline")
	a.SetIcon(fyne.NewStaticResource("tipline.png", icon.PNG()))
	window.New(a, d).ShowAndRun()
	return command.Done
}
