package sheet

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/render"
)

// published returns the rows of a topic in the table of published values, each with
// its source.
func published(t *testing.T, topic, item string) []map[string]string {
	file, err := os.Open("../../testdata/paper.csv")
	require.NoError(t, err)
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	var rows []map[string]string
	for _, record := range records[1:] {
		row := map[string]string{}
		for i, column := range records[0] {
			row[column] = record[i]
		}
		require.NotEmpty(t, row["source"])
		if strings.HasPrefix(row["topic"], topic) && strings.HasPrefix(row["item"], item) {
			rows = append(rows, row)
		}
	}
	require.NotEmpty(t, rows, "%s %s", topic, item)
	return rows
}

func float(t *testing.T, text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}

func TestPapersAreAsPublished(t *testing.T) {
	for name, row := range map[string]map[string]string{
		"a4": published(t, "ISO 216", "A4")[0], "a3": published(t, "ISO 216", "A3")[0],
		"letter": published(t, "ANSI Y14.1", "A (Letter)")[0], "legal": published(t, "ANSI Y14.1", "Legal")[0],
		"tabloid": published(t, "ANSI Y14.1", "B (Tabloid)")[0],
	} {
		paper, err := ParsePaper(name)
		require.NoError(t, err)
		require.Equal(t, row["value"], fmt.Sprintf("%g x %g", paper.Width, paper.Height), row["source"])
	}
}

func TestMarginsAreAsPublished(t *testing.T) {
	require.Equal(t, float(t, published(t, "ISO 5457:1999", "frame margin, left")[0]["value"]), marginFiling)
	require.Equal(t, float(t, published(t, "ISO 5457:1999", "frame margin, other")[0]["value"]), margin)
	require.Equal(t, float(t, published(t, "ISO 7200:2004", "title block width")[0]["value"]), blockWidth)
}

// Corner crosses, bars and all else that proves the scale do not hang on the sheet's
// edge, which may be out by more than a printer: they are measured from mark to mark.
func TestTheEdgeIsNoReference(t *testing.T) {
	trim := float(t, published(t, "ISO 216", "trim tolerance, above 150")[0]["value"])
	pages, err := Place(plate(60, 40, 1), Papers()[0], block, style)
	require.NoError(t, err)
	bounds := pages[0].Drawing.Bounds()
	require.Greater(t, bounds.Min.X, trim)
	require.Greater(t, pages[0].Width-bounds.Max.X, trim)
}

// Each mandatory field of ISO 7200 is in the title block and has room for the
// recommended number of characters. One person in a home shop owns, creates and
// approves, so those three share a field.
func TestTheTitleBlocksFields(t *testing.T) {
	shown := map[string]string{
		"legal owner": "sheet.owner", "creator": "sheet.owner", "approval person": "sheet.owner",
		"identification number": "sheet.number", "date of issue": "sheet.date", "segment/sheet number": "sheet.sheet",
		"title": "sheet.title", "supplementary title": "sheet.part", "document type": "sheet.kind",
	}
	rows := TitleBlock{}.rows(style.Words.Say)
	for _, row := range published(t, "ISO 7200:2004", "field: ") {
		field := strings.TrimPrefix(row["item"], "field: ")
		key, ok := shown[field]
		require.True(t, ok || row["note"] == "mandatory: no", "%s is missing", field)
		count, err := strconv.Atoi(row["value"])
		if !ok || err != nil {
			continue
		}
		label := style.Words.Say(key)
		found := false
		for _, cells := range rows {
			total := 0.0
			for _, c := range cells {
				total += c.share
			}
			for _, c := range cells {
				if c.label == label {
					found = true
					text := strings.Repeat("Escape 1", 4)[:count]
					width := blockWidth*c.share/total - 1.5*cellInset
					require.Equal(t, text, fit(text, false, width, heightText, heightSmall, heightLabel).String, "%s: %s", field, row["source"])
				}
			}
		}
		require.True(t, found, field)
	}
}

// All lettering is of a height of the series, a card that was made smaller apart.
func TestLetteringIsOfTheSeries(t *testing.T) {
	series := map[float64]bool{}
	for _, row := range published(t, "ISO 3098", "lettering height") {
		series[float(t, row["value"])] = true
	}
	a4 := Papers()[0]
	sheets := []Sheet{TestSheet(a4, style), {Drawing: plate(900, 400, 1), Block: block}, {Drawing: plate(20, 20, 1), Block: block}, {Drawing: plate(30, 20, 1), Block: block}}
	for _, o := range []Options{{}, {Together: true}} {
		pages, err := LayContext(t.Context(), sheets, a4, style, o)
		require.NoError(t, err)
		for _, page := range pages {
			for _, it := range page.Drawing.Items {
				require.True(t, it.Text == nil || series[it.Text.Height], "%v", it.Text)
			}
		}
	}
}

// Pens are of the series, and the wide one is about twice the narrow (ISO 128).
func TestPensAreOfTheSeries(t *testing.T) {
	series := map[float64]bool{}
	for _, row := range published(t, "ISO 128-20", "line width series") {
		series[float(t, row["value"])] = true
	}
	for _, pen := range []render.Pen{render.Visible, render.Thin, render.Hidden, render.Centre, render.Hair} {
		require.True(t, series[pen.Width()], "%v", pen.Width())
	}
	require.Equal(t, "2:1", published(t, "ISO 128", "wide : narrow")[0]["value"])
	require.InDelta(t, 2, render.Visible.Width()/render.Thin.Width(), 0.06)
	require.GreaterOrEqual(t, barGap, float(t, published(t, "ISO 128", "least gap")[0]["value"]))
}

func TestScalesAreWrittenAsPublished(t *testing.T) {
	for _, row := range published(t, "ISO 5455:1979", "recommended scale") {
		large, small, ok := strings.Cut(row["value"], ":")
		require.True(t, ok)
		require.Equal(t, large+" : "+small, scaleText(float(t, large)/float(t, small)), row["source"])
	}
}

// The greatest error that is taken for a printer's is the greatest that makers were
// quoted with.
func TestMostErrorIsAsQuoted(t *testing.T) {
	most := 0.0
	for _, row := range published(t, "printer scale", "") {
		if row["quantity_and_unit"] == "percent" {
			most = max(most, float(t, row["value"]))
		}
	}
	require.InDelta(t, most/100, MostError, 1e-12)
}
