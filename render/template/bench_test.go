package template

import "testing"

func BenchmarkCrossingOf360Teeth(b *testing.B) {
	w := trainWheel(b, 360, 6)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Crossing(w, metric); err != nil {
			b.Fatal(err)
		}
	}
}
