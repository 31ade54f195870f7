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

// Every field is explained on one page, and each that a page explains is there and is called
// what the window calls it.
func TestEveryFieldIsExplainedOnce(t *testing.T) {
	explained := map[string]string{}
	w := words.English()
	for _, p := range pages.Pages() {
		for i, b := range p.Blocks {
			if b.Field == "" {
				continue
			}
			require.Empty(t, explained[b.Field], "%s is explained on %s too", b.Field, p.Name)
			explained[b.Field] = p.Name
			_, known := job.FieldAt(geometry.Quantity(b.Field))
			require.True(t, known || w.Has("field."+b.Field), "%s: there is no field %s", p.Name, b.Field)
			if !unshown[b.Field] {
				require.Equal(t, w.Say("field."+b.Field), b.Text(), "%s: %s", p.Name, b.Field)
			}
			page, at, ok := pages.For(b.Field)
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
}

// What a page names in strong type stands on the window, word for word.
func TestWhatThePagesNameStandsOnTheWindow(t *testing.T) {
	w, said := words.English(), map[string]bool{}
	for _, key := range w.Keys() {
		said[w.Say(key)] = true
	}
	named := 0
	eachRun(func(page string, r pages.Run) {
		if r.Style == pages.Strong {
			named++
			require.True(t, said[r.Text], "%s names %q, which the window does not say", page, r.Text)
		}
	})
	require.Greater(t, named, 20)
}

// A path of a field that stands in a text, in whatever place, is that of a field.
func TestPathsInTheTextAreThoseOfFields(t *testing.T) {
	path := regexp.MustCompile(`^(teeth|blank|cutter|dividing|crossing|mount|additions)\.[a-z_.]+$`)
	eachRun(func(page string, r pages.Run) {
		if r.Style == pages.Typed && path.MatchString(r.Text) {
			_, known := job.FieldAt(geometry.Quantity(r.Text))
			require.True(t, known, "%s: %s", page, r.Text)
		}
	})
}

// The values that the page of values shows are taken.
func TestTheValuesShownAreTaken(t *testing.T) {
	p, ok := pages.Named("values")
	require.True(t, ok)
	under, tried := "", map[string]int{}
	for _, b := range p.Blocks {
		if b.Kind == pages.Heading {
			under = b.Text()
		}
		for _, r := range b.Runs {
			if r.Style != pages.Typed {
				continue
			}
			tried[under]++
			var err error
			switch under {
			case "Lengths":
				_, err = measure.ParseLength(r.Text, measure.MM)
			case "Angles":
				_, err = measure.ParseAngle(r.Text)
			default:
				_, err = measure.ParseRatio(r.Text)
			}
			require.NoError(t, err, "%s: %s", under, r.Text)
		}
	}
	require.Greater(t, tried["Lengths"], 5)
	require.Greater(t, tried["Angles"], 2)
	require.Len(t, tried, 3)
}

func eachRun(do func(page string, r pages.Run)) {
	for _, p := range pages.Pages() {
		for _, b := range p.Blocks {
			for _, r := range b.Runs {
				do(p.Name, r)
			}
		}
	}
}
