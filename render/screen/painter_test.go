package screen

import (
	"image"
	"image/png"
	"os"
	"testing"

	"tipline/geometry"
)

var whole = geometry.Box{Min: geometry.Point{X: -46, Y: -46}, Max: geometry.Point{X: 46, Y: 46}}

func BenchmarkPaint360Teeth(b *testing.B) {
	d := crossed(b, 360)
	dst := image.NewRGBA(image.Rect(0, 0, 1600, 1000))
	p := Painter{Theme: Light(), Lit: Lit{"wheel", "crossing.rim"}}
	v := Fit(whole, 1600, 1000, 20)
	p.Paint(dst, d, v)
	b.ReportAllocs()
	for b.Loop() {
		p.Paint(dst, d, v)
	}
	if name := os.Getenv("PICTURE"); name != "" {
		f, _ := os.Create(name)
		png.Encode(f, dst)
		f.Close()
	}
}
