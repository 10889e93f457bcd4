package shortrow

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// Worked by hand. Four turns cut 25 stitches into five groups of 5, as the trade binds a
// shoulder off; with the longest row first 24 stitches leave 4 for the group at the tall
// end, with the shortest first for the one at the low end. A centre of 20 has two flanks
// of 10, each of five groups of 2. One turn cuts 10 stitches in two.
//
// 11 turns on 51 stitches lie nearest 51/22 stitches from the tall end and 51/11 from one
// another, which the stitches miss by half of one at most; a row more is 51/22. Ten steps
// of 4 so drift by 6.4 stitches, 3.2 to either side at best, where 2.8 are allowed, and
// ten of 5 have no room. Of two runs that begin with 4 stitches unworked five steps of 4,
// then five of 5, lie 1.7 from the nearest places.
func TestEqualStepsByHand(t *testing.T) {
	for _, c := range []struct {
		width, rise int
		tall        TallEnd
		order       Order
		effort      int
		want        string // the rows that turn
	}{
		{25, 8, TallEndRight, OrderLongestFirst, 2, "k20 k15 k10 k5"},
		{24, 8, TallEndLeft, OrderLongestFirst, 2, "p19 p14 p9 p4"},
		{24, 8, TallEndLeft, OrderShortestFirst, 2,
			"p5 p5, p1 tog with its wrap, p4 p10, p1 tog with its wrap, p4 p15, p1 tog with its wrap, p4"},
		{20, 8, TallEndCentre, OrderLongestFirst, 2, "k18 p16 k14 p12 k10 p8 k6 p4"},
		{10, 2, TallEndRight, OrderLongestFirst, 1, "k5"},
		{51, 22, TallEndRight, OrderLongestFirst, 4, "k47 k43 k39 k35 k31 k27 k22 k17 k12 k7 k2"},
	} {
		in := WedgeInput{WidthStitches: c.width, RiseRows: &c.rise, TallEnd: c.tall, Order: c.order}
		out, err := PlanWedge(in)
		if err != nil {
			t.Fatal(err)
		}
		checkWedge(t, in, out)
		var got []string
		for _, r := range out.Rows {
			if text, turns := strings.CutSuffix(r.Instruction.Row.Text(), ", w&t"); turns {
				got = append(got, text)
			}
		}
		if got := strings.Join(got, " "); got != c.want || out.Effort != c.effort {
			t.Errorf("%s: %s with effort %d, want %s with %d", describe(in), got, out.Effort, c.want, c.effort)
		}
	}
}

// checkEffort: turns of least effort come in two runs of steps a stitch apart at most, or
// the answer says that there are none; no turns depart less than the least.
func checkEffort(t *testing.T, in WedgeInput, out Wedge) {
	t.Helper()
	if out.LeastDepartureRows == nil || *out.LeastDepartureRows > out.GreatestDepartureRows {
		t.Fatalf("%s: departs by %v, at least by %v", describe(in), out.GreatestDepartureRows, out.LeastDepartureRows)
	}
	excess := out.GreatestDepartureRows - *out.LeastDepartureRows
	switch {
	case in.Spread == TurnSpreadGrouped:
	case in.Spread == TurnSpreadInterleaved || slices.ContainsFunc(out.Notices, isManyRuns):
		if excess != 0 {
			t.Fatalf("%s: the nearest turns depart by %v more than the least", describe(in), excess)
		}
	default:
		for _, s := range out.Turns {
			if n := len(s.Steps); n > 2 || n == 2 && (s.Steps[0].Stitches-s.Steps[1].Stitches)%2 == 0 {
				t.Fatalf("%s: turns %v", describe(in), out.Turns)
			}
		}
		if excess > fault.Or(in.ToleranceRows, 1)+1e-9 {
			t.Fatalf("%s: departs by %v more than the least", describe(in), excess)
		}
	}
}

func isManyRuns(n report.Notice) bool { return n.Reason == ManyRuns }

var excessAllowing = regexp.MustCompile(`a tolerance of ([\d.]+) rows? allows easy ones$`)

// The excess that a notice names allows easy turns, and a hundredth less does not.
func TestExcessThatIsNamedIsEnough(t *testing.T) {
	named := 0
	for width := 20; width <= 80; width++ {
		for rise := 4; rise <= 60; rise += 2 {
			in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: TallEnd(1 + width%4), Order: Order(1 + rise/2%2),
				TurnMethod: TurnMethod(1 + rise/4%2), ToleranceRows: new(0.1)}
			out, err := PlanWedge(in)
			if err != nil || !slices.ContainsFunc(out.Notices, isManyRuns) {
				continue
			}
			m := excessAllowing.FindStringSubmatch(out.Notices[len(out.Notices)-1].Description)
			if m == nil {
				t.Fatalf("%s: %v", describe(in), out.Notices)
			}
			excess, _ := strconv.ParseFloat(m[1], 64) // it is a number by the pattern
			for _, c := range []struct {
				excess float64
				many   bool
			}{{excess, false}, {excess - 0.01, true}} {
				in.ToleranceRows = &c.excess
				if again, err := PlanWedge(in); err != nil || slices.ContainsFunc(again.Notices, isManyRuns) != c.many {
					t.Fatalf("%s: %v named; with %v: %v, %v", describe(in), excess, c.excess, again.Notices, err)
				}
			}
			named++
		}
	}
	if named < 200 {
		t.Errorf("%d wedges named an excess", named)
	}
}

// Shoulders and darts as they are, 12 to 40 stitches that rise 4 to 14 rows, all have
// steps in two runs or fewer, and nine in ten of them in one. The rates were measured.
func TestOrdinaryWedgesAreEasy(t *testing.T) {
	asked, one := 0, 0
	for width := 12; width <= 40; width++ {
		for rise := 4; rise <= min(14, width); rise += 2 {
			for tall := TallEndRight; tall <= TallEndLeft; tall++ {
				out, err := PlanWedge(WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall})
				if err != nil {
					t.Fatal(err)
				}
				asked++
				if slices.ContainsFunc(out.Notices, isManyRuns) {
					t.Errorf("%d stitches, %d rows: %v", width, rise, out.Notices)
				}
				if len(out.Turns[0].Steps) == 1 {
					one++
				}
			}
		}
	}
	if 10*one < 9*asked {
		t.Errorf("%d of %d have one run", one, asked)
	}
}
