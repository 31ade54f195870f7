package job

import (
	"regexp"
	"slices"

	"tipline/geometry"
)

// Kind says what a field takes.
type Kind int

// The kinds of field.
const (
	Text   Kind = iota
	Length      // in millimetres inside
	Angle       // in radians inside
	Count       // a whole number
	Number      // a plain number
	Choice      // one of a few words
)

// Field describes a field of a part. Min and Max are what its value may be, in
// millimetres, radians or as a plain number; they mean nothing for texts and
// choices. What a value may be beside its neighbours only solving tells.
type Field struct {
	Path     geometry.Quantity // within the part; items of a list without their index
	Kind     Kind
	Choices  []string
	Min, Max float64
}

// The limits of any length and of any count of teeth.
const (
	minLength = geometry.LeastLength
	maxLength = geometry.MostLength
	minTeeth  = 3
	maxTeeth  = 2000
)

// Fields lists every field of every kind of part, in the order of the work.
func Fields() []Field { return slices.Clone(fields) }

// FieldAt returns the field at a path; indices, as in "additions[2].radius", are
// passed over.
func FieldAt(path geometry.Quantity) (Field, bool) {
	f, ok := fieldAt[indices.ReplaceAllString(string(path), "")]
	return f, ok
}

var indices = regexp.MustCompile(`\[\d+\]`)

var fieldAt = func() map[string]Field {
	m := make(map[string]Field, len(fields))
	for _, f := range fields {
		m[string(f.Path)] = f
	}
	return m
}()

func word(path geometry.Quantity) Field { return Field{Path: path} }

func choice(path geometry.Quantity, words ...string) Field {
	return Field{Path: path, Kind: Choice, Choices: words}
}

// length is a length that is something; size may also be nothing; place may lie
// either side.
func length(path geometry.Quantity) Field {
	return Field{Path: path, Kind: Length, Min: minLength, Max: maxLength}
}

func size(path geometry.Quantity) Field { return Field{Path: path, Kind: Length, Max: maxLength} }

func place(path geometry.Quantity) Field {
	return Field{Path: path, Kind: Length, Min: -maxLength, Max: maxLength}
}

func angle(path geometry.Quantity, least, most float64) Field {
	return Field{Path: path, Kind: Angle, Min: float64(geometry.Degrees(least)), Max: float64(geometry.Degrees(most))}
}

func count(path geometry.Quantity, least, most float64) Field {
	return Field{Path: path, Kind: Count, Min: least, Max: most}
}

// fields is the registry. Ranges of angles are those of the tool's geometry; the
// rest are the program's own limits.
var fields = []Field{
	word("title"), choice("units", "mm", "in"), word("maker"), word("number"), word("revised"),
	word("id"), word("name"), length("thickness"), size("bore"), word("material"),
	choice("hand", "clockwise", "anticlockwise"), word("note"),

	choice("teeth.form", "cycloidal", "pointed", "ratchet", "lantern driver", "measured"),
	count("teeth.count", minTeeth, maxTeeth), length("teeth.module"), count("teeth.leaves", minTeeth, maxTeeth),
	length("teeth.trundle"), length("teeth.tip_diameter"), length("teeth.root_diameter"),
	angle("teeth.undercut", 0, 45), size("teeth.floor"), angle("teeth.floor_slope", 0, 30),
	length("teeth.back_radius"), angle("teeth.back_angle", 0, 85), size("teeth.back_fillet"),
	size("teeth.corner_radius"), angle("teeth.front_relief", 0, 10), size("teeth.land"),
	choice("teeth.solve", "root_diameter", "back_radius", "back_angle", "land"),

	choice("form", "cycloidal", "lantern"), count("leaves", minTeeth, maxTeeth), length("module"),
	{Path: "ratio", Kind: Number, Min: 0.1, Max: 100},
	length("trundle"),

	size("blank.oversize"), choice("blank.holding", "mandrel", "collet", "chuck", "faceplate", "adhesive"),

	length("cutter.stock_width"), length("cutter.stock_thickness"), angle("cutter.clearance", 1, 30),
	length("cutter.swing"), angle("cutter.rake", -30, 30), choice("cutter.enters", "front", "back"),
	choice("cutter.ground", "facets", "formed"), size("cutter.wheel_edge"),
	place("cutter.bit.chain.x"), place("cutter.bit.chain.y"), place("cutter.bit.chain.radius"),
	word("cutter.bit.photograph.file"), word("cutter.bit.photograph.points"), length("cutter.bit.photograph.distance"),
	word("cutter.bit.photograph.edge"), word("cutter.bit.photograph.origin"),

	count("dividing.ratio", 1, 1000), word("dividing.circles"), word("dividing.direct"),

	count("crossing.arms", 3, 12), choice("crossing.style", "straight", "swept", "waisted"),
	choice("crossing.placing", "on tips", "equal"), length("crossing.rim"), length("crossing.hub"),
	length("crossing.arm_at_rim"), length("crossing.arm_at_hub"), size("crossing.fillet_at_rim"),
	size("crossing.fillet_at_hub"), size("crossing.allowance"), word("crossing.blade"),
	length("crossing.start_hole"), angle("crossing.sweep", -90, 90), length("crossing.waist"),
	length("crossing.waist_at"), length("crossing.outer_radius"),

	count("mount.screws", 1, 24), word("mount.thread"), length("mount.screw_circle"), angle("mount.start", -360, 360),
	length("mount.collet.bore"), length("mount.collet.register"), length("mount.collet.flange"),

	choice("additions.kind", "hole", "circle", "line", "note"), size("additions.radius"),
	angle("additions.angle", -360, 360), length("additions.diameter"), size("additions.to_radius"),
	angle("additions.to_angle", -360, 360), count("additions.repeat", 1, 360), word("additions.text"),

	word("parts"), word("wheel"), word("pinion"), length("centres"), word("wheels"), word("tips"),
	size("misplacement"), word("from"), word("to"), word("hour"),
	{Path: "turns", Kind: Number, Min: 0.001, Max: 3600},
}
