package guide

import (
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// skeleton is what a page must have in every language: its headings with their fields, its
// items and its pictures, in order.
func skeleton(p Page) (all []Block) {
	for _, b := range p.Blocks {
		if b.Kind != Paragraph {
			all = append(all, Block{Kind: b.Kind, Level: b.Level, Mark: b.Mark, Field: b.Field, Picture: b.Picture})
		}
	}
	return all
}

// typed lists what a page has that is typed, with one decimal mark for all languages.
func typed(p Page) (all []string) {
	for _, b := range p.Blocks {
		for _, r := range b.Runs {
			if r.Style == Typed {
				all = append(all, strings.ReplaceAll(r.Text, ",", "."))
			}
		}
	}
	return all
}

// A page has the same sections, items, pictures, links, commands and values in every
// language; only lists that are in the order of the alphabet are ordered otherwise.
func TestAPageHasTheSameInEveryLanguage(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		require.Len(t, g.Pages(), len(In(First).Pages()))
		for _, p := range g.Pages() {
			first, ok := In(First).Named(p.Name)
			require.True(t, ok)
			require.Equal(t, skeleton(first), skeleton(p), p.Name)
			require.ElementsMatch(t, first.leads(), p.leads(), "%s: links", p.Name)
			require.ElementsMatch(t, typed(first), typed(p), "%s: what is typed", p.Name)
			require.Equal(t, first.Term, p.Term, p.Name)
		}
	})
}

// A file of another language is that of a page, which the first language has.
func TestEveryFileIsAPage(t *testing.T) {
	names, err := fs.Glob(files, "*/*.md")
	require.NoError(t, err)
	for _, file := range names {
		language, name := path.Dir(file), strings.TrimSuffix(path.Base(file), ".md")
		p, ok := In(language).Named(name)
		require.True(t, ok, file)
		require.Equal(t, language, p.Language, file)
	}
}

// The words of the trade are listed by the alphabet of the language.
func TestTheWordsOfTheTradeAreInOrder(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		words, ok := g.Named(Words)
		require.True(t, ok)
		var listed []string
		for _, b := range words.Blocks {
			if b.Kind == Item {
				listed = append(listed, strings.ReplaceAll(folded(b.Text()), "-", " "))
			}
		}
		require.NotEmpty(t, listed)
		require.True(t, slices.IsSorted(listed), "%q", listed)
	})
}

// A page that a language lacks is that of the first language, and where one is written it
// shows the pictures of the first.
func TestAPageThatIsLackingIsTheFirstLanguages(t *testing.T) {
	index := "# I\n\n[W](words.md) [H](heel.md)\n"
	g := compiled(fstest.MapFS{
		"en/index.md": {Data: []byte(index)}, "en/words.md": {Data: []byte("# W\n\n- [Heel](heel.md)\n")},
		"en/heel.md": {Data: []byte("# Heel\n\nLow.\n")},
		"xx/heel.md": {Data: []byte("# Leeh\n\n![Wol](../en/pictures/heel.svg)\n")},
	}, "xx")
	p, ok := g.Named("index")
	require.True(t, ok)
	require.Equal(t, "en", p.Language)
	require.Equal(t, index, p.Text())
	p, ok = g.Named("heel")
	require.True(t, ok)
	require.Equal(t, "xx", p.Language)
	require.Equal(t, "# Leeh\n\n![Wol](pictures/heel.svg)\n", p.Text())
	require.Equal(t, []Block{{Kind: Picture, Picture: "heel", Runs: []Run{{Text: "Wol"}}}}, p.Blocks)
	require.Same(t, In(First), In("tlh"))
}
