//go:build cgo

package main

import (
	"os"
	"runtime"
)

// screen reports whether there is a screen to open a window on, as far as the
// environment tells: X11 and Wayland name theirs there, other systems have one always.
func screen() bool {
	switch runtime.GOOS {
	case "windows", "darwin", "android", "ios":
		return true
	}
	return os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != ""
}
