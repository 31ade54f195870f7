package packet_test

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/render"
	"tipline/render/sheet"
)

var sheetNumbers = regexp.MustCompile(`^\d+(–\d+)?(, \d+(–\d+)?)*$`)

// told are the sheets that the cover tells of each name, where the column of sheets is:
// the names as they come, and the numbers that end their rows.
type told struct {
	name   string
	sheets []int
}

// contentsOf reads the contents off a cover that is laid out.
func contentsOf(t *testing.T, cover render.Page, names map[string]bool) (all []told) {
	var name string
	for _, it := range cover.Drawing.Items {
		switch {
		case it.Text == nil || it.Layer != render.LayerText:
		case it.Text.Bold && names[it.Text.String]:
			name = it.Text.String
		case name != "" && sheetNumbers.MatchString(it.Text.String):
			if last := len(all) - 1; last >= 0 && all[last].name == name {
				all = all[:last] // a count or another figure: the sheets end the row
			}
			all = append(all, told{name, numbersIn(t, it.Text.String)})
		}
	}
	return all
}

func numbersIn(t *testing.T, text string) (all []int) {
	for _, run := range strings.Split(text, ", ") {
		from, to, ranged := strings.Cut(run, "–")
		first, err := strconv.Atoi(from)
		require.NoError(t, err)
		last := first
		if ranged {
			last, err = strconv.Atoi(to)
			require.NoError(t, err)
		}
		for n := first; n <= last; n++ {
			all = append(all, n)
		}
	}
	return all
}

// standsOn lists the sheets, from 1, on which a drawing stands with that title, or of that
// part: its title is the name, or begins with it.
func standsOn(doc render.Document, name string, part bool) (all []int) {
	for i, page := range doc.Pages {
		for title := range strings.SplitSeq(page.Drawing.Title, "\n") {
			if title == name || part && strings.HasPrefix(title, name) && strings.HasPrefix(strings.TrimSpace(title[len(name):]), ":") {
				all = append(all, i+1)
			}
		}
	}
	return slices.Compact(all)
}

// requireContents requires that the cover tells the sheets of everything behind it, and
// that each stands there and nowhere else.
func requireContents(t *testing.T, r *solve.Result, o packet.Options) {
	doc, err := packet.Build(t.Context(), r, o)
	require.NoError(t, err)
	parts, names := map[string]bool{}, map[string]bool{}
	for _, p := range r.Parts() {
		switch p.(type) {
		case solve.Made, *solve.Pair:
			parts[p.Name()], names[p.Name()] = true, true
		}
	}
	var covers int
	for covers < len(doc.Pages) && doc.Pages[covers].Drawing.Title == doc.Title {
		covers++
	}
	for _, page := range doc.Pages[covers:] {
		for title := range strings.SplitSeq(page.Drawing.Title, "\n") {
			names[title] = true
		}
	}
	reached := map[int]bool{}
	for _, row := range contentsOf(t, front(doc), names) {
		stands := standsOn(doc, row.name, parts[row.name])
		if !parts[row.name] {
			require.Equal(t, stands[0], row.sheets[0], row.name) // a stack's also holds its card
			require.Subset(t, row.sheets, stands, row.name)
		} else {
			require.Equal(t, stands, row.sheets, row.name)
		}
		for _, n := range row.sheets {
			reached[n] = true
		}
	}
	require.Len(t, reached, len(doc.Pages)-covers, "every sheet behind the cover is told")
}

// Every number that the cover tells is that of a sheet on which the part's titles stand, on
// every sample, paper and language, whatever shares a sheet.
func TestTheCoverTellsWhereEverythingIs(t *testing.T) {
	languages := []string{"en", "de", "fr"}
	eachSample(t, func(name string, r *solve.Result) {
		for i, paper := range []string{"a4", "letter", "a3"} {
			o := options(t, r.Job)
			var err error
			o.Paper, err = sheet.ParsePaper(paper)
			require.NoError(t, err)
			o.Style.Words, err = words.Load(languages[i])
			require.NoError(t, err)
			o.Style.Units = solve.Units(r.Job, o.Style.Words)
			t.Run(name+" "+paper, func(t *testing.T) { requireContents(t, r, o) })
		}
	})
}

// Where templates of many parts share sheets, each printed twice, the cover still tells all
// the sheets of a part and no others, and its bookmark leads to one of them.
func TestTheCoverTellsOfTemplatesTogether(t *testing.T) {
	r := solve.Solve(t.Context(), sample(t))
	o := options(t, r.Job)
	o.Copies, o.Printing.Together = 2, true
	doc, err := packet.Build(t.Context(), r, o)
	require.NoError(t, err)
	parts, names := map[string]bool{}, map[string]bool{}
	for _, p := range r.Parts() {
		_, made := p.(solve.Made)
		names[p.Name()], parts[p.Name()] = true, made
	}
	for _, page := range doc.Pages {
		names[page.Drawing.Title] = true
	}
	shared := 0
	for _, row := range contentsOf(t, front(doc), names) {
		if !parts[row.name] {
			continue
		}
		stands := mentions(doc, row.name)
		require.Equal(t, stands, row.sheets, row.name)
		for _, n := range stands {
			if doc.Pages[n-1].Drawing.Title == o.Style.Words.Say("sheet.together") {
				shared++
			}
		}
		mark := slices.IndexFunc(doc.Bookmarks, func(b render.Bookmark) bool { return b.Title == row.name })
		require.Contains(t, stands, doc.Bookmarks[mark].Page, row.name)
		for _, under := range doc.Bookmarks[mark].Under {
			require.Contains(t, stands, under.Page, "%s: %s", row.name, under.Title)
		}
		parts[row.name] = false
	}
	require.NotContains(t, slices.Collect(maps.Values(parts)), true, "every part is told")
	require.Positive(t, shared, "copies stand on sheets of several parts")
}

// mentions lists the sheets, from 1, behind the cover on which a drawing of that part has
// its title, or its label with the copy that it is.
func mentions(doc render.Document, name string) (all []int) {
	for i, page := range doc.Pages {
		for _, it := range page.Drawing.Items {
			if it.Text == nil || it.Layer != render.LayerSheet || !it.Text.Bold || page.Drawing.Title == doc.Title {
				continue
			}
			if rest, ok := strings.CutPrefix(it.Text.String, name); ok && (rest == "" || strings.ContainsAny(rest[:1], ":,")) {
				all = append(all, i+1)
			}
		}
	}
	return slices.Compact(all)
}

// A cover alone has nothing behind it to tell.
func TestACoverAloneTellsNoSheets(t *testing.T) {
	r := solve.Solve(t.Context(), sample(t))
	o := options(t, r.Job)
	o.Kinds = []packet.Kind{packet.Cover}
	doc, err := packet.Build(t.Context(), r, o)
	require.NoError(t, err)
	require.False(t, says(front(doc), o.Style.Words.Say("packet.column.sheets")))
}

// A bookmark stands for each part on the page where it begins, and below it one for each of
// its sheets; then for what is of no part.
func TestBookmarksLeadToTheParts(t *testing.T) {
	j := sample(t)
	doc := build(t, j, options(t, j))
	stands := func(mark render.Bookmark, name string) {
		titles := strings.Split(doc.Pages[mark.Page-1].Drawing.Title, "\n")
		require.True(t, slices.ContainsFunc(titles, func(title string) bool { return strings.HasPrefix(title, name) }),
			"%s on sheet %d with %q", name, mark.Page, titles)
	}
	require.Equal(t, render.Bookmark{Title: "Packet", Page: 1}, doc.Bookmarks[0])
	var names []string
	for _, mark := range doc.Bookmarks[1:] {
		names = append(names, mark.Title)
		stands(mark, mark.Title)
		for _, under := range mark.Under {
			require.NotEmpty(t, under.Title)
			stands(under, mark.Title)
		}
	}
	for _, p := range solve.Solve(t.Context(), j).Parts() {
		require.Contains(t, names, p.Name())
	}
	require.Equal(t, "Cautions", names[len(names)-1])
}
