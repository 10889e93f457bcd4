package pattern

import (
	"math/bits"
	"slices"
	"sort"
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

// numbers are other numbers in a direction, by the stitches that it is off by: so many
// more or fewer, half as many at each of two edges, or so many passes of a repeat.
func (c *corrector) numbers(f *Finding, i int) []candidate {
	l := &c.piece.Lines[i]
	spots := c.spotsIn(c.before(i))
	lists := c.lists(spots)
	if times := c.timesOf(l, spots); times != nil {
		lists = append([][]spot{times}, lists...)
	}
	var out []candidate
	if len(f.DifferenceStitches) != len(f.SizeNumbers) || len(f.SizeNumbers) == 0 {
		for _, list := range lists {
			out = append(out, c.shiftedBy(list, 1)...)
			out = append(out, c.shiftedBy(list, -1)...)
		}
		return out
	}
	for _, each := range [...]func(size, difference int) (int, bool){c.passesOff(i), half(-1), half(1), entire(-1), entire(1)} {
		for _, list := range lists {
			if q := c.offBy(f, list, each); q != nil {
				out = append(out, q...)
			}
		}
	}
	return out
}

// timesOf are the numbers that say how often something is repeated, where they stand in the text.
func (c *corrector) timesOf(l *Line, spots []spot) []spot {
	if len(l.info.counts) < 2 {
		return nil
	}
	for more := range 2 { // "3 times in all" are 2 more
		numbers := slices.Clone(l.info.counts)
		for i := range numbers {
			numbers[i] += more
		}
		if found := run(spots, numbers, true); found != nil {
			return found
		}
	}
	return nil
}

// nearNumbers are numbers one more or fewer, or up to so many, in the sizes of a finding, those of
// repeats first.
func (c *corrector) nearNumbers(f *Finding, i, most int) []candidate {
	var out []candidate
	lists := c.lists(c.spotsIn(c.before(i)))
	sort.SliceStable(lists, func(a, b int) bool { return c.ofTimes(lists[a]) && !c.ofTimes(lists[b]) })
	for n := 1; n <= most; n++ {
		for _, list := range lists {
			out = append(append(out, c.offBy(c.told(f), list, by(-n))...), c.offBy(c.told(f), list, by(n))...)
		}
	}
	return out
}

// ofTimes reports whether numbers say how often something is worked.
func (c *corrector) ofTimes(list []spot) bool {
	last := &list[len(list)-1]
	line, _, _ := strings.Cut(c.piece.source[last.at.end:min(len(c.piece.source), int(last.at.end)+20)], "\n")
	return last.often || strings.Contains(line, "time")
}

func half(sign int) func(size, difference int) (int, bool) {
	return func(_, d int) (int, bool) { return sign * d / 2, d%2 == 0 }
}

func entire(sign int) func(size, difference int) (int, bool) {
	return func(_, d int) (int, bool) { return sign * d, true }
}

// passesOff is by how many passes a repeat is off.
func (c *corrector) passesOff(i int) func(size, difference int) (int, bool) {
	info, w := &c.piece.Lines[i].info, &c.worked.Lines[i]
	return func(size, difference int) (int, bool) {
		if len(info.counts) == 0 || w.StartStitches[size] < 0 || w.EndStitches[size] < 0 {
			return 0, false
		}
		passes, change := at(info.counts, size), w.EndStitches[size]-w.StartStitches[size]
		if passes < 1 || change == 0 || change%passes != 0 || difference%(change/passes) != 0 {
			return 0, false
		}
		return difference / (change / passes), true
	}
}

// offBy is a list of numbers changed in the sizes of a finding.
func (c *corrector) offBy(f *Finding, list []spot, each func(size, difference int) (int, bool)) []candidate {
	// One number for all sizes may be wrong in some that fail and in others of which nothing is
	// known: whether another is right is tried.
	e := renumbering{list: list}
	for k, number := range f.SizeNumbers {
		s := &list[0]
		if len(list) > 1 {
			s = &list[number-1]
		}
		more, ok := each(number-1, f.DifferenceStitches[k])
		if !ok || s.value < 0 || s.value+more < 1 || !e.set(s, s.value+more) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

func (c *corrector) shiftedBy(list []spot, by int) []candidate {
	var e renumbering
	for i := range list {
		if list[i].value+by < 1 || !e.set(&list[i], list[i].value+by) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

// lists are numbers that stand together for all sizes, and those that stand alone.
func (c *corrector) lists(spots []spot) [][]spot {
	var out [][]spot
	for i := 0; i < len(spots); i++ {
		n := 1
		for i+n < len(spots) && n < c.piece.SizeCount && spots[i+n].word == spots[i].word &&
			strings.Trim(c.piece.source[spots[i+n-1].at.end:spots[i+n].at.start], " ,:;/-–()[]\n") == "" {
			n++
		}
		if n > 1 && n < c.piece.SizeCount {
			i += n - 1
			continue
		}
		out = append(out, spots[i:i+n])
		i += n - 1
	}
	return out
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
		if t.is("rs", "ws", "right", "wrong") {
			return shifted(t.span, l.info.at), true
		}
	}
	return span{}, false
}

// knownOps are operations that are taken for one another.
var knownOps = map[stitch.Op][]stitch.Op{stitch.K2tog: {stitch.K3tog}, stitch.K3tog: {stitch.K2tog}, stitch.SSK: {stitch.SSSK},
	stitch.SSSK: {stitch.SSK}, stitch.P2tog: {stitch.P3tog}, stitch.P3tog: {stitch.P2tog}}
