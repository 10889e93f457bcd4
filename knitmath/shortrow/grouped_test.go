package shortrow

import (
	"slices"
	"testing"
)

// Grouped, the steps between the turns of a flank are those of the wedge as it would
// be otherwise, the larger nearest the tall end.
func TestGroupedStepsStandTogether(t *testing.T) {
	moved := 0
	for width := 2; width <= 24; width++ {
		for rise := 2; rise <= 2*width; rise += 2 {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, Spread: TurnSpreadInterleaved}
				plain, err := PlanWedge(in)
				in.Spread = TurnSpreadGrouped
				out, refused := PlanWedge(in)
				if err != nil || refused != nil {
					continue
				}
				if !slices.Equal(plain.heights, out.heights) {
					moved++
				}
				for i, flank := range flanksOf(width, tall) {
					was, is := stepsOf(plain.heights, flank), stepsOf(out.heights, flank)
					slices.Sort(was)
					slices.Reverse(was)
					if !slices.Equal(was, is) {
						t.Fatalf("%s: flank %d has steps %v, want %v: %v", describe(in), i, is, was, out.heights)
					}
				}
			}
		}
	}
	if moved < 20 {
		t.Errorf("%d wedges were changed: the sweep has shrunk", moved)
	}
}

// flanksOf are the stitches of every flank, from the tall end on.
func flanksOf(width int, tall TallEnd) [][]int {
	run := func(from, to int) (flank []int) {
		for x := from; x != to; {
			flank = append(flank, x)
			if from < to {
				x++
			} else {
				x--
			}
		}
		return append(flank, to)
	}
	switch tall {
	case TallEndRight:
		return [][]int{run(0, width-1)}
	case TallEndLeft:
		return [][]int{run(width-1, 0)}
	case TallEndCentre:
		return [][]int{run((width-1)/2, 0), run(width/2, width-1)}
	}
	return [][]int{run(0, (width-1)/2), run(width-1, width/2)}
}

// stepsOf are the stitches from one turn of a flank to the next.
func stepsOf(heights, flank []int) []int {
	var steps []int
	last := -1
	for d := 1; d < len(flank); d++ {
		if heights[flank[d]] < heights[flank[d-1]] {
			if last >= 0 {
				steps = append(steps, d-last)
			}
			last = d
		}
	}
	return steps
}
