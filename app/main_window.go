//go:build cgo

package main

import (
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"syscall"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"github.com/adrg/xdg"

	"tipline/app/command"
	"tipline/app/job"
	"tipline/app/language"
	"tipline/app/window"
	"tipline/app/window/desk"
	"tipline/assets/icon"
)

// open opens the window with a job, "" for none, and returns the exit code.
func open(name string) int {
	spoken := language.Usual()
	if !screen() {
		fmt.Fprintf(os.Stderr, "tipline: %s\n", spoken.Spoken().Say("window.no-screen"))
		return command.Nothing
	}
	d := desk.New(spoken.Spoken(), desk.Recent{File: filepath.Join(xdg.StateHome, "tipline", "recent")})
	d.Language = spoken
	elsewhere := ""
	if name != "" {
		if err := d.Open(name); errors.Is(err, desk.ErrElsewhere) {
			elsewhere = name
		} else if err != nil {
			fmt.Fprintf(os.Stderr, "tipline: %s\n", job.Say(err, d.Words()))
			return command.Nothing
		}
	}
	go endWhenAsked()
	a := app.NewWithID("tipline")
	a.SetIcon(fyne.NewStaticResource("tipline.png", icon.PNG()))
	window.New(a, d).ShowAndRun(elsewhere, func() { os.Exit(command.Done) })
	return command.Done
}

// endWhenAsked ends the program when the system asks it to. What is not saved has been
// kept by then and is offered back.
func endWhenAsked() {
	asked := make(chan os.Signal, 1)
	signal.Notify(asked, os.Interrupt, syscall.SIGTERM)
	<-asked
	os.Exit(command.Done)
}
