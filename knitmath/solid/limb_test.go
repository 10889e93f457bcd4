package solid

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

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
		whole, err := PlanSolid(in)
		if err != nil {
			t.Fatal(err)
		}
		for _, stitches := range []int{8, 18, 30} {
			for part := 0.1; part < 1; part += 0.2 {
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
					checkLine(t, line, ".")
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
