package solid

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// checkLimb looks at the ring of a limb: at its places, and that the ring through them is about as
// long as the stitches are wide.
func checkLimb(t *testing.T, out Solid, limb Limb) {
	t.Helper()
	checkPlaces(t, out, limb)
	checkRing(t, out, limb, 0.75, 1.25*max(1, out.of.high/out.of.st.SizeCm(1)))
}

// checkRing: from stitch to stitch it is at least and at most such a part of its stitches.
func checkRing(t *testing.T, out Solid, limb Limb, least, most float64) {
	t.Helper()
	if part := ringLength(out, limb) / out.of.st.SizeCm(limb.Stitches); part < least || part > most {
		t.Fatalf("a ring of %v cm is %v of its stitches: %+v", ringLength(out, limb), part, limb)
	}
}

// checkPlaces: there are as many as stitches, none of them twice, all of them stitches of the body.
func checkPlaces(t *testing.T, out Solid, limb Limb) {
	t.Helper()
	seen := map[RingPlace]bool{}
	for _, p := range limb.Places {
		if p.RoundNumber < 1 || p.RoundNumber > out.TotalRounds || p.StitchNumber < 1 || p.StitchNumber > out.of.counts[p.RoundNumber-1] {
			t.Fatalf("%+v is no stitch of the body", p)
		}
		if seen[p] {
			t.Fatalf("%+v is picked up in twice: %v", p, limb.Places)
		}
		seen[p] = true
	}
	if len(limb.Places) != limb.Stitches {
		t.Fatalf("%d places, %d stitches", len(limb.Places), limb.Stitches)
	}
}

// ringLength is how long the ring is from stitch to stitch as it is knit, each in its middle: so far up as rounds are high, and so
// far sideways as the part of a turn is of the mean of both rounds.
func ringLength(out Solid, limb Limb) float64 {
	length := 0.0
	for i, p := range limb.Places {
		q := limb.Places[(i+1)%len(limb.Places)]
		mine, next := float64(out.of.counts[p.RoundNumber-1]), float64(out.of.counts[q.RoundNumber-1])
		turn := math.Remainder((float64(q.StitchNumber)-0.5)/next-(float64(p.StitchNumber)-0.5)/mine, 1)
		length += math.Hypot(turn*(mine+next)/2*out.of.st.SizeCm(1), float64(q.RoundNumber-p.RoundNumber)*out.of.high)
	}
	return length
}

// On a ball of radius R, at an angle from an end, an upright tube of radius a fits while it leaves that end out: a < R sin of the
// angle. Every limb whose tube is a stitch and a half narrower than that is planned, and none whose tube is wider, so that a narrower one
// fits where a wider one does; what a refusal offers is the widest, and is planned.
func TestLimbsFitWhereTubesDo(t *testing.T) {
	fits, refused := 0, 0
	offer := regexp.MustCompile(`with (\d+) stitches it fits there`)
	for _, g := range []gauge.Gauge{{Stitches: 18, Rows: 24}, {Stitches: 22, Rows: 30}, {Stitches: 30, Rows: 42}, {Stitches: 20, Rows: 40}} {
		for across := 6.0; across <= 14; across += 4 {
			for from := 1.5; from < across*math.Pi/2+3 && from < across*math.Pi-1; from += float64(knittest.Sweep(1, 3)) * 0.7 {
				for n := MinLimbStitches; n <= 48; n += knittest.Sweep(1, 3) {
					in := SolidInput{Gauge: &g, Form: FormSphere, AcrossCm: &across, Start: Start(1 + n%2), Limbs: []LimbInput{{n, from, 90}}}
					out, err := PlanSolid(in)
					stitch := 10 / g.Stitches
					tube, room := float64(n)*stitch/2/math.Pi, across/2*math.Sin(from/across*2)
					if err != nil && tube < room-1.5*stitch || err == nil && tube > room+stitch/10 {
						t.Errorf("%v stitches, ball of %v cm: a limb of %d, %v cm from the base: a tube of radius %v where %v fits: %v",
							g.Stitches, across, n, from, tube, room, err)
					}
					if err == nil {
						fits++
						checkLimb(t, out, out.Limbs[0])
						continue
					}
					refused++
					if said := offer.FindStringSubmatch(err.Error()); said != nil {
						most, _ := strconv.Atoi(said[1])
						for more, does := range []bool{true, false} {
							in.Limbs[0].Stitches = most + more
							if _, err := PlanSolid(in); (err == nil) != does {
								t.Errorf("%v stitches, ball of %v cm, %v cm from the base: %d stitches were offered, and %d: %v", g.Stitches, across, from,
									most, most+more, err)
							}
						}
					} else if room > 4*stitch {
						t.Errorf("%v stitches, ball of %v cm, %v cm from the base: nothing narrower was offered: %v", g.Stitches, across, from, err)
					}
				}
			}
		}
	}
	if fits < knittest.Sweep(3000, 300) || refused < knittest.Sweep(1000, 100) {
		t.Errorf("%d fitted, %d refused", fits, refused)
	}
}

// Limbs at every place of bodies of all forms are picked up in a ring that fits, or refused
// with a place that fits, or by the gauge.
func TestLimbs(t *testing.T) {
	fitted, refused, offered := 0, 0, 0
	sum, worst := 0.0, 0.0
	for _, in := range solids(float64(knittest.Sweep(9, 17))) {
		in.WedgeCount, in.WithOutline = nil, false
		for _, stitches := range []int{8, 18, 30} {
			for part := 0.1; part < 1; part += 0.2 {
				whole, err := PlanSolid(in)
				if err != nil {
					t.Fatal(err)
				}
				in.Limbs = []LimbInput{{stitches, part * whole.MeridianCm, 360 * part}}
				out, err := PlanSolid(in)
				in.Limbs = nil
				if err != nil {
					refused++
					if strings.Contains(err.Error(), "from the base it fits") {
						offered++
					}
					continue
				}
				fitted++
				limb := out.Limbs[0]
				checkLimb(t, out, limb)
				off := math.Abs(ringLength(out, limb)/out.of.st.SizeCm(limb.Stitches) - 1)
				sum, worst = sum+off, max(worst, off)
				knittest.CheckDirections(t, out.Summary(), out.Directions())
				for _, line := range out.Directions() {
					if wrongWords.MatchString(line) || !strings.HasSuffix(line, ".") {
						t.Errorf("%q", line)
					}
				}
			}
		}
	}
	if fitted < knittest.Sweep(2500, 300) || offered < refused/4 {
		t.Errorf("%d limbs fitted, %d refused, %d with an offer: the sweep has shrunk", fitted, refused, offered)
	}
	t.Logf("%d limbs; a ring from stitch to stitch is off its length by %.1f %% on average, %.1f at most; %d refused, %d with an offer",
		fitted, 100*sum/float64(fitted), 100*worst, refused, offered)
}

// On a ball the wall of an upright tube meets the surface in a circle as wide as the tube, so
// that 24 stitches of 0.5 cm want a tube of 12 cm round; every place lies within the half
// diagonal of a stitch from it.
func TestLimbOnABall(t *testing.T) {
	across := 16.0
	for _, start := range []Start{StartBase, StartTop} {
		for _, from := range []float64{5, 9, 13, 19} {
			in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across, Start: start,
				Limbs: []LimbInput{{24, from, 100}}}
			out, err := PlanSolid(in)
			if err != nil {
				t.Fatal(err)
			}
			limb := out.Limbs[0]
			checkLimb(t, out, limb)
			knittest.Near(t, "the tube", limb.AcrossCm, 12/math.Pi, 0.02)
			on := func(along, turn float64) [3]float64 {
				if start == StartTop {
					along = 8*math.Pi - along
				}
				sin, cos := math.Sincos(along / 8)
				return [3]float64{8 * sin * math.Cos(turn), 8 * sin * math.Sin(turn), -8 * cos}
			}
			axis := on(from, 100.0/180*math.Pi)
			if start == StartTop {
				axis = on(8*math.Pi-from, 100.0/180*math.Pi)
			}
			for _, p := range limb.Places {
				at := on((float64(p.RoundNumber)-0.5)*out.of.high,
					2*math.Pi*(float64(p.StitchNumber)-0.5)/float64(out.of.counts[p.RoundNumber-1]))
				dot := (at[0]*axis[0] + at[1]*axis[1] + at[2]*axis[2]) / 64
				off := math.Hypot(math.Hypot(at[0]-dot*axis[0], at[1]-dot*axis[1]), at[2]-dot*axis[2])
				if math.Abs(off-limb.AcrossCm/2) > math.Hypot(0.5, 1/2.8)/2+0.05 {
					t.Errorf("from %v: %+v lies %v from the axis of a tube of %v", from, p, off, limb.AcrossCm)
				}
			}
		}
	}
}

// On the side of a cylinder of radius r the wall of a tube of radius a meets the surface in the
// curve a cos f, a sin f, sqrt(r^2 - a^2 sin^2 f), whose length gonum integrates; on a flat base
// in a circle.
func TestLimbOnACylinder(t *testing.T) {
	across, high := 12.0, 14.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormCylinder, AcrossCm: &across, HeightCm: &high,
		Limbs: []LimbInput{{36, 13, 0}, {10, 3, 180}}}
	out, err := PlanSolid(in)
	if err != nil {
		t.Fatal(err)
	}
	a := out.Limbs[0].AcrossCm / 2
	length := quad.Fixed(func(f float64) float64 {
		sin, cos := math.Sincos(f)
		return math.Hypot(a, a*a*sin*cos/math.Sqrt(36-a*a*sin*sin))
	}, 0, 2*math.Pi, 200, nil, 0)
	knittest.Near(t, "the ring on the side", length, 18, 0.02)
	knittest.Near(t, "the tube on the base", out.Limbs[1].AcrossCm, 5/math.Pi, 0.005)
	for _, limb := range out.Limbs {
		checkLimb(t, out, limb)
	}
}

// A limb that begins with stitches picked up is stuffed before its end, as if it were closed.
func TestPickedUp(t *testing.T) {
	across, high := 3.0, 7.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormCylinder, AcrossCm: &across, HeightCm: &high,
		BaseOpeningCm: &across, PickedUp: true}
	out, err := PlanSolid(in)
	if err != nil || out.StuffBeforeRoundNumber == nil || !told(out.Notices, ToyCare) || out.StartStitches != 18 {
		t.Fatalf("%+v, %v", out, err)
	}
	if !strings.HasPrefix(out.Directions()[0], "Join the yarn at the body. Pick up and knit 18 stitches") {
		t.Error(out.Directions()[0])
	}
	in.Start = StartTop
	_, err = PlanSolid(in)
	knittest.WantViolations(t, err, "picked_up CONTRADICTORY")
}

// Two limbs as near to one another as they may be share no stitch of the body.
func TestLimbsShareNoStitch(t *testing.T) {
	pairs := 0
	for _, rows := range []float64{22, 28, 40} {
		for across := 8.0; across <= 14; across += 3 {
			for n := 6; n <= 30; n += knittest.Sweep(1, 4) {
				for part := 0.3; part < 0.8; part += 0.1 {
					from := part * math.Pi * across / 2
					for beside := 5.0; beside < 180; beside += 5 {
						out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, Form: FormSphere, AcrossCm: &across,
							Limbs: []LimbInput{{n, from, 50}, {n + 1, from, 50 + beside}}})
						if err != nil {
							continue
						}
						pairs++
						taken := map[RingPlace]bool{}
						for _, p := range out.Limbs[0].Places {
							taken[p] = true
						}
						for _, p := range out.Limbs[1].Places {
							if taken[p] {
								t.Errorf("%v rows, a ball of %v cm, %d stitches, from %v, %v degrees beside: %v is picked up in for both",
									rows, across, n, from, beside, p)
							}
						}
						break
					}
				}
			}
		}
	}
	if pairs < knittest.Sweep(700, 150) {
		t.Errorf("%d pairs: the sweep has shrunk", pairs)
	}
}

// Refusals of limbs, by field and reason; what is offered fits.
func TestLimbRefusals(t *testing.T) {
	g, cm := &gauge.Gauge{Stitches: 20, Rows: 28}, 8.0
	for _, c := range []struct {
		limbs []LimbInput
		want  []string
	}{
		{[]LimbInput{{3, -1, 361}}, []string{
			"limbs[0].stitches OUT_OF_RANGE", "limbs[0].from_base_cm OUT_OF_RANGE", "limbs[0].turn_degrees OUT_OF_RANGE"}},
		{[]LimbInput{{16, 0.2, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{16, 100, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{60, 6, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{12, 6, 0}, {12, 6.5, 20}}, []string{"limbs[1] INFEASIBLE"}},
		{make([]LimbInput, 13), []string{"limbs TOO_MANY"}},
	} {
		_, err := PlanSolid(SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, Limbs: c.limbs})
		if len(c.limbs) > MaxLimbs {
			if err == nil || knittest.Reasons(err)[0].Field != "limbs" {
				t.Errorf("%d limbs: %v", len(c.limbs), err)
			}
			continue
		}
		knittest.WantViolations(t, err, c.want...)
	}
	// Rounds of 23 stitches where the surface has 3 to 9: a ring that would be far too long.
	_, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 60}, Form: FormSphere, AcrossCm: &cm, WedgeCount: new(23),
		Limbs: []LimbInput{{6, 0.6, 0}}})
	knittest.WantViolations(t, err, "limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE")
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 30, Rows: 10}, Form: FormSphere, AcrossCm: &cm,
		WedgeCount: new(24), Limbs: []LimbInput{{20, 6, 0}}})
	if err != nil {
		t.Fatal(err)
	}
	checkPlaces(t, out, out.Limbs[0])
	checkRing(t, out, out.Limbs[0], 0.75, 1.6) // rows three times as high as stitches are wide
}

func BenchmarkPlanSolidWithLimbs(b *testing.B) {
	across := 12.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across,
		Limbs: []LimbInput{{18, 11, 90}, {18, 11, 270}, {24, 5, 40}, {24, 5, 320}}}
	for b.Loop() {
		if _, err := PlanSolid(in); err != nil {
			b.Fatal(err)
		}
	}
}
