package edge

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// A front band by hand: 100 stitches, 7 holes of 3, 4 stitches from each end.
// 100 - 8 - 21 = 71 stitches lie in 6 gaps: five of 12 and one of 11, which
// cannot be laid the same from both ends; with 5 at the far end 70 are four of
// 12 and two of 11, the larger outermost.
func TestButtonholesByHand(t *testing.T) {
	three, four, five := 3, 4, 5
	in := ButtonholesInput{BandStitches: 100, BandRows: 7, HoleCount: 7, HoleStitches: &three, BeforeFirstPlaces: &four,
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}}
	out, err := PlanButtonholes(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Notices) != 1 || out.Notices[0].Reason != "NOT_MIRRORED" {
		t.Errorf("notices %v", out.Notices)
	}
	in.AfterLastPlaces = &five
	if out, err = PlanButtonholes(in); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(out.GapPlaces, []int{12, 12, 11, 11, 12, 12}) || len(out.Notices) != 0 ||
		!strings.Contains(strings.Join(out.Directions(), " "), "small parts") {
		t.Errorf("gaps %v, notices %v", out.GapPlaces, out.Notices)
	}
	// Of 7 rows, 2*4 - 7 = 1: row 4 leaves three before and two after.
	if got := out.Rows[0].Instruction.Row.Text(); got != "k4, [BO 3, k12] twice, [BO 3, k11] twice, [BO 3, k12] twice, BO 3, k5" ||
		out.Rows[0].RowNumber != 4 {
		t.Errorf("row %d %q", out.Rows[0].RowNumber, got)
	}
	if got := out.Rows[1].Instruction.Row.Text(); got != "p5, [CO 3, p12] twice, [CO 3, p11] twice, [CO 3, p12] twice, CO 3, p4" {
		t.Errorf("row %q", got)
	}
	// The second hole lies on stitches 20 to 22; its middle 20.5 stitches from
	// the start, which at 2 to the cm are 10.25 cm.
	if h := out.Holes[1]; h.FirstStitchNumber != 20 || h.LastStitchNumber != 22 || math.Abs(*h.MiddleCm-10.25) > 1e-12 {
		t.Errorf("second hole %+v, %v", h, *h.MiddleCm)
	}
}

// A band of 9 stitches knit upward, 150 rows at 30 to 10 cm, holes 1.1 cm from
// both ends: 3.3 rows, so 3; row 4 is a wrong-side row, so 4 rows and row 5. At
// the other end 3 rows after rows 146 and 147 would bind off on the wrong side;
// row 145, and 4 rows. 150 - 8 - 10 = 132 rows in 4 gaps.
func TestButtonholesUpwardByHand(t *testing.T) {
	cm, wide := 1.1, 1.5
	out, err := PlanButtonholes(ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: 150, HoleCount: 5,
		HoleCm: &wide, BeforeFirstCm: &cm, Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}})
	if err != nil {
		t.Fatal(err)
	}
	if out.BeforeFirstPlaces != 4 || out.AfterLastPlaces != 4 || out.HoleStitches != 3 || len(out.Notices) != 2 {
		t.Errorf("%d, %d, %d, %v", out.BeforeFirstPlaces, out.AfterLastPlaces, out.HoleStitches, out.Notices)
	}
	// 132 rows in four even gaps: 34, 32, 32, 34.
	if !reflect.DeepEqual(out.GapPlaces, []int{34, 32, 32, 34}) {
		t.Errorf("gaps %v", out.GapPlaces)
	}
	want := []string{
		"k and p stand for the stitch pattern of the band. " +
			"The stitch left on the right needle by binding off is the first of those worked next.",
		"Hole (RS): k3, BO 3, k3; next row p3, CO 3, p3.",
		"Begin a hole on rows 5, 41, 75, 109, 145, of two rows each; work all other rows even, to row 150.",
	}
	if !reflect.DeepEqual(out.rowDirections(), want) {
		t.Errorf("directions %q", out.rowDirections())
	}
}

// The row of the holes is the right-side row nearest the middle: tried over all.
func TestButtonholeRowIsMiddle(t *testing.T) {
	one := 1
	for rows := MinBandRows; rows <= 40; rows++ {
		out, err := PlanButtonholes(ButtonholesInput{BandStitches: 3, BandRows: rows, HoleCount: 1, HoleStitches: &one})
		if err != nil {
			t.Fatal(err)
		}
		best := 0
		for r := 2; r+1 <= rows; r += 2 {
			if best == 0 || measure.Abs(r-1-(rows-r-1)) < measure.Abs(best-1-(rows-best-1)) {
				best = r
			}
		}
		if got := out.Holes[0].BindOffRowNumber; got != best {
			t.Errorf("%d rows: row %d, want %d", rows, got, best)
		}
		// The same when asked for, and with one hole the stitches left over are
		// equal on both sides.
		in := ButtonholesInput{BandStitches: 5, BandRows: rows, HoleCount: 1, HoleStitches: &one, HoleRowNumber: &best}
		if out, err = PlanButtonholes(in); err != nil || out.BeforeFirstPlaces != 2 || out.AfterLastPlaces != 2 {
			t.Errorf("%d rows: %+v, %v", rows, out, err)
		} else {
			checkButtonholes(t, in, out)
		}
	}
}

func FuzzPlanButtonholes(f *testing.F) {
	f.Add(int32(1), 100, 7, 7, 3, 4, 0, 0, int32(0), 0.0)
	f.Add(int32(2), 9, 150, 5, 3, 4, 4, 0, int32(2), 20.0)
	f.Fuzz(func(t *testing.T, direction int32, stitches, rows, holes, width, first, last, row int, which int32, standard float64) {
		in := ButtonholesInput{Direction: BandDirection(direction), BandStitches: stitches % 500, BandRows: rows % 500, HoleCount: holes,
			HoleStitches: &width, RowChoice: shaping.RowChoice(which), WithOutline: true}
		if first != 0 {
			in.BeforeFirstPlaces = &first
		}
		if last != 0 {
			in.AfterLastPlaces = &last
		}
		if row != 0 {
			in.HoleRowNumber = &row
		}
		if standard != 0 {
			in.Gauge = &gauge.Gauge{Stitches: standard, Rows: standard}
		}
		out, err := PlanButtonholes(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkButtonholes(t, in, out)
	})
}

func BenchmarkButtonholes(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{BandStitches: 120, BandRows: 8, HoleCount: 7, HoleStitches: &three, BeforeFirstPlaces: &four}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkButtonholesMost(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: stitch.MaxRows, HoleCount: MaxButtonholes,
		HoleStitches: &three, BeforeFirstPlaces: &four, RowChoice: shaping.RowChoiceAny}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}
