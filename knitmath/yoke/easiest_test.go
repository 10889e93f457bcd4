package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// easiestByTrial is itemsByTrial, or what a round that is nearly easy has.
func easiestByTrial(from, to int) int {
	items := itemsByTrial(from, to)
	if items == hardItems {
		items, _ = changeItems(from, to, shaping.GapSpreadLeastEffort)
	}
	return items
}

// itemsByTrial writes every round of one or two gaps with up to two stitches left over,
// and takes the one with the fewest items.
func itemsByTrial(from, to int) int {
	op, takes := stitch.K2tog, 2
	if to > from {
		op, takes = stitch.M1L, 0
	}
	k := max(from-to, to-from)
	best := hardItems
	try := func(stitches, over int, steps ...stitch.Step) {
		if stitches+over != from {
			return
		}
		if over > 0 {
			steps = append(steps, stitch.Do(stitch.Knit, over))
		}
		best = min(best, stitch.RowOf(steps...).Items())
	}
	unit := func(gap int) []stitch.Step {
		if gap == 0 {
			return []stitch.Step{stitch.Do(op, 1)}
		}
		return []stitch.Step{stitch.Do(stitch.Knit, gap), stitch.Do(op, 1)}
	}
	repeat := func(times int, steps ...stitch.Step) []stitch.Step {
		if times == 1 {
			return steps
		}
		if len(steps) == 1 {
			return []stitch.Step{stitch.Do(op, times)}
		}
		return []stitch.Step{stitch.Repeat(times, steps...)}
	}
	for gap := 0; gap <= from; gap++ {
		for over := range 3 {
			try(k*(gap+takes), over, repeat(k, unit(gap)...)...)
			if k%2 == 0 {
				try(k/2*(2*gap+1+2*takes), over, repeat(k/2, append(unit(gap+1), unit(gap)...)...)...)
			}
		}
	}
	if k == 1 {
		best = min(best, 2) // wherever it stands
	}
	return best
}

// bestByTrial tries every sequence of counts there is, by the letter of the rule.
func bestByTrial(join int, places []place, percent float64) []int {
	var best, now []int
	least := sum{items: math.MaxInt}
	// The round below took lostBelow of wideBelow stitches, if it took any.
	var try func(i, below, wideBelow, lostBelow int, total sum)
	try = func(i, below, wideBelow, lostBelow int, total sum) {
		if i == len(places) {
			if total.items < least.items || total.items == least.items && (total.square < least.square ||
				total.square == least.square && slices.Compare(now, best) > 0) {
				least, best = total, slices.Clone(now)
			}
			return
		}
		p := places[i]
		for n := 1; n <= 2*join; n++ {
			off := math.Abs(float64(n) - p.wanted)
			near := float64(thousandths(off)) <= float64(thousandths(p.wanted))*percent/100 ||
				n == int(math.Floor(p.wanted+0.5)) || p.settled && percent > 0
			if n%p.repeat != 0 || n < p.lo || n > p.hi || !near || !mayFollow(p, below, n) {
				continue
			}
			next := sum{total.items, total.square + thousandths(off)*thousandths(off)}
			if n != below {
				next.items += easiestByTrial(below, n) + 1
			}
			wide, takes := 0, 0
			switch {
			case p.change.adjusts && (n == below-1 || n == below+1):
				next.items++
			case p.change.adjusts:
			case n < below:
				wide, takes = below, below-n
				next.items += chargeByTrial(wideBelow, lostBelow, wide, takes)
			}
			now = append(now, n)
			try(i+1, n, wide, takes, next)
			now = now[:len(now)-1]
		}
	}
	try(0, join, 0, 0, sum{})
	return best
}

// chargeByTrial is what counts for a gap, of so many stitches for a decrease, that is a
// stitch or an eighth wider than the one below, or half as wide again.
func chargeByTrial(wideBelow, lostBelow, wide, lost int) int {
	if lostBelow == 0 {
		return 0
	}
	below, above := float64(wideBelow)/float64(lostBelow), float64(wide)/float64(lost)
	switch {
	case above >= 1.5*below-1e-9:
		return 40
	case above >= below+1-1e-9, above >= 1.125*below-1e-9:
		return 10
	}
	return 0
}

// mayFollow is allowed.allows, in the words of its comments.
func mayFollow(p place, below, n int) bool {
	lost := below - n
	switch {
	case p.change.adjusts:
		return lost >= -4 && lost <= 4 && 2*lost <= below
	case lost < 0:
		return p.change.rises && n <= 2*below
	case 2*lost > below || lost < p.change.even.fewest:
		return false
	case p.change.even.fewest > 0 && lost > p.change.even.most:
		return false
	}
	part := float64(p.change.takes.num) / float64(p.change.takes.den) * float64(below)
	if p.change.even.fewest > 0 {
		return 3*lost <= below || float64(lost) <= math.Floor(part)+1
	}
	return float64(lost) <= part+1e-9
}

// The counts chosen are the easiest there are, and of these the nearest: against every
// sequence, on small yokes with and without bands and an adjusting round.
func TestEasiestCountsAreBest(t *testing.T) {
	tried, none, eased := 0, 0, 0
	for join := 14; join <= 44; join += knittest.Sweep(3, 10) {
		for neck := join * 2 / 5; neck <= join*3/4; neck += 2 {
			for shape := range 8 {
				for _, percent := range []float64{0, 5, 20} {
					places := smallPlaces(join, neck, shape)
					want := bestByTrial(join, places, percent)
					got, _, ok := easiest(join, places, percent, shaping.GapSpreadLeastEffort)
					if ok != (want != nil) || ok && !slices.Equal(got, want) {
						t.Fatalf("join %d, %v %%, places %+v: %v, best %v", join, percent, places, got, want)
					}
					switch exact, _, _ := easiest(join, places, 0, shaping.GapSpreadLeastEffort); {
					case !ok:
						none++
					case exact != nil && !slices.Equal(exact, got):
						eased++
					}
					tried++
				}
			}
		}
	}
	if tried < knittest.Sweep(1_500, 400) || none < tried/50 || none > tried/2 || eased < tried/10 {
		t.Errorf("tried %d, %d without counts, %d eased: the sweep has shrunk", tried, none, eased)
	}
}

// smallPlaces are two or three places above an adjusting round, in one of eight shapes.
func smallPlaces(join, neck, shape int) []place {
	y := circular{joining: joining{join: join}, neck: neck, tolerance: shape % 3}
	third1 := float64(2*join+neck) / 3
	s := scheme{join: join, neck: neck, steps: []schemeStep{{round: 5, wanted: third1}, {round: 10, wanted: float64(neck)}}}
	places := y.stepPlaces(s)
	if shape%2 == 1 {
		places = y.adjusted(CircularInput{}, places)
	}
	if shape < 4 {
		return places
	}
	takes := allowed{takes: third}
	if shape > 5 {
		takes.takes = twoFifths
	}
	for i := range places {
		if !places[i].change.adjusts {
			places[i].change = takes
		}
	}
	band := &places[len(places)-2]
	band.repeat, band.band, band.change.rises = 2+shape%3, 0, shape%2 == 0
	return places
}

func FuzzEasiestYoke(f *testing.F) {
	f.Add(228, 92, 72, 5.0, 33.0, int32(1), int32(0), []byte{13, 8, 24, 4})
	f.Add(200, 80, 60, 20.0, 50.0, int32(2), int32(3), []byte{})
	f.Fuzz(func(t *testing.T, body, neck, rounds int, percent, loss float64, schedule, order int32, bands []byte) {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body % 600, DepthRounds: &rounds,
			TolerancePercent: &percent, Schedule: Schedule(schedule), Spread: shaping.GapSpread(order)}
		if neck > 0 {
			in.NeckStitches = &neck
		}
		for b := range slices.Chunk(bands, 2) {
			if len(b) == 2 {
				in.Bands, in.LargestLossPercent = append(in.Bands, Band{int(b[0]), int(b[1]), nil}), &loss
			}
		}
		out, err := PlanCircularYoke(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkYoke(t, in, out)
	})
}
