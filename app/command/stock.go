package command

import (
	"context"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"

	"tipline/app/solve"
)

// stockCommand prints what the job needs, an item a line, as text or as CSV.
func stockCommand(c *call) (int, error) {
	r, err := c.solved(context.Background())
	if err != nil {
		return Nothing, err
	}
	items := solve.Stock(r)
	if _, asked := c.flags["csv"]; asked {
		return Done, c.stockTable(items)
	}
	return Done, c.stockList(r, items)
}

// stockList prints the items below their kinds, like ones on one line.
func (c *call) stockList(r *solve.Result, items []solve.Item) error {
	if len(items) == 0 {
		_, err := fmt.Fprintln(c.out, c.words.Say("stock.nothing"))
		return err
	}
	kind, units := solve.StockKind(""), solve.Units(r.Job, c.words)
	for _, i := range solve.Gather(items) {
		if i.Kind != kind {
			kind = i.Kind
			if _, err := fmt.Fprintln(c.out, c.words.Say("stock.kind."+string(kind))); err != nil {
				return err
			}
		}
		line := i.Describe(c.words, units)
		if i.Usual {
			line = c.words.Say("stock.usual", "item", line)
		}
		pad := strings.Repeat(" ", max(stockWidth-len([]rune(line)), 1))
		if _, err := fmt.Fprintf(c.out, "  %s%s%s\n", line, pad, i.For(c.words)); err != nil {
			return err
		}
	}
	return nil
}

// stockWidth is the columns kept for what an item is.
const stockWidth = 54

// stockTable prints the items as CSV, sizes in millimetres. Its columns are names
// for other programs and in no language.
func (c *call) stockTable(items []solve.Item) error {
	table := csv.NewWriter(c.out)
	rows := [][]string{{
		"kind", "part", "for", "name", "count", "diameter_mm", "width_mm", "thickness_mm", "length_mm", "usual",
	}}
	for _, i := range items {
		rows = append(rows, []string{
			string(i.Kind), i.Part.ID(), c.words.Say(i.Use), nameCell(i), strconv.Itoa(i.Count),
			cell(i.Diameter), cell(i.Width), cell(i.Thickness), cell(i.Length), strconv.FormatBool(i.Usual),
		})
	}
	return table.WriteAll(rows)
}

// nameCell is the item's name; of rod, which is bought by its material, it says where
// that is not known.
func nameCell(i solve.Item) string {
	if i.Name == "" && i.Kind == solve.Rod {
		return "not said"
	}
	return i.Name
}

// cell writes a size to a tenth of a micrometre; one that is not known is left
// empty.
func cell(mm float64) string {
	if mm == 0 {
		return ""
	}
	return strconv.FormatFloat(mm, 'f', 4, 64)
}
