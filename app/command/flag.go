package command

import (
	"errors"
	"slices"
	"strconv"
	"strings"
)

// flag is a flag that a command knows, written with one dash or two.
type flag struct {
	name   string
	valued bool // takes a value, as the next word or after "="
}

func valued(name string) flag { return flag{name, true} }

// errHelp is returned where a command was asked what it is.
var errHelp = errors.New("asked for help")

// parseFlags takes flags from among the other words, wherever they stand; after
// "--" nothing is a flag any more. A flag without a value has the value "". With an error
// come the flags before it, and with errHelp all of them.
func parseFlags(known command, args []string) (flags map[string]string, operands []string, err error) {
	flags = map[string]string{}
	var help error
	for len(args) > 0 {
		word := args[0]
		args = args[1:]
		switch {
		case word == "--":
			return flags, append(operands, args...), help
		case slices.Contains([]string{"-h", "--h", "-help", "--help"}, word):
			help = errHelp
		case !strings.HasPrefix(word, "-") || word == "-":
			operands = append(operands, word)
		default:
			if args, err = takeFlag(known, word, args, flags); err != nil {
				return flags, nil, err
			}
		}
	}
	return flags, operands, help
}

// takeFlag puts one flag among the flags and returns the words after it.
func takeFlag(known command, word string, rest []string, flags map[string]string) ([]string, error) {
	name, value, given := strings.Cut(strings.TrimPrefix(word[1:], "-"), "=")
	i := slices.IndexFunc(known.flags, func(f flag) bool { return f.name == name })
	if i < 0 {
		return nil, refuse("command.flag-unknown", "command", known.name, "flag", name, "flags", known.flagNames())
	}
	switch f := known.flags[i]; {
	case !f.valued && given:
		return nil, refuse("command.flag-takes-none", "flag", name)
	case f.valued && !given:
		if len(rest) == 0 {
			return nil, refuse("command.flag-needs", "flag", name)
		}
		value, rest = rest[0], rest[1:]
	}
	if _, twice := flags[name]; twice {
		return nil, refuse("command.flag-twice", "flag", name)
	}
	flags[name] = value
	return rest, nil
}

func (k command) flagNames() string {
	if len(k.flags) == 0 {
		return "–"
	}
	var list []string
	for _, f := range k.flags {
		list = append(list, "-"+f.name)
	}
	return strings.Join(list, ", ")
}

// needed returns the value of a flag that must be given.
func (c *call) needed(name string) (string, error) {
	if c.flags[name] == "" {
		return "", refuse("command.flag-missing", "command", c.command, "flag", name)
	}
	return c.flags[name], nil
}

// choice returns the value of a flag that takes one of a few words; the first is
// meant when it is not given.
func (c *call) choice(name string, choices ...string) (string, error) {
	value, given := c.flags[name]
	if !given {
		return choices[0], nil
	}
	if !slices.Contains(choices, value) {
		return "", refuse("command.choice", "flag", name, "value", value, "choices", strings.Join(choices, ", "))
	}
	return value, nil
}

// number returns the value of a flag that takes a number from least to most, with a
// decimal point or comma, or the usual one when it is not given.
func (c *call) number(name string, least, most, usual float64) (float64, error) {
	text, given := c.flags[name]
	if !given {
		return usual, nil
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err != nil || !(v >= least && v <= most) || strings.ContainsAny(text, "xXpP_") {
		return 0, refuse("command.number", "flag", name, "value", text, "min", least, "max", most)
	}
	return v, nil
}
