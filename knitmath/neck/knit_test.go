package neck

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

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
