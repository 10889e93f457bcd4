package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// bestCounts tries every sequence of counts there is, by the letter of the rule.
func bestCounts(join int, places []place) (best []int) {
	least := int64(-1)
	now := make([]int, len(places))
	var try func(i, below int, sum int64)
	try = func(i, below int, sum int64) {
		if i == len(places) {
			better := least < 0 || sum < least
			if sum == least { // more stitches in the lowest place where they differ
				better = slices.Compare(now, best) > 0
			}
			if better {
				least, best = sum, slices.Clone(now)
			}
			return
		}
		p := places[i]
		for n := 1; n <= 2*join; n++ {
			rises := n > below
			if n%p.repeat != 0 || n < p.lo || n > p.hi || 2*n < below || rises && (i > 0 || p.band == noBand) {
				continue
			}
			off := int64(n)*1000 - int64(math.Round(p.wanted*1000))
			now[i] = n
			try(i+1, n, sum+off*off)
		}
	}
	try(0, join, 0)
	return best
}

// The counts chosen are the best there are, and they are refused only where there
// are none: against every sequence, on small yokes.
func TestYokeCountsAreBest(t *testing.T) {
	tried, refused, ties := 0, 0, 0
	for join := 6; join <= 26; join += 4 {
		for a := 1; a <= 9; a++ {
			for b := 1; b <= 9; b += knittest.Sweep(1, 4) {
				for c := 1; c <= 7; c += 2 {
					for shape := range 6 {
						tried++
						switch ok := checkBest(t, join, placesOf(float64(join), a, b, c, shape)); {
						case !ok:
							refused++
						case shape == 4 && a%2 == 1:
							ties++
						}
					}
				}
			}
		}
	}
	if tried < knittest.Sweep(10_000, 3_000) || refused < knittest.Sweep(50, 15) || refused > tried/2 || ties < knittest.Sweep(100, 30) {
		t.Errorf("%d tried, %d refused, %d with ties: the sweep has shrunk", tried, refused, ties)
	}
}

// checkBest compares what is chosen with the best there is, if there is any.
func checkBest(t *testing.T, join int, places []place) bool {
	t.Helper()
	want := bestCounts(join, places)
	got, ok := newBandCounts(join, places, half).choose()
	if ok != (want != nil) || ok && !slices.Equal(got, want) {
		t.Fatalf("join %d, places %+v: %v (%v), best %v", join, places, got, ok, want)
	}
	return ok
}

// placesOf are three bands of these repeats and the neck, in one of six shapes.
func placesOf(join float64, a, b, c, shape int) []place {
	neck := int(join) * 2 / 5
	places := []place{
		{wanted: join * 0.9, repeat: a, lo: 1, hi: stitch.MaxStitches, band: 0},
		{wanted: join * 0.7, repeat: b, lo: 1, hi: stitch.MaxStitches, band: 1},
		{wanted: join * 0.5, repeat: c, lo: 1, hi: stitch.MaxStitches, band: 2},
		{wanted: join * 0.4, repeat: 1, lo: neck, hi: neck + shape%3, band: noBand},
	}
	switch shape {
	case 1:
		places[0].band, places[0].repeat = noBand, 1 // a round of the schedule comes first
	case 2:
		places = places[:3] // the last band is the neck
		places[2].lo, places[2].hi = neck-2, neck+2
	case 3:
		places[0].wanted, places[1].wanted = join, join // wants the same twice
	case 4:
		places[0].wanted, places[1].wanted = join+0.5, join-0.5 // ties
	}
	return places
}

// A refusal names a band and a repeat, the nearest that would do: every other
// repeat as near or nearer is tried by force, and the one named too.
func TestYokeNearestRepeat(t *testing.T) {
	named := 0
	for join := 12; join <= 24; join += 3 {
		for a := 1; a <= 30; a += knittest.Sweep(1, 4) {
			for b := 1; b <= 30; b += 3 {
				neck := join * 2 / 5
				places := []place{
					{wanted: float64(join), repeat: a, lo: 1, hi: stitch.MaxStitches, band: 0},
					{wanted: float64(join) / 2, repeat: b, lo: neck - 1, hi: neck + 1, band: 1},
				}
				counts := newBandCounts(join, places, half)
				if _, ok := counts.choose(); ok {
					continue
				}
				free, _ := counts.reachable()
				for i := range places {
					if checkNearest(t, counts, i, free[i]) {
						named++
					}
				}
			}
		}
	}
	if named < knittest.Sweep(300, 60) {
		t.Errorf("named %d repeats: the sweep has shrunk", named)
	}
}

// checkNearest tries every repeat at a place, and reports whether one was named.
func checkNearest(t *testing.T, counts bandCounts, i int, free []bool) bool {
	t.Helper()
	own := counts.places[i].repeat
	repeat, n := counts.nearestRepeat(i, free)
	changed := slices.Clone(counts.places)
	for r := 1; r <= 60; r++ {
		changed[i].repeat = r
		works := bestCounts(counts.join, changed) != nil
		nearer := repeat == 0 || measure.Abs(r-own) < measure.Abs(repeat-own)
		tie := repeat > r && r+repeat == 2*own // the smaller of two equally near
		if works && (nearer || tie) || r == repeat && !works {
			t.Fatalf("join %d, places %+v: band %d named %d, tried %d: %v", counts.join, counts.places, i+1, repeat, r, works)
		}
	}
	if repeat > 0 && n%repeat != 0 {
		t.Fatalf("%d stitches in repeats of %d", n, repeat)
	}
	return repeat > 0
}
