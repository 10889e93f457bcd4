package flat

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// star is a star of p points from its centre. Its sides lie d from the centre, and from where
// that distance meets a side it is d cot(a) to the point, of half the angle a, and as much of
// the valley's b = pi - a - pi/p, which is less than 0: every round a side gains cot(a)/R
// stitches at the point and loses -cot(b)/R in the valley, in pairs with its neighbours. A
// round has for each point its stitch, a side, the stitch of the valley and a side.
//
// The points of a star whose valleys are not given gain in every round.
func star(c *fault.Checks, in Input, st, rw gauge.Density) Shape {
	p := piece{in: in, form: in.Form, st: st, rw: rw, round: true, sizeField: "across_cm", wedges: *in.CornerCount,
		inwards: in.Direction == DirectionInwards}
	ratio, tip, part := rw.PerCm()/st.PerCm(), *in.AcrossCm/2, math.Pi/float64(p.wedges)
	angle := math.Atan(1 / ratio)
	sharp := []string{"corner_count", "gauge.rows"}
	if in.ValleyCm != nil {
		sharp = []string{"valley_cm", "across_cm"}
		sin, cos := math.Sincos(part)
		angle = math.Atan2(*in.ValleyCm/2*sin, tip-*in.ValleyCm/2*cos)
	}
	points, valleys := 1/math.Tan(angle)/ratio, 1/math.Tan(angle+part)/ratio
	p.rows = int(measure.RoundHalfUp(tip * math.Sin(angle) * rw.PerCm()))
	switch {
	case points > 1+slack:
		c.Infeasible("the points are so sharp that they gain more than a stitch at each side in every round", sharp...)
	case valleys <= 0:
		c.Infeasible("the valleys lie so far out, or the points are so few, that it is no star", sharp...)
	case p.rows < 4 || p.rows > MaxChanges:
		c.Infeasible("it would have "+countRows(p.rows, true)+"; there must be from 4 to "+measure.Decimal(MaxChanges, 0),
			"across_cm", "gauge.rows")
	}
	if c.Err() != nil {
		return Shape{}
	}
	p.grows, p.start = 2*float64(p.wedges)*(points-valleys), p.wedges
	out := Shape{Construction: stitch.InTheRound, StartStitches: p.start, TotalRows: p.rows, GrowthStitches: p.grows, WedgeCount: p.wedges,
		WantedRimStitches: p.grows * float64(p.rows)}
	out.Rows, out.EndStitches = p.starRows(points)
	if p.inwards {
		out.StartStitches, out.EndStitches = out.EndStitches, out.StartStitches
	}
	numbers := make([]int, len(out.Rows))
	count, next, all := out.StartStitches, 0, 0
	for number := 1; number <= p.rows; number++ {
		if next < len(out.Rows) && out.Rows[next].RowNumber == number {
			count, numbers[next] = out.Rows[next].Instruction.EndStitches, number
			next++
		}
		all += count
		row := number // from the centre
		if p.inwards {
			row = p.rows + 1 - number
		}
		if wanted := p.wants(row); wanted >= float64(p.start) {
			out.GreatestDepartureStitches = max(out.GreatestDepartureStitches, math.Abs(float64(count)-wanted))
		}
	}
	out.Effort = schedule.RunsInTurn(numbers).Effort()
	out.Notices = p.starNotices(all)
	p.tip = rw.SizeCm(p.rows) / math.Sin(angle)
	p.valley = p.tip * math.Sin(angle) / math.Sin(angle+part)
	out.WidthCm, out.HeightCm = p.starSize()
	out.of = p
	return out
}

// starRows are the rounds in which points gain or valleys lose, so much of a side in each round. In the
// middle, until a side is settled, neither point nor valley is there yet: it grows as many stitches as lie
// flat ask for, from one for each point. Then every valley loses what its points have gained beyond that.
func (p *piece) starRows(points float64) (rows []Row, end int) {
	var changes []starChange
	side, row := -1, 1 // stitches of a side; without one, the valleys have no stitch yet
	for row < p.rows && side < settled {
		row++
		ch := starChange{row: row, side: side, gain: true}
		if 2*p.wants(row) >= float64(p.starCount(side)+p.starCount(ch.after())) {
			changes, side = append(changes, ch), ch.after()
		}
	}
	gains := *p
	gains.grows, gains.step = points, 1
	gaining := gains.straight(int(measure.RoundHalfUp(gains.wants(row))), row)
	for row++; row <= p.rows; row++ {
		gain := len(gaining) > 0 && gaining[0] == row
		if gain {
			gaining = gaining[1:]
		}
		ch := starChange{row: row, side: side, gain: gain}
		ch.lose = side >= settled && p.wants(row) < float64(p.starCount(ch.after())-p.wedges)
		if side = ch.after(); gain || ch.lose {
			changes = append(changes, ch)
		}
	}
	end = p.starCount(side)
	if p.inwards {
		slices.Reverse(changes)
	}
	return p.writeStar(changes), end
}

// settled is how many stitches a side has at least when its valley takes one of them, so that none
// is decreased a round or two after it was increased. Own choice.
const settled = 3

// writeStar writes the changes in the order worked.
func (p *piece) writeStar(changes []starChange) (rows []Row) {
	for _, ch := range changes {
		number, counted := ch.row, ch.row
		from, to, steps := ch.side, ch.after(), ch.outwards()
		if p.inwards {
			number, counted = p.rows+2-ch.row, ch.row-1
			from, to, steps = to, from, ch.inwards()
		}
		from, to = p.starCount(from), p.starCount(to)
		rows = append(rows, Row{RowNumber: number, WantedStitches: p.wants(counted), DepartureStitches: float64(to) - p.wants(counted),
			Instruction: instruction([]stitch.Step{stitch.Repeat(p.wedges, steps...)}, from, to)})
	}
	return rows
}

// starCount is how many stitches a round has whose sides have so many: without sides yet, one for each
// point.
func (p *piece) starCount(side int) int {
	if side < 0 {
		return p.wedges
	}
	return 2 * p.wedges * (side + 1)
}

// starNotices say that a star has many more or fewer stitches than lie flat, all together.
func (p *piece) starNotices(all int) []report.Notice {
	wanted := p.grows * float64(p.rows) * float64(p.rows) / 2
	percent := 100 * (float64(all)/wanted - 1)
	reason, than, why := Ruffles, "more", ", since its middle has a stitch for each point"
	switch {
	case math.Abs(percent) <= blockedOut:
		return nil
	case percent < 0:
		reason, than, why = Cups, "fewer", ""
	}
	return []report.Notice{{Reason: reason, Field: "across_cm", Description: "in all it has " + measure.Decimal(math.Abs(percent), 0) + " % " +
		than + " stitches than lie flat" + why}}
}

// starPoints are the corners of a star that stands with a point upward.
func (p *piece) starPoints() (x, y []float64) {
	for i := range 2*p.wedges + 1 {
		r := p.tip
		if i%2 == 1 {
			r = p.valley
		}
		sin, cos := math.Sincos(math.Pi/2 + math.Pi*float64(i)/float64(p.wedges))
		x, y = append(x, r*cos), append(y, r*sin)
	}
	return x, y
}

// starSize is how wide and high it lies.
func (p *piece) starSize() (width, height float64) {
	x, y := p.starPoints()
	var left, right, low, high float64
	for i := range x {
		left, right, low, high = min(left, x[i]), max(right, x[i]), min(low, y[i]), max(high, y[i])
	}
	return right - left, high - low
}
