package guide

import (
	"maps"
	"slices"

	"tipline/app/packet"
	"tipline/geometry"
)

// The drawings of the window, beside those that are printed.
const (
	viewBlank    packet.Kind = "blank on the window"
	viewPinion   packet.Kind = "pinion on the window"
	viewCutter   packet.Kind = "cutter on the window" // without the bit as it was ground
	viewBit      packet.Kind = "bit on the window"    // with it
	viewDividing packet.Kind = "dividing on the window"
	viewPair     packet.Kind = "pair on the window"
)

// shot says what a picture is taken of, what of it is lit, and from how near.
type shot struct {
	part  string
	of    packet.Kind
	scale float64 // of a grinding template
	turn  float64 // of a pair
	lit   []geometry.Quantity
	near  float64 // half the width that is seen, in millimetres of the drawing; 0 is all of it
	x, y  float64 // its middle
	high  float64 // as a share of its width
}

// Names lists the pictures.
func Names() []string { return slices.Sorted(maps.Keys(shots)) }

// shots are the pictures by name: of a page about a word of the trade the page's own, and
// the sheets and views that a part goes through.
var shots = map[string]shot{
	"escape-blank":    {part: "escape", of: packet.Blank},
	"escape-crossing": {part: "escape", of: packet.Crossing},
	"escape-depth":    {part: "escape", of: packet.Depth},
	"escape-dividing": {part: "escape", of: packet.Dividing},
	"escape-drilling": {part: "escape", of: packet.Drilling},
	"escape-scribing": {part: "escape", of: packet.Scribing},
	"escape-setting":  {part: "escape", of: packet.Setting},
	"escape-bit":      {part: "escape", of: viewBit},
	"escape-cutter":   {part: "escape", of: viewCutter},
	"going-train":     {part: "going", of: packet.Train},
	"great-blank":     {part: "great", of: packet.Blank},
	"great-cutter":    {part: "great", of: viewCutter},
	"great-crossing":  {part: "great", of: packet.Crossing},
	"great-drilling":  {part: "great", of: packet.Drilling},
	"great-pair":      {part: "great-centre", of: viewPair},
	"hour-stack":      {part: "hour-pipe", of: packet.Stack},
	"minute-crossing": {part: "minute", of: packet.Crossing},
	"third-crossing":  {part: "third", of: packet.Crossing},
	"third-dividing":  {part: "third", of: packet.Dividing},
	"third-depthing":  {part: "third-escape", of: packet.Depthing},
	"third-scribing":  {part: "third", of: packet.Scribing},
	"third-shroud":    {part: "third-pinion", of: packet.Shroud},
	"escape-pinion":   {part: "escape-pinion", of: viewPinion},
	"escape-grinding": {part: "escape", of: packet.Grinding, scale: 10},
	"great-grinding":  {part: "great", of: packet.Grinding, scale: 10},
	"great-clearance": {part: "great", of: packet.Clearance, scale: 10},

	"addendum":       {part: "great-centre", of: viewPair, lit: of("teeth.leaves"), near: 14, x: 0, y: 3},
	"backlash":       {part: "great-centre", of: viewPair, near: 10, x: 2, y: 3},
	"contact-ratio":  {part: "great-centre", of: viewPair},
	"pitch-circle":   {part: "great-centre", of: viewPair, lit: of("centres"), near: 34, x: 0, y: 2},
	"module":         {part: "great-centre", of: viewPair, near: 22, x: 0, y: 2},
	"depthing":       {part: "third-escape", of: packet.Depthing},
	"arbor":          {part: "going", of: packet.Train},
	"arm":            {part: "third", of: packet.Crossing, lit: of("crossing.arm_at_rim"), near: 17, x: 0, y: 14, high: 0.9},
	"rim":            {part: "great", of: packet.Crossing, lit: of("crossing.rim"), near: 16, x: 19, y: 33},
	"hub":            {part: "great", of: packet.Crossing, lit: of("crossing.hub"), near: 22, x: 0, y: 0},
	"fillet":         {part: "great", of: packet.Crossing, lit: of("crossing.fillet_at_rim", "crossing.fillet_at_hub"), near: 19, x: 12.5, y: 22, high: 0.95},
	"saw-line":       {part: "escape", of: packet.Crossing, lit: of("crossing.allowance"), near: 9.5, x: 7.5, y: 10, high: 0.9},
	"kerf":           {part: "third", of: packet.Crossing, lit: of("crossing.allowance"), near: 5, x: 11.2, y: 15.4},
	"start-hole":     {part: "escape", of: packet.Crossing, lit: of("crossing.start_hole"), near: 4, x: 9.5, y: 13.2},
	"crossing":       {part: "great", of: packet.Crossing},
	"tip":            {part: "escape", of: packet.Crossing, near: 9, x: 0, y: 22},
	"undercut":       {part: "escape", of: packet.Crossing, lit: of("teeth.undercut"), near: 5, x: 0, y: 21},
	"land":           {part: "escape", of: packet.Crossing, lit: of("teeth.land"), near: 1.8, x: 0, y: 22},
	"back":           {part: "escape", of: packet.Crossing, lit: of("teeth.back_radius"), near: 5, x: 0, y: 21},
	"floor":          {part: "escape", of: viewCutter, lit: of("teeth.floor"), near: 42, x: 14, y: 8},
	"relief":         {part: "escape", of: viewCutter, lit: of("teeth.front_relief"), near: 56, x: 0, y: 46, high: 0.9},
	"clearance":      {part: "escape", of: packet.Grinding, scale: 10, lit: of("cutter.clearance")},
	"heel":           {part: "escape", of: viewCutter, near: 98, x: -22, y: 40, high: 0.72},
	"rake-face":      {part: "escape", of: packet.Grinding, scale: 10},
	"swing":          {part: "escape", of: packet.Setting},
	"set-over":       {part: "escape", of: viewCutter, lit: of("teeth.undercut"), near: 62, x: -12, y: 4},
	"infeed":         {part: "escape", of: viewCutter, near: 46, x: 14, y: 10},
	"blank":          {part: "great", of: viewBlank},
	"collet":         {part: "great", of: packet.Drilling, lit: of("mount.collet.flange"), near: 20, x: 0, y: 0},
	"register":       {part: "great", of: packet.Drilling, lit: of("mount.collet.register"), near: 14, x: 0, y: 0},
	"dividing":       {part: "minute", of: packet.Dividing},
	"index-plate":    {part: "centre", of: viewDividing, lit: of("dividing.circles")},
	"hole-circle":    {part: "third", of: viewDividing, lit: of("dividing.circles"), near: 40, x: 0, y: 26},
	"lantern-pinion": {part: "third-pinion", of: viewPinion},
	"trundle":        {part: "third-pinion", of: viewPinion, lit: of("trundle"), near: 46, x: 0, y: 0, high: 0.9},
	"unbalance":      {part: "hour", of: packet.Crossing},
	"wind-up":        {part: "third", of: packet.Crossing, lit: of("crossing.arm_at_rim")},
}

// of lists the quantities that are lit.
func of(all ...geometry.Quantity) []geometry.Quantity { return all }
