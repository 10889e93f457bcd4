package shaping

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// GapSpread is the order of unequal gaps across a row.
type GapSpread int32

// The orders.
const (
	GapSpreadUnspecified GapSpread = iota // grouped
	GapSpreadGrouped
	GapSpreadInterleaved
	GapSpreadMirrored
)

// EvenSpacingInput asks for increases or decreases spaced across one row. It
// mirrors PlanEvenSpacingRequest.
type EvenSpacingInput struct {
	StartStitches int
	EndStitches   int
	Operation     stitch.Op
	Construction  stitch.Construction
	EdgeStitches  *int
	Spread        GapSpread
	WithOutline   bool
}

// EvenSpacing is the row that EvenSpacingInput asks for.
type EvenSpacing struct {
	Operation        stitch.Op
	ChangeCount      int
	PlainStitches    int
	FirstGapStitches int
	Gaps             []spread.GapRun
	LastGapStitches  int
	Instruction      stitch.Instruction
	Notices          []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

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
// StartStitches and EndStitches must be in [1, 10000]; more changes than places is
// refused with the most that fit. The time taken grows with the runs of the
// answer, not with the stitches.
//
// Source: own derivation on the Euclidean spread (see [spread.Share]).
func PlanEvenSpacing(in EvenSpacingInput) (EvenSpacing, error) {
	var c fault.Checks
	okCounts := c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	okCounts = c.RequiredCount("", "end_stitches", in.EndStitches, 1, stitch.MaxStitches) && okCounts
	okOp := vetShapingOp(&c, "operation", in.Operation)
	fault.Enum(&c, "", "construction", in.Construction, stitch.InTheRound)
	okEdge := c.OptionalCount("", "edge_stitches", in.EdgeStitches, 0, gauge.MaxEdges)
	fault.Enum(&c, "", "spread", in.Spread, GapSpreadMirrored)
	border := fault.Or(in.EdgeStitches, 0)
	if in.Construction == stitch.InTheRound && border > 0 {
		c.Add("edge_stitches", fault.ReasonContradictory, "must be 0 in the round, which has no edges")
	}
	s := spacing{start: in.StartStitches, end: in.EndStitches, edge: border, op: in.Operation,
		round: in.Construction == stitch.InTheRound, order: in.Spread}
	if okCounts && okOp && okEdge {
		vetChanges(&c, &s)
	}
	if err := c.Err(); err != nil {
		return EvenSpacing{}, err
	}
	out, ok := s.plan()
	if !ok {
		c.Infeasible("these counts have no arrangement that reads the same from both ends; "+
			"use the grouped or interleaved spread, or one stitch more or less", "start_stitches", "end_stitches", "spread")
		return EvenSpacing{}, c.Err()
	}
	if in.WithOutline {
		out.Outline = s.outline(out)
	}
	return out, nil
}

// vetShapingOp checks that an operation, if named, is an increase or a decrease
// that can be worked inside a row.
func vetShapingOp(c *fault.Checks, field string, op stitch.Op) bool {
	switch {
	case op == 0:
		return true
	case !op.Valid():
		c.Add(field, fault.ReasonUnknownValue, "is %d, which is no operation", int(op))
		return false
	case op.Net() == 0 || op == stitch.CastOn || op == stitch.BindOff || op == stitch.ShortRowYO ||
		op == stitch.PickUpTwo || op == stitch.SkipRow:
		c.Add(field, fault.ReasonUnknownValue, "is %s; an increase or a decrease worked inside a row is needed", op.Abbr())
		return false
	}
	return true
}

// vetChanges settles the operation and how many of them a spacing needs, and
// checks that they fit.
func vetChanges(c *fault.Checks, s *spacing) {
	diff := s.end - s.start
	if diff == 0 {
		c.Infeasible("start_stitches and end_stitches are equal: there is nothing to space", "start_stitches", "end_stitches")
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
		c.Add("operation", fault.ReasonContradictory, "is %s, which %s stitches; end_stitches goes the other way", s.op.Abbr(), verb)
		return
	}
	if diff%net != 0 {
		c.Infeasible(s.op.Abbr()+" changes the count by "+strconv.Itoa(measure.Abs(net))+" each, and "+
			strconv.Itoa(measure.Abs(diff))+" is not a multiple of that", "end_stitches", "operation")
		return
	}
	s.k = diff / net
	if 2*s.edge >= s.start {
		c.Infeasible("the two edges leave no stitches between them; edge_stitches may be at most "+
			strconv.Itoa((s.start-1)/2), "start_stitches", "edge_stitches")
		return
	}
	if most := s.most(); s.k > most {
		c.Infeasible(s.tooMany(most), "start_stitches", "end_stitches")
	}
}

// spacing is a checked question.
type spacing struct {
	start, end, edge int
	op               stitch.Op
	k                int // how many times op is worked
	round            bool
	order            GapSpread
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

// EvenRound is the round that takes start stitches to end with one operation, as
// PlanEvenSpacing would write it. op must change the count by one, in the
// direction wanted, and be worked on at most as many stitches as there are. ok is
// false only for a mirrored spread that does not exist.
func EvenRound(start, end int, op stitch.Op, order GapSpread) (round stitch.Instruction, ok bool) {
	out, ok := spacing{start: start, end: end, op: op, k: measure.Abs(end - start), round: true, order: order}.plan()
	return out.Instruction, ok
}

// plan lays the gaps and writes the row. ok is false only for a mirrored order
// that does not exist.
func (s spacing) plan() (EvenSpacing, bool) {
	plain := s.start - 2*s.edge - s.k*s.op.Takes()
	out := EvenSpacing{Operation: s.op, ChangeCount: s.k, PlainStitches: plain, noun: "row"}
	ok := true
	switch {
	case s.round && s.order == GapSpreadMirrored:
		ok = s.mirroredRound(&out)
	case s.round:
		out.Gaps = s.arrange(s.k, plain)
	case s.order == GapSpreadMirrored:
		ok = s.mirroredFlat(&out)
	default:
		first, last := s.ends(plain)
		out.Gaps = s.arrange(s.k-1, plain-first-last)
		out.FirstGapStitches, out.LastGapStitches = s.edge+first, s.edge+last
	}
	if !ok {
		return EvenSpacing{}, false
	}
	if s.round {
		out.noun = "round"
	}
	out.Instruction = stitch.Instruction{Row: s.row(out), StartStitches: s.start, EndStitches: s.end}
	return out, true
}

// ends gives the half gaps at the two ends of a flat row, the smaller first.
func (s spacing) ends(plain int) (first, last int) {
	first = spread.Place(0, s.k, plain, spread.Centred)
	last = plain - spread.Place(s.k-1, s.k, plain, spread.Centred)
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
func (s spacing) arrange(n, plain int) []spread.GapRun {
	if n == 0 {
		return nil
	}
	if s.order == GapSpreadInterleaved {
		var runs []spread.GapRun
		for i := range n {
			runs = spread.AppendGap(runs, spread.Share(i, n, plain), 1)
		}
		return runs
	}
	small, larger := plain/n, plain%n
	return spread.AppendGap(spread.AppendGap(nil, small+1, larger), small, n-larger)
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
	change := measure.Abs(o.Instruction.EndStitches - o.Instruction.StartStitches)
	var b strings.Builder
	b.WriteString(verb + " " + report.CountOf(change, "stitches") + " evenly across one " + o.noun + ", from " +
		strconv.Itoa(o.Instruction.StartStitches) + " to " + strconv.Itoa(o.Instruction.EndStitches) + ". ")
	low, high := -1, -1
	for _, g := range o.Gaps {
		if low < 0 || g.Stitches < low {
			low = g.Stitches
		}
		high = max(high, g.Stitches)
	}
	switch {
	case low < 0:
	case low == high:
		b.WriteString(report.CountOf(low, "stitches") + " between changes.")
	default:
		b.WriteString(strconv.Itoa(low) + " or " + report.CountOf(high, "stitches") + " between changes.")
	}
	return strings.TrimSpace(b.String())
}

// Directions write the row as a pattern would.
func (o EvenSpacing) Directions() []string {
	change := "Increase "
	if o.Operation.Net() < 0 {
		change = "Decrease "
	}
	return []string{change + o.noun + ": " + o.Instruction.Row.Text() + " (" + report.CountOf(o.Instruction.EndStitches, "stitches") + ")."}
}

// Sources says where the figures come from.
func (EvenSpacing) Sources() []report.Source {
	return []report.Source{
		{Figure: "places of the changes", Citation: "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30; " +
			"Toussaint, The Euclidean algorithm generates traditional musical rhythms (2005)", Status: report.SourceStatusOwnDerivation},
		{Figure: "half a gap at each end of a flat row", Citation: "common practice", Status: report.SourceStatusCommonPractice},
	}
}
