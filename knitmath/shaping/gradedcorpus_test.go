package shaping

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// armOf is the arm of a group of people from its smallest size to its largest, in cm.
// Upper arms and lengths to the underarm are those of the body size charts of
// knitmath/body; wrists are common practice (testdata/ordinary).
type armOf struct{ wrist, upper, length []float64 }

var arms = map[string]armOf{
	"women": {[]float64{14.5, 15, 15.5, 16, 16.5, 17, 17.5, 18, 19}, []float64{25, 26, 28, 30.5, 34.5, 39.5, 43, 47, 49.5},
		[]float64{42, 43, 43, 44.5, 44.5, 45.5, 45.5, 47, 47}},
	"men": {[]float64{16.5, 17, 17.5, 18.5, 19.5}, []float64{30.5, 33, 38, 40.5, 43}, []float64{45.5, 47, 49.5, 50.5, 52}},
	"children": {[]float64{12.5, 12.5, 13, 13.5, 14, 14.5, 15, 15.5}, []float64{18, 19, 20.5, 21.5, 22, 23, 23.5, 24},
		[]float64{21.5, 26.5, 29, 31.5, 34.5, 38, 40.5, 42}},
}

// at is the measure of a place between the smallest size, 0, and the largest, 1.
func at(list []float64, place float64) float64 {
	x := place * float64(len(list)-1)
	i := min(int(x), len(list)-2)
	return list[i] + (list[i+1]-list[i])*(x-float64(i))
}

// The ways a sleeve is cut: how much wider than the arm, above and at the cuff, and how
// much of the length is ribbing or kept straight. Common practice.
var cuts = map[string]struct{ upper, cuff, less float64 }{
	"close": {2, 2, 8}, "easy": {6, 3, 10}, "drop shoulder": {14, 4, 14}, "three-quarter": {5, 8, 20},
}

// gaugesOfCorpus are stitches and rows to 10 cm, from bulky to fingering. Common practice.
var gaugesOfCorpus = [][2]float64{{14, 20}, {18, 25}, {22, 30}, {28, 38}}

// sleevesInSizes are sleeves in 3 to 12 sizes for all people, cuts and gauges, flat and
// in the round, from the cuff up and from the top down by turns.
func sleevesInSizes(do func(GradedTaperInput)) {
	number := 0
	for _, people := range []string{"women", "men", "children"} {
		for _, cut := range []string{"close", "easy", "drop shoulder", "three-quarter"} {
			for _, g := range gaugesOfCorpus {
				for _, cons := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
					for sizes := 3; sizes <= 12; sizes++ {
						number++
						in := GradedTaperInput{Construction: cons}
						for i := range sizes {
							in.Sizes = append(in.Sizes, sleeveOf(arms[people], cuts[cut], g, float64(i)/float64(sizes-1), number%2 == 0))
						}
						do(in)
					}
				}
			}
		}
	}
}

func sleeveOf(a armOf, cut struct{ upper, cuff, less float64 }, g [2]float64, place float64, down bool) TaperSize {
	g10 := gauge.Gauge{Stitches: g[0], Rows: g[1]}
	even := func(cm float64) int { return 2 * int(cm*g10.Stitches/20+0.5) }
	start, end := even(at(a.wrist, place)+cut.cuff), even(at(a.upper, place)+cut.upper)
	if down {
		start, end = end, start
	}
	rows := int((at(a.length, place)-cut.less)*g10.Rows/10 + 0.5)
	return TaperSize{StartStitches: start, EndStitches: end, HeightRows: &rows}
}

// alone is the taper of one size without the others.
func (in GradedTaperInput) alone(i int) TaperInput { return in.of(in.Sizes[i]) }

// What is asked of all sizes in one sentence, of 960 sleeves: how many of their sizes
// depart further than they may, and how much there is to remember. No size does where it
// has an easy schedule alone. How many shape in the first row or the last though rows are to
// spare: 466 before sizes could depart by half a stitch more to keep these even.
func TestSleevesInManySizes(t *testing.T) {
	var sleeves, sizes, beyond, hard, zeros, changes, effort, over, kept, atEnd, refused int
	var runs [4]int
	var worst, sum, worstAlone float64
	sleevesInSizes(func(in GradedTaperInput) {
		out, err := PlanGradedTaper(in)
		if err != nil { // a child's short sleeve that would have to grow faster than rows allow
			knittest.CheckInputError(t, err)
			refused++
			return
		}
		sleeves++
		runs[len(out.Runs)]++
		effort += out.Effort
		if saysBeyond(out) {
			beyond++
		}
		for i, s := range out.Sizes {
			sizes++
			excess := s.GreatestDepartureStitches - s.LeastDepartureStitches
			sum += excess
			worst = math.Max(worst, excess)
			one, err := PlanTaper(in.alone(i))
			if err != nil {
				t.Fatal(err)
			}
			// One size may have intervals in turn, several have not.
			alone := !hasReason(one, ManyRuns) && !slices.ContainsFunc(one.Intervals, func(r schedule.Run) bool { return len(r.EveryRows) > 2 })
			if one.LeastDepartureStitches+1 < one.GreatestDepartureStitches-1e-9 || !alone {
				hard++
			}
			switch {
			case excess <= 1+1e-9:
			case excess <= endsWorth+1e-9 && *s.FirstShapingRowNumber > 1 && s.EvenAfterRows > 0:
				kept++
			default:
				over++
				if alone {
					t.Errorf("%d to %d in %d rows departs by %.2f beyond the least, and alone there is an easy schedule", s.StartStitches, s.EndStitches,
						s.HeightRows, excess)
				}
			}
			if (*s.FirstShapingRowNumber == 1 || s.EvenAfterRows == 0) && one.t.spare() {
				atEnd++
			}
			worstAlone = math.Max(worstAlone, s.GreatestDepartureStitches-one.GreatestDepartureStitches)
		}
		for _, r := range out.Runs {
			for i := range r.Times {
				if r.Times[i] == 0 {
					zeros++
				}
				if i > 0 && r.Times[i]*r.Times[i-1] > 0 && r.EveryRows[i] != r.EveryRows[i-1] {
					changes++
				}
			}
		}
	})
	t.Logf("%d refused; %d sleeves, %d sizes: %d sleeves with a notice, %d sizes over 1 stitch an edge (alone %d), "+
		"%d over it with even ends, %d shaped at an end with rows to spare, mean %.3f, worst %.2f, worst against alone %.2f; "+
		"runs %v, %d zeros, %d changes, effort %d",
		refused, sleeves, sizes, beyond, over, hard, kept, atEnd, sum/float64(sizes), worst, worstAlone, runs, zeros, changes, effort)
	if sleeves < 900 || beyond > 90 || over > 170 || worst > 3.01 || atEnd > 40 {
		t.Errorf("%d sleeves: %d with a notice, %d sizes over, by up to %.2f, %d shaped at an end", sleeves, beyond, over, worst, atEnd)
	}
}

// saysBeyond reports whether a size lies farther from its line than was asked.
func saysBeyond(out GradedTaper) bool {
	return slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == BeyondTolerance })
}

func hasReason(out Taper, reason any) bool {
	for _, n := range out.Notices {
		if n.Reason == reason {
			return true
		}
	}
	return false
}
