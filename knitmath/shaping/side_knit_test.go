package shaping

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// sideOf is a side through points given in rows.
func sideOf(start int, points ...[2]int) ShapedSideInput {
	in := ShapedSideInput{StartStitches: start}
	for _, p := range points {
		in.Points = append(in.Points, SidePoint{HeightRows: &p[0], Stitches: p[1]})
	}
	return in
}

func describeSide(in ShapedSideInput) string {
	s := fmt.Sprintf("%d", in.StartStitches)
	for _, p := range in.Points {
		s += fmt.Sprintf(" to %d at row %d", p.Stitches, fault.Or(p.HeightRows, 0))
	}
	return s + fmt.Sprintf(", per edge %d, edges %d, rows %d, spread %d, first %d, round %v",
		fault.Or(in.EdgeChangeStitches, 1), in.Edges, in.RowChoice, in.Spread, in.FirstSide, in.Construction == stitch.InTheRound)
}

// Small sides of every kind through two and three points are knit row by row.
func TestShapedSideIsKnit(t *testing.T) {
	planned, refused, apart := 0, 0, 0
	for _, in := range smallSides() {
		out, err := PlanShapedSide(in)
		if err != nil {
			refused++
			checkSideRefusal(t, in, err)
			continue
		}
		planned++
		apart += len(out.Notices)
		checkShapedSide(t, in, out)
	}
	if planned < knittest.Sweep(10000, 500) || refused < knittest.Sweep(10000, 500) || apart < knittest.Sweep(100, 10) {
		t.Errorf("planned %d, refused %d, kept apart %d: the sweep has shrunk", planned, refused, apart)
	}
}

// smallSides go from 14 stitches through two points, and on to 14 again.
func smallSides() []ShapedSideInput {
	var sides []ShapedSideInput
	step := knittest.Sweep(2, 4)
	for first := 1; first <= 5; first += knittest.Sweep(1, 3) {
		for second := 1; second <= 5; second += knittest.Sweep(1, 3) {
			for waist := 10; waist <= 18; waist += step {
				for bust := 10; bust <= 18; bust += step {
					sides = append(sides, sideVariants(sideOf(14, [2]int{first, waist}, [2]int{first + second, bust}))...)
					for third := 1; third <= 4; third += 3 {
						sides = append(sides, sideVariants(sideOf(14, [2]int{first, waist}, [2]int{first + second, bust},
							[2]int{first + second + third, 14}))...)
					}
				}
			}
		}
	}
	return sides
}

// sideVariants are a side with its edges, rows and spreads of every kind, flat
// from both sides and in the round.
func sideVariants(in ShapedSideInput) []ShapedSideInput {
	var variants []ShapedSideInput
	for variant := range 3 * 2 * 4 * 3 {
		in.Edges = ShapedEdges(1 + variant%3)
		in.RowChoice = RowChoice(1 + variant/3%2)
		in.Spread = IntervalSpread(1 + variant/6%4)
		in.FirstSide, in.Construction = stitch.SideUnspecified, stitch.ConstructionUnspecified
		switch variant / 24 {
		case 1:
			in.FirstSide = stitch.WrongSide
		case 2:
			in.Construction = stitch.InTheRound
		}
		variants = append(variants, in)
	}
	return variants
}

// Longer stretches of many slopes.
func TestLongerShapedSideIsKnit(t *testing.T) {
	for first := 9; first <= 40; first += knittest.Sweep(5, 15) {
		for second := 8; second <= 40; second += knittest.Sweep(7, 14) {
			for waist := 20; waist <= 60; waist += knittest.Sweep(4, 8) {
				for bust := 20; bust <= 60; bust += knittest.Sweep(8, 16) {
					for variant := range 2 * 2 * 3 {
						per := 1 + variant%2
						in := sideOf(40, [2]int{first, waist}, [2]int{first + second, bust}, [2]int{first + second + 6, bust})
						in.EdgeChangeStitches, in.RowChoice, in.Spread = &per, RowChoice(1+variant/2%2), IntervalSpread(1+variant/4)
						if out, err := PlanShapedSide(in); err == nil {
							checkShapedSide(t, in, out)
						} else {
							checkSideRefusal(t, in, err)
						}
					}
				}
			}
		}
	}
}

// checkShapedSide knits a side and compares it with the answer.
func checkShapedSide(t *testing.T, in ShapedSideInput, out ShapedSide) {
	t.Helper()
	at := describeSide(in)
	counts := piece{in.StartStitches, out.HeightRows, in.Construction, in.FirstSide, out.Rows,
		func(s ShapingRow) *stitch.Instruction {
			for _, stretch := range out.Stretches {
				if s.RowNumber <= stretch.LastRowNumber {
					return ofSide(s, stretch.RightSideRow, stretch.WrongSideRow)
				}
			}
			return nil
		}}.knit(t, at)
	if len(out.Stretches) != len(in.Points) || slices.Min(counts) != out.NarrowestStitches || slices.Max(counts) != out.WidestStitches {
		t.Fatalf("%s: %d to %d stitches, said %+v", at, slices.Min(counts), slices.Max(counts), out)
	}
	from, last, worst := 0, -2, 0.0
	for i, p := range in.Points {
		to := *p.HeightRows
		checkStretch(t, at, out.Stretches[i], counts, from, p)
		if rows := shapingWithin(out, from, to); len(rows) > 0 {
			if rows[0].RowNumber-last < 2 && canKeepApart(in, out) {
				t.Fatalf("%s: rows %d and %d both shape, across a point", at, last, rows[0].RowNumber)
			}
			checkIntervals(t, at, rows, rowStep(in.RowChoice, in.Construction), in.Spread)
			last = rows[len(rows)-1].RowNumber
		}
		worst = max(worst, strays(counts, from, to)/edgesOf(in.shape()))
		from = to
	}
	if from != out.HeightRows || math.Abs(worst-out.GreatestDepartureStitches) > 1e-9 {
		t.Fatalf("%s: %d rows, departs by %v, said %+v", at, from, worst, out)
	}
}

// canKeepApart tries every choice of rows, stretch by stretch, for one without
// neighbours across a point. Only where any row may shape can there be none.
func canKeepApart(in ShapedSideInput, out ShapedSide) bool {
	// ends[b] says that the stretches so far can be worked with (b=1) or without
	// (b=0) shaping in the very last row.
	ends := [2]bool{true, false}
	for _, x := range out.Stretches {
		rows := x.LastRowNumber - x.FirstRowNumber + 1
		if in.RowChoice != RowChoiceAny {
			return true
		}
		ends = extend(ends, x.ShapingRows, rows)
	}
	return ends[0] || ends[1]
}

// extend tries every choice of k of the rows of a stretch.
func extend(ends [2]bool, k, rows int) (next [2]bool) {
	if rows > 12 { // too many to try: the first row and the last are chosen, and the others hold the rest
		for choice := range 4 {
			first, last := choice&1, choice>>1
			if inner := k - first - last; inner >= 0 && inner <= rows-2 && (ends[0] || ends[1] && first == 0) {
				next[last] = true
			}
		}
		return next
	}
	for choice := range 1 << rows {
		n := 0
		for row := range rows {
			n += choice >> row & 1
		}
		if n != k || !ends[0] && choice&1 == 1 || !ends[0] && !ends[1] {
			continue
		}
		next[choice>>(rows-1)&1] = true
	}
	return next
}

// checkStretch compares a stretch with what was knit from a row to a point.
func checkStretch(t *testing.T, at string, s SideStretch, counts []int, from int, p SidePoint) {
	t.Helper()
	to := *p.HeightRows
	if counts[to] != p.Stitches || s.LastRowNumber != to || s.FirstRowNumber != from+1 || s.StartStitches != counts[from] ||
		s.EndStitches != p.Stitches {
		t.Fatalf("%s: %d stitches at row %d, stretch %+v", at, counts[to], to, s)
	}
}

// shapingWithin are the shaping rows after one row and up to another.
func shapingWithin(out ShapedSide, after, to int) []ShapingRow {
	var rows []ShapingRow
	for _, r := range out.Rows {
		if r.RowNumber > after && r.RowNumber <= to {
			rows = append(rows, r)
		}
	}
	return rows
}

// strays is how far counts stray from the straight line between two rows.
func strays(counts []int, from, to int) float64 {
	worst := 0.0
	for row := from; row <= to; row++ {
		line := float64(counts[from]) + float64(counts[to]-counts[from])*float64(row-from)/float64(to-from)
		worst = max(worst, math.Abs(float64(counts[row])-line))
	}
	return worst
}
