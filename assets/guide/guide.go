// Package guide holds the guide: short pages in a few marks of Markdown, which read as they
// stand in the repository and are shown by the window. A page may be headed, hold
// paragraphs, lists and pictures, and lead to other pages. Every language has its folder of
// them, by the same names.
package guide

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"
)

//go:embed [a-z][a-z]/*.md
var files embed.FS

// Start is the page that leads to all others.
const Start = "index"

// Words is the page that leads to those about words of the trade.
const Words = "words"

// First is the language that has every page. Where another lacks one, the page of this
// stands in.
const First = "en"

// Page is one page of the guide.
type Page struct {
	Name     string // of its file, without the ending
	Language string // it is written in
	Title    string
	Term     bool    // whether it is about a word of the trade
	Blocks   []Block // without the title

	written string
}

// Kind says what a block is.
type Kind int

// The kinds of block.
const (
	Paragraph Kind = iota
	Heading
	Item // of a list
	Picture
)

// Block is what stands apart on a page.
type Block struct {
	Kind    Kind
	Level   int    // of a heading, 2 or 3
	Mark    string // of an item, "•" or its number
	Field   string // the path of the field that a heading is about, "" for none
	Picture string // its name
	Runs    []Run  // what is written: of a picture, the words under it
}

// Style says how a run is written.
type Style int

// The styles.
const (
	Plain Style = iota
	Strong
	Slanted
	Typed // what is typed, or a path
)

// Run is a piece of text in one style. One that leads somewhere names the page.
type Run struct {
	Text  string
	Style Style
	To    string
}

// Text returns what a block says.
func (b Block) Text() string {
	var all strings.Builder
	for _, r := range b.Runs {
		all.WriteString(r.Text)
	}
	return all.String()
}

// Guide is the guide in one language.
type Guide struct{ pages []Page }

// guides are the guides by language, each read when it is first asked for.
var guides = func() map[string]func() *Guide {
	all := map[string]func() *Guide{}
	for _, language := range Languages() {
		all[language] = sync.OnceValue(func() *Guide { return compiled(files, language) })
	}
	return all
}()

// Languages lists the languages in which there are pages.
func Languages() (all []string) {
	entries, _ := files.ReadDir(".") // the folder is always there
	for _, e := range entries {
		all = append(all, e.Name())
	}
	return all
}

// In returns the guide in a language.
func In(language string) *Guide {
	if of, ok := guides[language]; ok {
		return of()
	}
	return guides[First]()
}

// compiled reads the pages of a language, and those of the first that it lacks. They are
// compiled in, so what cannot be read is found by the tests.
func compiled(files fs.FS, language string) *Guide {
	names, err := fs.Glob(files, First+"/*.md")
	if err != nil {
		panic(err) // the pattern is not one
	}
	var all []Page
	for _, file := range names {
		written := language
		text, err := fs.ReadFile(files, path.Join(language, path.Base(file)))
		if errors.Is(err, fs.ErrNotExist) {
			written = First
			text, err = fs.ReadFile(files, file)
		}
		if err != nil {
			panic(fmt.Errorf("guide: %w", err)) // an embedded file is always there
		}
		p := read(strings.TrimSuffix(path.Base(file), ".md"), string(text))
		p.Language = written
		all = append(all, p)
	}
	return &Guide{ordered(all)}
}

// ordered puts pages in the order of the first page's links, and after those the words of
// the trade in the order of theirs.
func ordered(all []Page) []Page {
	var list []Page
	add := func(name string, term bool) {
		i := placeOf(all, name)
		if i >= 0 && placeOf(list, name) < 0 {
			list = append(list, all[i])
			list[len(list)-1].Term = term
		}
	}
	for _, from := range []string{Start, Words} {
		add(from, false)
		for _, to := range all[placeOf(all, from)].leads() {
			if to != Words {
				add(to, from == Words)
			}
		}
	}
	for _, p := range all {
		add(p.Name, false)
	}
	return list
}

// placeOf returns where among pages one stands, −1 for nowhere.
func placeOf(all []Page, name string) int {
	return slices.IndexFunc(all, func(p Page) bool { return p.Name == name })
}

// leads lists the pages that a page leads to.
func (p Page) leads() (names []string) {
	for _, b := range p.Blocks {
		for _, r := range b.Runs {
			if r.To != "" {
				names = append(names, r.To)
			}
		}
	}
	return names
}

// Pages returns every page in the order they are read in.
func (g *Guide) Pages() []Page { return append([]Page(nil), g.pages...) }

// Named returns the page of a name.
func (g *Guide) Named(name string) (Page, bool) {
	if i := placeOf(g.pages, name); i >= 0 {
		return g.pages[i], true
	}
	return Page{}, false
}

// For returns the page that explains a field, and where on it: the block that is headed
// by it. Indices of a list are passed over, as in "additions[2].radius".
func (g *Guide) For(field string) (page Page, block int, ok bool) {
	bare := withoutIndices(field)
	for _, p := range g.pages {
		for i, b := range p.Blocks {
			if b.Field != "" && b.Field == bare {
				return p, i, true
			}
		}
	}
	return Page{}, 0, false
}

func withoutIndices(field string) string {
	var bare strings.Builder
	for rest := field; ; {
		before, after, found := strings.Cut(rest, "[")
		bare.WriteString(before)
		if !found {
			return bare.String()
		}
		if _, rest, found = strings.Cut(after, "]"); !found {
			return bare.String()
		}
	}
}

// Text returns a page as it was written, with the pictures beside it.
func (p Page) Text() string { return p.written }

// says returns all that a page says, without its marks.
func (p Page) says() string {
	all := p.Title
	for _, b := range p.Blocks {
		all += "\n" + b.Text()
	}
	return all
}
