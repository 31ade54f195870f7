package command

import (
	"fmt"

	"tipline/assets/samples"
)

// sampleCommand lists the sample jobs, a name and a title a line, or prints one.
func sampleCommand(c *call) (int, error) {
	list, err := samples.List()
	if err != nil {
		return Nothing, err
	}
	if len(c.others) == 0 {
		for _, s := range list {
			fmt.Fprintf(c.out, "%s  %s\n", s.Name, s.Title)
		}
		return Done, nil
	}
	for _, s := range list {
		if s.Name == c.others[0] {
			data, err := samples.Read(s.Name)
			if err == nil {
				_, err = c.out.Write(data)
			}
			return Done, err
		}
	}
	return Nothing, refuse("command.no-sample", "name", c.others[0])
}

func versionCommand(c *call) (int, error) {
	_, err := fmt.Fprintln(c.out, c.words.Say("program.name"), Version)
	return Done, err
}

// helpCommand says what the commands are, or what one of them is.
func helpCommand(c *call) (int, error) {
	asked := names()
	if len(c.others) > 0 {
		if _, ok := find(c.others[0]); !ok {
			return Nothing, unknown(c.others[0])
		}
		asked = c.others
	} else {
		fmt.Fprint(c.out, c.words.Say("command.help.begin"), "\n\n")
	}
	for _, name := range asked {
		fmt.Fprint(c.out, "  ", c.words.Say("command.help."+name), "\n")
	}
	_, err := fmt.Fprint(c.out, "\n", c.words.Say("command.help.end"), "\n")
	return Done, err
}
