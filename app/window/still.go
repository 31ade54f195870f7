package window

import (
	"runtime"

	"fyne.io/fyne/v2"
)

// Still returns a program in which nothing moves by itself. The mark in a box that is typed
// in stands still then: the toolkit lets it blink by painting the whole window again and
// again, which takes a sixth of a processor without a graphics card.
func Still(a fyne.App) fyne.App {
	if runtime.GOOS == "darwin" {
		return a // there the toolkit wants its own settings
	}
	return still{a}
}

type still struct{ fyne.App }

func (s still) Settings() fyne.Settings { return stillSettings{s.App.Settings()} }

type stillSettings struct{ fyne.Settings }

func (stillSettings) ShowAnimations() bool { return false }
