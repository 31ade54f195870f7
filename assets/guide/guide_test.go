package guide

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// each runs a test on the guide of every language.
func each(t *testing.T, do func(t *testing.T, g *Guide)) {
	require.Contains(t, Languages(), First)
	for _, language := range Languages() {
		t.Run(language, func(t *testing.T) { do(t, In(language)) })
	}
}

func TestEveryPageHasATitleAndSaysSomething(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		require.Greater(t, len(g.Pages()), 50)
		titles := map[string]string{}
		for _, p := range g.Pages() {
			require.NotEmpty(t, p.Title, p.Name)
			require.NotEmpty(t, p.Blocks, p.Name)
			require.NotRegexp(t, "[`\\[\\]*]", strings.ReplaceAll(p.says(), "[2]", ""), "%s: a mark that is not understood", p.Name)
			if other, twice := titles[p.Title]; twice {
				require.True(t, strings.HasPrefix(p.Name, "step-") || strings.HasPrefix(other, "step-"), "%s and %s are both called %s", p.Name, other, p.Title)
			}
			titles[p.Title] = p.Name
		}
	})
}

// Every link leads to a page, and every page is come to from the first.
func TestLinksLeadToPagesAndToEveryPage(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		reached, next := map[string]bool{Start: true}, []string{Start}
		for len(next) > 0 {
			p, ok := g.Named(next[0])
			require.True(t, ok, "there is no page %q", next[0])
			next = next[1:]
			for _, to := range p.leads() {
				if !reached[to] {
					reached[to] = true
					next = append(next, to)
				}
			}
		}
		for _, p := range g.Pages() {
			require.True(t, reached[p.Name], "no page leads to %s", p.Name)
		}
	})
}

// What is written as a link is understood as one: none is left as plain text. A picture's
// file is where the page says.
func TestEveryLinkIsUnderstood(t *testing.T) {
	link := regexp.MustCompile(`\]\(([^)]*)\)`)
	each(t, func(t *testing.T, g *Guide) {
		for _, p := range g.Pages() {
			text, err := os.ReadFile(p.Language + "/" + p.Name + ".md")
			require.NoError(t, err)
			written, understood := link.FindAllSubmatch(text, -1), len(p.leads())
			for _, b := range p.Blocks {
				if b.Kind == Picture {
					understood++
				}
			}
			require.Equal(t, len(written), understood, p.Name)
			for _, to := range written {
				if at := string(to[1]); strings.HasSuffix(at, ".svg") {
					require.FileExists(t, p.Language+"/"+at, p.Name)
				}
			}
		}
	})
}

func TestEveryPageOfATermHasAPicture(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		for _, p := range g.Pages() {
			pictures := 0
			for _, b := range p.Blocks {
				if b.Kind == Picture {
					pictures++
					require.NotEmpty(t, b.Text(), "%s: nothing is said under the picture", p.Name)
				}
			}
			require.True(t, pictures == 1 || !p.Term, "%s has %d pictures", p.Name, pictures)
		}
	})
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
	each(t, func(t *testing.T, g *Guide) {
		p, at, ok := g.For("additions[2].radius")
		require.True(t, ok)
		require.Equal(t, "step-additions", p.Name)
		require.Equal(t, "additions.radius", p.Blocks[at].Field)
		_, _, ok = g.For("crossing")
		require.False(t, ok)
	})
}

func TestPagesAreFoundByTheirWordsTitlesFirst(t *testing.T) {
	g := In(First)
	found := g.Find("heel")
	require.Equal(t, "heel", found[0].Name)
	require.Greater(t, len(found), 2)
	require.Len(t, g.Find(""), len(g.Pages()))
	require.Empty(t, g.Find("zeppelin"))
}

// A page is found without its accents, and with the apostrophe that a keyboard has.
func TestPagesAreFoundWithoutTheirAccents(t *testing.T) {
	g := In("fr")
	for typed, name := range map[string]string{"degagement": "undercut", "Dégagement": "undercut", "trou d'amorce": "start-hole", "d’amorce": "start-hole"} {
		found := g.Find(typed)
		require.NotEmpty(t, found, typed)
		require.Equal(t, name, found[0].Name, typed)
	}
}

func TestPagesComeInTheOrderTheyAreRead(t *testing.T) {
	each(t, func(t *testing.T, g *Guide) {
		require.Equal(t, []string{"index", "first-wheel", "step-blank", "step-cutter"}, []string{
			g.Pages()[0].Name, g.Pages()[1].Name, g.Pages()[2].Name, g.Pages()[3].Name,
		})
		terms := false
		for _, p := range g.Pages() {
			require.True(t, p.Term || !terms, "%s stands among the words of the trade", p.Name)
			terms = p.Term
		}
		require.True(t, terms)
	})
}
