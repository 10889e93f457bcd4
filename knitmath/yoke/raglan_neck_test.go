package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// Every neck that the fields allow either is planned as asked or is refused for
// one of three causes; the default is the allowed count nearest to the wanted one.
func TestRaglanNecks(t *testing.T) {
	for _, line := range []int{0, 2} {
		for front := 2; front <= 40; front += knittest.Sweep(1, 3) {
			for top := 0; top <= 20; top++ {
				rounds, back := 14, 32-line
				in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 80, LineStitches: &line, DepthRounds: &rounds,
					FrontNeckStitches: &front, BackNeckStitches: &back, SleeveTopStitches: &top}
				// 80 - 2*6 = 68 of the body, 34 of the front; 26 - 6 = 20 of a sleeve.
				start, sleeve := 34-line, 20-line
				fits := front <= start && (start-front)%2 == 0 && (start-front)/2 <= rounds &&
					top <= sleeve && (sleeve-top)%2 == 0 && (top > 0 || line > 0) && (sleeve-top)/2 <= rounds
				out, err := PlanRaglan(in)
				if (err == nil) != fits {
					t.Fatalf("front %d, top %d, lines of %d: %v", front, top, line, err)
				}
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				if out.Front.EndStitches != front || out.Sleeve.EndStitches != top {
					t.Fatalf("front %d, top %d: %+v", front, top, out)
				}
			}
		}
	}
}

// The default neck is the count nearest to half of what 40 % of the body leaves
// after lines and sleeves, rounded once: in hundredths of a stitch, tried one
// count after the other, the higher first so that it wins half-way.
func TestRaglanDefaultNecks(t *testing.T) {
	for body := 40; body <= 260; body += knittest.Sweep(1, 3) {
		for line := range 5 {
			in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, LineStitches: &line, DepthRounds: new(400)}
			out, err := PlanRaglan(in)
			if err != nil {
				continue
			}
			wanted := 40*body - 400*line - 200*out.Sleeve.EndStitches // of front and back together
			for _, part := range [...]RaglanPart{out.Back, out.Front} {
				best := 0
				for n := part.StartStitches; n >= 2; n -= 2 {
					if best == 0 || measure.Abs(200*n-wanted) < measure.Abs(200*best-wanted) {
						best = n
					}
				}
				if part.EndStitches != best {
					t.Fatalf("body %d, lines of %d: %d of %d at the neck, want %d: half of %d hundredths", body, line,
						part.EndStitches, part.StartStitches, best, wanted)
				}
			}
		}
	}
	// By hand: 8 % of 49 are 4 stitches an underarm, so that 41 of the body are 21 and
	// 20; sleeves of 16 - 4 come down to 2. 40 % of 49 is 19.6, less the two sleeves
	// 15.6, of which half is 7.8: 7 is nearer than 9.
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 49, LineStitches: new(0)})
	if err != nil || out.Back.EndStitches != 7 || out.Front.EndStitches != 8 {
		t.Errorf("%+v, %+v, %v; want 7 and 8", out.Back, out.Front, err)
	}
}
