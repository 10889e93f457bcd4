package shortrow

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
)

// A flank is the stitches over which a straight wedge falls from its tall end to a
// low one, and the turns on them; where it falls to both sides the other mirrors it.
// Turns are counted from the tall end. The place of a turn is how many stitches of the
// flank lie before it, less one, so that places count from 0; a stitch in the very
// middle is the first of both flanks.
type flank struct {
	width int // of the wedge
	tall  TallEnd
	turns int
	most  int // places there are
	// double says that the stitch beyond a turn has a row more.
	double bool
}

// flank is that of a checked wedge. Whether its turns may come to its very edge is
// asked of the wedge.
func (w wedge) flank() flank {
	return flank{width: w.width, tall: w.tall, turns: w.highest() / 2, most: w.mostPairs(), double: w.method == TurnMethodGerman}
}

// line is where the profile wants the turns. A wedge that falls by n pairs over L
// stitches departs by
//
//	1 - n/L + 2n/L * |h - L*(2i+1)/2n|   rows
//
// at its turn i, from 0, if that lies h stitches from the tall point: on either side
// of the turn lies a stitch too high and one too low, whose middles are half a stitch
// away. Where the stitch beyond the turn is a double one, with a row more, its
// departures are least half a stitch nearer the tall end. So the distance from a line
// is all that tells one choice of turns from another. It is counted in parts of which
// a stitch has 4n and a row 2L.
func (f flank) line() schedule.Line {
	stitch, row := 4*f.turns, f.row()
	start := row - stitch
	if f.tall == TallEndCentre && f.width%2 == 1 {
		start += stitch / 2 // the tall point is the middle of the middle stitch
	}
	if f.double {
		start -= stitch / 2
	}
	return schedule.Line{Times: f.turns, Places: f.most, Start: start, Step: 2 * row, Unit: stitch}
}

// row is a row of departure, in parts of the line.
func (f flank) row() int {
	if f.tall == TallEndCentre || f.tall == TallEndSides {
		return f.width // two flanks share the stitches
	}
	return 2 * f.width
}

// pairs is, for every stitch of the wedge from the right edge, how many pairs of rows
// turns in these places give it.
func (f flank) pairs(places []int) []int {
	pairs := make([]int, f.width)
	half := (f.width + 1) / 2
	put := func(d, level int) { pairs[d] = level }
	stitches := half
	switch f.tall {
	case TallEndLeft:
		put = func(d, level int) { pairs[f.width-1-d] = level }
		stitches = f.width
	case TallEndCentre:
		put = func(d, level int) { pairs[half-1-d], pairs[f.width-half+d] = level, level }
	case TallEndSides:
		put = func(d, level int) { pairs[d], pairs[f.width-1-d] = level, level }
	default:
		stitches = f.width
	}
	next := 0
	for d := range stitches {
		for next < len(places) && places[next]+1 == d {
			next++
		}
		put(d, f.turns-next)
	}
	return pairs
}

// easy is turns of least effort that depart by no more than so many rows beyond what
// the nearest ones do. Where there are none it gives the nearest, and not ok.
func (f flank) easy(excessRows float64, shortest bool) (places []int, ok bool) {
	line := f.line()
	nearest := line.Nearest()
	allowed := line.Departure(nearest) + int(measure.ToMillionths(excessRows)*int64(f.row())/1e6)
	if places = f.easiest(shortest, allowed); places == nil {
		return nearest, false
	}
	return places, true
}

// wanting is by how many rows, up to a hundredth, those turns in two runs of steps or
// fewer that depart least depart further than the nearest ones.
func (f flank) wanting(shortest bool) float64 {
	line := f.line()
	off := line.Departure(f.straightest(shortest)) - line.Departure(line.Nearest())
	return float64(measure.CeilDiv(int64(100*off), int64(f.row()))) / 100
}
