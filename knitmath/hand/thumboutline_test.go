package hand

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/outlinetest"
)

// The gusset is drawn from its first stitches to its last, and the thumb from those that
// are held and picked up to those that are drawn up, half as wide as it is around.
func TestThumbOutline(t *testing.T) {
	for _, gusset := range []Gusset{GussetWidened, GussetNone} {
		for stitches := 28; stitches <= 72; stitches += 4 {
			out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: &stitches, Gusset: gusset, WithOutline: true})
			if err != nil {
				t.Fatal(err)
			}
			o := out.Outline
			outlinetest.CheckFrame(t, o)
			half := out.MittenCm / float64(stitches) / 2 // of a stitch
			check := func(part string, line int, foot, head float64, high float64) {
				t.Helper()
				right, left := o.Lines[line], o.Lines[line+1]
				last := len(right.Points) - 1
				if right.Name != part+", right edge" || left.Name != part+", left edge" {
					t.Errorf("lines %q and %q", right.Name, left.Name)
				}
				for _, c := range []struct{ got, want float64 }{{right.Points[0].X, foot * half}, {right.Points[0].Y, 0},
					{right.Points[last].X, head * half}, {right.Points[last].Y, high}, {left.Points[last].X, -head * half}} {
					if math.Abs(c.got-c.want) > 1e-9 {
						t.Errorf("%d stitches: the %s has %v, want %v: %v", stitches, part, c.got, c.want, right.Points)
					}
				}
			}
			lines := 0
			if gusset == GussetWidened {
				first := out.HandRounds[0].Right
				start := out.GussetStitches - 2*(len(out.HandRounds)-1)
				if first.EndStitches != first.StartStitches+2 || start < 1 {
					t.Fatalf("a first round of %+v, from %d", first, start)
				}
				check("gusset", 0, float64(start), float64(out.GussetStitches), out.GussetCm)
				lines = 2
			}
			around := out.ThumbRounds[0].Instruction.EndStitches
			check("thumb", lines, float64(around)/2, float64(out.EndStitches)/2, out.LengthCm)
			if len(o.Lines) != lines+2 {
				t.Errorf("%d lines", len(o.Lines))
			}
		}
	}
	stitches := 44
	if out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: &stitches}); err != nil || out.Outline != nil {
		t.Errorf("%v, %v", out.Outline, err)
	}
}
