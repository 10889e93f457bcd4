package knitmath

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// Construction is how a piece is worked.
type Construction = stitch.Construction

// The constructions.
const (
	ConstructionUnspecified = stitch.ConstructionUnspecified
	ConstructionFlat        = stitch.Flat
	ConstructionRound       = stitch.InTheRound
)

// SpacingOrder is the order of unequal gaps across a row.
type SpacingOrder int32

// The orders.
const (
	SpacingOrderUnspecified SpacingOrder = iota // grouped
	SpacingOrderGrouped
	SpacingOrderInterleaved
	SpacingOrderMirrored
)

// EvenSpacingInput asks for increases or decreases spaced across one row. It
// mirrors PlanEvenSpacingRequest.
type EvenSpacingInput struct {
	StartCount   int
	EndCount     int
	Operation    stitch.Op
	Construction Construction
	EdgeCount    *int
	Order        SpacingOrder
	WithOutline  bool
}

// EvenSpacing is the row that EvenSpacingInput asks for.
type EvenSpacing struct {
	Operation     stitch.Op
	ChangeCount   int
	PlainCount    int
	FirstGapCount int
	Gaps          []GapRun
	LastGapCount  int
	Instruction   Instruction
	Notices       []Notice
	// Outline is nil unless asked for.
	Outline *Outline

	noun string
}

// PlanEvenSpacing spaces k increases or decreases evenly across one row. With
// start stitches, edges kept plain, and an operation that takes t stitches,
//
//	plain = start - 2*edge - k*t
//
// plain stitches are spread over the gaps: k gaps in the round; flat, k-1 inner
// gaps and half a gap at each end (the larger half last). Inner gaps differ by
// at most one, which no arrangement betters. An increase made in the strand
// between two stitches has at least one stitch on each side.
//
// StartCount and EndCount must be in [1, 10000]; more changes than places is
// refused with the most that fit. The time taken grows with the runs of the
// answer, not with the stitches.
//
// Source: own derivation on the Euclidean spread (see spread).
func PlanEvenSpacing(in EvenSpacingInput) (EvenSpacing, error) {
	var c checks
	okCounts := c.requiredCount("", "start_count", in.StartCount, 1, MaxStitches)
	okCounts = c.requiredCount("", "end_count", in.EndCount, 1, MaxStitches) && okCounts
	okOp := c.shapingOp("operation", in.Operation)
	enum(&c, "", "construction", in.Construction, ConstructionRound)
	okEdge := c.optionalCount("", "edge_count", in.EdgeCount, 0, MaxEdges)
	enum(&c, "", "order", in.Order, SpacingOrderMirrored)
	border := or(in.EdgeCount, 0)
	if in.Construction == ConstructionRound && border > 0 {
		c.add("edge_count", ReasonContradictory, "must be 0 in the round, which has no edges")
	}
	s := spacing{start: in.StartCount, end: in.EndCount, edge: border, op: in.Operation,
		round: in.Construction == ConstructionRound, order: in.Order}
	if okCounts && okOp && okEdge {
		c.changes(&s)
	}
	if err := c.err(); err != nil {
		return EvenSpacing{}, err
	}
	out, ok := s.plan()
	if !ok {
		c.infeasible("these counts have no arrangement that reads the same from both ends; "+
			"use the grouped or interleaved order, or one stitch more or less", "start_count", "end_count", "order")
		return EvenSpacing{}, c.err()
	}
	if in.WithOutline {
		out.Outline = s.outline(out)
	}
	return out, nil
}

// shapingOp checks that an operation, if named, is an increase or a decrease
// that can be worked inside a row.
func (c *checks) shapingOp(field string, op stitch.Op) bool {
	switch {
	case op == 0:
		return true
	case !op.Valid():
		c.add(field, ReasonUnknownValue, "is %d, which is no operation", int(op))
		return false
	case op.Net() == 0 || op == stitch.CastOn || op == stitch.BindOff || op == stitch.ShortRowYO ||
		op == stitch.PickUpTwo || op == stitch.SkipRow:
		c.add(field, ReasonUnknownValue, "is %s; an increase or a decrease worked inside a row is needed", op.Abbr())
		return false
	}
	return true
}

// changes settles the operation and how many of them a spacing needs, and
// checks that they fit.
func (c *checks) changes(s *spacing) {
	diff := s.end - s.start
	if diff == 0 {
		c.infeasible("start_count and end_count are equal: there is nothing to space", "start_count", "end_count")
		return
	}
	if s.op == 0 {
		s.op = stitch.K2tog
		if diff > 0 {
			s.op = stitch.M1L
		}
	}
	net := s.op.Net()
	if diff*net < 0 {
		verb := "adds"
		if net < 0 {
			verb = "removes"
		}
		c.add("operation", ReasonContradictory, "is %s, which %s stitches; end_count goes the other way", s.op.Abbr(), verb)
		return
	}
	if diff%net != 0 {
		c.infeasible(s.op.Abbr()+" changes the count by "+strconv.Itoa(abs(net))+" each, and "+
			strconv.Itoa(abs(diff))+" is not a multiple of that", "end_count", "operation")
		return
	}
	s.k = diff / net
	if 2*s.edge >= s.start {
		c.infeasible("the two edges leave no stitches between them; edge_count may be at most "+
			strconv.Itoa((s.start-1)/2), "start_count", "edge_count")
		return
	}
	if most := s.most(); s.k > most {
		c.infeasible(s.tooMany(most), "start_count", "end_count")
	}
}

// spacing is a checked question.
type spacing struct {
	start, end, edge int
	op               stitch.Op
	k                int // how many times op is worked
	round            bool
	order            SpacingOrder
}

// least is the fewest stitches between two changes: an increase made in the
// strand between stitches needs a stitch on each side, and two cannot share a
// strand.
func (s spacing) least() int {
	if s.op.Takes() == 0 {
		return 1
	}
	return 0
}

// most is the greatest number of changes that fit.
func (s spacing) most() int {
	inner := s.start - 2*s.edge
	switch t := s.op.Takes(); {
	case t > 0:
		return inner / t
	case s.round:
		return inner
	case s.edge == 0:
		return inner - 1 // a strand lies between two stitches
	default:
		return inner + 1 // the edges give the outer strands their stitch
	}
}

// tooMany says what would fit instead.
func (s spacing) tooMany(most int) string {
	remedy := "work the rest in another row"
	switch s.op.Net() {
	case -1:
		remedy = "use a double decrease (k3tog, sssk, cdd), or work the rest in another row"
	case 1:
		if s.op.Takes() == 0 {
			remedy = "two increases cannot share the strand between two stitches: " +
				"use kfb, which is worked into a stitch, or work the rest in another row"
		}
	}
	return strconv.Itoa(s.k) + " times " + s.op.Abbr() + " are needed and at most " + strconv.Itoa(most) +
		" fit, which give " + strconv.Itoa(s.start+most*s.op.Net()) + " stitches; " + remedy
}

// plan lays the gaps and writes the row. ok is false only for a mirrored order
// that does not exist.
func (s spacing) plan() (EvenSpacing, bool) {
	plain := s.start - 2*s.edge - s.k*s.op.Takes()
	out := EvenSpacing{Operation: s.op, ChangeCount: s.k, PlainCount: plain, noun: "row"}
	ok := true
	switch {
	case s.round && s.order == SpacingOrderMirrored:
		ok = s.mirroredRound(&out)
	case s.round:
		out.Gaps = s.arrange(s.k, plain)
	case s.order == SpacingOrderMirrored:
		ok = s.mirroredFlat(&out)
	default:
		first, last := s.ends(plain)
		out.Gaps = s.arrange(s.k-1, plain-first-last)
		out.FirstGapCount, out.LastGapCount = s.edge+first, s.edge+last
	}
	if !ok {
		return EvenSpacing{}, false
	}
	if s.round {
		out.noun = "round"
	}
	out.Instruction = Instruction{Row: s.row(out), StartCount: s.start, EndCount: s.end}
	return out, true
}

// ends gives the half gaps at the two ends of a flat row, the smaller first.
func (s spacing) ends(plain int) (first, last int) {
	first = spread(0, s.k, plain, centred)
	last = plain - spread(s.k-1, s.k, plain, centred)
	outer := 0
	if s.edge == 0 {
		outer = s.least()
	}
	first, last = max(first, outer), max(last, outer)
	if slack := plain - (s.k-1)*s.least(); first+last > slack {
		first, last = slack/2, slack-slack/2
	}
	return first, last
}

// arrange orders n gaps that sum to plain, grouped or interleaved.
func (s spacing) arrange(n, plain int) []GapRun {
	if n == 0 {
		return nil
	}
	if s.order == SpacingOrderInterleaved {
		var runs []GapRun
		for i := range n {
			runs = appendGap(runs, share(i, n, plain), 1)
		}
		return runs
	}
	small, larger := plain/n, plain%n
	return appendGap(appendGap(nil, small+1, larger), small, n-larger)
}

// plainOp is the stitch between the changes: purl beside a purled change.
func (s spacing) plainOp() stitch.Op {
	switch s.op {
	case stitch.P2tog, stitch.SSP, stitch.P3tog, stitch.SSSP, stitch.M1LP, stitch.M1RP, stitch.M1P, stitch.PFB:
		return stitch.Purl
	}
	return stitch.Knit
}

// Summary says the answer in words.
func (o EvenSpacing) Summary() string {
	verb := "Increase"
	if o.Operation.Net() < 0 {
		verb = "Decrease"
	}
	change := abs(o.Instruction.EndCount - o.Instruction.StartCount)
	var b strings.Builder
	b.WriteString(verb + " " + countOf(change, "stitches") + " evenly across one " + o.noun + ", from " +
		strconv.Itoa(o.Instruction.StartCount) + " to " + strconv.Itoa(o.Instruction.EndCount) + ". ")
	low, high := -1, -1
	for _, g := range o.Gaps {
		if low < 0 || g.StitchCount < low {
			low = g.StitchCount
		}
		high = max(high, g.StitchCount)
	}
	switch {
	case low < 0:
	case low == high:
		b.WriteString(countOf(low, "stitches") + " between changes.")
	default:
		b.WriteString(strconv.Itoa(low) + " or " + countOf(high, "stitches") + " between changes.")
	}
	return strings.TrimSpace(b.String())
}

// Sources says where the figures come from.
func (EvenSpacing) Sources() []Source {
	return []Source{
		{"places of the changes", "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30; " +
			"Toussaint, The Euclidean algorithm generates traditional musical rhythms (2005)", SourceStatusOwnDerivation},
		{"half a gap at each end of a flat row", "common practice", SourceStatusCommonPractice},
	}
}

func abs(n int) int { return max(n, -n) }
