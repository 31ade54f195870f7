package desk

import (
	"slices"

	"tipline/app/packet"
	"tipline/render/template"
)

// Stock lists what is to be got in for the job, by kind; a kind of which nothing is needed
// is left out.
func (d *Desk) Stock() []template.StockGroup {
	return slices.DeleteFunc(packet.StockGroups(d.result, d.words), func(g template.StockGroup) bool { return len(g.Rows) == 0 })
}
