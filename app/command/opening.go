package command

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"tipline/assets/words"
)

// Opening is what the program's arguments ask of the window.
type Opening struct {
	Job      string // the file, "" for none
	Anyhow   bool   // open the window though the file is no job, and say so there
	Language string // to be spoken, "" for the usual one
}

// Opens reports whether the program's arguments ask for the window, and how. One
// word that is no command and no flag is a job, if there is a file of that name or
// the word has an ending as files have; the language may be said before it or after.
// After -window everything is a job: a desktop asks so, whose user sees no stderr.
func Opens(args []string) (o Opening, ok bool) {
	if len(args) == 2 && isWindow(args[0]) {
		return Opening{Job: args[1], Anyhow: true}, true
	}
	language, args := language(args)
	if len(language) > 0 {
		o.Language = language[len(language)-1]
		if len(language) == 1 || !slices.Contains(words.Languages(), o.Language) {
			return Opening{}, false
		}
	}
	if len(args) > 0 && isWindow(args[0]) {
		o.Anyhow, args = true, args[1:]
	}
	switch {
	case len(args) == 0:
		return o, true
	case len(args) > 1 || strings.HasPrefix(args[0], "-"):
		return Opening{}, false
	}
	o.Job = args[0]
	_, known := find(o.Job)
	_, err := os.Stat(o.Job)
	return o, o.Anyhow || !known && (err == nil || filepath.Ext(o.Job) != "")
}

func isWindow(word string) bool { return word == "-window" || word == "--window" }

// language takes the flag -lang from among the words: the flag and its value, if it has
// one, and the other words.
func language(args []string) (flag, rest []string) {
	i := slices.IndexFunc(args, func(word string) bool {
		name, _, _ := strings.Cut(word, "=")
		return name == "-lang" || name == "--lang"
	})
	if i < 0 {
		return nil, args
	}
	name, value, joined := strings.Cut(args[i], "=")
	after := min(i+1, len(args))
	flag = []string{name}
	switch {
	case joined:
		flag = append(flag, value)
	case after < len(args):
		flag = append(flag, args[after])
		after++
	}
	return flag, slices.Concat(args[:i], args[after:])
}

// behind puts the flag -lang behind the command where it stands before it; alone it asks
// for help.
func behind(args []string) []string {
	flag, rest := language(args)
	switch {
	case len(flag) == 2 && len(rest) == 0:
		return slices.Concat([]string{"help"}, flag)
	case len(rest) == 0 || rest[0] == args[0]:
		return args
	}
	return slices.Concat(rest[:1], flag, rest[1:])
}
