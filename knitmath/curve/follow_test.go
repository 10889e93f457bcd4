package curve

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// randomSettings are any that may be asked.
func randomSettings(r *rand.Rand) Settings {
	return Settings{
		Edges: Edges(r.IntN(4)), FirstSide: stitch.Side(r.IntN(3)), AnyRow: r.IntN(2) == 0,
		LargestChange: []int{0, 0, 1, 2, -1}[r.IntN(5)], LargestGroup: []int{0, 0, 0, 3, 6, -1}[r.IntN(6)],
		Tolerance: []float64{0, 0.25, 0.5, 0.5, 1, 3}[r.IntN(6)],
	}
}

// Every plan of a sweep is knit by the machine, row by row: bind-offs where the yarn
// is, the counts that the rows say, and all stitches lost in the end.
func TestPlansAreKnit(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 2026))
	planned, kinds := 0, map[Kind]int{}
	for range 6_000 {
		c := randomCourse(r, 30, 60)
		s := randomSettings(r)
		c.Gains = r.IntN(3) == 0
		c.RowsBefore = r.IntN(4)
		p, ok := Follow(c, s)
		if !ok {
			continue
		}
		planned++
		checkPlan(t, c, s, p)
		if t.Failed() {
			t.Fatalf("%+v\n%+v\n%+v", c, s, p)
		}
		for _, x := range p.Runs {
			kinds[x.Kind]++
		}
		sides := 1
		if p.Right != nil && p.Left != nil {
			sides = 2
		}
		start := sides*c.Stitches + 20
		if c.Gains {
			start = 20
		}
		w := Working{FirstRow: c.RowsBefore + 1, LastRow: c.RowsBefore + c.Rows, FirstSide: s.FirstSide, EdgeStitches: 1 + r.IntN(2)}
		rows, lacking := Worked(start, p.Right, p.Left, w)
		if lacking > 0 || len(rows) != c.Rows {
			t.Fatalf("row %d lacks stitches: %+v", lacking, p)
		}
		knitRows(t, start, rows)
		end := rows[len(rows)-1].Instruction.EndStitches
		if want := start - sides*c.Stitches; !c.Gains && end != want || c.Gains && end != start+sides*c.Stitches {
			t.Fatalf("%d stitches at the end of %+v", end, p)
		}
	}
	if planned < 4_000 || len(kinds) != 4 {
		t.Errorf("only %d plans, kinds %v", planned, kinds)
	}
}

// knitRows knits rows on a machine, on the sides that they name.
func knitRows(t *testing.T, start int, rows []Row) {
	t.Helper()
	m := knittest.CastOn(t, start, false)
	if rows[0].Side == stitch.WrongSide { // the machine begins with a right-side row
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	for _, r := range rows {
		if m.Side() != r.Side {
			t.Fatalf("row %d faces the other side", r.RowNumber)
		}
		if m.StitchCount() != r.Instruction.StartStitches {
			t.Fatalf("row %d begins on %d stitches, not %d", r.RowNumber, m.StitchCount(), r.Instruction.StartStitches)
		}
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("row %d (%s): %v", r.RowNumber, r.Instruction.Row.Text(), err)
		}
		if m.StitchCount() != r.Instruction.EndStitches {
			t.Fatalf("row %d ends on %d stitches, not %d", r.RowNumber, m.StitchCount(), r.Instruction.EndStitches)
		}
	}
}

// checkPlan looks at a plan by itself: its rows may have what they have, its figures
// are those of its steps.
func checkPlan(t *testing.T, c Course, s Settings, p Plan) {
	t.Helper()
	if p.Departure > p.Least+s.Tolerance+1e-6 || p.Departure < p.Least-1e-6 {
		t.Errorf("departs by %v; the least is %v", p.Departure, p.Least)
	}
	if both := s.Edges == EdgesUnspecified || s.Edges == EdgesBoth; (p.Right == nil) != (s.Edges == EdgesLeft) ||
		(p.Left == nil) != (s.Edges == EdgesRight) || both && len(p.Left) != len(p.Right) {
		t.Errorf("edges %v: %v %v", s.Edges, p.Right, p.Left)
	}
	checkSteps(t, c, s, 0, p.Right)
	checkSteps(t, c, s, 1, p.Left)
	if off := worstCorner(c, p); off > p.Departure+1e-5 || off < p.Departure-1e-5 {
		t.Errorf("corners are %v off, said %v", off, p.Departure)
	}
	lead := p.Right
	if lead == nil || len(p.Left) > 0 && SideOf(c.RowsBefore+1, s.FirstSide) == stitch.WrongSide {
		lead = p.Left
	}
	if e := effortOf(c, s, lead); e != p.Effort {
		t.Errorf("effort %d, said %d", e, p.Effort)
	}
}

// checkSteps looks at the steps of one edge, 0 for the right one: each is in its turn,
// where there is yarn for it, as large as it may be, and all come to what is lost.
func checkSteps(t *testing.T, c Course, s Settings, hand int, steps []Step) {
	t.Helper()
	lost, last := 0, c.RowsBefore
	for _, x := range steps {
		if x.RowNumber <= last || x.RowNumber > c.RowsBefore+c.Rows {
			t.Errorf("row %d after row %d", x.RowNumber, last)
		} else if x.Kind.Gains() != c.Gains {
			t.Errorf("row %d goes the other way", x.RowNumber)
		}
		checkStep(t, s, hand, x)
		lost, last = lost+x.Stitches, x.RowNumber
	}
	if steps != nil && lost != c.Stitches {
		t.Errorf("edge %d has lost %d of %d", hand, lost, c.Stitches)
	}
}

func checkStep(t *testing.T, s Settings, hand int, x Step) {
	t.Helper()
	faces, most := SideOf(x.RowNumber, s.FirstSide), max(s.LargestChange, 1)
	switch {
	case x.Kind.Groups() && (faces == stitch.RightSide) != (hand == 0):
		t.Errorf("no yarn at edge %d in row %d", hand, x.RowNumber)
	case x.Kind.Groups() && (s.LargestGroup < 0 || s.LargestGroup > 0 && x.Stitches > s.LargestGroup):
		t.Errorf("%d at once", x.Stitches)
	case !x.Kind.Groups() && (s.LargestChange < 0 || x.Stitches > most || !s.AnyRow && faces == stitch.WrongSide):
		t.Errorf("row %d changes by %d", x.RowNumber, x.Stitches)
	}
}

// worstCorner measures the edges as knit against the course, corner by corner.
func worstCorner(c Course, p Plan) float64 {
	worst := 0.0
	for _, steps := range [2][]Step{p.Right, p.Left} {
		if steps == nil {
			continue
		}
		lost := 0
		at := func(height int) {
			worst = max(worst, cornerOff(c, lost, height-c.RowsBefore))
		}
		for _, x := range steps {
			at(x.RowNumber - 1)
			lost += x.Stitches
			if x.Kind.Groups() {
				at(x.RowNumber - 1)
			} else {
				at(x.RowNumber)
			}
		}
	}
	return worst
}

// cornerOff is a corner's way to the curve, in floats.
func cornerOff(c Course, lost, height int) float64 {
	dist := func(s span, at int) float64 {
		switch x := float64(at) * 1e6; {
		case x < float64(s.from):
			return (float64(s.from) - x) / 1e6
		case x > float64(s.to):
			return (x - float64(s.to)) / 1e6
		}
		return 0
	}
	return min(dist(c.across[height], lost), dist(c.up[lost], height)*22/30)
}
