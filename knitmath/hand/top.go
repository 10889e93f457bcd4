package hand

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

// TopKind is how the top of a mitten is closed.
type TopKind int32

// The kinds.
const (
	TopKindUnspecified TopKind = iota // wedge
	TopKindWedge                      // two sides, as a sock's toe
	TopKindStar                       // four stacks
	TopKindRound                      // every 5th stitch, every 4th, and so on
	TopKindShort                      // two sides, every round
)

// Finish is what becomes of the last stitches.
type Finish int32

// The finishes.
const (
	FinishUnspecified Finish = iota // grafted where it is a wedge, else drawn up
	FinishGraft
	FinishDrawUp
)

// MittenTopInput asks for the top of a mitten. It mirrors PlanMittenTopRequest.
type MittenTopInput struct {
	Gauge        *gauge.Gauge
	HandStitches *int
	HandCm       *float64
	HandSize     Size
	EasePercent  *float64
	StitchRule   *gauge.CountRule
	Kind         TopKind
	LengthRounds *int
	LengthCm     *float64
	EndStitches  *int
	Finish       Finish
	DisplayUnit  measure.DisplayUnit
	WithOutline  bool
}

func (in MittenTopInput) size() size {
	return size{in.Gauge, in.HandStitches, in.HandCm, in.HandSize, in.EasePercent, in.StitchRule}
}

// A MittenTop is the answer to MittenTopInput.
type MittenTop struct {
	HandStitches int
	MittenCm     float64
	EvenRounds   int
	TopRounds    int
	TopCm        float64
	LengthRounds int
	LengthCm     float64
	EndStitches  int
	Finish       Finish
	Rounds       []solid.ClosingRound
	Effort       int
	Notices      []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	plan    solid.ClosingPlan
	kind    TopKind
	scaled  bool // a round top of other sections or even rounds than the book's
	sources []report.Source
	unit    measure.DisplayUnit
}

// sides is how many sides a graft has.
const sides = 2

// PlanMittenTop closes a mitten. What the top leaves of the length is worked even before
// it. Sources: see the figures.
func PlanMittenTop(in MittenTopInput) (MittenTop, error) {
	out, err := planMittenTop(in)
	if err != nil {
		err = in.advised(err)
	}
	return out, err
}

func planMittenTop(in MittenTopInput) (MittenTop, error) {
	var c fault.Checks
	var m mitten
	m.vetSize(&c, in.size())
	fault.Enum(&c, "", "kind", in.Kind, TopKindShort)
	c.OptionalCount("", "length_rounds", in.LengthRounds, 1, MaxHandRounds)
	c.OptionalNumber("", "length_cm", in.LengthCm, measure.MinCm, MaxHandCm)
	c.AtMostOne(in.LengthRounds != nil, in.LengthCm != nil, "length_rounds", "length_cm")
	c.OptionalCount("", "end_stitches", in.EndStitches, 1, MaxHandStitches)
	fault.Enum(&c, "", "finish", in.Finish, FinishDrawUp)
	if in.Finish == FinishGraft && (in.Kind == TopKindStar || in.Kind == TopKindRound) {
		c.Add("finish", fault.ReasonContradictory, "grafts two sides, and a star or round top has none; draw it up")
	}
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if err := c.Err(); err != nil {
		return MittenTop{}, err
	}
	if m.settleSize(&c, in.size()); c.Err() != nil {
		return MittenTop{}, c.Err()
	}
	plan, refused := m.closing(in).Plan()
	if refused != "" {
		fields := []string{m.field}
		if in.EndStitches != nil {
			fields = append(fields, "end_stitches")
		}
		c.Infeasible("the top "+refused, fields...)
		return MittenTop{}, c.Err()
	}
	if in.Kind == TopKindRound {
		plan.RoundCount = plan.Rounds[len(plan.Rounds)-1].RoundNumber // the book draws up after the last
	}
	length := plan.RoundCount
	if in.LengthRounds != nil || in.LengthCm != nil {
		length = m.rounds(&c, in.LengthRounds, in.LengthCm, 0, "mitten", "length_rounds", "length_cm")
	}
	if field := lengthField(in); length < plan.RoundCount && c.Sound(field) {
		c.Infeasible("the top alone takes "+report.CountOf(plan.RoundCount, "rounds")+" and the length is "+strconv.Itoa(length)+
			"; it must be at least as long", field)
	}
	if err := c.Err(); err != nil {
		return MittenTop{}, err
	}
	return m.top(in, plan, length), nil
}

func lengthField(in MittenTopInput) string {
	if in.LengthCm != nil {
		return "length_cm"
	}
	return "length_rounds"
}

// closing is the closing of a kind of top.
func (m *mitten) closing(in MittenTopInput) solid.Closing {
	q := solid.Closing{StartStitches: m.stitches, Wedges: sides, Paired: true, EdgeStitches: 1}
	end := 8
	switch in.Kind {
	case TopKindStar:
		q.Wedges, q.Paired, q.EdgeStitches, q.Pace = 4, false, 0, solid.ToHalf()
	case TopKindRound:
		m.section, m.more = m.roundTop()
		q.Wedges, q.Paired, q.EdgeStitches, q.Pace = m.stitches/m.section, false, 0, solid.PlainAfter(m.more)
		q.Uneven = solid.UnevenLeftOver // as in the book, which decreases every 5th stitch of any count
		end = (m.stitches + m.section - 1) / m.section
	case TopKindShort:
	default:
		q.Pace = solid.ToHalf()
		end = max(m.stitches/4+3, end) // about a quarter: a round takes 4
	}
	q.EndStitches = fault.Or(in.EndStitches, end)
	return q
}

func (m *mitten) top(in MittenTopInput, plan solid.ClosingPlan, length int) MittenTop {
	out := MittenTop{
		HandStitches: m.stitches, MittenCm: m.st.SizeCm(m.stitches), EvenRounds: length - plan.RoundCount,
		TopRounds: plan.RoundCount, TopCm: m.rw.SizeCm(plan.RoundCount), LengthRounds: length, LengthCm: m.rw.SizeCm(length),
		EndStitches: plan.EndStitches, Finish: in.Finish, Effort: plan.Effort, Notices: m.notices,
		plan: plan, kind: in.Kind, unit: in.DisplayUnit,
	}
	if first := plan.Rounds[0]; first.Adjusts {
		out.Notices = append(out.Notices, report.Notice{Reason: CountAdjusted, Field: m.field, Description: "a round of its own brings the " +
			report.CountOf(m.stitches, "stitches") + " down to " + strconv.Itoa(first.Instruction.EndStitches) + ", which the top divides"})
	}
	out.Notices = solid.EndNotice(out.Notices, "end_stitches", in.EndStitches, out.EndStitches)
	if in.Kind == TopKindRound {
		out.scaled = m.section != bookSection || m.more != bookMore
		out.Notices = append(out.Notices, m.unlikeHands(out)...)
	}
	if out.Finish == FinishUnspecified {
		if out.Finish = FinishDrawUp; in.Kind <= TopKindWedge {
			out.Finish = FinishGraft
		}
	}
	for _, r := range plan.Rounds {
		r.RoundNumber += out.EvenRounds
		out.Rounds = append(out.Rounds, r)
	}
	out.sources = m.sources
	if in.WithOutline {
		out.Outline = m.outline(out)
	}
	return out
}

// outline draws the mitten as it lies flat: half its circumference wide.
func (m *mitten) outline(out MittenTop) *outline.Outline {
	line := outline.AppendCorner(nil, outline.Corner{Across: out.HandStitches})
	for _, r := range out.Rounds {
		line = outline.AppendCorner(line, outline.Corner{Across: r.Instruction.StartStitches, Up: r.RoundNumber - 1})
		line = outline.AppendCorner(line, outline.Corner{Across: r.Instruction.EndStitches, Up: r.RoundNumber - 1})
	}
	line = outline.AppendCorner(line, outline.Corner{Across: out.EndStitches, Up: out.LengthRounds})
	right := outline.SizedBy(line, m.st, m.rw, func(stitches int) int { return stitches })
	left := make([]outline.Point, len(right))
	for i, p := range right {
		right[i].X = p.X / 2
		left[i] = outline.Point{X: -right[i].X, Y: p.Y}
	}
	o := &outline.Outline{
		X:     outline.Axis{Measure: "half the circumference, lying flat", Unit: outline.UnitCm},
		Y:     outline.Axis{Measure: "height", Unit: outline.UnitCm},
		Lines: []outline.Line{{Name: "right edge", Points: right}, {Name: "left edge", Points: left}},
	}
	return o.Framed()
}
