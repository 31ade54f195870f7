package solve

import (
	"strings"

	"tipline/assets/words"
	"tipline/geometry/measure"
)

// Describe says what an item is: its name, as much of its size as is known, and how
// many.
func (i Item) Describe(w words.Words, u measure.Units) string {
	var said []string
	if i.Name != "" {
		said = append(said, w.Choice("material", i.Name))
	}
	for _, size := range []struct {
		code string
		mm   float64
	}{
		{"stock.diameter", i.Diameter},
		{"stock.width", i.Width},
		{"stock.thickness", i.Thickness},
		{i.lengthCode(), i.Length},
	} {
		if size.mm > 0 {
			said = append(said, w.Say(size.code, "value", u.Length(size.mm)))
		}
	}
	if len(said) == 0 {
		said = append(said, w.Say("stock.size-not-said"))
	}
	text := strings.Join(said, ", ")
	if i.Count > 1 {
		text = w.Say("stock.several", "count", u.Number(float64(i.Count), 0), "item", text)
	}
	return text
}

// lengthCode is the key of the catalogue for what the item's length is.
func (i Item) lengthCode() string {
	switch i.Kind {
	case Blade:
		return "stock.cut"
	case Screw:
		return "stock.through"
	}
	return "stock.length"
}

// For says which part an item is for, and as what.
func (i Item) For(w words.Words) string {
	return w.Say("stock.for", "part", i.Part.Name(), "use", w.Say(i.Use))
}
