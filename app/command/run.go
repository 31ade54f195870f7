// Package command is everything Tipline does without a window: it reads a job,
// works it out and prints or writes what was asked for.
package command

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"tipline/app/job"
	printers "tipline/app/printer"
	"tipline/assets/words"
	"tipline/geometry/fault"
)

// Exit codes.
const (
	Done    = 0
	Faulty  = 1 // done, but an error stands among the findings
	Nothing = 2 // nothing could be done
)

// command is one thing that can be asked for.
type command struct {
	name   string
	flags  []flag
	job    bool // works on a job
	others int  // other words it may be given
	run    func(*call) (int, error)
}

// call is a command with what it was given.
type call struct {
	words   words.Words
	flags   map[string]string
	name    string   // of the job file, "-" for what comes in
	others  []string // other words
	in      io.Reader
	out     io.Writer
	command string

	terminal io.Writer // that is told how far the work is, nil for none
}

func commands() []command {
	language := valued("lang")
	return []command{
		{
			name: "packet", job: true, run: packetCommand,
			flags: []flag{
				valued("out"), valued("paper"), valued("copies"), valued("wheel"), valued("kinds"), valued("as"),
				valued("printer"), valued("look"),
				{name: "together"},
				{name: "apart"},
				language,
			},
		},
		{
			name: "template", job: true, run: templateCommand,
			flags: []flag{
				valued("wheel"), valued("kind"), valued("as"), valued("out"), valued("scale"), valued("side"), valued("paper"),
				valued("printer"), valued("look"), language,
			},
		},
		{name: "figures", job: true, run: figuresCommand, flags: []flag{{name: "json"}, language}},
		{name: "findings", job: true, run: findingsCommand, flags: []flag{language}},
		{name: "stock", job: true, run: stockCommand, flags: []flag{{name: "csv"}, language}},
		{
			name: "printer", others: 1, run: printerCommand,
			flags: []flag{valued("out"), valued("paper"), valued("across"), valued("along"), {name: "again"}, language},
		},
		{name: "sample", others: 1, run: sampleCommand, flags: []flag{language}},
		{name: "guide", others: 1, run: guideCommand, flags: []flag{valued("out"), language}},
		{name: "version", run: versionCommand, flags: []flag{language}},
		{name: "help", others: 1, run: helpCommand, flags: []flag{language}},
	}
}

// Run does what the program's arguments ask for and returns the exit code. It speaks in
// the words given unless another language is asked for. When nothing could be done, one
// sentence on stderr says why.
func Run(w words.Words, args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	c := &call{words: w, in: stdin, terminal: terminal(stderr)}
	return c.run(args, stdout, stderr)
}

func (c *call) run(args []string, stdout, stderr io.Writer) int {
	out := bufio.NewWriter(stdout)
	c.out = out
	var code int
	var err error
	if f := fault.Caught(func() { code, err = c.do(args) }); f != nil {
		err = refuse("command.fault", "reason", f)
	}
	if flushed := out.Flush(); err == nil && flushed != nil {
		err = refuse("command.stdout", "reason", flushed)
	}
	if err == nil {
		return code
	}
	fmt.Fprintf(stderr, "tipline: %s\n", sentence(err, c.words))
	return Nothing
}

func (c *call) do(args []string) (int, error) {
	if len(args) == 0 {
		return helpCommand(c)
	}
	args = behind(args)
	name := strings.TrimLeft(args[0], "-")
	if name == "h" {
		name = "help"
	}
	known, ok := find(name)
	if !ok || name != args[0] && name != "help" && name != "version" {
		return Nothing, c.noCommand(args)
	}
	switch err := c.take(known, args[1:]); {
	case errors.Is(err, errHelp):
		c.others = []string{known.name}
		return helpCommand(c)
	case err != nil:
		return Nothing, err
	}
	return known.run(c)
}

// noCommand refuses words of which the first is no command, in the language asked for.
func (c *call) noCommand(args []string) error {
	var err error
	speaks := command{name: "tipline", flags: []flag{valued("lang")}}
	flag, rest := language(args)
	if c.flags, _, err = parseFlags(speaks, flag); err == nil {
		err = c.speak()
	}
	if err == nil {
		err = unknown(rest[0])
	}
	return err
}

func unknown(name string) error {
	return refuse("command.unknown", "name", name, "commands", strings.Join(names(), ", "))
}

// take sorts out a command's flags, job and other words.
func (c *call) take(known command, args []string) error {
	c.command = known.name
	flags, operands, err := parseFlags(known, args)
	c.flags = flags
	if spoken := c.speak(); err == nil {
		err = spoken
	}
	if err != nil {
		return err
	}
	if known.job {
		if len(operands) == 0 {
			return refuse("command.no-job", "command", known.name)
		}
		c.name, operands = operands[0], operands[1:]
	}
	if len(operands) > known.others {
		return refuse("command.too-many", "command", known.name, "word", operands[known.others])
	}
	c.others = operands
	return nil
}

// speak chooses the language asked for.
func (c *call) speak() error {
	language, asked := c.flags["lang"]
	if !asked {
		return nil
	}
	w, err := words.Load(language)
	if err != nil {
		return refuse("command.choice", "flag", "lang", "value", language, "choices", strings.Join(words.Languages(), ", "))
	}
	c.words = w
	return nil
}

// load reads the job.
func (c *call) load() (*job.Job, error) {
	if c.name == "-" {
		return job.Read(c.in)
	}
	return job.Load(c.name)
}

func find(name string) (command, bool) {
	all := commands()
	i := slices.IndexFunc(all, func(k command) bool { return k.name == name })
	if i < 0 {
		return command{}, false
	}
	return all[i], true
}

func names() []string {
	var list []string
	for _, k := range commands() {
		list = append(list, k.name)
	}
	return list
}

// refusal is an error that is said in the catalogue's words.
type refusal struct {
	code string
	args []any
}

func refuse(code string, args ...any) error { return &refusal{code, args} }

// Error says the refusal in English.
func (r *refusal) Error() string { return words.English().Say(r.code, r.args...) }

// sentence says an error in the words given, if it can be said in them.
func sentence(err error, w words.Words) string {
	var ours *refusal
	if errors.As(err, &ours) {
		return w.Say(ours.code, ours.args...)
	}
	var jobs *job.Refusal
	if errors.As(err, &jobs) {
		return jobs.Sentence(w)
	}
	var kept *printers.Refusal
	if errors.As(err, &kept) {
		return kept.Say(w.Say)
	}
	var misprint *printers.Misprint
	if errors.As(err, &misprint) {
		return misprint.Say(w.Say, w.Comma())
	}
	return w.Reason(err)
}
