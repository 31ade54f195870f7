package packet

import (
	"context"
	"slices"
	"strconv"
	"strings"

	"tipline/app/solve"
	"tipline/geometry/fault"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// contents are the sheets behind the cover, and what each is told under there.
type contents struct {
	sheets   []sheet.Sheet
	subjects []subject
	run      *sheet.Run
}

// subject is what the contents tell the sheets of under one name: a part, or where they
// are of none, what their title says.
type subject struct{ part, title string }

// planContents plans all that comes behind the cover.
func planContents(ctx context.Context, r *solve.Result, o Options) (*contents, error) {
	c := &contents{}
	c.add("", stock(r, o)...)
	parts := o.Printed(r)
	of := make([][]sheet.Sheet, len(parts))
	failed := make([]error, len(parts))
	fault.All(len(parts), func(i int) {
		if failed[i] = ctx.Err(); failed[i] == nil {
			of[i], failed[i] = partSheets(r, parts[i], o)
		}
	})
	for i, p := range parts {
		if failed[i] != nil {
			return c, failed[i]
		}
		c.add(p.ID(), of[i]...)
	}
	if o.Takes(Cautions) {
		c.add("", sheet.Sheet{Drawing: template.Cautions(o.Style), Block: titleBlock(r, o.Style.Words.Say("template.kind.cautions"))})
	}
	var err error
	c.run, err = sheet.Plan(ctx, c.sheets, o.Paper, o.Style, o.Printing)
	return c, err
}

// add adds sheets of a part, among which may be some that are of all.
func (c *contents) add(part string, sheets ...sheet.Sheet) {
	for _, sh := range sheets {
		of := subject{part: part}
		if sh.Block.Part == "" {
			of = subject{title: sh.Drawing.Title}
		}
		c.sheets, c.subjects = append(c.sheets, sh), append(c.subjects, of)
	}
}

// on says on which sheets of paper a subject stands, behind so many of the cover.
func (c *contents) on(of subject, behind int) string {
	var numbers []int
	for i, s := range c.subjects {
		if s != of {
			continue
		}
		for _, n := range c.run.On(i) {
			numbers = append(numbers, n+behind)
		}
	}
	return runs(numbers)
}

// besides lists what is not of those parts, each with its title and the sheets it is on.
func (c *contents) besides(told map[string]bool, behind int) []template.Row {
	var rows []template.Row
	for i, of := range c.subjects {
		if !told[of.part] && slices.Index(c.subjects, of) == i {
			rows = append(rows, template.Row{c.sheets[i].Drawing.Title, c.on(of, behind)})
		}
	}
	return rows
}

// bookmarks lead to each subject, and under it to each of its sheets where it has more
// than one, behind so many of the cover.
func (c *contents) bookmarks(behind int) []render.Bookmark {
	var marks []render.Bookmark
	for i, sh := range c.sheets {
		page := c.run.On(i)[0] + behind
		if i == 0 || c.subjects[i] != c.subjects[i-1] {
			title := sh.Block.Part
			if title == "" {
				title = sh.Drawing.Title
			}
			marks = append(marks, render.Bookmark{Title: title, Page: page})
		}
		part := &marks[len(marks)-1]
		part.Under = append(part.Under, render.Bookmark{Title: sh.Block.Kind, Page: page})
	}
	for i := range marks {
		if len(marks[i].Under) == 1 {
			marks[i].Under = nil
		}
	}
	return marks
}

// runs writes numbers in their order, those that follow one another as "4–7"; a dash where
// there is none.
func runs(numbers []int) string {
	slices.Sort(numbers)
	numbers = slices.Compact(numbers)
	var all []string
	for i := 0; i < len(numbers); {
		from := i
		for i++; i < len(numbers) && numbers[i] == numbers[i-1]+1; i++ {
		}
		text := strconv.Itoa(numbers[from])
		if i-from > 1 {
			text += "–" + strconv.Itoa(numbers[i-1])
		}
		all = append(all, text)
	}
	if len(all) == 0 {
		return unknown
	}
	return strings.Join(all, ", ")
}
