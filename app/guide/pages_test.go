package guide_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	pages "tipline/assets/guide"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// unshown are fields of a job that no step asks for by a label of their own: lists that the
// window shows as boxes.
var unshown = map[string]bool{"wheels": true, "tips": true}

// each runs a test on the guide of every language, with the words of that language.
func each(t *testing.T, do func(t *testing.T, g *pages.Guide, w words.Words)) {
	for _, language := range pages.Languages() {
		t.Run(language, func(t *testing.T) {
			w, err := words.Load(language)
			require.NoError(t, err)
			do(t, pages.In(language), w)
		})
	}
}

// Every field is explained on one page, and each that a page explains is there and is called
// what the window calls it.
func TestEveryFieldIsExplainedOnce(t *testing.T) {
	each(t, func(t *testing.T, g *pages.Guide, w words.Words) {
		explained := map[string]string{}
		for _, p := range g.Pages() {
			called := inLanguageOf(t, p)
			for i, b := range p.Blocks {
				if b.Field == "" {
					continue
				}
				require.Empty(t, explained[b.Field], "%s is explained on %s too", b.Field, p.Name)
				explained[b.Field] = p.Name
				_, known := job.FieldAt(geometry.Quantity(b.Field))
				require.True(t, known || w.Has("field."+b.Field), "%s: there is no field %s", p.Name, b.Field)
				if !unshown[b.Field] {
					require.Equal(t, called.Say("field."+b.Field), b.Text(), "%s: %s", p.Name, b.Field)
				}
				page, at, ok := g.For(b.Field)
				require.True(t, ok)
				require.Equal(t, p.Name, page.Name)
				require.Equal(t, i, at)
			}
		}
		for _, f := range job.Fields() {
			require.NotEmpty(t, explained[string(f.Path)], "nothing explains %s", f.Path)
		}
		for _, key := range w.Keys() {
			if path, is := strings.CutPrefix(key, "field."); is {
				require.NotEmpty(t, explained[path], "nothing explains %s", path)
			}
		}
	})
}

// inLanguageOf returns the words of the language that a page is written in.
func inLanguageOf(t *testing.T, p pages.Page) words.Words {
	w, err := words.Load(p.Language)
	require.NoError(t, err)
	return w
}

// What a page names in strong type stands on the window, word for word.
func TestWhatThePagesNameStandsOnTheWindow(t *testing.T) {
	said := map[string]map[string]bool{}
	for _, language := range pages.Languages() {
		said[language] = map[string]bool{}
		w, err := words.Load(language)
		require.NoError(t, err)
		for _, key := range w.Keys() {
			said[language][w.Say(key)] = true
		}
	}
	each(t, func(t *testing.T, g *pages.Guide, _ words.Words) {
		named := 0
		eachRun(g, func(p pages.Page, r pages.Run) {
			if r.Style == pages.Strong {
				named++
				require.True(t, said[p.Language][r.Text], "%s names %q, which the window does not say", p.Name, r.Text)
			}
		})
		require.Greater(t, named, 20)
	})
}

// A page names as much of the window in every language.
func TestAPageNamesAsMuchInEveryLanguage(t *testing.T) {
	strong := func(g *pages.Guide) map[string]int {
		count := map[string]int{}
		eachRun(g, func(p pages.Page, r pages.Run) {
			if r.Style == pages.Strong {
				count[p.Name]++
			}
		})
		return count
	}
	each(t, func(t *testing.T, g *pages.Guide, _ words.Words) {
		require.Equal(t, strong(pages.In(pages.First)), strong(g))
	})
}

// A path of a field that stands in a text, in whatever place, is that of a field.
func TestPathsInTheTextAreThoseOfFields(t *testing.T) {
	path := regexp.MustCompile(`^(teeth|blank|cutter|dividing|crossing|mount|additions)\.[a-z_.]+$`)
	each(t, func(t *testing.T, g *pages.Guide, _ words.Words) {
		eachRun(g, func(p pages.Page, r pages.Run) {
			if r.Style == pages.Typed && path.MatchString(r.Text) {
				_, known := job.FieldAt(geometry.Quantity(r.Text))
				require.True(t, known, "%s: %s", p.Name, r.Text)
			}
		})
	})
}

// The values that the page of values shows are taken: first lengths, then angles, then
// ratios.
func TestTheValuesShownAreTaken(t *testing.T) {
	take := []func(string) error{
		func(s string) error { _, err := measure.ParseLength(s, measure.MM); return err },
		func(s string) error { _, err := measure.ParseAngle(s); return err },
		func(s string) error { _, err := measure.ParseRatio(s); return err },
	}
	each(t, func(t *testing.T, g *pages.Guide, _ words.Words) {
		p, ok := g.Named("values")
		require.True(t, ok)
		under, tried := -1, map[int]int{}
		for _, b := range p.Blocks {
			if b.Kind == pages.Heading {
				under++
			}
			for _, r := range b.Runs {
				if r.Style == pages.Typed {
					tried[under]++
					require.NoError(t, take[under](r.Text), r.Text)
				}
			}
		}
		require.Greater(t, tried[0], 5)
		require.Greater(t, tried[1], 2)
		require.Len(t, tried, 3)
	})
}

func eachRun(g *pages.Guide, do func(p pages.Page, r pages.Run)) {
	for _, p := range g.Pages() {
		for _, b := range p.Blocks {
			for _, r := range b.Runs {
				do(p, r)
			}
		}
	}
}
