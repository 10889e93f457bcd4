package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// What is remarked on is worked out again from the sizes in the answer, for yokes and
// raglans from toys to the largest, shallow and deep, wide and narrow.
func TestRemarksOnWhoWearsIt(t *testing.T) {
	seen := map[report.Reason]int{}
	remarks := func(of []report.Notice) []report.Reason {
		var list []report.Reason
		for _, n := range of {
			switch n.Reason {
			case DepthUnlikeBodies, FrontAsHighAsBack, NeckBelowHead, NeckSlidesOff, SleeveBelowHand:
				list = append(list, n.Reason)
				seen[n.Reason]++
			}
		}
		return list
	}
	// The head and the hand by the body's width, by hand from the table's rows.
	heads := map[float64][3]float64{28: {0, 0, math.Inf(1)}, 30: {26, 7.5, 35},
		34: {28.75, 8.25, 37.65}, 38: {31.5, 9, 40.3}, 45: {37, 10.5, 44}, 50: {40.75, 11.75, 48.05},
		60: {44.5 + 25.0/13, 13 + 10.0/13, 2*(48.3+4.4*5/13) - 44.5 - 25.0/13},
		80: {52.5, 17.5, 61.3}, 150: {52.5, 17.5, 61.3}}
	for body, who := range heads {
		for _, depth := range []float64{0.1, 0.14, 0.16, 0.28, 0.29, 0.32, 0.34} { // of the body around
			for _, sleeve := range []float64{0.15, 0.3, 0.36} {
				for neck := 0.2; neck < 1; neck += 0.09 {
					stitches := func(part float64) *int { return knittest.Ptr(int(2*body*part + 0.5)) }
					g := &gauge.Gauge{Stitches: 20, Rows: 28}
					in := CircularInput{Gauge: g, BodyStitches: int(2 * body), SleeveStitches: stitches(sleeve), UnderarmStitches: stitches(0.04),
						NeckStitches: stitches(neck), DepthRounds: knittest.Ptr(int(2.8*body*depth + 0.5))}
					out, err := PlanCircularYoke(in)
					if err != nil {
						continue
					}
					var want []report.Reason
					if part := out.DepthCm / body * 2; part < 0.3 || part > 0.65 {
						want = append(want, DepthUnlikeBodies)
					} else if part > 0.57 {
						want = append(want, FrontAsHighAsBack)
					}
					if 1.6*out.NeckCm < who[0] {
						want = append(want, NeckBelowHead)
					}
					if out.NeckCm > who[2] {
						want = append(want, NeckSlidesOff)
					}
					if 1.3*float64(out.SleeveStitches)/2 < who[1] {
						want = append(want, SleeveBelowHand)
					}
					if got := remarks(out.Notices); !slices.Equal(got, want) {
						t.Fatalf("%+v: %v, want %v: %v deep, neck %v", in, got, want, out.DepthCm, out.NeckCm)
					}
					raglan, err := PlanRaglan(RaglanInput{Gauge: g, BodyStitches: in.BodyStitches, SleeveStitches: in.SleeveStitches,
						UnderarmStitches: in.UnderarmStitches, DepthRounds: in.DepthRounds})
					for _, reason := range []report.Reason{DepthUnlikeBodies, FrontAsHighAsBack} {
						if err == nil && slices.Contains(remarks(raglan.Notices), reason) != slices.Contains(want, reason) {
							t.Fatalf("%+v: of a raglan %v", in, raglan.Notices)
						}
					}
				}
			}
		}
	}
	for _, reason := range []report.Reason{DepthUnlikeBodies, FrontAsHighAsBack, NeckBelowHead, NeckSlidesOff, SleeveBelowHand} {
		if seen[reason] < 10 {
			t.Errorf("%v: the sweep has shrunk", seen)
		}
	}
}

// What nobody said goes over heads and hands and is as deep as bodies are, whatever the size
// and the gauge; a raised back is no front as high as it.
func TestDefaultsAreNotRemarkedOn(t *testing.T) {
	worn := []report.Reason{DepthUnlikeBodies, FrontAsHighAsBack, NeckBelowHead, NeckSlidesOff}
	for _, stitches := range []float64{10, 14, 18, 22, 27, 33, 40} {
		for bodyCm := 20.0; bodyCm <= 180; bodyCm += float64(knittest.Sweep(1, 7)) {
			g := &gauge.Gauge{Stitches: stitches, Rows: 1.37 * stitches}
			body := int(stitches * bodyCm / 10)
			var lists [][]report.Notice
			for _, schedule := range []Schedule{SchedulePercentage, ScheduleCone} {
				if out, err := PlanCircularYoke(CircularInput{Gauge: g, BodyStitches: body, Schedule: schedule}); err == nil {
					lists = append(lists, out.Notices)
				}
			}
			raglan, err := PlanRaglan(RaglanInput{Gauge: g, BodyStitches: body})
			if err != nil {
				t.Fatalf("%v stitches of %v cm: %v", stitches, bodyCm, err)
			}
			for _, list := range append(lists, raglan.Notices) {
				for _, n := range list {
					// A body of over 150 cm is wide, and no deeper for it.
					if slices.Contains(worn, n.Reason) && !(n.Reason == DepthUnlikeBodies && bodyCm > 150) {
						t.Errorf("%v stitches to 10 cm, a body of %v cm: %v", stitches, bodyCm, n)
					}
				}
			}
		}
	}
	deep := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, DepthCm: new(30.0)}
	level, err := PlanCircularYoke(deep)
	if err != nil || !hasNotice(level, FrontAsHighAsBack, "") {
		t.Errorf("%v, %v", level.Notices, err)
	}
	deep.BackRaise = &BackRaise{RiseRows: new(6), Place: RaisePlaceBeforeBands}
	if raised, err := PlanCircularYoke(deep); err != nil || hasNotice(raised, FrontAsHighAsBack, "") {
		t.Errorf("%v, %v", raised.Notices, err)
	}
}
