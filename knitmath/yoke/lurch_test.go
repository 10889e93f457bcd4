package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// lurches is how a yoke's decrease rounds follow one another, the round that adjusts the
// count aside.
//
// The measure: a decrease round of k decreases on n stitches has a gap of n/k stitches
// from one to the next. As a yoke narrows its gaps shrink, or stay. A pair of rounds
// grows where the upper one's gap is a stitch or an eighth wider than the lower one's, or
// more, and lurches where it is half as wide again or more. A round that increases has no gap, and neither
// it nor a count that stays is a link in the chain.
type lurches struct{ pairs, grown, lurching int }

func lurchesOf(out Circular) (l lurches) {
	n, k := 0, 0 // of the round before
	for _, r := range out.Rounds {
		lost := r.StartStitches - r.EndStitches
		if r.Adjusts || lost < 0 {
			continue
		}
		if k > 0 {
			l.pairs++
			if below, above := float64(n)/float64(k), float64(r.StartStitches)/float64(lost); above >= below+1-1e-9 || above >= 1.125*below-1e-9 {
				l.grown++
			}
			if 2*r.StartStitches*k >= 3*n*lost {
				l.lurching++
			}
		}
		n, k = r.StartStitches, lost
	}
	return l
}

// tally sums what yokes do.
type tally struct{ yokes, pairs, grown, lurching, grownYokes, lurchingYokes, oneAdjusted, adjusted int }

func (a *tally) add(out Circular) {
	l := lurchesOf(out)
	a.yokes++
	a.pairs += l.pairs
	a.grown += l.grown
	a.lurching += l.lurching
	if l.grown > 0 {
		a.grownYokes++
	}
	if l.lurching > 0 {
		a.lurchingYokes++
	}
	for _, r := range out.Rounds {
		if r.Adjusts {
			a.adjusted++
			if d := r.StartStitches - r.EndStitches; d*d == 1 {
				a.oneAdjusted++
			}
		}
	}
}

// check prints what yokes do, and asks that no more than so many percent of all pairs grow
// or lurch. Before growing gaps were charged for, 13 to 16 % of the pairs of cones grew and
// 21 to 32 % of those around bands, and 0.8 % and 7 to 16 % lurched, in full on 2,295 yokes
// of each kind.
func (a *tally) check(t *testing.T, name string, grown, lurching float64) {
	t.Helper()
	percent := func(n, of int) float64 { return 100 * float64(n) / float64(of) }
	t.Logf("%s: gaps grow in %.1f %% of %d pairs, of %.1f %% of %d yokes; lurch in %.1f %%, of %.1f %%; %d adjusted, %d by one stitch",
		name, percent(a.grown, a.pairs), a.pairs, percent(a.grownYokes, a.yokes), a.yokes,
		percent(a.lurching, a.pairs), percent(a.lurchingYokes, a.yokes), a.adjusted, a.oneAdjusted)
	if percent(a.grown, a.pairs) > grown || percent(a.lurching, a.pairs) > lurching {
		t.Errorf("%s: %d of %d pairs grow, %d lurch", name, a.grown, a.pairs, a.lurching)
	}
}

// Fifteen rounds of tens and fifteen of eights, from 294 stitches to 96: the counts came to
// 240, 225, 150, 120, 96, which take 6, 33, 20 and 20 %. Above the bands each round takes as much
// as the one below it or more.
func TestRoundsAboveBandsDoNotLurch(t *testing.T) {
	out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 220, NeckStitches: new(96),
		DepthCm: new(23.0), Bands: []Band{{15, 10, nil}, {15, 8, nil}}})
	if err != nil {
		t.Fatal(err)
	}
	if l := lurchesOf(out); l.pairs < 3 || l.grown > 0 || strange(out) {
		t.Errorf("%+v, %+v, %+v", l, out.Rounds, out.Notices)
	}
}
