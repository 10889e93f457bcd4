package hand

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// A gusset is as high as wanted, to the round: 16 stitches from 2 in 25 rounds are 7 increase
// rounds, 4 rounds apart 4 times and 3 apart 3 times. Of a rate and a height the width follows.
func TestGussetsByHeight(t *testing.T) {
	out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetStitches: new(16), GussetRounds: new(25)})
	if err != nil {
		t.Fatal(err)
	}
	want := []int{1, 5, 9, 13, 17, 20, 23, 26}
	for i, r := range out.HandRounds {
		if r.RoundNumber != want[i] {
			t.Errorf("round %d of the gusset is %d, not %d", i+1, r.RoundNumber, want[i])
		}
	}
	checkThumb(t, ThumbInput{}, out)
	for rounds := 7; rounds <= 40; rounds++ {
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetStitches: new(16), GussetRounds: &rounds})
		if err != nil || out.GussetRounds != rounds || out.GussetStitches != 16 {
			t.Fatalf("%d rounds: %d of %d stitches, %v", rounds, out.GussetRounds, out.GussetStitches, err)
		}
		for every := 1; every <= 4; every++ {
			out, err := PlanThumb(ThumbInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HandStitches: new(120), EveryRounds: &every,
				GussetRounds: &rounds})
			if err != nil || out.GussetRounds != rounds || out.GussetStitches != 2+2*(rounds/every) {
				t.Fatalf("%d rounds, every %d: %d of %d stitches, %v", rounds, every, out.GussetRounds, out.GussetStitches, err)
			}
		}
	}
	out, err = PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetCm: new(7.0)})
	if err != nil || out.GussetRounds != 21 || out.GussetStitches != 14 && out.GussetStitches != 16 {
		t.Errorf("7 cm at 3 rounds to the cm: %d rounds, %d stitches, %v", out.GussetRounds, out.GussetStitches, err)
	}
}

// The hands of the list of sizes, and what they are worth: those of children come from a list
// whose source says of nobody that they were measured.
func TestHandSizes(t *testing.T) {
	for size, want := range map[Size]float64{SizeInfant: 10.8, SizeYears1: 12.05, SizeYears2: 13.35, SizeYears4: 15.2, SizeYears6: 16.5,
		SizeYears8: 17.8, SizeYears10: 19.1, SizeWoman: 18.6, SizeMan: 21.4} {
		cm, source := size.cm()
		knittest.Near(t, "hand", cm, want, 1e-9)
		if child := size < SizeWoman; source.Uncertain != child || source.Figure != "hand" {
			t.Errorf("size %d: %+v", size, source)
		}
		out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandSize: size})
		if err != nil {
			t.Fatal(err)
		}
		knittest.Near(t, "mitten", out.MittenCm, want*1.03, 1)
		cited := false
		for _, s := range out.Sources() {
			cited = cited || s.Figure == "hand"
		}
		if told := told(out.Notices, BabyCare); told != (want < smallHandCm) || !cited {
			t.Errorf("size %d: cautioned %v, %v", size, told, out.Sources())
		}
	}
}

func told(notices []report.Notice, reason report.Reason) bool {
	for _, n := range notices {
		if n.Reason == reason {
			return true
		}
	}
	return false
}

// A top that does not divide the stitches says so.
func TestAdjustedTopsAreSaid(t *testing.T) {
	for stitches, want := range map[int]bool{40: false, 41: true, 42: false} {
		out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandStitches: &stitches})
		if err != nil || told(out.Notices, CountAdjusted) != want {
			t.Errorf("%d stitches: %v, %v", stitches, out.Notices, err)
		}
	}
	if out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandStitches: new(42), Kind: TopKindStar}); err != nil ||
		!told(out.Notices, CountAdjusted) {
		t.Errorf("a star of 42: %v, %v", out.Notices, err)
	}
}
