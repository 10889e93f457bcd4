package knitmath

import "math"

// plan shares the rows out over the wedges and writes each kind once.
func (q circle) plan() Circle {
	out := Circle{StitchCount: q.width, WedgeCount: q.wedges,
		OuterRowCount: 2 * (q.pairs + q.full), InnerRowCount: 2 * q.full,
		WantedOuterRows: q.wantOuter, WantedInnerRows: q.wantInner,
		OuterRadiusCm: q.outer, degrees: q.degrees}
	out.ClosureRows = float64(out.OuterRowCount) - q.wantOuter
	out.ClosureDegrees = out.ClosureRows / q.wantOuter * q.degrees
	out.InnerClosureRows = float64(out.InnerRowCount) - q.wantInner
	out.InnerRadiusCm = q.rw.sizeCm(out.InnerRowCount) / (2 * math.Pi) * 360 / q.degrees
	kinds := map[[2]int]int{}
	for i := range q.wedges {
		kind := [2]int{share(i, q.wedges, q.pairs), share(i, q.wedges, q.full)}
		k, known := kinds[kind]
		if !known {
			k = len(out.Wedges)
			kinds[kind] = k
			out.Wedges = append(out.Wedges, q.wedge(kind[0], kind[1]))
		}
		if last := len(out.Sequence) - 1; last >= 0 && out.Sequence[last].WedgeIndex == k {
			out.Sequence[last].Times++
			continue
		}
		out.Sequence = append(out.Sequence, CircleWedgeRun{k, 1})
	}
	if out.InnerClosureRows > 1 {
		out.Notices = append(out.Notices, Notice{"HOLE_AT_THE_CENTRE", "inner_radius_cm",
			"the inner edge has " + countOf(out.InnerRowCount, "rows") + ", two for each wedge; draw them together with the yarn's tail, or use fewer wedges"})
	}
	return out
}

// innerRows is where the straight line of one wedge begins at the inner edge: at
// its full rows, which together are what a ring wants there; or at what is wanted
// where that is less than the two that every wedge has.
func (q circle) innerRows(full int) float64 {
	if wanted := q.wantInner / float64(q.wedges); wanted < 2 {
		return wanted
	}
	return 2 * float64(full)
}

// wedge knits one wedge: its pairs of short rows from the right edge, the row
// that closes their gaps, and full rows up to an even number. All its rows
// together rise in a straight line from the inner edge to the outer; where that
// line asks for fewer than the full rows, near the centre of a disc, there are no
// short ones.
func (q circle) wedge(pairs, full int) CircleWedge {
	p := profile{q.width, make([]int64, q.width+1)}
	out, in := 2*float64(pairs+full), q.innerRows(full)
	for i := range p.points {
		rows := out + (in-out)*float64(i)/float64(q.width) - 2*float64(full)
		p.points[i] = toMillionths(max(rows, 0))
	}
	w := wedge{width: q.width, method: q.method, shortest: q.shortest, tall: TallEndRight}
	knit := w.knit(spans(p.pairs(RoundingNearest), q.shortest))
	s := shortRows{width: q.width, rows: knit.Rows}
	for range full - 1 {
		s.row(SideWrong, q.width, 0)
		s.row(SideRight, 0, q.width)
	}
	s.row(SideWrong, q.width, 0)
	return CircleWedge{pairs, 2 * full, s.rows, p.departure(knit.heights)}
}

// Summary says the answer in words.
func (o Circle) Summary() string {
	shape := "A disc"
	if o.WantedInnerRows > 0 {
		shape = "A ring"
	}
	return shape + " of " + o.unit.size(o.OuterRadiusCm) + " radius from " + countOf(o.WedgeCount, "wedges") + " of " +
		countOf(o.StitchCount, "stitches") + ": " + countOf(o.OuterRowCount, "rows") + " round the outer edge, " +
		decimal(math.Abs(o.ClosureRows), 2) + " rows from closing (" + decimal(math.Abs(o.ClosureDegrees), 2) + " degrees)."
}

// Sources says where the figures come from.
func (Circle) Sources() []Source {
	return []Source{
		{"rows round the edges", "own derivation: the circumference 2 pi r of a circle times the row gauge", SourceStatusOwnDerivation},
		{"places of the turns", "own derivation: every stitch gets the whole number of pairs nearest to the profile", SourceStatusOwnDerivation},
		{"ways of turning and closing the gap", "common practice", SourceStatusCommonPractice},
	}
}
