package command

import (
	"maps"
	"slices"
	"strings"

	"tipline/app/packet"
)

// ofNoPart are the sheets of a packet that are of no part, by the names they are asked for.
var ofNoPart = map[string]packet.Kind{"cover": packet.Cover, "stock": packet.Stock, "cautions": packet.Cautions}

// sheetNames are the names by which sheets of a packet are asked for.
func sheetNames() []string {
	return append(slices.Sorted(maps.Keys(kinds)), slices.Sorted(maps.Keys(ofNoPart))...)
}

// sheetKinds returns the kinds of sheet that are asked for, several with commas between,
// none where all are meant. A grinding template comes for both sides of the bit.
func (c *call) sheetKinds() ([]packet.Kind, error) {
	value, given := c.flags["kinds"]
	if !given {
		return nil, nil
	}
	var asked []packet.Kind
	for _, name := range strings.Split(value, ",") {
		switch kind, of := kinds[name], ofNoPart[name]; {
		case kind == packet.Grinding:
			asked = append(asked, kind, packet.Clearance)
		case kind+of != "":
			asked = append(asked, kind+of)
		default:
			return nil, refuse("command.kinds", "value", value, "choices", strings.Join(sheetNames(), ", "))
		}
	}
	return asked, nil
}
