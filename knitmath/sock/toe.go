package sock

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// ToeKind is how a toe is made.
type ToeKind int32

// The kinds.
const (
	ToeKindUnspecified ToeKind = iota // wedge
	ToeKindWedge                      // two sides, each decreased at both ends; grafted
	ToeKindRound                      // as many even rounds after a decrease as plain stitches
	ToeKindStar                       // four stacks of decreases; drawn up
	ToeKindShortRows                  // short rows over the sole; grafted
)

// Ranges of a toe.
const (
	MinWedges = 3
	MaxWedges = 60
	// MaxToeRounds is the most rounds of a toe: each comes back written out.
	MaxToeRounds = 2_000
	// MaxMoreEven is the most even rounds beyond those of a round toe.
	MaxMoreEven   = 10
	minLengthEase = -10.0
	maxLengthEase = 10.0
)

// ToeInput asks for a toe. It mirrors PlanToeRequest.
type ToeInput struct {
	Kind                ToeKind
	Direction           Direction
	RoundStitches       *int
	FootCircumferenceCm *float64
	EasePercent         *float64
	Gauge               *gauge.Gauge
	StitchRule          *gauge.CountRule
	FootLengthCm        *float64
	LengthEaseCm        *float64
	WedgeCount          *int
	Rates               []solid.Rate
	MoreEvenRounds      *int
	CentreStitches      *int
	TurnMethod          shortrow.TurnMethod
	TipStitches         *int
	DisplayUnit         measure.DisplayUnit
	WithOutline         bool
}

// A ToeRow is one round of a toe, or one of its short rows.
type ToeRow struct {
	RowNumber   int
	Side        stitch.Side
	Instruction stitch.Instruction
}

// Toe is the answer to ToeInput. What is not known or does not apply is nil.
type Toe struct {
	Stitches       *gauge.FittedCount
	RoundStitches  int
	WedgeCount     *int
	DecreaseRounds *int
	CentreStitches *int
	// TipStitches are left at the tip, or from the toe up cast on there.
	TipStitches int
	// LengthRows is how many rows long the toe is.
	LengthRows int
	LengthCm   *float64
	// FootToToeCm is how long the foot is, from the back of the heel, when the toe begins.
	FootToToeCm *float64
	Rows        []ToeRow
	Notices     []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	asked  ToeInput
	kind   ToeKind
	toeUp  bool
	unit   measure.DisplayUnit
	method shortrow.TurnMethod
	// adjusted is the count that the toe divides where that is not the round's, else 0.
	adjusted int
	// closing is how the tube is closed; empty of short rows.
	closing    []string
	summary    string
	directions []string
}

// PlanToe plans a toe and writes every round of it. From the toe up it is that from the cuff
// down the other way round, increases where that decreases; of short rows it is the same cup, over
// half of the stitches cast on. The round
// begins at one side of the foot, so that its halves are sole and instep.
//
// A wedge loses four stitches in a decrease round and a star as many as it has wedges, every
// 2nd round until half of the stitches are left and then every round, unless rates are given; a
// round toe works as many rounds even after each decrease round as that had plain stitches
// between two decreases. A toe of short rows is a cup over the sole (see shortrow.Cup).
//
// The toe begins when the foot measures, from the back of the heel,
//
//	length of the foot + its ease - length of the toe
//
// Sources: Th. de Dillmont (c. 1886) of the round toe; of the others common practice, as cited
// in the answer.
func PlanToe(in ToeInput) (Toe, error) {
	t, out, err := planToe(in)
	if err != nil {
		return Toe{}, in.advised(err)
	}
	out.asked, out.Notices = in, t.notices(in, out)
	out.summary, out.directions = out.summarise(), out.direct()
	if in.WithOutline {
		out.Outline = t.outline(out)
	}
	return out, nil
}

// planToe is the toe without its words.
func planToe(in ToeInput) (t toe, out Toe, err error) {
	var c fault.Checks
	if t = vetToe(&c, in); c.Err() != nil {
		return t, Toe{}, c.Err()
	}
	if t.kind == ToeKindShortRows {
		out = t.planShortRows(&c, in)
	} else {
		out = t.planClosing(&c, in)
	}
	if c.Err() != nil {
		return t, Toe{}, c.Err()
	}
	out.LengthCm = t.rowsCm(out.LengthRows)
	if in.FootLengthCm != nil {
		t.settleFoot(&c, in, &out)
	}
	return t, out, c.Err()
}

// toe is a checked question.
type toe struct {
	rounds
	kind   ToeKind
	toeUp  bool
	unit   measure.DisplayUnit
	method shortrow.TurnMethod
}

func (t toe) answer() Toe {
	return Toe{Stitches: t.fitted, RoundStitches: t.round, kind: t.kind, toeUp: t.toeUp, unit: t.unit, method: t.method}
}

// planClosing closes the tube by stacks of decreases.
func (t toe) planClosing(c *fault.Checks, in ToeInput) Toe {
	q := t.closing(in)
	plan, refused := q.Plan()
	for refused == "" && t.toeUp && plan.EndStitches < leastCastOn {
		q.EndStitches = plan.Rounds[len(plan.Rounds)-1].Instruction.StartStitches
		plan, refused = q.Plan()
	}
	if refused != "" {
		c.Infeasible("the toe "+refused, t.fields(in)...)
		return Toe{}
	}
	if plan.RoundCount > MaxToeRounds {
		c.Infeasible("the toe takes "+report.CountOf(plan.RoundCount, "rounds")+"; at most "+strconv.Itoa(MaxToeRounds)+" are planned"+
			quicker(in), t.fields(in)...)
		return Toe{}
	}
	out := t.answer()
	decreases := len(plan.Rounds)
	if plan.Rounds[0].Adjusts {
		decreases, out.adjusted = decreases-1, plan.Rounds[0].Instruction.EndStitches
	}
	out.WedgeCount, out.DecreaseRounds, out.TipStitches, out.LengthRows = &q.Wedges, &decreases, plan.EndStitches, plan.RoundCount
	if t.toeUp {
		plan = q.Opened(plan)
		out.LengthRows = plan.RoundCount
	}
	out.closing = plan.Directions(1)
	closingRows(plan, func(number int, in stitch.Instruction) {
		out.Rows = append(out.Rows, ToeRow{number, stitch.RightSide, in})
	})
	return out
}

// quicker says what a toe of many rounds by rates of its own can do.
func quicker(in ToeInput) string {
	if len(in.Rates) == 0 {
		return ""
	}
	return ", and quicker rates take fewer"
}

// closing is how the tube closes.
func (t toe) closing(in ToeInput) solid.Closing {
	q := solid.Closing{StartStitches: t.round, Wedges: fault.Or(in.WedgeCount, starWedges), Pace: solid.ToHalf()}
	switch t.kind {
	case ToeKindRound:
		q.Wedges = fault.Or(in.WedgeCount, t.roundWedges(in))
		q.EndStitches = min(q.Wedges, mostDrawnUp)
		q.Pace = solid.PlainAfter(fault.Or(in.MoreEvenRounds, 0))
	case ToeKindStar:
		q.EndStitches = max(q.Wedges, starEnd)
	default:
		q.Wedges, q.Paired, q.EdgeStitches = 2, true, 1
		q.EndStitches = wedgeEnd(t.round - t.round%2)
	}
	if len(in.Rates) > 0 {
		q.Pace = solid.AtRates(in.Rates...)
	}
	q.EndStitches = fault.Or(in.TipStitches, q.EndStitches)
	return q
}

// Defaults of toes.
const (
	// starWedges and starEnd: common practice of the star toe, which loses 4 every 2nd round to half and
	// then every round to 8.
	starWedges = 4
	starEnd    = 8
	// mostDrawnUp is the most stitches that a yarn is drawn through by default. Common practice.
	mostDrawnUp = 12
	// leastCastOn is the fewest stitches that are joined in a round with increases between them. Own choice.
	leastCastOn = 4
)
