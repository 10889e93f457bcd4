package neck

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// drawn is a neckline as somebody might ask it, by a number.
func drawn(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 13))
	gauges := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {12, 16}, {20, 26.5}, {16, 32}}
	g := gauges[r.IntN(len(gauges))]
	in := Input{
		Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]},
		Shape: Shape(r.IntN(int(ShapeBoat) + 1)), Centre: Centre(r.IntN(3)),
		ShoulderMethod: ShoulderMethod(r.IntN(3)), RowChoice: shaping.RowChoice(r.IntN(3)),
	}
	shoulder, neck := 2+r.IntN(40), 1+r.IntN(60)
	in.WidthStitches = new(2*shoulder + neck)
	if r.IntN(4) > 0 {
		in.NeckStitches = new(neck)
	}
	if in.ShoulderMethod == ShoulderMethodShortRows {
		in.TurnMethod = shortrow.TurnMethod(r.IntN(4))
	}
	if r.IntN(3) > 0 {
		in.FrontDepthRows = new(r.IntN(70))
	}
	if r.IntN(3) > 0 {
		in.BackDepthRows = new(r.IntN(24))
	}
	if r.IntN(3) > 0 {
		in.ShoulderSlopeRows = new(r.IntN(shoulder + 3))
	}
	if r.IntN(4) == 0 {
		in.EdgeStitches = new(1 + r.IntN(3))
	}
	if r.IntN(4) == 0 {
		in.ToleranceStitches = new(float64(r.IntN(7)) / 2)
	}
	if r.IntN(5) == 0 && in.Shape <= ShapeV {
		in.FrontCentreStitches = new(neck%2 + 2*r.IntN(neck/2+1))
	}
	if r.IntN(3) == 0 {
		in.ArmholeRows = new(8 + 2*r.IntN(30))
		in.ArmholeSteps = armholeDrawn(r, *in.ArmholeRows)
	}
	if r.IntN(6) == 0 && in.FrontCentreStitches == nil {
		in.FrontWidthStitches = new(*in.WidthStitches + r.IntN(9))
	}
	if r.IntN(4) == 0 && in.ShoulderMethod != ShoulderMethodShortRows {
		in.StrapStitches = new(1 + r.IntN(24))
	}
	if len(in.ArmholeSteps) > 0 && r.IntN(2) == 0 {
		in.FrontArmholeSteps = armholeDrawn(r, *in.ArmholeRows)
	}
	return in
}

// armholeDrawn is an armhole: an underarm, a group or two, and decreases.
func armholeDrawn(r *rand.Rand, rows int) []ArmholeStep {
	steps := []ArmholeStep{{1, 1 + r.IntN(8), true}}
	for row := 3; row < 3+2*r.IntN(3) && row < rows; row += 2 {
		steps = append(steps, ArmholeStep{row, 1 + r.IntN(3), true})
	}
	for row := steps[len(steps)-1].RowNumber + 2; row < rows; row += 2 + 2*r.IntN(2) {
		if len(steps) > 12 {
			break
		}
		steps = append(steps, ArmholeStep{row, 1, false})
	}
	return steps
}

// eachDrawn plans thousands of necklines and shows those that have a plan.
func eachDrawn(t *testing.T, show func(at string, in Input, out Neckline)) {
	t.Helper()
	planned, all := 0, knittest.Sweep(12_000, 2_000)
	for seed := range all {
		in := drawn(uint64(seed))
		out, err := PlanNeckline(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		planned++
		show(fmt.Sprintf("question %d", seed), in, out)
		if t.Failed() {
			return
		}
	}
	if planned < 6*all/10 {
		t.Errorf("%d of %d have a plan: the sweep has shrunk", planned, all)
	}
}

// The machine works every row of every plan, with the stitches that the answer says, and
// the shoulders end at the heights that they should.
func TestNecklinesAreKnit(t *testing.T) {
	stitches, rows := 0.0, 0.0
	eachDrawn(t, func(at string, in Input, out Neckline) {
		for _, p := range []struct {
			name string
			Piece
		}{{"front", out.Front}, {"back", out.Back}} {
			knitPiece(t, at+" "+p.name, in, out, p.Piece)
			far := p.GreatestDepartureStitches
			stitches, rows = max(stitches, far), max(rows, far*in.Gauge.Rows/in.Gauge.Stitches)
		}
	})
	t.Logf("%d edges measured; at most %.1f stitches or %.1f rows from the curve, of an ellipse %.2f and %.2f on the fabric", measured,
		stitches, rows, farthest, high)
	if farthest > 2.5 || high > 3.5 {
		t.Errorf("%v stitches and %v rows from an ellipse", farthest, high)
	}
	if least := knittest.Sweep(1_000, 150); armholes[first] < least || armholes[second] != armholes[first] {
		t.Errorf("%d bind-offs of armholes beside necks", armholes)
	}
	if measured < knittest.Sweep(3_000, 500) {
		t.Errorf("%d edges were measured", measured)
	}
}

// measured are the pieces whose edge was measured on the fabric, armholes the bind-offs of
// armholes beside necks, of both sides.
var (
	measured int
	armholes [2]int
)

// knitter works a piece.
type knitter struct {
	t    *testing.T
	at   string
	m    *stitch.Machine
	rows []Row
	yo   bool
}

// work works a part of the rows, and plain ones between them.
func (k *knitter) work(part Part, from, to int) {
	k.t.Helper()
	for number := from; number <= to; number++ {
		row, listed := k.next(part, number)
		side := stitch.RightSide
		if number%2 == 0 {
			side = stitch.WrongSide
		}
		if k.m.Side() != side {
			k.t.Fatalf("%s row %d: the %s faces", k.at, number, k.m.Side())
		}
		if !listed {
			if err := k.m.Work(knittest.PlainRow(k.m)); err != nil {
				k.t.Fatalf("%s even row %d: %v", k.at, number, err)
			}
			continue
		}
		if row.Side != side {
			k.t.Fatalf("%s row %d is said to be of the %s", k.at, number, row.Side)
		}
		before := k.m.StitchCount()
		if err := k.m.Work(row.Instruction.Row); err != nil {
			k.t.Fatalf("%s row %d, %s: %v", k.at, number, row.Instruction.Row.Text(), err)
		}
		if k.yo && k.m.Unresolved() > 0 || k.yo && before != row.Instruction.StartStitches {
			continue // the yarn overs of short rows are not counted
		}
		if got := k.m.StitchCount(); before != row.Instruction.StartStitches || got != row.Instruction.EndStitches {
			k.t.Fatalf("%s row %d, %s: from %d to %d stitches, said %d to %d", k.at, number, row.Instruction.Row.Text(), before, got,
				row.Instruction.StartStitches, row.Instruction.EndStitches)
		}
	}
}

func (k *knitter) next(part Part, number int) (Row, bool) {
	if len(k.rows) == 0 || k.rows[0].Part != part || k.rows[0].RowNumber != number {
		return Row{}, false
	}
	row := k.rows[0]
	k.rows = k.rows[1:]
	return row, true
}

func knitPiece(t *testing.T, at string, in Input, out Neckline, p Piece) {
	t.Helper()
	k := &knitter{t: t, at: at, m: stitch.NewMachine(stitch.Flat), rows: p.Rows,
		yo: in.TurnMethod == shortrow.TurnMethodYarnOver}
	f, err := k.m.Record()
	if err == nil {
		err = k.m.CastOn(p.StartStitches)
	}
	if err != nil {
		t.Fatal(err)
	}
	firstDone := 0 // rows that have been worked when the first side is done
	last := func(part Part) int {
		n := 0
		for _, r := range p.Rows {
			if r.Part == part {
				n = r.RowNumber
			}
		}
		return n
	}
	short := in.ShoulderMethod == ShoulderMethodShortRows
	top := p.NeckRowNumber - 1 + p.DepthRows // of the first side
	if p.DepthRows == 0 {
		k.work(PartWhole, 1, p.NeckRowNumber)
		k.work(PartSecondSide, p.NeckRowNumber+1, last(PartSecondSide))
		checkBoundOff(t, at, k.m.BoundOff(), out, p, top)
	} else {
		k.work(PartWhole, 1, p.NeckRowNumber-1)
		ends := [2]int{top + 1, top + 2}
		if short {
			ends = [2]int{top, top - 1}
		}
		k.work(PartFirstSide, p.NeckRowNumber, max(ends[0], last(PartFirstSide)))
		k.endSide(short, out, top)
		firstDone = k.m.RowsWorked()
		held := len(k.m.Holders()) - 1
		if short {
			held--
		}
		if err := k.m.TakeUp(stitch.RightSide, held); err != nil {
			t.Fatalf("%s: the second side: %v", at, err)
		}
		told := strings.Contains(strings.Join(p.directions(nil, out), "\n"), "the yarn overs on hold are not counted")
		if told != (k.yo && k.m.Unresolved() > 0) {
			t.Errorf("%s: of %d held the yarn overs are told: %v", at, k.m.StitchCount(), told)
		}
		k.work(PartSecondSide, p.NeckRowNumber, max(ends[1], last(PartSecondSide)))
		secondTop := p.NeckRowNumber - 1 + p.SecondSideDepthRows
		k.endSide(short, out, secondTop)
		if p.HeightRows != max(ends[0], ends[1], p.NeckRowNumber) {
			t.Fatalf("%s: said to be %d rows high, and is %d", at, p.HeightRows, max(ends[0], ends[1]))
		}
		if !short {
			checkBoundOff(t, at, k.m.BoundOff(), out, p, top)
		}
		// Of a few stitches, as short rows have them, the recorder does not know which edge a
		// decrease is at.
		narrow := slices.ContainsFunc(p.Rows, func(r Row) bool {
			return r.Instruction.EndStitches < 2*p.layout.margin+6 && (decreases(r) || len(r.Instruction.Row.Steps) > 2)
		})
		if !narrow && !short {
			checkEdge(t, at, p, f, firstDone)
			measured++
		}
	}
	if len(k.rows) > 0 {
		t.Fatalf("%s: row %d is left over", at, k.rows[0].RowNumber)
	}
	checkSteps(t, at, in, out, p)
}

// endSide looks at what is on the needle when a side is done: nothing, or a shoulder
// whose stitches have as many rows as its steps want.
func (k *knitter) endSide(short bool, out Neckline, top int) {
	k.t.Helper()
	if !short {
		if n := k.m.StitchCount(); n != 0 {
			k.t.Fatalf("%s: %d stitches are left", k.at, n)
		}
		return
	}
	if n := k.m.StitchCount(); n != out.ShoulderStitches || k.m.Unresolved() != 0 {
		k.t.Fatalf("%s: %d stitches are left of a shoulder of %d, %d open", k.at, n, out.ShoulderStitches, k.m.Unresolved())
	}
	heights := k.m.Heights()
	slices.Sort(heights)
	at, lowest := 0, top-2*(len(out.ShoulderStepStitches)-1)
	for i, n := range out.ShoulderStepStitches {
		for _, h := range heights[at : at+n] {
			// The stitch beyond a turn, made double, has one row more.
			if h != lowest+2*i && h != lowest+2*i+1 {
				k.t.Fatalf("%s: a stitch of step %d is %d rows high, wanted %d: %v", k.at, i+1, h, lowest+2*i, heights)
			}
		}
		at += n
	}
	if err := k.m.Work(stitch.RowOf(stitch.Do(stitch.Hold, out.ShoulderStitches))); err != nil {
		k.t.Fatalf("%s: %v", k.at, err)
	}
}

// checkBoundOff compares the heights of all that is bound off with those of the steps.
func checkBoundOff(t *testing.T, at string, heights []int, out Neckline, p Piece, top int) {
	t.Helper()
	want := map[int]int{}
	for i, n := range out.ShoulderStepStitches {
		want[top-2*(len(out.ShoulderStepStitches)-1-i)] += n
		want[p.NeckRowNumber-1+p.SecondSideDepthRows-2*(len(out.ShoulderStepStitches)-1-i)] += n
	}
	for _, s := range p.Steps {
		if s.BoundOff {
			want[s.FirstSideRowNumber-1] += s.Stitches
			want[s.SecondSideRowNumber-1] += s.Stitches
		}
	}
	for side, list := range p.layout.outer {
		for _, e := range list {
			if e.bindOff {
				want[p.NeckRowNumber-1+e.row] += e.stitches
				armholes[side]++
			}
		}
	}
	if !p.layout.held {
		want[p.NeckRowNumber-1] += p.CentreStitches
	}
	for _, h := range heights {
		want[h]--
	}
	for h, n := range want {
		if n != 0 {
			t.Fatalf("%s: %d stitches bound off at height %d are too few or too many: %v", at, n, h, heights)
		}
	}
}

// checkSteps adds up what goes at the neck.
func checkSteps(t *testing.T, at string, in Input, out Neckline, p Piece) {
	t.Helper()
	sum := p.CentreStitches
	for _, s := range p.Steps {
		sum += 2 * s.Stitches
	}
	shoulder := 0
	for _, n := range out.ShoulderStepStitches {
		shoulder += n
	}
	if front := p.layout.piece == "front"; front && in.FrontWidthStitches != nil && p.NeckStitches+2*shoulder != *in.FrontWidthStitches ||
		(!front || in.FrontWidthStitches == nil) && p.NeckStitches != out.NeckStitches {
		t.Fatalf("%s: a neck of %d", at, p.NeckStitches)
	}
	if sum != p.NeckStitches || shoulder != out.ShoulderStitches || out.NeckStitches+2*shoulder != out.WidthStitches {
		t.Fatalf("%s: %d of a neck of %d, shoulders of %d, width %d", at, sum, out.NeckStitches, shoulder, out.WidthStitches)
	}
}

// checkEdge: the neck's edge is as long as that of the fabric, from the middle to the last row
// below the shoulder's end; the second side's as long as its own steps make it.
func checkEdge(t *testing.T, at string, p Piece, f *stitch.Fabric, firstDone int) {
	t.Helper()
	st, rw := p.layout.st, p.layout.rw
	from := p.NeckRowNumber
	left := f.Selvedge(stitch.LeftHand, from, from-1+p.DepthRows)
	knittest.Near(t, at+": first side", p.EdgeCm, left.SewnCm(st.SizeCm(1), rw.SizeCm(1), 0), 1e-9)
	right := f.Selvedge(stitch.RightHand, firstDone+1, firstDone+p.SecondSideDepthRows)
	if !p.layout.held { // the middle is bound off where the second side begins
		right = right.Slice(p.CentreStitches, right.Len())
	}
	want := curve.SewnCm(stepsAt(p.layout.edges.second), 1, p.SecondSideDepthRows, 0, st, rw)
	knittest.Near(t, at+": second side", want, right.SewnCm(st.SizeCm(1), rw.SizeCm(1), 0), 1e-9)
	if p.layout.in.Shape == ShapeV && p.layout.piece == "front" || p.CentreStitches >= p.NeckStitches {
		return
	}
	off := max(offEllipse(p, left), offEllipse(p, right))
	row := rw.SizeCm(1) / st.SizeCm(1) // by which the foot lies higher: bind-offs begin a row above the middle's
	if p.layout.in.ToleranceStitches == nil {
		farthest, high = max(farthest, off), max(high, off/row)
	}
	if off > p.GreatestDepartureStitches+row {
		t.Fatalf("%s: %v stitches off on the fabric, %v said: %v", at, off, p.GreatestDepartureStitches,
			p.Steps)
	}
}

// farthest and high are how far the corners of round edges lie from their ellipses, in stitches and
// rows, where nobody says how far they may.
var farthest, high float64

// offEllipse is how far the corners of a knit edge lie, as the crow flies, from the quarter of an
// ellipse whose foot is the middle of the neck's foot and which is upright two rows below the
// shoulders. The fabric is measured from the row that divides, whose top is where the edge begins.
func offEllipse(p Piece, edge stitch.Edge) float64 {
	half, high, begins := float64(p.NeckStitches)/2, float64(curveRows(p.layout.depth)), float64(p.CentreStitches)/2
	ellipse := []knittest.Corner{{Up: -1}} // the middle's end, above which the curve begins
	for k := range 401 {
		sin, cos := math.Sincos(math.Pi / 2 * float64(k) / 400)
		if half*sin >= begins {
			ellipse = append(ellipse, knittest.Corner{Across: half*sin - begins, Up: high*(1-cos) - 1})
		}
	}
	ellipse = append(ellipse, knittest.Corner{Across: half - begins, Up: float64(p.layout.depth)})
	st, off := p.layout.st.SizeCm(1), 0.0
	for _, c := range knittest.Corners(edge) {
		if c.Up--; c.Up >= 0 {
			off = max(off, knittest.DistanceCm(c, ellipse, st, p.layout.rw.SizeCm(1))/st)
		}
	}
	return off
}
