package curve

import (
	"fmt"
	"testing"
)

// A neck, an armhole, a sleeve's cap, and an edge far longer than any garment has.
func BenchmarkFollow(b *testing.B) {
	for _, n := range [][2]int{{10, 16}, {20, 56}, {30, 60}, {200, 300}} {
		b.Run(fmt.Sprintf("%d_stitches_%d_rows", n[0], n[1]), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				c := From(Point{}).Ellipse(At(n[0], n[1], dk, dkRows), LeavingAcross).Courses(dk, dkRows)[0]
				if _, ok := Follow(c, Settings{Tolerance: DefaultTolerance}); !ok {
					b.Fatal("no plan")
				}
			}
		})
	}
}
