package shortrow

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
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

// Every choice of turns on small wedges is worked out stitch by stitch: none departs
// less than the least that is said, none with less to remember stays within the excess,
// and none with as much departs less.
func TestLeastEffortAgainstEveryChoiceOfTurns(t *testing.T) {
	efforts := map[int]int{}
	for width := 2; width <= knittest.Sweep(13, 10); width++ {
		for tall := TallEndRight; tall <= TallEndSides; tall++ {
			for method := TurnMethodWrapAndTurn; method <= TurnMethodGerman; method++ {
				for rise := 2; rise < 2*width; rise += 2 {
					in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, TurnMethod: method}
					if _, err := PlanWedge(in); err != nil {
						continue
					}
					choices := everyChoice(in)
					for _, order := range []Order{OrderLongestFirst, OrderShortestFirst} {
						for _, excess := range []float64{0, 0.25, 0.5, 1, 2} {
							in.Order, in.ToleranceRows = order, &excess
							efforts[checkAgainst(t, in, choices)]++
						}
					}
				}
			}
		}
	}
	for effort := 1; effort <= 5; effort++ {
		if efforts[effort] == 0 {
			t.Errorf("no plan of effort %d: the sweep has shrunk", effort)
		}
	}
}

// A choice is turns of one flank, by the stitches of the wedge that they lie beyond, from
// the tall end, and what they make of it.
type choice struct {
	turns     []int
	departure float64
}

// everyChoice is all turns of a flank that leave a stitch beyond, of German turns a
// single one.
func everyChoice(in WedgeInput) []choice {
	stitches := in.WidthStitches
	if in.TallEnd >= TallEndCentre {
		stitches = (stitches + 1) / 2
	}
	last := stitches - 1
	if in.TurnMethod == TurnMethodGerman {
		last--
	}
	var all []choice
	for set := range 1 << last {
		var turns []int
		for d := range last {
			if set>>d&1 == 1 {
				turns = append(turns, d+1)
			}
		}
		if 2*len(turns) == *in.RiseRows {
			all = append(all, choice{turns, departureOf(in, stitches, turns)})
		}
	}
	return all
}

// departureOf is the greatest distance from the profile: two rows for each turn that lies
// farther from the tall end than a stitch, one for the double beyond a turn.
func departureOf(in WedgeInput, stitches int, turns []int) float64 {
	worst := 0.0
	for d := range stitches {
		rows := 0
		for _, turn := range turns {
			if d < turn {
				rows += 2
			} else if d == turn && in.TurnMethod == TurnMethodGerman {
				rows++
			}
		}
		x := d // a stitch of the wedge, from the right edge, that lies d from the tall end
		switch in.TallEnd {
		case TallEndLeft:
			x = in.WidthStitches - 1 - d
		case TallEndCentre:
			x = stitches - 1 - d
		}
		wanted, _ := wantedRows(in.TallEnd, in.WidthStitches, x, *in.RiseRows).Float64()
		worst = max(worst, float64(rows)-wanted, wanted-float64(rows))
	}
	return worst
}

// checkAgainst compares a plan with every choice there is, and gives its effort, or 0 if
// none is easy.
func checkAgainst(t *testing.T, in WedgeInput, choices []choice) int {
	t.Helper()
	out, err := PlanWedge(in)
	if err != nil {
		t.Fatal(err)
	}
	least := choices[0].departure
	for _, c := range choices {
		least = min(least, c.departure)
	}
	knittest.Near(t, describe(in), *out.LeastDepartureRows, least, 1e-9)
	best, departure := 0, least
	for _, c := range choices {
		effort := effortOf(in, c.turns)
		if effort == 0 || c.departure > least+*in.ToleranceRows+1e-9 {
			continue
		}
		if best == 0 || effort < best || effort == best && c.departure < departure {
			best, departure = effort, c.departure
		}
	}
	if many := slices.ContainsFunc(out.Notices, isManyRuns); many != (best == 0) || !many && out.Effort != best {
		t.Fatalf("%s, excess %v: effort %d, %v, want %d", describe(in), *in.ToleranceRows, out.Effort, out.Notices, best)
	}
	knittest.Near(t, describe(in), out.GreatestDepartureRows, departure, 1e-9)
	return best
}

// effortOf is what there is to remember of turns, as a knitter counts them on one side:
// the stitches that the first row leaves, or works, and the runs of steps after it. 0 if
// there are more runs than two, or two that are not a stitch apart.
func effortOf(in WedgeInput, turns []int) int {
	var steps []int
	for i := 1; i < len(turns); i++ {
		steps = append(steps, turns[i]-turns[i-1])
	}
	// At the edge where the work begins.
	begins := -1
	switch {
	case in.Order == OrderShortestFirst && in.TallEnd != TallEndCentre:
		begins = turns[0]
	case in.Order == OrderLongestFirst && in.TallEnd == TallEndCentre:
		begins = (in.WidthStitches+1)/2 - turns[len(turns)-1]
	case in.Order == OrderLongestFirst && in.TallEnd != TallEndSides:
		begins = in.WidthStitches - turns[len(turns)-1]
	}
	if in.Order == OrderLongestFirst {
		slices.Reverse(steps)
	}
	effort := 1
	if len(steps) > 0 && steps[0] == begins {
		effort = 0
	}
	runs := slices.Compact(slices.Clone(steps))
	if len(runs) > 2 || len(runs) == 2 && runs[0]-runs[1] != 1 && runs[1]-runs[0] != 1 {
		return 0
	}
	return effort + 2*len(runs)
}

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
