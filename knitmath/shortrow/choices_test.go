package shortrow

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

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
