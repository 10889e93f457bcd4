package solid

import (
	"fmt"
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// flatEnded are cones and cylinders of ordinary gauges and sizes, begun at either end.
func flatEnded(each func(at string, out Solid)) {
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 16, Rows: 22}, {Stitches: 22, Rows: 30}, {Stitches: 30, Rows: 42},
		{Stitches: 20, Rows: 40}} {
		for across := 5.0; across <= 20; across += float64(knittest.Sweep(1, 5)) {
			for _, form := range []Form{FormCone, FormCylinder} {
				for start := StartBase; start <= StartTop; start++ {
					high := 1.5 * across
					out, err := PlanSolid(SolidInput{Gauge: &g, Form: form, AcrossCm: &across, HeightCm: &high, Start: start})
					if err == nil {
						each(fmt.Sprintf("%v by %v, form %d of %v cm, from end %d", g.Stitches, g.Rows, form, across, start), out)
					}
				}
			}
		}
	}
}

// A flat end grows from its middle as a disc does: once a round wants more stitches than there are wedges, none has nearly a whole
// step fewer, which worked for some rounds would be a tube, or a whole step more.
func TestFlatEndsAreDiscs(t *testing.T) {
	planned := 0
	flatEnded(func(at string, out Solid) {
		planned++
		for i, count := range out.of.counts {
			place := out.of.way.at((float64(i) + 0.5) * out.of.high)
			flat := place.height < 1e-6 || out.of.in.Form == FormCylinder && place.height > *out.of.in.HeightCm-1e-6
			step, wanted := float64(out.WedgeCount), out.of.wanted[i]
			if flat && wanted > step && (float64(count) < wanted-0.85*step || float64(count) > wanted+step) {
				t.Errorf("%s: round %d has %d stitches and wants %.1f", at, i+1, count, wanted)
			}
		}
	})
	if planned < knittest.Sweep(300, 60) {
		t.Errorf("%d planned", planned)
	}
}

// Every round is named once, in order, and a round that is purled is not worked even too.
func TestRoundsAreNamedOnce(t *testing.T) {
	named := regexp.MustCompile(`^Rounds? (\d+)(?:-(\d+))?:`)
	purled := 0
	flatEnded(func(at string, out Solid) {
		next := 1
		for _, line := range out.Directions() {
			rounds := named.FindStringSubmatch(line)
			if rounds == nil {
				continue
			}
			first, _ := strconv.Atoi(rounds[1])
			if first != next {
				t.Fatalf("%s: round %d comes after round %d: %q", at, first, next-1, out.Directions())
			}
			if next = first + 1; rounds[2] != "" {
				last, _ := strconv.Atoi(rounds[2])
				next = last + 1
			}
			if regexp.MustCompile(": purl, ").MatchString(line) {
				purled++
			}
		}
		if next != out.TotalRounds+1 {
			t.Fatalf("%s: %d of %d rounds are named", at, next-1, out.TotalRounds)
		}
	})
	if purled < knittest.Sweep(200, 40) {
		t.Errorf("%d rounds purled", purled)
	}
}

// At every edge between a flat end and a side one round is purled, on as many stitches as the round before it has: as wide as the
// side, which keeps that count, or has it for that round and the one before or after where it is a cone. Of few stitches round
// the ridge may be a step narrower, where the surface would not be met otherwise.
func TestEdgesAreSharp(t *testing.T) {
	edges := 0
	flatEnded(func(at string, out Solid) {
		counts := out.of.counts
		if len(out.sharp) != len(out.EdgeRoundNumbers) {
			t.Errorf("%s: edges after rounds %v, purled are %v of %v", at, out.EdgeRoundNumbers, out.sharp, counts)
			return
		}
		for i, edge := range out.EdgeRoundNumbers {
			edges++
			ridge := out.sharp[i]
			if ridge != edge && ridge != edge+1 || counts[ridge-1] != counts[ridge-2] {
				t.Errorf("%s: the edge lies after round %d, and round %d is purled of %v", at, edge, ridge, counts)
			}
			if step := out.GreatestStitches - counts[ridge-1]; step != 0 && (step != out.WedgeCount || out.GreatestStitches > 24) {
				t.Errorf("%s: the ridge has %d stitches, the widest round %d: %v", at, counts[ridge-1], out.GreatestStitches, counts)
			}
		}
	})
	if edges < knittest.Sweep(400, 80) {
		t.Errorf("%d edges", edges)
	}
}
