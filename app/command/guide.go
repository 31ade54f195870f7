package command

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"

	pictures "tipline/app/guide"
	pages "tipline/assets/guide"
	"tipline/assets/words"
)

// guideCommand lists the pages of the guide, a name and a title a line, prints one, or writes
// all with their pictures into a folder.
func guideCommand(c *call) (int, error) {
	if _, asked := c.flags["out"]; asked && len(c.others) == 0 {
		folder, err := c.needed("out")
		if err != nil {
			return Nothing, err
		}
		return c.writeGuide(folder)
	}
	if len(c.others) == 0 {
		for _, p := range pages.Pages() {
			fmt.Fprintf(c.out, "%s  %s\n", p.Name, p.Title)
		}
		return Done, nil
	}
	p, ok := pages.Named(c.others[0])
	if !ok {
		return Nothing, refuse("command.no-page", "name", c.others[0])
	}
	_, err := io.WriteString(c.out, p.Text())
	return Done, err
}

// writeGuide writes every page, and every picture into a folder beside them. The pictures
// speak the language of the pages.
func (c *call) writeGuide(folder string) (int, error) {
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
	all := pages.Pages()
	for _, p := range all {
		if err := put(filepath.Join(folder, p.Name+".md"), []byte(p.Text())); err != nil {
			return Nothing, err
		}
	}
	for _, name := range pictures.Names() {
		made, err := picture(name)
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

// picture makes a picture in the language of the pages.
func picture(name string) ([]byte, error) {
	w, err := words.Load(pages.Language)
	if err != nil {
		return nil, err
	}
	return pictures.SVG(name, w)
}
