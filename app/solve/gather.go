package solve

import (
	"slices"
	"strings"

	"tipline/assets/words"
)

// Gathered is what several parts need alike, got in as one line.
type Gathered struct {
	Item        // its count, and of a blade the cut it makes, for all of them together
	Uses []Item // what it is for, in the order they are listed
}

// Gather puts like items on one line: tool bits and screws are added up, while one
// drill, tap or blade serves wherever it is asked for. Blanks, rod and wire stay as
// they are, each cut for its own part.
func Gather(items []Item) []Gathered {
	var all []Gathered
	for _, i := range items {
		at := slices.IndexFunc(all, func(g Gathered) bool { return g.takes(i) })
		if at < 0 {
			all = append(all, Gathered{i, []Item{i}})
			continue
		}
		g := &all[at]
		g.Uses = append(g.Uses, i)
		switch i.Kind {
		case ToolBit, Screw:
			g.Count += i.Count
		case Blade:
			g.Length += i.Length
		}
	}
	return all
}

// takes reports whether an item is the same thing to get in.
func (g Gathered) takes(i Item) bool {
	shared := []StockKind{ToolBit, Drill, Tap, Screw, Blade}
	one := g.Item
	one.Part, one.Use, one.Count = i.Part, i.Use, i.Count
	if i.Kind == Blade {
		one.Length = i.Length
	}
	return slices.Contains(shared, i.Kind) && one == i
}

// For says which parts the line is for, and as what, each once.
func (g Gathered) For(w words.Words) string {
	var said []string
	for _, i := range g.Uses {
		if one := i.For(w); !slices.Contains(said, one) {
			said = append(said, one)
		}
	}
	return strings.Join(said, "; ")
}
