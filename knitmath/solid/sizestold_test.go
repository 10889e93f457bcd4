package solid

import (
	"math"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// lot draws a number on a logarithmic scale.
func lot(rng *rand.Rand, least, most float64) float64 {
	return math.Round(10*least*math.Pow(most/least, rng.Float64())) / 10
}

// At gauges of any ratio a body whose widest round, read off its form alone, is over 5 % and over a stitch wider or narrower than asked
// says so, and no other does.
func TestBodiesTellOfTheirWidth(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 4))
	planned, unmet, offered := 0, 0, 0
	for range knittest.Sweep(20_000, 3_000) {
		in := SolidInput{Gauge: &gauge.Gauge{Stitches: lot(rng, 2, 150), Rows: lot(rng, 2, 150)}, Way: WayRounds,
			Form: [3]Form{FormCylinder, FormCone, FormSphere}[rng.IntN(3)], AcrossCm: new(lot(rng, 2, 60))}
		if in.Form != FormSphere {
			in.HeightCm = new(lot(rng, 2, 60))
		}
		if rng.IntN(2) == 0 {
			in.WedgeCount = new(1 + rng.IntN(24))
		}
		out, err := PlanSolid(in)
		if err != nil {
			continue
		}
		planned++
		knittest.CheckNotices(t, "PlanSolid", out.Notices)
		if told(out.Notices, SizeUnmet) {
			unmet++
			offered += checkOfferedWedges(t, in, out)
		}
		wanted := math.Pi * *in.AcrossCm * in.Gauge.Stitches / 10
		off := math.Abs(float64(out.GreatestStitches) - wanted)
		// A ball's widest round may lie half a round beside its middle, and a cone's beside its base.
		slack := wanted - slices.Max(out.of.wanted)
		if edge := max(0.05*wanted, 1); math.Abs(off-edge) > 1.05*slack+0.02 && off > edge != told(out.Notices, SizeUnmet) {
			t.Errorf("%v, form %d of %v cm, %v: %d stitches where %v are wanted, notices %v", *in.Gauge, in.Form, *in.AcrossCm, in.WedgeCount,
				out.GreatestStitches, wanted, out.Notices)
		}
	}
	t.Logf("%d bodies, %d tell of their width, %d of wedges that would do", planned, unmet, offered)
	if planned < knittest.Sweep(8_000, 1_200) || unmet < planned/20 || offered < unmet/2 {
		t.Errorf("%d bodies, %d tell of their width", planned, unmet)
	}
}

var offeredWedges = regexp.MustCompile(`; with (\d+) wedges? it has (\d+)$`)

// checkOfferedWedges asks for the wedges that a notice offers, as printed, and gives 1 where there are some.
func checkOfferedWedges(t *testing.T, in SolidInput, out Solid) int {
	t.Helper()
	for _, n := range out.Notices {
		if with := offeredWedges.FindStringSubmatch(n.Description); with != nil && n.Reason == SizeUnmet {
			wedges, _ := strconv.Atoi(with[1])
			in.WedgeCount = &wedges
			again, err := PlanSolid(in)
			if err != nil || strconv.Itoa(again.GreatestStitches) != with[2] || told(again.Notices, SizeUnmet) {
				t.Errorf("%+v: %s, but %d stitches, %v: %v", in, n.Description, again.GreatestStitches, again.Notices, err)
			}
			return 1
		}
	}
	return 0
}

// At gauges of any ratio a hat that is over 5 % off what its head wants says so, and one whose crown is over 5 % and over half a round off
// the depth asked for.
func TestHatsTellOfTheirSizes(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 5))
	planned, unmet := 0, 0
	for range knittest.Sweep(8_000, 1_500) {
		in := CrownInput{Gauge: &gauge.Gauge{Stitches: lot(rng, 2, 150), Rows: lot(rng, 2, 150)}, HeadCm: new(lot(rng, 10, 80)),
			EasePercent: new(float64(rng.IntN(30) - 20)), WedgeCount: new(4 + rng.IntN(7)), Shape: CrownShape(rng.IntN(4)),
			CrownCm: new(lot(rng, 2, 20)), Uneven: Uneven(rng.IntN(4))}
		out, err := PlanCrown(in)
		if err != nil {
			continue
		}
		planned++
		knittest.CheckNotices(t, "PlanCrown", out.Notices)
		wanted := *in.HeadCm * (1 + *in.EasePercent/100)
		if off := math.Abs(out.HatCm/wanted - 1); math.Abs(off-0.05) > 1e-4 && off > 0.05 != told(out.Notices, SizeUnmet) {
			t.Errorf("%v, %v cm wanted, %v cm: %v", *in.Gauge, wanted, out.HatCm, out.Notices)
		}
		off := math.Abs(out.CrownCm - *in.CrownCm)
		if off > 0.05**in.CrownCm && off > 5.01/in.Gauge.Rows {
			if unmet++; !told(out.Notices, CrownDepthUnmet) {
				t.Errorf("%v, a crown of %v cm wanted, %v cm: %v", *in.Gauge, *in.CrownCm, out.CrownCm, out.Notices)
			}
		}
	}
	t.Logf("%d hats, %d tell of their depth", planned, unmet)
	if planned < knittest.Sweep(2_000, 400) {
		t.Errorf("%d hats, %d tell of their depth", planned, unmet)
	}
}
