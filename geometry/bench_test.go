package geometry

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func BenchmarkInsetWindow(b *testing.B) {
	o := window(b, 0)
	b.ReportAllocs()
	for b.Loop() {
		if in, err := o.Inset(0.3); err != nil || len(in) != 1 {
			b.Fatal(err, len(in))
		}
	}
}

func BenchmarkPinchOutWindow(b *testing.B) {
	o := window(b, 0)
	for b.Loop() {
		o.PinchOut(50)
	}
}

func BenchmarkFigures(b *testing.B) {
	o := toothed(b, 360)
	for b.Loop() {
		if o.Area() < 0 || o.PolarMoment() < 0 || o.Bounds().Empty() {
			b.Fatal("the wheel is no wheel")
		}
	}
}

func BenchmarkSimple(b *testing.B) {
	o := toothed(b, 360)
	require.True(b, o.Simple())
	for b.Loop() {
		o.Simple()
	}
}

func BenchmarkDistance(b *testing.B) {
	o, w := toothed(b, 360), window(b, 0)
	for b.Loop() {
		o.Distance(w)
	}
}

func BenchmarkInsetWheel(b *testing.B) {
	o := toothed(b, 360)
	for b.Loop() {
		if _, err := o.Inset(0.05); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkContainsWheel(b *testing.B) {
	o := toothed(b, 360)
	for b.Loop() {
		o.Contains(Point{10, 20})
	}
}
