package guide

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestEveryPageHasATitleAndSaysSomething(t *testing.T) {
	require.Greater(t, len(Pages()), 50)
	titles := map[string]string{}
	for _, p := range Pages() {
		require.NotEmpty(t, p.Title, p.Name)
		require.NotEmpty(t, p.Blocks, p.Name)
		require.NotRegexp(t, "[`\\[\\]*]", strings.ReplaceAll(p.says(), "[2]", ""), "%s: a mark that is not understood", p.Name)
		if other, twice := titles[p.Title]; twice {
			require.True(t, strings.HasPrefix(p.Name, "step-") || strings.HasPrefix(other, "step-"), "%s and %s are both called %s", p.Name, other, p.Title)
		}
		titles[p.Title] = p.Name
	}
}

// Every link leads to a page, and every page is come to from the first.
func TestLinksLeadToPagesAndToEveryPage(t *testing.T) {
	reached, next := map[string]bool{Start: true}, []string{Start}
	for len(next) > 0 {
		p, ok := Named(next[0])
		require.True(t, ok, "there is no page %q", next[0])
		next = next[1:]
		for _, b := range p.Blocks {
			for _, r := range b.Runs {
				if r.To != "" && !reached[r.To] {
					reached[r.To] = true
					next = append(next, r.To)
				}
			}
		}
	}
	for _, p := range Pages() {
		require.True(t, reached[p.Name], "no page leads to %s", p.Name)
	}
}

// What is written as a link is understood as one: none is left as plain text.
func TestEveryLinkIsUnderstood(t *testing.T) {
	link := regexp.MustCompile(`\]\(`)
	for _, p := range Pages() {
		text, err := os.ReadFile(Language + "/" + p.Name + ".md")
		require.NoError(t, err)
		written, understood := len(link.FindAll(text, -1)), 0
		for _, b := range p.Blocks {
			if b.Kind == Picture {
				understood++
			}
			for _, r := range b.Runs {
				if r.To != "" {
					understood++
				}
			}
		}
		require.Equal(t, written, understood, p.Name)
	}
}

func TestEveryPageOfATermHasAPicture(t *testing.T) {
	words, ok := Named(Words)
	require.True(t, ok)
	for _, b := range words.Blocks {
		for _, r := range b.Runs {
			if r.To == "" {
				continue
			}
			term, ok := Named(r.To)
			require.True(t, ok)
			pictures := 0
			for _, of := range term.Blocks {
				if of.Kind == Picture {
					pictures++
					require.NotEmpty(t, of.Text(), "%s: nothing is said under the picture", term.Name)
				}
			}
			require.Equal(t, 1, pictures, term.Name)
		}
	}
}

func TestAPageIsReadBlockByBlock(t *testing.T) {
	p := read("wheel", "# A wheel\n\nSaid in\ntwo lines, *so*.\n\n### Rim `crossing.rim`\n\n1. See [the hub](hub.md).\n2. **Next** `4/0`.\n\n![A rim](pictures/rim.svg)\n")
	require.Equal(t, "A wheel", p.Title)
	require.Equal(t, []Block{
		{Runs: []Run{{Text: "Said in two lines, "}, {Text: "so", Style: Slanted}, {Text: "."}}},
		{Kind: Heading, Level: 3, Field: "crossing.rim", Runs: []Run{{Text: "Rim"}}},
		{Kind: Item, Mark: "1.", Runs: []Run{{Text: "See "}, {Text: "the hub", To: "hub"}, {Text: "."}}},
		{Kind: Item, Mark: "2.", Runs: []Run{{Text: "Next", Style: Strong}, {Text: " "}, {Text: "4/0", Style: Typed}, {Text: "."}}},
		{Kind: Picture, Picture: "rim", Runs: []Run{{Text: "A rim"}}},
	}, p.Blocks)
}

func TestAFieldLeadsToWhereItIsExplained(t *testing.T) {
	p, at, ok := For("additions[2].radius")
	require.True(t, ok)
	require.Equal(t, "step-additions", p.Name)
	require.Equal(t, "additions.radius", p.Blocks[at].Field)
	_, _, ok = For("crossing")
	require.False(t, ok)
}

func TestPagesAreFoundByTheirWordsTitlesFirst(t *testing.T) {
	found := Find("heel")
	require.Equal(t, "heel", found[0].Name)
	require.Greater(t, len(found), 2)
	require.Len(t, Find(""), len(Pages()))
	require.Empty(t, Find("zeppelin"))
}

func TestPagesComeInTheOrderTheyAreRead(t *testing.T) {
	require.Equal(t, []string{"index", "first-wheel", "step-blank", "step-cutter"}, []string{
		Pages()[0].Name, Pages()[1].Name, Pages()[2].Name, Pages()[3].Name})
	terms := false
	for _, p := range Pages() {
		require.True(t, p.IsTerm() || !terms, "%s stands among the words of the trade", p.Name)
		terms = p.IsTerm()
	}
	require.True(t, terms)
}
