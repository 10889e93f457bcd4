package pattern

import (
	"math/bits"
)

// claimMeant reports whether the row after a line went on from the count that the line
// claims, and not from the one that it comes to.
func (c *corrector) claimMeant(f *Finding, i int) bool {
	if l := &c.piece.Lines[i]; len(f.SizeNumbers) == 0 || c.changeAlone(f, i) || l.info.beside && f.at != l.info.claimAt {
		return false // of a part beside the count another number is likelier
	}
	if alikeOff(f, len(c.piece.Lines[i].ClaimedStitches)) {
		return true // nobody writes a count wrong by as much in every size
	}
	claimed := c.piece.Lines[i].ClaimedStitches
	size := f.SizeNumbers[0] - 1
	if len(claimed) > 0 && len(f.DifferenceStitches) > 0 {
		n := at(claimed, size)
		if again := c.saidAgain(i, size, n, n-f.DifferenceStitches[0]); again != 0 {
			return again > 0
		}
	}
	return len(claimed) > 0 && i+1 < len(c.piece.Lines) && c.worked.Lines[i+1].StartStitches[size] == at(claimed, size)
}

// alikeOff reports whether a count is off in all of several sizes, by as many stitches in each.
func alikeOff(f *Finding, sizes int) bool {
	if sizes < 2 || len(f.DifferenceStitches) != sizes {
		return false
	}
	for _, d := range f.DifferenceStitches {
		if d != f.DifferenceStitches[0] {
			return false
		}
	}
	return true
}

// claims are the count that a line comes to in place of the one that it claims.
func (c *corrector) claims(f *Finding, i int) []candidate {
	l := &c.piece.Lines[i]
	claimed, at := claimOf(f, l)
	changes := len(l.ClaimedChangeStitches) > 0 && (len(l.ClaimedStitches) == 0 || f.at == l.info.changeAt)
	if len(claimed) == 0 || len(f.DifferenceStitches) == 0 || len(f.DifferenceStitches) != len(f.SizeNumbers) {
		return nil
	}
	spots := run(c.spotsIn(at), claimed, false)
	if spots == nil || len(claimed) == 1 && len(f.SizeNumbers) < c.sizesFor(l) {
		return nil // one number for all its sizes may not be wrong in all of them
	}
	e := renumbering{list: spots}
	for k, number := range f.SizeNumbers {
		own := min(number, len(claimed)) - 1
		n := claimed[own] - f.DifferenceStitches[k]
		if changes {
			n = changeOff(atSize(l.ClaimedChangeStitches, number-1), f.DifferenceStitches[k])
		}
		if n < 1 || !e.set(&spots[own], n) { // nobody claims no stitches
			return nil
		}
	}
	found := e.candidate(c.piece.source, rowOfClaim(l, i), "")
	row := rowEdits{corrector: c, row: i, steps: l.Steps}
	for k := range found { // the row stays as it is
		found[k].balanced, found[k].alike = balanced(l.Steps), row.alikeBeside()
	}
	return found
}

// rowOfClaim is the line of the row that is to be knit with another claim, -1 for none: where all of
// what is worked is not told.
func rowOfClaim(l *Line, i int) int {
	if l.info.kind != lineRow || l.info.brings || l.info.holdRest {
		return -1
	}
	return i
}

// sizesFor is for how many sizes a line is.
func (c *corrector) sizesFor(l *Line) int {
	if l.info.forSizes == 0 {
		return c.piece.SizeCount
	}
	return bits.OnesCount32(l.info.forSizes)
}

// changeOff is a change without its sign that is off by so many stitches; below 0 if it would
// be none, or one the other way.
func changeOff(change, by int) int {
	n := change - by
	if n == 0 || (n < 0) != (change < 0) {
		return -1
	}
	return max(n, -n)
}
