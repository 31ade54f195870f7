package template

import "tipline/render"

// Notes is what a sheet says beside a drawing: what its lines mean, the settings
// of the step, and a line of caution at the foot.
type Notes struct {
	Legend  []Mark
	Figures []Figure
	Caution string
}

// Figure is one computed figure with its name.
type Figure struct{ Label, Value string }

// Mark is one line of a legend: a sample of a line, a filled patch or a circle,
// and what it means.
type Mark struct {
	Pen   render.Pen
	Ink   render.Ink
	Fill  render.Fill // a patch filled so, instead of a line
	Round bool        // a circle instead of a line
	Text  string
}
