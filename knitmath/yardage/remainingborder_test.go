package yardage

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// strandedRow is a row of 100 stitches in two yarns, and a border of 20 rows of 200 stitches
// in the second, not bound off.
func strandedRow(share float64) RemainingInput {
	return RemainingInput{Yarns: []YarnLeft{{LeftM: new(80.0), SharePercent: new(100 - share)}, {LeftM: new(60.0), SharePercent: &share}},
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 26}, State: FabricStateFullyRelaxed,
		Sections: []RowsAhead{{Stitches: new(100), Rows: new(1)}},
		Border:   &BorderAhead{Rows: 20, Stitches: new(200), YarnNumber: new(2), BindOff: new(false)}}
}

// A border of one yarn takes whole loops, whatever share of the stranded rows the yarn had:
// 4,000 loops of sqrt(23.1 / (2 * 2.6)) cm are 84.3 m. The row of 100 before it takes a share
// of 20 % of loops and 80 % of floats of 1.26 / 2 cm: 0.93 m.
func TestBorderOfOneOfSeveralYarns(t *testing.T) {
	out := remainingOf(t, strandedRow(20))
	l := 2.1077
	knittest.Near(t, "contrast", out.Yarns[1].NeededM.Likely, (4000*l+100*(0.2*l+0.8*1.26/2))/100, 0.001)
	if out.Yarns[1].Lasts != LastsNo || out.Lasts != LastsNo {
		t.Errorf("%v", out.Yarns[1].Lasts)
	}
	// Bound off, the border takes 3 to 5 widths a stitch more: 4 of 4.2 of a loop are likely.
	in := strandedRow(20)
	in.Border.BindOff = nil
	knittest.Near(t, "bound off", remainingOf(t, in).Yarns[1].NeededM.Likely-out.Yarns[1].NeededM.Likely, 200*l*4/4.2/100, 0.001)
	// Both yarns together make the row, whatever the share.
	for _, share := range []float64{0.125, 1, 20, 50, 99, 99.875} {
		got := remainingOf(t, strandedRow(share)).Yarns[1].NeededM
		knittest.Near(t, "share", got.Likely, (4000*l+100*(share/100*l+(1-share/100)*1.26/2))/100, 0.001)
		if got.Low > got.Likely || got.Likely > got.High {
			t.Errorf("share %v: %+v", share, got)
		}
	}
}

// Rows that were weighed as the geometry of the loop would have them lead to the same border,
// in metres and in grams of one thickness.
func TestWeighedBorderAgreesWithTheLoop(t *testing.T) {
	for _, share := range []float64{5, 20, 50, 80, 95} {
		in := strandedRow(share)
		want := remainingOf(t, in).Yarns[1].NeededM.Likely
		in.Border = nil
		rows := remainingOf(t, in) // what a row of 100 takes
		for _, grams := range []bool{false, true} {
			weighed := strandedRow(share)
			weighed.Gauge = nil
			for i := range weighed.Yarns {
				y := &weighed.Yarns[i]
				y.SharePercent, y.Used = nil, &YarnUsed{LengthM: new(20 * rows.Yarns[i].NeededM.Likely), Rows: new(20), FirstRowStitches: 100}
				if grams {
					y.PutUp = &yarn.PutUp{BallM: 200, BallG: 100}
					y.Used.LengthM, y.Used.MassG, y.ScaleStepG = nil, new(*y.Used.LengthM/2), new(0.001)
				}
			}
			out := remainingOf(t, weighed)
			knittest.Near(t, "needed", out.Yarns[1].NeededM.Likely, want, 0.02)
			if !slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == BorderRate && n.Field == "border" }) {
				t.Errorf("%+v", out.Notices)
			}
		}
	}
}

// Weighed yarns that cannot be added up are asked for what turns one into the other, and only
// where a border wants it.
func TestBorderOfYarnsThatDoNotAddUp(t *testing.T) {
	in := RemainingInput{Yarns: []YarnLeft{{LeftG: new(80.0), Used: &YarnUsed{MassG: new(40.0), Rows: new(40), FirstRowStitches: 100}},
		{LeftM: new(60.0), Used: &YarnUsed{LengthM: new(30.0), Rows: new(40), FirstRowStitches: 100}}},
		Sections: []RowsAhead{{Stitches: new(100), Rows: new(1)}}}
	remainingOf(t, in)
	in.Border = &BorderAhead{Rows: 20}
	_, err := PlanRemainingYarn(in)
	knittest.WantViolations(t, err, "yarns[0].put_up REQUIRED", "yarns[1].put_up REQUIRED")
	for i := range in.Yarns {
		one := in
		one.Yarns = append([]YarnLeft{}, in.Yarns...)
		one.Yarns[i].PutUp = &yarn.PutUp{BallM: 200, BallG: 100}
		remainingOf(t, one)
	}
	// A yarn of which next to nothing was used was carried at the most: a float is a quarter
	// of a stitch at least.
	in.Yarns[1] = YarnLeft{LeftG: new(60.0), ScaleStepG: new(0.001), Used: &YarnUsed{MassG: new(0.01), Rows: new(40), FirstRowStitches: 100}}
	in.Border.YarnNumber, in.Border.BindOff, in.Border.Stitches = new(2), new(false), new(100)
	needed := remainingOf(t, in).Yarns[1].NeededG
	knittest.Near(t, "at most", needed.Likely, 0.01*(20/0.30+1)/40, 1e-6)
}

// Words at the edges: nothing over is no "probably", one row is no "all", and a border of
// nothing is none.
func TestRemainingWordsAtTheEdge(t *testing.T) {
	used := &YarnUsed{MassG: new(10.0), Rows: new(10), FirstRowStitches: 100}
	in := RemainingInput{Yarns: []YarnLeft{{LeftG: new(20.0), Used: used}}, Sections: []RowsAhead{{Rows: new(20), Stitches: new(100)}}}
	out := remainingOf(t, in)
	const want = "It may just last: 20 g left, 20 g needed (18 g to 22 g), nothing over, and at the worst 2.5 g short."
	if !strings.HasPrefix(out.Summary(), want) {
		t.Error(out.Summary())
	}
	in.Sections[0].Rows = new(1)
	if got := remainingOf(t, in).Summary(); !strings.HasSuffix(got, " The row can be worked.") {
		t.Error(got)
	}
	in.Border = &BorderAhead{Rows: 1}
	if got := remainingOf(t, in).Summary(); !strings.HasSuffix(got, " The border can wait until the row is worked.") {
		t.Error(got)
	}
	in.Border = &BorderAhead{BindOff: new(false)}
	_, err := PlanRemainingYarn(in)
	knittest.WantViolations(t, err, "border CONTRADICTORY")
}
