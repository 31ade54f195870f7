package command

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"

	pictures "tipline/app/guide"
	pages "tipline/assets/guide"
)

// guideCommand lists the pages of the guide, a name and a title a line, prints one, or writes
// all with their pictures into a folder, in the language that is spoken.
func guideCommand(c *call) (int, error) {
	guide := pages.In(c.words.Language())
	if _, asked := c.flags["out"]; asked && len(c.others) == 0 {
		folder, err := c.needed("out")
		if err != nil {
			return Nothing, err
		}
		return c.writeGuide(guide, folder)
	}
	if len(c.others) == 0 {
		for _, p := range guide.Pages() {
			fmt.Fprintf(c.out, "%s  %s\n", p.Name, p.Title)
		}
		return Done, nil
	}
	p, ok := guide.Named(c.others[0])
	if !ok {
		return Nothing, refuse("command.no-page", "name", c.others[0])
	}
	_, err := io.WriteString(c.out, p.Text())
	return Done, err
}

// writeGuide writes every page, and every picture into a folder beside them.
func (c *call) writeGuide(guide *pages.Guide, folder string) (int, error) {
	beside := filepath.Join(folder, "pictures")
	if err := os.MkdirAll(beside, 0o755); err != nil {
		return Nothing, refuse("command.unwritable", "file", folder, "reason", err)
	}
	put := func(name string, text []byte) error {
		return c.write(context.Background(), name, func(w io.Writer) error {
			_, err := w.Write(text)
			return err
		})
	}
	all := guide.Pages()
	for _, p := range all {
		if err := put(filepath.Join(folder, p.Name+".md"), []byte(p.Text())); err != nil {
			return Nothing, err
		}
	}
	for _, name := range pictures.Names() {
		made, err := pictures.SVG(name, c.words)
		if err == nil {
			err = put(filepath.Join(beside, name+".svg"), made)
		}
		if err != nil {
			return Nothing, err
		}
	}
	_, err := fmt.Fprintln(c.out, c.words.Say("command.guide", "folder", folder, "pages", len(all), "pictures", len(pictures.Names())))
	return Done, err
}
