package edge

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// An easyRow is a word of runs that differ by at most one, and one run more, of any
// length or none, after the last of what parts them.
type easyRow struct {
	size int // of the shorter runs
	word [2]stretch
	end  int
	// How much there is to remember, and how far the row strays.
	items, strays int
}

// easyBlocks are the blocks that are worked over and over: repeats of one to four runs.
// Two of each kind stray further than one of each, twice as often, and are not easier.
var easyBlocks = [...]stretch{
	{long: 1}, {short: 1}, {long: 1, short: 1}, {long: 2, short: 1}, {long: 1, short: 2}, {long: 3, short: 1}, {long: 1, short: 3},
}

// leastEffort writes the row with the fewest items of those that stray from an even
// share by no more than [MaxPickUpDeparture] at any place, and of these the nearest:
//
//	[3, skip] 40 times                 as many runs as rows skipped
//	[3, skip] 40 times, 4              and what is over at the end, a row more than a run at most
//	[3, skip, 2, skip] 18 times        a repeat of two to four runs, the longer first
//	[3, skip] 9 times, [2, skip] 5     a repeat and more runs of one length, or
//	                                   either of these with something over
//
// or the one that is mixed evenly, where that has fewer items, or no more and is no
// further off. Where more rows are skipped than picked up, or more take two than one,
// all of it reads the other way round, so that the row begins with a stitch: it strays
// as far. A single exception lies in the middle.
//
// Source: own derivation.
func leastEffort(rows, n int) stitch.Row {
	stands, _ := pickUpRow(rows, n, false)
	common, rare, k := stitch.PickUp, stitch.SkipRow, rows-n
	if n > rows {
		rare, k = stitch.PickUpTwo, n-rows
	}
	turned := k > rows-k
	if turned {
		common, rare, k = rare, common, rows-k
	}
	if k < 2 {
		return stands
	}
	e := alongEdge{rows: rows, n: n, bound: MaxPickUpDeparture * rows}
	easy, ok := e.easiest(common, rows-k, rare, k)
	if !ok {
		return stands
	}
	e.write(easy.word[:], common, easy.size, rare)
	e.add(common, easy.end)
	if turned {
		turn(e.steps)
	}
	row := stitch.RowOf(e.steps...)
	worth := max(easy.items, row.Items())
	if worth > stands.Items() || worth == stands.Items() && edgeDeparture(row, rows, n) >= edgeDeparture(stands, rows, n) {
		return stands
	}
	return row
}

// skippedLast is what a skipped row at the very end is worth in items: it leaves a hole in the
// corner. A single repeat may end so, as the trade writes it: [3, skip] 40 times. Own choice.
const skippedLast = 2

// easiest looks through all easy rows of n times the common operation, parted by k of
// the rare one. k times the shorter run is at most n, so that there are no more rows to
// compare than some for each row of the edge.
func (e *alongEdge) easiest(common stitch.Op, n int, rare stitch.Op, k int) (best easyRow, found bool) {
	for size := 1; size*k <= n; size++ {
		u := units{
			long:  unit{e.strays(common, size+1), e.strays(rare, 1)},
			short: unit{e.strays(common, size), e.strays(rare, 1)},
		}
		for _, block := range easyBlocks {
			runs := block.long + block.short
			for block.times = 1; block.times*runs <= k; block.times++ {
				over := k - block.times*runs
				for _, rest := range [2]stretch{{long: over, times: 1}, {short: over, times: 1}} {
					row := easyRow{size: size, word: [2]stretch{block.plain(), rest}}
					row.end = n - k*size - block.times*block.long - rest.long
					if e.weigh(&row, u, common, rare, over > 0 || runs > 1) && (!found || row.easier(best)) {
						best, found = row, true
					}
				}
			}
		}
	}
	return best, found
}

// weigh counts the items of a row and how far it strays, and reports whether it can be
// worked within the bound. parted says that it has more than one run in all.
func (e *alongEdge) weigh(row *easyRow, u units, common, rare stitch.Op, parted bool) bool {
	// The last run goes straight to the end, from as far off as it takes.
	if row.end < 0 || measure.Abs(e.strays(common, row.end)) > e.bound {
		return false
	}
	row.items, row.strays = items(row.word[:])+min(row.end, 1), u.strays(row.word[:])
	if common == stitch.PickUp && rare == stitch.SkipRow {
		if row.end > row.shortest()+1 {
			return false
		}
		if row.end == 0 && parted {
			row.items += skippedLast
		}
	}
	return row.strays <= e.bound
}

// shortest is the shortest of its runs: what is over at the end is hardly longer where rows
// are skipped, for the last skip would lie too far from the corner.
func (r easyRow) shortest() int {
	for _, s := range r.word {
		if s.short > 0 && s.times > 0 {
			return r.size
		}
	}
	return r.size + 1
}

func (r easyRow) easier(than easyRow) bool {
	return r.items < than.items || r.items == than.items && r.strays < than.strays
}

// turn reads steps the other way round.
func turn(steps []stitch.Step) {
	slices.Reverse(steps)
	for _, s := range steps {
		turn(s.Group)
	}
}
