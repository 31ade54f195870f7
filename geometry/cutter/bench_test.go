package cutter

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func BenchmarkCut(b *testing.B) {
	p := Pointed{
		Count: 360, TipRadius: 240, Undercut: geometry.Degrees(10), Floor: 0.6, FloorSlope: geometry.Degrees(8),
		FrontRelief: geometry.Degrees(4), CornerRadius: 0.1, BackRadius: 6, Land: 0.25,
	}
	for _, solve := range []geometry.Quantity{RootDiameter, BackRadius} {
		b.Run(string(solve), func(b *testing.B) {
			p := p
			p.Solve = RootDiameter
			c, err := p.Cut()
			require.NoError(b, err)
			p.RootRadius, p.Solve = c.RootRadius, solve
			b.ReportAllocs()
			for b.Loop() {
				if _, err := p.Cut(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkRelieve(b *testing.B) {
	c := benchForm(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := c.Relieve(geometry.Degrees(10), 5, 22); err != nil {
			b.Fatal(err)
		}
	}
}

// benchForm is a form with everything, on a wheel of 30.
func benchForm(b *testing.B) Cut {
	c, err := Pointed{
		Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12),
		FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, Solve: RootDiameter,
	}.Cut()
	require.NoError(b, err)
	return c
}

func BenchmarkDepths(b *testing.B) {
	c := benchForm(b)
	b.ReportAllocs()
	for b.Loop() {
		c.Depths(60)
	}
}

func BenchmarkGround(b *testing.B) {
	c := benchForm(b)
	corners := c.Form.Corners()
	for i := range corners {
		corners[i].X += 0.01 * float64(i%3)
		corners[i].Y += 0.01 * float64(i%2)
	}
	b.ReportAllocs()
	for b.Loop() {
		edge, err := NewEdge(corners)
		require.NoError(b, err)
		if _, err := c.Ground(edge); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkClearanceFor(b *testing.B) {
	c := benchForm(b)
	for b.Loop() {
		c.ClearanceFor(8, 22, false)
	}
}

func BenchmarkSquareForm(b *testing.B) {
	c := benchForm(b)
	for b.Loop() {
		if _, err := c.SquareForm(geometry.Degrees(10), 0); err != nil {
			b.Fatal(err)
		}
	}
}
