package neck

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// An event is what one row takes at the neck edge of one side. Rows are counted from
// the one that divides the piece, which is row 0: right-side rows are even.
type event struct {
	row      int
	stitches int
	bindOff  bool
}

// An edge is the neck edge of both sides. Bind-offs lie where a row begins, in
// wrong-side rows of the first side and a row later on the second, decreases in the
// same row of both.
type edge struct {
	first, second    []event
	departure, least float64
	effort           int
	notices          []report.Notice
}

// evenAbove is how many rows are kept even below the shoulder's last stitches, so that
// nothing is shaped beside what is bound off or joined. Common practice.
const evenAbove = 2

// flatRows is how high the curve may have risen, in rows, where the middle of a round
// neck ends: the bind-offs beside it stand one row above it on one side and two on the
// other. It is so at published necks: 12 of 32 stitches in front, 20 of 32 behind. Own
// derivation.
const flatRows = 1.5

// curveRows is the height of a round neck's curve: what is above it goes straight up.
func curveRows(depth int) int { return depth - evenAbove + 1 }

// roundCentre is how many stitches in the middle of a round neck go at once if nobody
// says: those over which an ellipse is all but flat, a third of the neck at least, and
// all where there is no row to shape in.
func roundCentre(neck, depth int) int {
	if depth <= evenAbove {
		return neck
	}
	part := leg(1 - min(1, flatRows/float64(curveRows(depth))))
	n := neck - 2*int(measure.RoundHalfUp(float64(neck)*(1-part)/2))
	for 3*n < neck {
		n += 2
	}
	return n
}

// leg is the other leg of a right triangle whose longest side is 1.
func leg(a float64) float64 { return math.Sqrt(max(0, (1-a)*(1+a))) }

// strokes is how many straight lines stand for a curve of a round neck.
const strokes = 24

// roundEdge follows a quarter of an ellipse, whose middle is that of the neck and whose
// top is where the edge goes straight up, from the centre on.
func roundEdge(p setting, centre, depth int) edge {
	top, half := float64(curveRows(depth)), float64(p.neck)/2
	at := func(x, y float64) curve.Point { return curve.Point{X: x / p.st.PerCm(), Y: y / p.rw.PerCm()} }
	out := float64(centre) / 2
	// The curve at the foot of the bind-offs, a row above the centre.
	begin := max(out, half*leg(1-1/top))
	corners := make([]curve.Point, 0, strokes+2)
	corners = append(corners, at(begin-out, 0))
	from := math.Asin(min(1, begin/half))
	for i := range strokes + 1 {
		angle := from + (math.Pi/2-from)*float64(i)/strokes
		corners = append(corners, at(half*math.Sin(angle)-out, max(0, top*(1-math.Cos(angle))-1)))
	}
	path := curve.From(at(0, 0)).Lines(corners...)
	course := path.Courses(p.st, p.rw)[0]
	tolerance := fault.Or(p.in.ToleranceStitches, 0)
	plan, _ := curve.Follow(course, curve.Settings{FirstSide: stitch.WrongSide, AnyRow: p.anyRow, Tolerance: tolerance,
		Falling: min(falling, MaxTolerance-tolerance)})
	return edge{first: eventsOf(plan.Left), second: eventsOf(plan.Right), departure: plan.Departure, least: plan.Least, effort: plan.Effort}
}

// falling: nobody binds off more in a later row of a round neck than in an earlier one, even where
// it would lie nearer. A plan that does not is looked for up to a stitch farther off, in all no farther
// than anybody may ask. Common practice.
const falling = 1.0

func eventsOf(steps []curve.Step) []event {
	list := make([]event, len(steps))
	for i, s := range steps {
		list[i] = event{s.RowNumber, s.Stitches, s.Kind == curve.KindBindOff}
	}
	return list
}

// stepsAt are events as steps, of which the row that divides is row 1.
func stepsAt(events []event) []curve.Step {
	list := make([]curve.Step, len(events))
	for i, e := range events {
		list[i] = curve.Step{RowNumber: e.row + 1, Kind: curve.KindDecrease, Stitches: e.stitches}
		if e.bindOff {
			list[i].Kind = curve.KindBindOff
		}
	}
	return list
}

// slantedEdge is the edge of a V: decreases as a taper has them.
func slantedEdge(p setting, lost, depth int) (edge, error) {
	t, err := shaping.PlanTaper(shaping.TaperInput{
		StartStitches: p.shoulder + lost, EndStitches: p.shoulder, HeightRows: new(depth - evenAbove),
		Edges: shaping.ShapedEdgesBeginning, EdgeStitches: new(p.margin), RowChoice: p.rowChoice, FirstSide: stitch.WrongSide,
		ToleranceStitches: p.in.ToleranceStitches, EvenBeforeRows: new(0),
	})
	if err != nil {
		return edge{}, err
	}
	e := edge{departure: t.GreatestDepartureStitches, least: t.LeastDepartureStitches, effort: t.Effort}
	for _, n := range t.Notices {
		if n.Reason == shaping.ManyRuns {
			e.notices = append(e.notices, n)
		}
	}
	for _, r := range t.Rows {
		e.first = append(e.first, event{row: r.RowNumber, stitches: 1})
	}
	e.second = e.first
	return e, nil
}

// slots is how many rows can decrease a slanted edge of a depth.
func (p setting) slots(depth int) int {
	rows := max(0, depth-evenAbove)
	if p.anyRow {
		return rows
	}
	return rows / 2
}

// vetSlant checks that a V comes down to its point.
func vetSlant(c *fault.Checks, p setting, lost, depth int, depthField string) {
	slots := p.slots(depth)
	if lost <= slots {
		return
	}
	c.Infeasible(fmt.Sprintf("the edge loses %s, one in a row, and %s can decrease", report.CountOf(lost, "stitches"),
		report.CountOf(slots, "rows")), depthField)
}

// A setting is what the front and the back have in common.
type setting struct {
	counts
	edged bool // nothing is wrong with what edges come from
	slope
	st, rw    gauge.Density
	in        Input
	margin    int // plain stitches outside a decrease
	anyRow    bool
	rowChoice shaping.RowChoice
	shortRows bool
}
