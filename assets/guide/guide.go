// Package guide holds the guide: short pages in a few marks of Markdown, which read as they
// stand in the repository and are shown by the window. A page may be headed, hold
// paragraphs, lists and pictures, and lead to other pages.
package guide

import (
	"embed"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

//go:embed en/*.md
var files embed.FS

// Start is the page that leads to all others.
const Start = "index"

// Words is the page that leads to those about words of the trade.
const Words = "words"

// Language is the language the guide is written in.
const Language = "en"

// Page is one page of the guide.
type Page struct {
	Name   string // of its file, without the ending
	Title  string
	Blocks []Block // without the title

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

// pages are the pages in the order they are read in, read once: they are compiled in, so
// what cannot be read is found by the tests.
var pages = ordered(func() []Page {
	names, err := fs.Glob(files, Language+"/*.md")
	if err != nil {
		panic(err) // the pattern is not one
	}
	var all []Page
	for _, file := range names {
		text, err := files.ReadFile(file)
		if err != nil {
			panic(fmt.Errorf("guide: %w", err)) // an embedded file is always there
		}
		all = append(all, read(strings.TrimSuffix(path.Base(file), ".md"), string(text)))
	}
	return all
}())

// ordered puts pages in the order of the first page's links, and after those the words of
// the trade in the order of theirs.
func ordered(all []Page) []Page {
	var list []Page
	add := func(name string) {
		i := slices.IndexFunc(all, func(p Page) bool { return p.Name == name })
		if i >= 0 && !slices.ContainsFunc(list, func(p Page) bool { return p.Name == name }) {
			list = append(list, all[i])
		}
	}
	for _, from := range []string{Start, Words} {
		add(from)
		for _, p := range all {
			if p.Name == from {
				for _, to := range p.leads() {
					if to != Words {
						add(to)
					}
				}
			}
		}
	}
	for _, p := range all {
		add(p.Name)
	}
	return list
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

// IsTerm reports whether the page is about a word of the trade.
func (p Page) IsTerm() bool {
	words, _ := Named(Words)
	return slices.Contains(words.leads(), p.Name)
}

// Pages returns every page in the order they are read in.
func Pages() []Page { return append([]Page(nil), pages...) }

// Named returns the page of a name.
func Named(name string) (Page, bool) {
	for _, p := range pages {
		if p.Name == name {
			return p, true
		}
	}
	return Page{}, false
}

// For returns the page that explains a field, and where on it: the block that is headed
// by it. Indices of a list are passed over, as in "additions[2].radius".
func For(field string) (page Page, block int, ok bool) {
	bare := withoutIndices(field)
	for _, p := range pages {
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

// Text returns a page as it was written.
func (p Page) Text() string { return p.written }

// Find returns the pages on which every word that is sought stands, those first whose title
// has them; all pages where nothing is sought.
func Find(sought string) []Page {
	words := strings.Fields(strings.ToLower(sought))
	var titled, others []Page
	for _, p := range pages {
		switch {
		case has(strings.ToLower(p.Title), words):
			titled = append(titled, p)
		case has(strings.ToLower(p.says()), words):
			others = append(others, p)
		}
	}
	return append(titled, others...)
}

func has(text string, words []string) bool {
	for _, w := range words {
		if !begins(text, w) {
			return false
		}
	}
	return true
}

// begins reports whether a word of the text begins with w: a heel is sought in no wheel.
func begins(text, w string) bool {
	for at := 0; ; {
		i := strings.Index(text[at:], w)
		if i < 0 {
			return false
		}
		at += i
		if before, _ := utf8.DecodeLastRuneInString(text[:at]); at == 0 || !unicode.IsLetter(before) {
			return true
		}
		at += len(w)
	}
}

// says returns all that a page says, without its marks.
func (p Page) says() string {
	all := p.Title
	for _, b := range p.Blocks {
		all += "\n" + b.Text()
	}
	return all
}
