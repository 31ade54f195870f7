package command

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/png"
	"io"
	"math"

	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/screen"
)

// A picture is painted at printResolution, or as finely as mostPixels allow.
const (
	printResolution = 300 / measure.MMPerInch // pixels to a millimetre: 300 dots an inch
	mostPixels      = 64 << 20
	pictureMargin   = 2 // mm round the drawing
)

// writePNG paints the drawing with a narrow margin and writes it as PNG that says
// how large a pixel is, so that it prints at the drawing's scale.
func writePNG(w io.Writer, d *render.Drawing) error {
	box := d.Bounds().Grow(pictureMargin)
	scale := printResolution
	if area := box.Width() * box.Height(); area*scale*scale > mostPixels {
		scale = math.Sqrt(mostPixels / area)
	}
	width, height := math.Ceil(box.Width()*scale), math.Ceil(box.Height()*scale)
	picture := image.NewRGBA(image.Rect(0, 0, int(width), int(height)))
	painter := screen.Painter{Theme: screen.Light(), Density: scale / screenResolution, Printed: true}
	centre := box.Centre()
	painter.Paint(picture, d, screen.View{
		Scale:  scale,
		Origin: screen.Pixel{X: width/2 - scale*centre.X, Y: height/2 + scale*centre.Y},
	})
	return encode(w, picture, scale)
}

// screenResolution is pixels to a millimetre where a pixel is of ordinary size:
// 96 to an inch, as CSS has it.
const screenResolution = 96 / measure.MMPerInch

// afterHeader is where a PNG's first chunk, the header, ends: signature 8,
// length 4, name 4, data 13, checksum 4 (PNG specification, second edition, 5.2).
const afterHeader = 33

// encode writes the picture with a chunk pHYs, pixels to a metre, after the
// header.
func encode(w io.Writer, picture image.Image, pixelsPerMM float64) error {
	var b bytes.Buffer
	if err := png.Encode(&b, picture); err != nil {
		return err
	}
	size := binary.BigEndian.AppendUint32([]byte("pHYs"), uint32(math.Round(1000*pixelsPerMM)))
	size = binary.BigEndian.AppendUint32(size, uint32(math.Round(1000*pixelsPerMM)))
	size = append(size, 1) // the unit is the metre
	chunk := binary.BigEndian.AppendUint32(nil, uint32(len(size)-4))
	chunk = append(chunk, size...)
	chunk = binary.BigEndian.AppendUint32(chunk, crc32.ChecksumIEEE(size))
	for _, part := range [][]byte{b.Bytes()[:afterHeader], chunk, b.Bytes()[afterHeader:]} {
		if _, err := w.Write(part); err != nil {
			return err
		}
	}
	return nil
}
