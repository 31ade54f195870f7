package window

// labelsAbove is from what size of type on the labels of fields stand above their boxes.
const labelsAbove = 1.5

// enlarged is how much larger than usual the type is.
var enlarged float32 = 1

// The sizes of type. At the usual ones the toolkit, which rounds the height of a line and
// the place of its baseline each by itself, leaves Open Sans' descenders whole.
var headSize, tabSize, textSize, readSize, smallSize, badgeType float32

// The measures that follow the size of type. Those of heights grow as it does; those of
// widths by less, since a screen has but so much, and type is broken into more lines.
var (
	badgeSize, remarkIndent                                     float32 // wide and high, and how far in what stands beside one begins
	columnWidth, labelWidth, inputWidth, inputHeight            float32 // a row of the fields
	cardWidth, cellWidth, cellName, cellHigh                    float32 // a card and its cells
	layerName, layerTip, layerButton                            float32 // a wheel of a stack; its name with the word before its tip
	cornerBox, cornerButton                                     float32 // a corner of a bit
	tableHead, tableRow, namesWide, valueStand                  float32
	stripHeight, railWidth, sideWidth                           float32 // the window's plan
	partWidth, noteHeight, headingHeight                        float32 // a part of the rail
	tabWidth                                                    float32 // at most
	cornerHigh, veilHigh, veilWide, legendHeight, tagHeight     float32 // on the drawing
	slipRow, slipLabel, slipValue, slipWide, tipWidth, askWidth float32
)

func init() { enlarge(1) }

// grown returns a height as it is with the present size of type.
func grown(high float32) float32 { return high * enlarged }

// widened returns a width as it is with the present size of type.
func widened(wide float32) float32 { return wide * (1 + 0.45*(enlarged-1)) }

// enlarge gives the windows that are furnished from now on type so much larger than usual.
func enlarge(by float32) {
	enlarged = by
	headSize, tabSize, textSize = grown(21), grown(15.4), grown(15.4)
	readSize, smallSize, badgeType, badgeSize = grown(13), grown(12), grown(11.75), grown(17)
	remarkIndent = 10 + badgeSize + 9
	enlargeColumn()
	enlargePlan()
	cornerHigh, veilHigh, veilWide = grown(30), grown(30), widened(160)
	legendHeight, tagHeight, tipWidth, askWidth = grown(34), grown(24), widened(260), widened(420)
	slipRow, slipLabel, slipValue = grown(20), grown(104), grown(92)
	slipWide = slipLabel + 2*slipValue + 20
}

func enlargeColumn() {
	columnWidth, labelWidth, inputHeight = widened(300), widened(126), grown(36)
	inputWidth = columnWidth - labelWidth
	cardWidth = columnWidth - 18
	cellWidth, cellName = (cardWidth-cellGap)/2, grown(16)
	cellHigh = cellName + inputHeight
	layerTip, layerButton = widened(60), widened(30)
	layerName = columnWidth - layerTip - 2*layerButton - 12
	cornerButton = widened(30)
	cornerBox = (columnWidth - cornerButton - 12) / 3
	tableHead, tableRow, namesWide, valueStand = grown(30), grown(21), widened(108), widened(186)
}

func enlargePlan() {
	partWidth, noteHeight, headingHeight = widened(124), grown(17), grown(28)
	railWidth = partWidth + 22
	sideWidth, stripHeight, tabWidth = columnWidth+46, grown(44), grown(150)
}
