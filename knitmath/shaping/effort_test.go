package shaping

import (
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

func eased(spread IntervalSpread) bool {
	return spread == IntervalSpreadLeastEffort || spread == IntervalSpreadUnspecified
}

// checkEffort: the effort that is said is that of the intervals and the kinds of
// row; a plan of least effort has two runs at most and stays within the bound, or
// says that there is none.
func checkEffort(t *testing.T, in TaperInput, out Taper) {
	t.Helper()
	kinds := 0
	for _, row := range []*stitch.Instruction{out.RightSideRow, out.WrongSideRow} {
		if row != nil {
			kinds++
		}
	}
	effort := kinds + out.Intervals.Effort()
	excess := (out.GreatestDepartureStitches - out.LeastDepartureStitches) / edgesOf(in)
	if out.Effort != effort || excess < -1e-9 {
		t.Fatalf("%s: effort %d of %d, departs by %v and by %v at least", describeTaper(in), out.Effort, effort,
			out.GreatestDepartureStitches, out.LeastDepartureStitches)
	}
	if !eased(in.Spread) {
		return
	}
	if len(out.Notices) == 0 && (len(out.Intervals) > 2 || excess > fault.Or(in.ExcessStitches, 1)+1e-9) {
		t.Fatalf("%s: intervals %v depart by %v more at each edge", describeTaper(in), out.Intervals, excess)
	}
}

func edgesOf(in TaperInput) float64 {
	if in.Edges == ShapedEdgesBeginning || in.Edges == ShapedEdgesEnd {
		return 1
	}
	return 2
}

// At bound 0 a plan departs no further than the nearest, and where there is an easy
// one as near it is easy.
func TestNoExcessIsTheNearest(t *testing.T) {
	for rows := 20; rows < 80; rows++ {
		in := TaperInput{StartStitches: 40, EndStitches: 60, HeightRows: &rows, ExcessStitches: knittest.Ptr(0.0)}
		out, err := PlanTaper(in)
		if err != nil {
			t.Fatal(err)
		}
		if out.GreatestDepartureStitches > out.LeastDepartureStitches+1e-9 {
			t.Errorf("%d rows: departs by %v, at least by %v", rows, out.GreatestDepartureStitches, out.LeastDepartureStitches)
		}
		for _, n := range out.Notices {
			if n.Reason != ManyRuns {
				t.Errorf("%d rows: %v", rows, n)
			}
		}
	}
}

var excessAllowing = regexp.MustCompile(`an excess of ([\d.]+) stitch(?:es)? at each edge`)

// The excess that a notice names allows an easy schedule.
func TestExcessThatIsNamedIsEnough(t *testing.T) {
	named := 0
	for rows := 20; rows <= 70; rows++ {
		for change := 10; change <= 48; change += 2 {
			in := TaperInput{StartStitches: 40, EndStitches: 40 + change, HeightRows: &rows, ExcessStitches: knittest.Ptr(0.1)}
			out, err := PlanTaper(in)
			if err != nil || len(out.Notices) == 0 {
				continue
			}
			m := excessAllowing.FindStringSubmatch(out.Notices[0].Description)
			if m == nil {
				t.Fatalf("%s: %s", describeTaper(in), out.Notices[0].Description)
			}
			excess, _ := strconv.ParseFloat(m[1], 64) // it is a number by the pattern
			in.ExcessStitches = &excess
			if again, err := PlanTaper(in); err != nil || len(again.Notices) > 0 {
				t.Fatalf("%s: with %v as named: %v, %v", describeTaper(in), excess, again.Notices, err)
			}
			named++
		}
	}
	if named < 50 {
		t.Errorf("%d tapers named an excess", named)
	}
}

// Sleeves, waists and skirts as they are: nearly all of them come in two runs or
// fewer without departing a stitch more at each edge than they must, and 99 of 100 keep
// their first row and their last even. The rates stood in the plan before the
// code did: 99 of 100 flat, 100 of 100 in the round.
func TestOrdinaryTapersAreTwoRuns(t *testing.T) {
	for _, construction := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
		asked, easy, framed := 0, 0, 0
		for start := 40; start <= 120; start += knittest.Sweep(4, 20) {
			for change := 6; change <= 48; change += 2 {
				for rows := 60; rows <= 160; rows += 7 {
					in := TaperInput{StartStitches: start, EndStitches: start + change, HeightRows: &rows, Construction: construction}
					out, err := PlanTaper(in)
					if err != nil {
						t.Fatal(err)
					}
					asked++
					if len(out.Notices) == 0 {
						easy++
					}
					if out.FirstShapingRowNumber > 1 && out.EvenAfterRows > 0 {
						framed++
					}
				}
			}
		}
		least := 0.99
		if construction == stitch.InTheRound {
			least = 1
		}
		if float64(easy) < least*float64(asked) {
			t.Errorf("construction %d: %d of %d tapers are easy", construction, easy, asked)
		}
		if framed < asked*99/100 {
			t.Errorf("construction %d: %d of %d tapers keep their first row and their last even", construction, framed, asked)
		}
	}
}
