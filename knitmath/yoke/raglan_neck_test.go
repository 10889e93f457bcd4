package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/body"
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
					SleeveStitches: new(26), UnderarmStitches: new(6), FrontNeckStitches: &front, BackNeckStitches: &back, SleeveTopStitches: &top}
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

// By default front and back lose equally, and together are nearest to what 40 % of the
// body leaves after lines and sleeves, rounded once: in hundredths of a stitch, tried one
// decrease after the other, the higher count first so that it wins half-way. Beside a
// neck that is given the other is nearest to half. A neck that would not go over the wearer's head has more.
func TestRaglanDefaultNecks(t *testing.T) {
	nearest := func(most, wanted int, ends func(k int) int) int {
		best := 0
		for k := range most + 1 {
			if measure.Abs(100*ends(k)-wanted) < measure.Abs(100*ends(best)-wanted) {
				best = k
			}
		}
		return best
	}
	for stitches := 40; stitches <= 260; stitches += knittest.Sweep(1, 3) {
		for line := range 5 {
			in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: stitches, LineStitches: &line, DepthRounds: new(400)}
			out, err := PlanRaglan(in)
			if err != nil {
				continue
			}
			wanted := 40*stitches - 400*line - 200*out.Sleeve.EndStitches // of front and back together
			b, f := out.Back.StartStitches, out.Front.StartStitches
			k := nearest((f-2)/2, wanted, func(k int) int { return b + f - 4*k })
			if who, ok := body.WearerOf(float64(stitches) * 10 / 22); ok { // and the neck goes over the head
				for k > 0 && float64(b+f-4*k+4*line+2*out.Sleeve.EndStitches) < headStitches(who, 2.2) {
					k--
				}
			}
			if out.Back.EndStitches != b-2*k || out.Front.EndStitches != f-2*k {
				t.Fatalf("body %d, lines of %d: %d of %d and %d of %d at the neck, want %d decreases", stitches, line,
					out.Back.EndStitches, b, out.Front.EndStitches, f, k)
			}
			in.BackNeckStitches = new(b - 2*((b-2)/2))
			if out, err = PlanRaglan(in); err != nil {
				t.Fatal(err)
			}
			k = nearest((f-2)/2, wanted, func(k int) int { return 2*f - 4*k })
			if out.Front.EndStitches != f-2*k {
				t.Fatalf("body %d, lines of %d: front %d of %d at the neck, want %d", stitches, line, out.Front.EndStitches, f, f-2*k)
			}
		}
	}
	// By hand: 8 % of 49 are 4 stitches an underarm, so that 41 of the body are 21 and
	// 20; sleeves of 16 - 4 come down to 2. 40 % of 49 is 19.6, less the two sleeves
	// 15.6: 9 and 8 are nearer than 7 and 6.
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 49, LineStitches: new(0)})
	if err != nil || out.Back.EndStitches != 9 || out.Front.EndStitches != 8 {
		t.Errorf("%+v, %+v, %v; want 9 and 8", out.Back, out.Front, err)
	}
}

// A neck or a sleeve's top that was asked for is had, whatever its parity, where the
// underarm and the sleeve were left to us: they differ by a stitch at most from the
// percentage system, and from nothing that was given.
func TestRaglanParities(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for body := 80; body <= 240; body += knittest.Sweep(1, 7) {
		for neck := 20; neck <= 25; neck++ {
			for top := range 5 {
				asked := map[string]RaglanInput{
					"front":        {FrontNeckStitches: &neck},
					"back":         {BackNeckStitches: &neck},
					"sleeve":       {SleeveTopStitches: &top},
					"all":          {FrontNeckStitches: &neck, SleeveTopStitches: &top},
					"given sleeve": {SleeveTopStitches: &top, SleeveStitches: new(percent(body, 33))},
				}
				for name, in := range asked {
					in.Gauge, in.BodyStitches = standard, body
					out, err := PlanRaglan(in)
					if err != nil {
						t.Fatalf("%s, body %d, neck %d, top %d: %v", name, body, neck, top, err)
					}
					ends := map[*int]int{in.FrontNeckStitches: out.Front.EndStitches, in.BackNeckStitches: out.Back.EndStitches,
						in.SleeveTopStitches: out.Sleeve.EndStitches}
					for want, got := range ends {
						if want != nil && *want != got {
							t.Errorf("%s, body %d: %d at the neck, want %d", name, body, got, *want)
						}
					}
					if u := percent(body, 8) - out.UnderarmStitches; u < 0 || u > 1 {
						t.Errorf("%s, body %d: %d held, %d less than 8 %%", name, body, out.UnderarmStitches, u)
					}
					if s := out.SleeveStitches - percent(body, 33); s < 0 || s > 1 || s > 0 && in.SleeveStitches != nil {
						t.Errorf("%s, body %d: sleeves of %d, %d more than 33 %%", name, body, out.SleeveStitches, s)
					}
				}
			}
		}
	}
}

// A neck is no wider than the largest heads where nobody says: of a body of 320 stitches at 20 to
// 10 cm 40 % are 64 cm, and 60.3 cm are 120.6 stitches, of which 121 is the nearest; front, back
// and sleeves leave an even count.
func TestNecksOfTheWidestBodies(t *testing.T) {
	for _, body := range []int{300, 320, 400} {
		out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: body})
		if err != nil {
			t.Fatal(err)
		}
		want := min(body*2/5, 121)
		if n := out.NeckStitches - want; n < -2 || n > 2 {
			t.Errorf("body %d: a neck of %d stitches, wanted %d", body, out.NeckStitches, want)
		}
	}
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 320, FrontNeckStitches: new(70)})
	if err != nil || out.Front.EndStitches != 70 {
		t.Errorf("a neck that is given: %+v, %v", out.Front, err)
	}
}
