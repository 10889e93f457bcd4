package shortrow

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shared is the circle from so many wedges: the rows of both edges, shared out.
func (q circle) shared(wedges int) circle {
	q.wedges = wedges
	q.full = max(wedges, int(measure.RoundHalfUp(min(q.wantInner/2, 1e9))))
	q.pairs = q.outerPairs() - q.full
	return q
}

// outerPairs is how many pairs of rows the outer edge has.
func (q circle) outerPairs() int { return int(measure.RoundHalfUp(min(q.wantOuter/2, 1e9))) }

// fits reports whether the wedges can be knit.
func (q circle) fits() bool { return q.misfit() == "" && !q.overloaded() }

// overloaded reports whether the yarn overs of a wedge are too many for a needle.
func (q circle) overloaded() bool {
	return q.method == TurnMethodYarnOver && q.width+(q.pairs+q.wedges-1)/q.wedges > stitch.MaxStitches
}

// misfit says why the rows do not go into the wedges, or nothing where they do. The
// turns of a wedge need a stitch each and one beyond the first. Its line is then no
// steeper than a pair of rows a stitch at the centre of a disc either, where it
// ends at most a pair below the full rows.
func (q circle) misfit() string {
	per, full := (q.pairs+q.wedges-1)/q.wedges, (q.full+q.wedges-1)/q.wedges
	most := wedge{width: q.width, method: q.method, tall: TallEndRight}.mostPairs()
	switch {
	case q.pairs < q.wedges:
		return "the outer edge has " + report.CountOf(2*q.outerPairs(), "rows") + " and the inner edge " +
			report.CountOf(2*q.full, "rows") + "; that leaves no pair of short rows for each of " + report.CountOf(q.wedges, "wedges")
	case per > most:
		return "each wedge would have " + report.CountOf(per, "turns") + " on " + report.CountOf(q.width, "stitches") +
			", at least one stitch apart"
	case 2*per > MaxWedgeRows || 2*full > MaxWedgeRows:
		return "each wedge would have more than " + strconv.Itoa(MaxWedgeRows) + " rows"
	}
	if rows := q.writtenRows(); rows > MaxCircleRows {
		return "its different wedges would have " + strconv.Itoa(rows) + " rows together; at most " + strconv.Itoa(MaxCircleRows) +
			" are written"
	}
	return ""
}

// A wedgeKind is what makes wedges of a circle alike: their pairs of short rows and
// of full rows.
type wedgeKind struct{ pairs, full int }

// kind is the kind of wedge i, from 0: the rows are spread as evenly as integers
// allow.
func (q circle) kind(i int) wedgeKind {
	return wedgeKind{spread.Share(i, q.wedges, q.pairs), spread.Share(i, q.wedges, q.full)}
}

// writtenRows is how many rows the different wedges have together: each kind is
// written once.
func (q circle) writtenRows() int {
	rows := 0
	var kinds []wedgeKind
	for i := range q.wedges {
		if k := q.kind(i); !slices.Contains(kinds, k) {
			kinds = append(kinds, k)
			rows += 2 * (k.pairs + k.full)
		}
	}
	return rows
}

// nearestCount is the number of wedges nearest to the wanted one that can be
// knit, the fewer of two, or 0 where none can.
func (q circle) nearestCount(want int) int {
	for off := range MaxWedges {
		for _, n := range []int{want - off, want + off} {
			if n >= 1 && n <= MaxWedges && q.shared(n).fits() {
				return n
			}
		}
	}
	return 0
}
