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

	"tipline/app/appearance"
	"tipline/app/command"
	"tipline/app/job"
	"tipline/app/language"
	"tipline/app/window"
	"tipline/app/window/desk"
	"tipline/assets/icon"
)

// open opens the window and returns the exit code. A file that is no job is told on
// stderr, or in the window where that is wanted anyhow.
func open(o command.Opening) int {
	usual := language.Usual()
	spoken := usual.Asked(o.Language)
	if !screen() {
		fmt.Fprintf(os.Stderr, "tipline: %s\n", spoken.Say("window.no-screen"))
		return command.Nothing
	}
	d := desk.New(spoken, desk.Recent{File: filepath.Join(xdg.StateHome, "tipline", "recent")})
	d.Language, d.Looks = usual, appearance.InConfig()
	var refused error
	if o.Job != "" {
		refused = d.Open(o.Job)
	}
	if refused != nil && !o.Anyhow && !errors.Is(refused, desk.ErrElsewhere) {
		fmt.Fprintf(os.Stderr, "tipline: %s\n", job.Say(refused, d.Words()))
		return command.Nothing
	}
	go endWhenAsked()
	a := window.Still(app.NewWithID("tipline"))
	fyne.SetCurrentApp(a)
	a.SetIcon(fyne.NewStaticResource("tipline.png", icon.PNG()))
	if f := window.New(a, d).ShowAndRun(o.Job, refused, func() { os.Exit(command.Done) }); f != nil {
		fmt.Fprintf(os.Stderr, "tipline: %s\n", d.Words().Say("window.fault", "reason", f))
		return command.Nothing
	}
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
