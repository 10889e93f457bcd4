package neck

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// Directions write both pieces as a pattern would, then the band.
func (o Neckline) Directions() []string {
	l := o.Front.layout
	if l == nil {
		return nil
	}
	shoulder := strconv.Itoa(o.ShoulderStitches) + " for each shoulder"
	if len(l.steps) > 1 {
		shoulder += ", in steps of " + stepWords(l.steps) + " from the armhole on,"
	}
	on, neck := "Work front and back on "+report.CountOf(o.WidthStitches, "stitches")+" each, ", strconv.Itoa(o.NeckStitches)
	if front := o.Front.NeckStitches; front != o.NeckStitches {
		on = "Work the back on " + report.CountOf(o.WidthStitches, "stitches") + " and the front on " + strconv.Itoa(l.width) + ", "
		neck += " of the back and " + strconv.Itoa(front) + " of the front"
	}
	d := []string{on + shoulder + " and " + neck + " for the neck. Keep to the pattern where rows are worked even."}
	if l.shortRows && len(l.steps) > 1 {
		d = append(d, shortrow.Technique(o.in.TurnMethod))
	}
	pieces := []Piece{o.Back, o.Front}
	if slices.ContainsFunc(pieces, Piece.bindsOffWithin) {
		d = append(d, curve.AfterBindOff)
	}
	for _, p := range pieces {
		d = p.directions(d, o)
	}
	if l.shortRows {
		d = append(d, "Join each shoulder of the front to that of the back by a three-needle bind-off, or graft them: "+
			report.CountOf(o.ShoulderStitches, "stitches")+" of each.")
	}
	if o.in.strap() > 0 {
		d = append(d, o.strapWords())
	}
	return append(d, o.bandDirections()...)
}

// bindsOffWithin reports whether a row goes on after it has bound off.
func (p Piece) bindsOffWithin() bool {
	return slices.ContainsFunc(p.Rows, func(r Row) bool {
		return r.Instruction.EndStitches > 0 && slices.ContainsFunc(r.Instruction.Row.Steps, func(s stitch.Step) bool {
			return s.Op == stitch.BindOff
		})
	})
}

// holds reports whether a row puts stitches on hold.
func holds(r Row) bool {
	return slices.ContainsFunc(r.Instruction.Row.Steps, func(s stitch.Step) bool { return s.Op == stitch.Hold })
}

// directions appends those of a piece.
func (p Piece) directions(d []string, o Neckline) []string {
	l := p.layout
	name := report.Sentence(l.piece)
	rows := l.depth - l.firstRow
	note := "Note: row 1 is a " + sideWords(sideOf(l.firstRow)) + " row" + l.armholeWords()
	if rows > 0 {
		note += "; from there to the end of the shoulder at the neck are " + report.CountOf(rows, "rows") + " (" +
			o.in.DisplayUnit.Size(l.rw.SizeCm(rows)) + ")"
	}
	d = append(d, name+":", note+".")
	part, worked := PartWhole, 0
	for i := 0; i < len(p.Rows); {
		r := p.Rows[i]
		if r.Part != part && r.Part == PartSecondSide {
			d = append(d, l.heldWords(first, worked)...)
			d = append(d, l.secondWords(r.Instruction.StartStitches)...)
		} else if r.Part != part {
			d = append(d, report.Sentence(l.sideName(first))+":")
		}
		if r.Part != part && l.depth > 0 { // both sides are worked from the row that divides
			worked = p.NeckRowNumber - 1
		}
		part = r.Part
		d = append(d, evenWords(r.RowNumber-worked-1)...)
		n := alike(p.Rows[i:])
		d = append(d, rowWords(p.Rows[i:i+n]))
		if l.held && l.centre > 0 && holds(r) { // said at once, where both are put on hold: they are not to lie on one holder
			d = append(d, "Note: leave the "+report.CountOf(l.centre, "stitches")+" of the middle on hold for the band.")
		}
		worked = p.Rows[i+n-1].RowNumber
		if l.endsWithNeck(r) {
			last := l.steps[len(l.steps)-1]
			d = append(d, fmt.Sprintf("Note: of the %d stitches bound off in row %d the first %d are the end of the %s shoulder, "+
				"the other %d the neck.", last+l.centre, r.RowNumber, last, strings.TrimSuffix(l.sideName(first), " "+l.piece), l.centre))
		}
		i += n
	}
	return append(d, l.heldWords(second, worked)...)
}

// evenWords are those of so many rows without shaping.
func evenWords(rows int) []string {
	if rows <= 0 {
		return nil
	}
	return []string{"Work " + report.CountOf(rows, "rows") + " even."}
}

// heldWords say how a shoulder that is not bound off ends after the row last told.
func (l *layout) heldWords(side, worked int) []string {
	if !l.shortRows {
		return nil
	}
	return append(evenWords(l.number(l.lastRow(side))-worked),
		"Note: cut the yarn and leave the "+report.CountOf(l.shoulder, "stitches")+" on hold until the shoulders are joined.")
}

// endsWithNeck reports whether a row binds off a shoulder's last stitches and the neck
// together, as where a neck has no depth.
func (l *layout) endsWithNeck(r Row) bool {
	return l.depth == 0 && !l.held && l.centre > 0 && r.Part == PartWhole && r.RowNumber == l.number(0)
}

// sideName is a side as it is worn.
func (l *layout) sideName(side int) string {
	if (side == first) == l.isFront() {
		return "left " + l.piece
	}
	return "right " + l.piece
}

// secondWords say how the second side is begun, on so many stitches.
func (l *layout) secondWords(stitches int) []string {
	s := report.Sentence(l.sideName(second)) + ":"
	if l.lastRow(first) == 0 {
		if l.held {
			return nil // the middle is worked with it
		}
		return []string{s}
	}
	var d []string
	if l.method() == shortrow.TurnMethodYarnOver && l.shortRows && l.slopeRow(second, 0) < 0 {
		d = append(d, "Note: the yarn overs on hold are not counted as stitches.")
	}
	return append(d, s+" put the "+report.CountOf(stitches, "stitches")+
		" on hold back on the needle and join the yarn at the neck edge, the right side facing.")
}

// alike is how many rows at the beginning of a list, one at least, are the same decrease
// row again and again.
func alike(rows []Row) int {
	n := 1
	if !decreases(rows[0]) {
		return n
	}
	text := rows[0].Instruction.Row.Text()
	for n < len(rows) && rows[n].Part == rows[0].Part && rows[n].Side == rows[0].Side && rows[n].Instruction.Row.Text() == text {
		n++
	}
	return n
}

// decreases reports whether a row is told as a decrease row: a stitch at the neck or
// the armhole or both, and nothing at the shoulder.
func decreases(r Row) bool {
	lost := r.Instruction.StartStitches - r.Instruction.EndStitches
	return r.Part != PartWhole && (lost == 1 || lost == 2) && !slices.ContainsFunc(r.Instruction.Row.Steps, func(s stitch.Step) bool {
		return s.Op == stitch.BindOff || s.Op == stitch.Hold
	})
}

// rowWords is "Row 5 (RS, decrease row): k1, ssk, k to end. Repeat the decrease row every
// 2nd row 3 more times: 24 stitches."
func rowWords(rows []Row) string {
	r := rows[0]
	s := "Row " + strconv.Itoa(r.RowNumber) + " (" + r.Side.String()
	if decreases(r) {
		s += ", decrease row"
	}
	s += "): " + r.Instruction.Row.Text()
	if len(rows) > 1 {
		numbers := make([]int, len(rows))
		for i, r := range rows {
			numbers[i] = r.RowNumber
		}
		s += ". Repeat the decrease row " + againWords(numbers)
	}
	if left := rows[len(rows)-1].Instruction.EndStitches; left > 0 && (left != r.Instruction.StartStitches || len(rows) > 1) {
		s += ": " + report.CountOf(left, "stitches")
	}
	return s + "."
}

// manyIntervals is how many runs of intervals a sentence tells; more are a list of rows.
const manyIntervals = 3

// againWords say when a row that was worked first in a list is worked again.
func againWords(numbers []int) string {
	if runs := schedule.Runs(numbers); len(runs) <= manyIntervals {
		return shaping.IntervalWords(runs, "row")
	}
	words := make([]string, len(numbers)-1)
	for i, n := range numbers[1:] {
		words[i] = strconv.Itoa(n)
	}
	return "on rows " + report.Listed(words)
}

func sideWords(side stitch.Side) string {
	if side == stitch.WrongSide {
		return "wrong-side"
	}
	return "right-side"
}
