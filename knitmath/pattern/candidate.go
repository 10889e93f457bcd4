package pattern

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

func numeral(n int) string { return strconv.Itoa(n) }

// So many changes of a line are tried before those of its cast-on, and so many in all before those of
// any number.
const (
	likely     = 4
	likelyMost = 7
)

// candidates are changes that may make a finding go, the likeliest first.
func (c *corrector) candidates(f *Finding) []candidate {
	i := c.piece.lineAt(f.at)
	if i < 0 || f.Kind == KindReading {
		return nil
	}
	switch f.Reason {
	case ReasonClaim:
		return c.countEdits(f, i)
	case ReasonRows:
		return c.rowsTold(f, i)
	case ReasonUnworked, ReasonMissing, ReasonUneven:
		return c.withCastOns(f, i, c.workEdits(f, i))
	case ReasonMarker:
		return c.nearNumbers(f, i, 2)
	case ReasonUnknown, ReasonUnread:
		if c.piece.Lines[i].info.matches {
			return c.secondSide(f, i)
		}
		return c.spellings(f, i)
	case ReasonSide:
		return c.otherSide(i)
	case ReasonRowNumber, ReasonNoRow:
		return c.neighbours(f, i)
	case ReasonOpenBracket, ReasonStray, ReasonOpenStar, ReasonNoStar:
		return c.marksPutIn(f, i)
	}
	return nil
}

// countEdits are changes with which a count is the one that is claimed, or is claimed as it is.
func (c *corrector) countEdits(f *Finding, i int) []candidate {
	claims := c.claims(f, i)
	if f.at == c.piece.Lines[i].info.partsAt && len(f.DifferenceStitches) > 0 {
		return append(c.partsEdits(f), claims...)
	}
	work := c.withCastOns(f, i, c.workEdits(f, c.workedBefore(i)))
	if c.claimMeant(f, i) || c.goesOn(f) {
		return append(work, claims...)
	}
	return append(claims, work...)
}

// withCastOns are changes of a line with those of its cast-on among them: before them where more than
// the line is wrong.
func (c *corrector) withCastOns(f *Finding, i int, work []candidate) []candidate {
	if c.goesOn(f) {
		return append(c.castOns(f, i), work...)
	}
	return slices.Insert(work, min(likely, len(work)), c.castOns(f, i)...)
}

// goesOn reports whether another mistake is found in the same sizes.
func (c *corrector) goesOn(f *Finding) bool {
	return slices.ContainsFunc(c.worked.Findings, func(other Finding) bool {
		return other.Kind == KindMistake && other.at != f.at && slices.Equal(other.SizeNumbers, f.SizeNumbers)
	})
}

// partsEdits are other parts, told beside a count, that add up to it: a part is told once, or once for
// two that are alike.
func (c *corrector) partsEdits(f *Finding) []candidate {
	var out []candidate
	for _, list := range c.lists(c.spotsIn(f.at)) {
		out = append(append(out, c.offBy(c.told(f), list, entire(1))...), c.offBy(c.told(f), list, half(1))...)
	}
	return out
}

// workEdits are changes of what is worked in a line. Of a row that is worked to markers all numbers by
// one are tried first, those of its repeats before all.
func (c *corrector) workEdits(f *Finding, i int) []candidate {
	if c.piece.Lines[i].info.kind == lineRow {
		if e := c.rowEdits(f, i); e != nil {
			found := e.candidates()
			if e.blind {
				found = append(c.nearNumbers(f, i, 1), found...)
			}
			if len(found) > 0 {
				return found
			}
		}
	}
	return append(c.directionEdits(f, i), c.numbers(f, i)...)
}

// neighbours are the numbers of a label or a repeat, or of what is wrong in it, one more or one less.
func (c *corrector) neighbours(f *Finding, i int) []candidate {
	l := &c.piece.Lines[i]
	region := l.info.at
	if l.Label != "" {
		label, _, _ := strings.Cut(c.piece.source[region.start:max(region.start, region.end)], ":")
		region.end = region.start + int32(len(label))
	}
	if f.at.start > region.start && f.at.end <= region.end {
		region = f.at
	}
	spots := c.spotsIn(region)
	out := c.expectedNumbers(i, spots)
	for k := range spots {
		out = append(out, c.shiftedBy(spots[k:k+1], -1)...)
		out = append(out, c.shiftedBy(spots[k:k+1], 1)...)
	}
	return out
}

// otherSide is the other side in the label of a row.
func (c *corrector) otherSide(i int) []candidate {
	at, ok := sideSpot(c.piece.source, &c.piece.Lines[i])
	if !ok {
		return nil
	}
	said := c.piece.source[at.start:at.end]
	put, known := otherSides[said]
	if !known {
		return nil
	}
	return []candidate{{at: at, put: put, says: put + " instead of " + said, row: -1}}
}

var otherSides = map[string]string{"RS": "WS", "WS": "RS", "rs": "ws", "ws": "rs", "right": "wrong", "wrong": "right", "Right": "Wrong",
	"Wrong": "Right"}

// sideSpot is where the label of a row says its side.
func sideSpot(source string, l *Line) (span, bool) {
	for _, t := range scan(source[l.info.at.start:max(l.info.at.start, l.info.at.end)]) {
		if t.is(":") {
			break
		}
		if t.among("rs ws right wrong") {
			return shifted(t.span, l.info.at), true
		}
	}
	return span{}, false
}

// knownOps are operations that are taken for one another.
var knownOps = map[stitch.Op][]stitch.Op{stitch.K2tog: {stitch.K3tog}, stitch.K3tog: {stitch.K2tog}, stitch.SSK: {stitch.SSSK},
	stitch.SSSK: {stitch.SSK}, stitch.P2tog: {stitch.P3tog}, stitch.P3tog: {stitch.P2tog}}
