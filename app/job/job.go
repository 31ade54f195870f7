// Package job holds a job as its maker typed it: parts, arbors, pairs and stacks,
// how they are read from a file and saved, and the history that undo goes back
// through. It works nothing out.
package job

import "encoding/json"

// Value is a length, angle, count or word exactly as it was typed. The zero
// Value is a field left empty.
type Value struct {
	Text   string
	number bool // it stood as a bare number in the file, and is written as one
}

// Empty reports whether nothing was typed.
func (v Value) Empty() bool { return v.Text == "" }

// Member is a field that this program does not know, kept as it stood.
type Member struct {
	Name string
	Raw  json.RawMessage
}

// Job is one movement's parts. A Job and everything it points at is never changed
// once made: an edit makes a new Job that shares the parts it did not touch.
type Job struct {
	Version int       `json:"tipline"`
	Title   string    `json:"title"`
	Units   string    `json:"units"` // "mm" or "in"
	Maker   string    `json:"maker"`
	Number  string    `json:"number"`
	Revised string    `json:"revised"` // year-month-day
	Wheels  []*Wheel  `json:"wheels"`
	Pinions []*Pinion `json:"pinions"`
	Arbors  []*Arbor  `json:"arbors"`
	Pairs   []*Pair   `json:"pairs"`
	Stacks  []*Stack  `json:"stacks"`
	Trains  []*Train  `json:"trains"`
	Unknown []Member  `json:"-"`
}

// Wheel is a wheel and the steps it goes through. A step that is nil is not done.
type Wheel struct {
	ID        string      `json:"id"`
	Name      string      `json:"name"`
	Thickness Value       `json:"thickness"`
	Bore      Value       `json:"bore"`
	Material  Value       `json:"material"`
	Hand      Value       `json:"hand"`
	Note      string      `json:"note"`
	Teeth     *Teeth      `json:"teeth"`
	Blank     *Blank      `json:"blank"`
	Cutter    *Cutter     `json:"cutter"`
	Dividing  *Dividing   `json:"dividing"`
	Crossing  *Crossing   `json:"crossing"`
	Mount     *Mount      `json:"mount"`
	Additions []*Addition `json:"additions"`
	Unknown   []Member    `json:"-"`
}

// Teeth are a wheel's teeth; Form says which of the other fields count.
type Teeth struct {
	Form         Value    `json:"form"`
	Count        Value    `json:"count"`
	Module       Value    `json:"module"`
	Leaves       Value    `json:"leaves"`
	Trundle      Value    `json:"trundle"`
	TipDiameter  Value    `json:"tip_diameter"`
	RootDiameter Value    `json:"root_diameter"`
	Undercut     Value    `json:"undercut"`
	Floor        Value    `json:"floor"`
	FloorSlope   Value    `json:"floor_slope"`
	BackRadius   Value    `json:"back_radius"`
	BackAngle    Value    `json:"back_angle"`
	BackFillet   Value    `json:"back_fillet"`
	CornerRadius Value    `json:"corner_radius"`
	FrontRelief  Value    `json:"front_relief"`
	Land         Value    `json:"land"`
	Solve        Value    `json:"solve"`
	Unknown      []Member `json:"-"`
}

// Blank is how the blank is turned and held.
type Blank struct {
	Oversize Value    `json:"oversize"`
	Holding  Value    `json:"holding"`
	Unknown  []Member `json:"-"`
}

// Cutter is the bit and how it is ground and swung.
type Cutter struct {
	StockWidth     Value    `json:"stock_width"`
	StockThickness Value    `json:"stock_thickness"`
	Clearance      Value    `json:"clearance"`
	Swing          Value    `json:"swing"`
	Rake           Value    `json:"rake"`
	Enters         Value    `json:"enters"`
	Ground         Value    `json:"ground"`
	WheelEdge      Value    `json:"wheel_edge"` // radius of the grinding wheel's edge
	Bit            *Bit     `json:"bit"`
	Unknown        []Member `json:"-"`
}

// Bit is the bit as it was really ground.
type Bit struct {
	Chain      []*Corner   `json:"chain"`
	Photograph *Photograph `json:"photograph"`
	Unknown    []Member    `json:"-"`
}

// Corner is one end point of a measured bit's edge and the radius of the arc that
// leads to it; empty for a line.
type Corner struct {
	X       Value    `json:"x"`
	Y       Value    `json:"y"`
	Radius  Value    `json:"radius"`
	Unknown []Member `json:"-"`
}

// Photograph is a picture of the bit, kept beside the job, and how it lies under
// the form: two points that stand Distance apart give its scale; Edge is two
// points of a line along the infeed, the first towards the cutting end; Origin is
// where the form has its x = 0 and y = 0, Edge's first point where it is empty.
type Photograph struct {
	File     string   `json:"file"`
	Points   Pixels   `json:"points"`
	Distance Value    `json:"distance"`
	Edge     Pixels   `json:"edge"`
	Origin   Pixels   `json:"origin"`
	Unknown  []Member `json:"-"`
}

// Dividing is the head and plates used.
type Dividing struct {
	Ratio   Value    `json:"ratio"`
	Circles []Value  `json:"circles"`
	Direct  []Value  `json:"direct"`
	Unknown []Member `json:"-"`
}

// Crossing is the arms and windows.
type Crossing struct {
	Arms        Value    `json:"arms"`
	Style       Value    `json:"style"`
	Placing     Value    `json:"placing"`
	Rim         Value    `json:"rim"`
	Hub         Value    `json:"hub"`
	ArmAtRim    Value    `json:"arm_at_rim"`
	ArmAtHub    Value    `json:"arm_at_hub"`
	FilletAtRim Value    `json:"fillet_at_rim"`
	FilletAtHub Value    `json:"fillet_at_hub"`
	Allowance   Value    `json:"allowance"`
	Blade       Value    `json:"blade"`
	StartHole   Value    `json:"start_hole"`
	Sweep       Value    `json:"sweep"`
	Waist       Value    `json:"waist"`
	WaistAt     Value    `json:"waist_at"`
	OuterRadius Value    `json:"outer_radius"`
	Unknown     []Member `json:"-"`
}

// Mount is how a wheel or stack is screwed to its collet.
type Mount struct {
	Screws      Value    `json:"screws"`
	Thread      Value    `json:"thread"`
	ScrewCircle Value    `json:"screw_circle"`
	Start       Value    `json:"start"`
	Collet      *Collet  `json:"collet"`
	Unknown     []Member `json:"-"`
}

// Collet is what a wheel is screwed to.
type Collet struct {
	Bore     Value    `json:"bore"`
	Register Value    `json:"register"`
	Flange   Value    `json:"flange"`
	Unknown  []Member `json:"-"`
}

// Addition is a hole, circle, line or note of the maker's own.
type Addition struct {
	Kind     Value    `json:"kind"`
	Radius   Value    `json:"radius"`
	Angle    Value    `json:"angle"`
	Diameter Value    `json:"diameter"`
	ToRadius Value    `json:"to_radius"`
	ToAngle  Value    `json:"to_angle"`
	Repeat   Value    `json:"repeat"`
	Text     string   `json:"text"`
	Unknown  []Member `json:"-"`
}

// Pinion is a pinion of leaves or a lantern pinion.
type Pinion struct {
	ID        string    `json:"id"`
	Name      string    `json:"name"`
	Form      Value     `json:"form"`
	Leaves    Value     `json:"leaves"`
	Module    Value     `json:"module"`
	Ratio     Value     `json:"ratio"`
	Trundle   Value     `json:"trundle"`
	Thickness Value     `json:"thickness"`
	Bore      Value     `json:"bore"`
	Cutter    *Cutter   `json:"cutter"`
	Dividing  *Dividing `json:"dividing"`
	Note      string    `json:"note"`
	Unknown   []Member  `json:"-"`
}

// Arbor names the parts that turn together.
type Arbor struct {
	ID      string   `json:"id"`
	Parts   []string `json:"parts"`
	Note    string   `json:"note"`
	Unknown []Member `json:"-"`
}

// Pair is a wheel and the pinion it drives.
type Pair struct {
	ID      string   `json:"id"`
	Wheel   string   `json:"wheel"`
	Pinion  string   `json:"pinion"`
	Centres Value    `json:"centres"`
	Note    string   `json:"note"`
	Unknown []Member `json:"-"`
}

// Stack is wheels on one collet with their tips in line.
type Stack struct {
	ID           string   `json:"id"`
	Wheels       []string `json:"wheels"`
	Tips         []Value  `json:"tips"`
	Misplacement Value    `json:"misplacement"`
	Mount        *Mount   `json:"mount"`
	Note         string   `json:"note"`
	Unknown      []Member `json:"-"`
}

// Train is the pairs from one part to another. The part Hour, From where it is
// empty, turns Turns times an hour, once where that is empty.
type Train struct {
	ID      string   `json:"id"`
	From    string   `json:"from"`
	To      string   `json:"to"`
	Hour    string   `json:"hour"`
	Turns   Value    `json:"turns"`
	Note    string   `json:"note"`
	Unknown []Member `json:"-"`
}
