package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// What a change is said to have to remember, the row that is written never exceeds, and
// what is said to have no mirrored round has none. An evenly mixed round may have an item
// more.
func TestChangesHaveNoMoreItemsThanSaid(t *testing.T) {
	seen := map[string]int{}
	for from := 4; from <= 420; from += knittest.Sweep(3, 11) {
		for to := (from + 1) / 2; to <= from+5; to += 1 + from/60 {
			for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadLeastEffort; order++ {
				if to == from {
					continue
				}
				op := stitch.K2tog
				if to > from {
					op = stitch.M1L
				}
				row, written := shaping.EvenRound(from, to, op, order)
				items, ok := changeItems(from, to, order)
				got := row.Row.Items()
				switch {
				case ok != written:
					t.Fatalf("%d to %d, spread %d: exists %v, said %v", from, to, order, written, ok)
				case !ok:
					seen["none"]++
				case items == hardItems:
					seen["hard"]++
				case order == shaping.GapSpreadLeastEffort && from >= 12 && !isEasy(Round{StartStitches: from, EndStitches: to}):
					if seen["nearly easy"]++; got > items-unevenItems || got > fewItems {
						t.Fatalf("%d to %d: %q has %d items, %d said", from, to, row.Row.Text(), got, items)
					}
				case order == shaping.GapSpreadInterleaved && got <= items+1:
					seen["mixed"]++
				case got > items:
					t.Fatalf("%d to %d, spread %d: %q has %d items, %d said", from, to, order, row.Row.Text(), got, items)
				default:
					seen["easy"]++
				}
			}
		}
	}
	for _, kind := range []string{"none", "mixed", "hard", "nearly easy", "easy"} {
		if seen[kind] < knittest.Sweep(400, 60) {
			t.Errorf("%v: the sweep has shrunk", seen)
		}
	}
}

// A round of decreases has no fewer items, with which round it is, than its gap says: all from 2 to 160 stitches.
func TestTheLeastItemsOfAGap(t *testing.T) {
	for from := 2; from <= 160; from++ {
		for k := 1; k <= from/2; k++ {
			for order := shaping.GapSpreadUnspecified; order <= shaping.GapSpreadLeastEffort; order++ {
				items, ok := (&allowed{}).items(from, from-k, order)
				if least := (gap{from, k}).leastItems(order); ok && items < least {
					t.Fatalf("%d to %d, spread %d: %d items, and at least %d were said", from, from-k, order, items, least)
				}
			}
		}
	}
}
