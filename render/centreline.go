package render

import "tipline/geometry"

// CentreLine returns a centre line between the points: chain, thin and blue.
// Points that coincide give an item that draws nothing.
func CentreLine(from, to geometry.Point) Item {
	it := Item{Layer: LayerCentreLines, Pen: Centre, Ink: Blue}
	if chain, err := geometry.NewChain([]geometry.Vertex{{Point: from}, {Point: to}}); err == nil {
		it.Chains = []geometry.Chain{chain}
	}
	return it
}
