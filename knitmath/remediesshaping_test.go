package knitmath_test

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

func someTaper(r *rand.Rand) shaping.TaperInput {
	in := shaping.TaperInput{StartStitches: 1 + r.IntN(120), EndStitches: 1 + r.IntN(120), Gauge: someGauge(r),
		Construction: stitch.Construction(r.IntN(3)), Edges: shaping.ShapedEdges(r.IntN(4)),
		EdgeChangeStitches: sometimes(r, 30, 1+r.IntN(2)), EdgeStitches: sometimes(r, 30, nearEnds(r, 0, 12)),
		RowChoice: shaping.RowChoice(r.IntN(3)), HeightRows: new(nearEnds(r, 1, 140)),
		EvenBeforeRows: sometimes(r, 30, nearEnds(r, 0, 30)), EvenAfterRows: sometimes(r, 30, nearEnds(r, 0, 30))}
	if r.IntN(3) == 0 {
		in.HeightRows, in.HeightCm = nil, tenths(r, 60)
	}
	if in.Construction != stitch.InTheRound {
		in.FirstSide = stitch.Side(r.IntN(3))
	}
	return in
}

// What a taper may be changed to, which a taper in many sizes and a side may be too.
type taperChange struct {
	anyRow, double bool
	before, after  *int
	rows, end      *int
}

func (ch taperChange) taper(in shaping.TaperInput) shaping.TaperInput {
	if ch.anyRow {
		in.RowChoice = shaping.RowChoiceAny
	}
	if ch.double {
		in.EdgeChangeStitches = new(2)
	}
	if ch.before != nil {
		in.EvenBeforeRows = ch.before
	}
	if ch.after != nil {
		in.EvenAfterRows = ch.after
	}
	if ch.rows != nil {
		in.HeightRows, in.HeightCm = ch.rows, nil
	}
	if ch.end != nil {
		in.EndStitches = *ch.end
	}
	return in
}

// taperOffers are what refusals of tapers offer.
func taperOffers[Q any](changed func(q Q, field string, ch taperChange) Q) []offer[Q] {
	to := func(made func(n []int) taperChange) func(q Q, field string, n []int) []Q {
		return func(q Q, field string, n []int) []Q { return []Q{changed(q, field, made(n))} }
	}
	ends := func(q Q, field string, n []int) []Q {
		var all []Q
		for _, end := range n {
			all = append(all, changed(q, field, taperChange{end: &end}))
		}
		return all
	}
	return []offer[Q]{
		says(", or shaping on any row and 2 stitches at each edge", to(func([]int) taperChange {
			return taperChange{anyRow: true, double: true}
		})),
		says(", or shaping on any row", to(func([]int) taperChange { return taperChange{anyRow: true} })),
		says(", or 2 stitches at each edge", to(func([]int) taperChange { return taperChange{double: true} })),
		{says: regexp.MustCompile(`; end_stitches of (\d+)(?: or (\d+))? would do`), asks: ends},
		{says: regexp.MustCompile(`; [a-z]+\[(\d+)\]\.[a-z_]+ of (\d+)(?: or (\d+))? would do`), asks: func(q Q, _ string, n []int) []Q {
			return ends(q, "["+strconv.Itoa(n[0])+"]", n[1:]) // it may be another point than the one at fault
		}},
		says("it takes at least # row", to(func(n []int) taperChange { return taperChange{rows: &n[0]} })),
	}
}

// evenOffers are those of rows kept even beside them.
func evenOffers[Q any](changed func(q Q, field string, ch taperChange) Q) []offer[Q] {
	return append([]offer[Q]{
		{says: regexp.MustCompile(`, or (\d+) rows? kept even at the start`), asks: func(q Q, field string, n []int) []Q {
			return []Q{changed(q, field, taperChange{before: &n[0]})}
		}},
		{says: regexp.MustCompile(`, or (\d+) rows? kept even at the end`), asks: func(q Q, field string, n []int) []Q {
			return []Q{changed(q, field, taperChange{after: &n[0]})}
		}},
		says(", or no rows kept even", func(q Q, field string, _ []int) []Q {
			return []Q{changed(q, field, taperChange{before: new(0), after: new(0)})}
		}),
	}, taperOffers(changed)...)
}

// narrow is said where nothing but other counts would do.
const narrow = "a shaping row needs at least # stitches with this edge, and the narrowest has #"

func TestRemediesOfPlanTaper(t *testing.T) {
	remediesWork(t, 12_000, 1_500, someTaper, func(in shaping.TaperInput) error {
		_, err := shaping.PlanTaper(in)
		return err
	}, evenOffers(func(in shaping.TaperInput, _ string, ch taperChange) shaping.TaperInput { return ch.taper(in) }), narrow)
}

func TestRemediesOfPlanGradedTaper(t *testing.T) {
	some := func(r *rand.Rand) shaping.GradedTaperInput {
		one := someTaper(r)
		in := shaping.GradedTaperInput{Gauge: one.Gauge, Construction: one.Construction, Edges: one.Edges, FirstSide: one.FirstSide,
			EdgeChangeStitches: one.EdgeChangeStitches, EdgeStitches: one.EdgeStitches,
			EvenBeforeRows: one.EvenBeforeRows, EvenAfterRows: one.EvenAfterRows}
		for range 1 + r.IntN(4) {
			one := someTaper(r)
			in.Sizes = append(in.Sizes, shaping.TaperSize{StartStitches: one.StartStitches, EndStitches: one.EndStitches,
				HeightRows: one.HeightRows, HeightCm: one.HeightCm})
		}
		return in
	}
	ask := func(in shaping.GradedTaperInput) error {
		_, err := shaping.PlanGradedTaper(in)
		return err
	}
	type q = shaping.GradedTaperInput
	remediesWork(t, 5_000, 700, some, ask, evenOffers(func(in q, field string, ch taperChange) q {
		i := placeOf(field)
		size := in.Sizes[i]
		one := ch.taper(shaping.TaperInput{EndStitches: size.EndStitches, HeightRows: size.HeightRows, HeightCm: size.HeightCm,
			EdgeChangeStitches: in.EdgeChangeStitches, RowChoice: in.RowChoice,
			EvenBeforeRows: in.EvenBeforeRows, EvenAfterRows: in.EvenAfterRows})
		in.Sizes = slices.Clone(in.Sizes)
		in.Sizes[i].EndStitches, in.Sizes[i].HeightRows, in.Sizes[i].HeightCm = one.EndStitches, one.HeightRows, one.HeightCm
		in.EdgeChangeStitches, in.RowChoice = one.EdgeChangeStitches, one.RowChoice
		in.EvenBeforeRows, in.EvenAfterRows = one.EvenBeforeRows, one.EvenAfterRows
		return in
	}), narrow)
}

func TestRemediesOfPlanShapedSide(t *testing.T) {
	some := func(r *rand.Rand) shaping.ShapedSideInput {
		one := someTaper(r)
		in := shaping.ShapedSideInput{StartStitches: one.StartStitches, Gauge: one.Gauge, Construction: one.Construction, Edges: one.Edges,
			FirstSide: one.FirstSide, EdgeChangeStitches: one.EdgeChangeStitches, EdgeStitches: one.EdgeStitches, RowChoice: one.RowChoice}
		rows := 0
		for range 1 + r.IntN(4) {
			rows += nearEnds(r, 1, 80)
			in.Points = append(in.Points, shaping.SidePoint{HeightRows: new(rows), Stitches: 1 + r.IntN(120)})
		}
		return in
	}
	ask := func(in shaping.ShapedSideInput) error {
		_, err := shaping.PlanShapedSide(in)
		return err
	}
	type q = shaping.ShapedSideInput
	remediesWork(t, 6_000, 700, some, ask, taperOffers(func(in q, field string, ch taperChange) q {
		i := placeOf(field)
		in.Points = slices.Clone(in.Points)
		one := ch.taper(shaping.TaperInput{EndStitches: in.Points[i].Stitches,
			EdgeChangeStitches: in.EdgeChangeStitches, RowChoice: in.RowChoice})
		in.Points[i].Stitches, in.EdgeChangeStitches, in.RowChoice = one.EndStitches, one.EdgeChangeStitches, one.RowChoice
		if ch.rows != nil { // so many between these points
			below := 0
			if i > 0 {
				below = *in.Points[i-1].HeightRows
			}
			more := *ch.rows - (*in.Points[i].HeightRows - below)
			for k := i; k < len(in.Points); k++ {
				in.Points[k].HeightRows = new(*in.Points[k].HeightRows + more)
			}
		}
		return in
	}), narrow)
}
