package solid

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
)

// An edge is where a flat part and a side of the meridian meet, after a round.
type edge struct {
	round     int
	flatAfter bool // the flat part comes after it, not before
}

// edges are those between flat parts and sides.
func (b *revolved) edges() []edge {
	var list []edge
	for i := 1; i < len(b.way)-1; i++ {
		round := int(measure.RoundHalfUp(b.way[i].along / b.high))
		known := slices.ContainsFunc(list, func(e edge) bool { return e.round == round })
		if b.way.levels(i) != b.way.levels(i+1) && round > 0 && round < len(b.counts) && !known {
			list = append(list, edge{round, b.way.levels(i + 1)})
		}
	}
	return list
}

// edgeRounds are the numbers of the rounds with which flat parts or sides end.
func (b *revolved) edgeRounds() []int {
	var list []int
	for _, e := range b.edges() {
		list = append(list, e.round)
	}
	return list
}

// hold lets the two rounds at an edge have one count, so that the ridge of a sharp edge lies on an even round: that of a tube, which
// the flat part then reaches with its last round or leaves with its first, else the nearest to what both want, and no round beside
// them is wider. A tube has an even round at its end by itself.
func (b *revolved) hold() {
	list := b.edges()
	for i, e := range list {
		first, last := 1, len(b.counts)-2 // the ends keep theirs
		if i > 0 {
			first = list[i-1].round
		}
		if i+1 < len(list) {
			last = list[i+1].round - 1
		}
		switch before, after := e.round-1, e.round; {
		case e.flatAfter && b.steady(before):
		case !e.flatAfter && b.steady(after):
			b.lead(before, first, b.counts[after])
		default:
			count := b.nearest((b.wanted[before] + b.wanted[after]) / 2)
			b.lead(before, first, count)
			b.lead(after, last, count)
		}
	}
}

// lead gives the round at an edge a count, and lets those that lie further and further away, up to the other end of the part, not
// turn back, nor go on by more than a step each, as many stitches as lie flat. A part with too few rounds for that is left as it is.
func (b *revolved) lead(round, end, count int) {
	away := 1
	if end < round {
		away = -1
	}
	if round < 1 || round > len(b.counts)-2 || end == round {
		return
	}
	step := b.wedges * max(measure.CeilQuotient(b.flat, float64(b.wedges)), 1)
	falls := b.wanted[round+away] < b.wanted[round]
	low, high := count, count
	led := slices.Clone(b.counts)
	for ; round != end+away; round += away {
		nearest := min(max(led[round], low), high)
		if nearest == led[round] && low < high {
			break
		}
		led[round] = max(nearest, b.wedges)
		if falls {
			low -= step
		} else {
			high += step
		}
	}
	if apart := measure.Abs(led[round] - led[round-away]); apart > max(step, measure.Abs(b.counts[round]-b.counts[round-away])) {
		return
	}
	b.counts = led
}

// held reports whether a round is one of the two at an edge, which keep their counts.
func held(edges []edge, i int) bool {
	return slices.ContainsFunc(edges, func(e edge) bool { return i == e.round-1 || i == e.round })
}

// sharp are the rounds that are purled for sharp edges: the round of the side that lies beside the edge, or the one of the flat
// part where that changes the count; none where both do.
func (b *revolved) sharp() []int {
	var list []int
	even := func(round int) bool {
		return round > 1 && round <= len(b.counts) && b.counts[round-1] == b.counts[round-2]
	}
	for _, e := range b.edges() {
		beside, other := e.round+1, e.round
		if e.flatAfter {
			beside, other = other, beside
		}
		switch {
		case even(beside):
			list = append(list, beside)
		case even(other):
			list = append(list, other)
		}
	}
	return list
}
