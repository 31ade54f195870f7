// Package language knows which language the program speaks to its user.
package language

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/adrg/xdg"

	"tipline/app/keep"
	"tipline/assets/words"
)

// Choice is what decides on the language. The zero Choice decides on English and keeps
// nothing.
type Choice struct {
	File string                   // holds the code of the language that the user chose
	Env  func(name string) string // looks up a variable of the surroundings
}

// Usual returns the choice in the user's config folder, in the surroundings of the program.
func Usual() Choice {
	return Choice{filepath.Join(xdg.ConfigHome, "tipline", "language"), os.Getenv}
}

// Kept returns the code of the language that was chosen; empty where none was, and where
// what stands there is no language with words.
func (c Choice) Kept() string {
	data, err := os.ReadFile(c.File)
	code := strings.TrimSpace(string(data))
	if err != nil || !slices.Contains(words.Languages(), code) {
		return ""
	}
	return code
}

// Keep keeps the code of a language; an empty one leaves it to the surroundings.
func (c Choice) Keep(code string) error {
	if c.File == "" {
		return nil
	}
	return keep.Text(c.File, code+"\n")
}

// Spoken returns the words of the language the program speaks where none is asked for:
// the one that was chosen, else that of the surroundings, else English.
func (c Choice) Spoken() words.Words {
	code := c.Kept()
	if code == "" {
		code = c.surrounding()
	}
	w, err := words.Load(code)
	if err != nil {
		return words.English()
	}
	return w
}

// Asked returns the words of the language of this code, or those spoken where there are
// none of it or none is asked for.
func (c Choice) Asked(code string) words.Words {
	if w, err := words.Load(code); err == nil && code != "" {
		return w
	}
	return c.Spoken()
}

// surrounding returns the language of messages that the surroundings name. As POSIX has
// it, the first variable that says anything decides, whether there are words for it or not.
func (c Choice) surrounding() string {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if c.Env == nil {
			break
		}
		if locale := c.Env(name); locale != "" {
			code, _ := words.ForLocale(locale)
			return code
		}
	}
	return ""
}
