package shaping

import (
	"regexp"
	"slices"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
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
	excess := out.GreatestDepartureStitches - out.LeastDepartureStitches
	if out.Effort != effort || excess < -1e-9 {
		t.Fatalf("%s: effort %d of %d, departs by %v and by %v at least", describeTaper(in), out.Effort, effort,
			out.GreatestDepartureStitches, out.LeastDepartureStitches)
	}
	if !eased(in.Spread) {
		return
	}
	most := fault.Or(in.ToleranceStitches, 1)
	if out.FirstShapingRowNumber > 1 && out.EvenAfterRows > 0 {
		most *= 1.5
	}
	if !slices.ContainsFunc(out.Notices, isManyRuns) && (len(out.Intervals) > 2 || excess > most+1e-9) {
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
		in := TaperInput{StartStitches: 40, EndStitches: 60, HeightRows: &rows, ToleranceStitches: knittest.Ptr(0.0)}
		out, err := PlanTaper(in)
		if err != nil {
			t.Fatal(err)
		}
		if out.GreatestDepartureStitches > out.LeastDepartureStitches+1e-9 {
			t.Errorf("%d rows: departs by %v, at least by %v", rows, out.GreatestDepartureStitches, out.LeastDepartureStitches)
		}
		for _, n := range out.Notices {
			if n.Reason != ManyRuns && n.Reason != ShapedAtAnEnd {
				t.Errorf("%d rows: %v", rows, n)
			}
		}
	}
}

var excessAllowing = regexp.MustCompile(`a tolerance of ([\d.]+) stitch(?:es)? at each edge`)

// The excess that a notice names allows an easy schedule.
func TestExcessThatIsNamedIsEnough(t *testing.T) {
	named := 0
	for rows := 20; rows <= 70; rows++ {
		for change := 10; change <= 48; change += 2 {
			in := TaperInput{StartStitches: 40, EndStitches: 40 + change, HeightRows: &rows, ToleranceStitches: knittest.Ptr(0.1),
				EdgeChangeStitches: knittest.Ptr(1 + rows%2)}
			out, err := PlanTaper(in)
			if err != nil || !slices.ContainsFunc(out.Notices, isManyRuns) {
				continue
			}
			m := excessAllowing.FindStringSubmatch(out.Notices[0].Description)
			if m == nil {
				t.Fatalf("%s: %s", describeTaper(in), out.Notices[0].Description)
			}
			excess, _ := strconv.ParseFloat(m[1], 64) // it is a number by the pattern
			in.ToleranceStitches = &excess
			if again, err := PlanTaper(in); err != nil || slices.ContainsFunc(again.Notices, isManyRuns) {
				t.Fatalf("%s: with %v as named: %v, %v", describeTaper(in), excess, again.Notices, err)
			}
			// What is named is at most how far the easiest of all departs, in hundredths, up.
			in.ToleranceStitches = knittest.Ptr(float64(MaxTolerance))
			easiest, err := PlanTaper(in)
			want := easiest.GreatestDepartureStitches - out.LeastDepartureStitches
			if err != nil || excess > want+0.01 {
				t.Fatalf("%s: %v named, the easiest takes %v; %v", describeTaper(in), excess, want, err)
			}
			// And it is the least: hardly less does not do.
			in.ToleranceStitches = knittest.Ptr(excess - 0.02)
			if less, err := PlanTaper(in); excess >= 0.12 && (err != nil || !slices.ContainsFunc(less.Notices, isManyRuns)) {
				t.Errorf("%s: %v is named, and %v does; %v", describeTaper(in), excess, *in.ToleranceStitches, err)
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
		t.Logf("construction %d: of %d tapers %d are easy, %d framed", construction, asked, easy, framed)
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

// The excess that a side names allows an easy schedule in every stretch.
func TestExcessOfASideIsEnough(t *testing.T) {
	named := 0
	for rows := 20; rows <= 60; rows += 3 {
		for change := 10; change <= 40; change += 6 {
			for _, other := range []int{36, 46} {
				in := sideOf(40, [2]int{rows, 40 + change}, [2]int{rows + other, 40})
				in.ToleranceStitches = knittest.Ptr(0.1)
				out, err := PlanShapedSide(in)
				if err != nil || !slices.ContainsFunc(out.Notices, isManyRuns) {
					continue
				}
				named++
				m := excessAllowing.FindStringSubmatch(out.Notices[0].Description)
				excess, _ := strconv.ParseFloat(m[1], 64)
				in.ToleranceStitches = &excess
				again, err := PlanShapedSide(in)
				if err != nil || slices.ContainsFunc(again.Notices, isManyRuns) {
					t.Fatalf("%s: with %v as named: %v, %v", describeSide(in), excess, again.Notices, err)
				}
			}
		}
	}
	if named < 20 {
		t.Errorf("%d sides named an excess", named)
	}
}

// The tolerance that is offered is hardly more than is needed: a tenth of a stitch, or a tenth
// of it, less than the least that was found by trying does not do.
func TestOfferedToleranceIsNearlyTheLeast(t *testing.T) {
	for _, c := range []struct{ from, to, rows int }{{3, 109, 72}, {3, 161, 108}, {10, 110, 70}, {5, 99, 64}, {4, 90, 58}} {
		in := TaperInput{StartStitches: c.from, EndStitches: c.to, HeightRows: &c.rows, RowChoice: RowChoiceAny}
		out, err := PlanTaper(in)
		if err != nil || !slices.ContainsFunc(out.Notices, isManyRuns) {
			continue
		}
		offered := 0.0
		for _, n := range out.Notices {
			if m := excessAllowing.FindStringSubmatch(n.Description); m != nil {
				offered, _ = strconv.ParseFloat(m[1], 64)
			}
		}
		for tolerance := 1.0; tolerance < 0.85*offered; tolerance += 0.05 {
			in.ToleranceStitches = &tolerance
			if less, err := PlanTaper(in); err == nil && !slices.ContainsFunc(less.Notices, isManyRuns) {
				t.Errorf("%+v: %v is offered, and %v does", c, offered, tolerance)
				break
			}
		}
	}
}

func isManyRuns(n report.Notice) bool { return n.Reason == ManyRuns }

// Where any row may shape, a plan on right-side rows alone is taken if it is no
// harder: it is among those that lie near enough.
func TestRightSideRowsAloneAreNoHarder(t *testing.T) {
	alone, both := 0, 0
	for rows := 8; rows <= 60; rows += knittest.Sweep(1, 3) {
		for change := 2; change <= 40; change += 2 {
			in := TaperInput{StartStitches: 20, EndStitches: 20 + change, HeightRows: &rows, RowChoice: RowChoiceAny,
				EvenBeforeRows: new(0), EvenAfterRows: new(0), ToleranceStitches: knittest.Ptr(0.5)}
			free, err := PlanTaper(in)
			if err != nil {
				continue
			}
			in.RowChoice = RowChoiceRightSide
			in.ToleranceStitches = knittest.Ptr(free.LeastDepartureStitches + 0.5)
			right, err := PlanTaper(in)
			if err != nil || len(right.Notices) > 0 || right.GreatestDepartureStitches > free.LeastDepartureStitches+0.5+1e-9 {
				continue
			}
			if free.WrongSideRow == nil {
				alone++
				continue
			}
			both++
			if right.Effort <= free.Effort {
				t.Fatalf("%s: effort %d, and %d on right-side rows alone", describeTaper(in), free.Effort, right.Effort)
			}
		}
	}
	if alone < 20 || both < 3 {
		t.Errorf("%d on one side, %d on both: the sweep has shrunk", alone, both)
	}
}
