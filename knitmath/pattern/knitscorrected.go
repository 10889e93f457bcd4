package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// knits has the machine knit a row with its change, in every size in which the stitches
// before it are known, and compares it with what the text claims. Rows that hands cannot
// be told stitch by stitch are left to the counting.
func (c *corrector) knits(q *candidate) bool {
	l := &c.piece.Lines[q.row]
	at := l.info.at
	if q.at.start < at.start || q.at.end > at.end || l.info.brings || l.info.holdRest {
		return true // only its claim is mended, which stands outside, or its stitches are not all on one needle
	}
	text := c.piece.source[at.start:q.at.start] + q.put + c.piece.source[q.at.end:at.end]
	one := c.room.readRow(text, c.piece.SizeCount, c.own)
	if len(one.Lines) != 1 || one.Lines[0].info.kind != lineRow {
		return true // a row that says more than its steps is left to the counting
	}
	mended := &one.Lines[0]
	stepCount := int64(factsOf(mended).stepCount)
	for size, on := range c.worked.Lines[q.row].StartStitches {
		if on < 1 {
			continue
		}
		// Few stitches may be made many: what the row works is paid for, before it is.
		p := profileOf(mended.Steps, size)
		o := p.work(int64(on))
		if !c.pay(int(max(3*int64(on)+100, o.ops+4*stepCount) / knitsPerStep)) {
			return false
		}
		want := -1
		if claimed := mended.ClaimedStitches; len(claimed) > 0 {
			want = atSize(claimed, size)
		} else if len(l.ClaimedStitches) > 0 {
			want = atSize(l.ClaimedStitches, size)
		}
		if !c.room.knitsTo(one, size, on, want) {
			return false
		}
	}
	return true
}

// knitsPerStep is how many operations the machine works in the time of a step.
const knitsPerStep = 6

// pay charges steps, and reports whether they could be paid.
func (c *corrector) pay(steps int) bool {
	c.spare -= chargesPerStep * steps
	return c.spare > 0
}

// knitsTo has the machine knit the first row of a piece, on plain knitting; want is the
// count after it, -1 for any.
func (in *room) knitsTo(p *Piece, size, on, want int) bool {
	r := &runner{engine: &engine{piece: p, room: in}, size: size, round: true, side: stitch.RightSide}
	row, _, ok := r.rowOf(p.Lines[0].Steps, int64(on))
	if !ok {
		return true // markers, for one, are for a walker
	}
	if !r.pickUp(hand{left: int64(on)}) {
		return true
	}
	if err := r.machine.Work(row); err != nil {
		return false
	}
	return want < 0 || r.machine.StitchCount() == want
}

// atSize is at, with the number of a single size for all.
func atSize(numbers []int, size int) int {
	if size >= len(numbers) {
		return numbers[0]
	}
	return numbers[size]
}
