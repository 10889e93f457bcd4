package yoke

// A gap is how far a round's decreases lie apart: so many stitches for so many of them.
// As a yoke narrows its gaps shrink or stay, and the eye follows them up from round to
// round; where one is wider than the one below, the yoke lurches. Common practice.
type gap struct{ stitches, decreases int }

// What a gap that grows counts for, in items to remember: where it is a stitch or an eighth
// wider or more, and where it is half as wide again or more. Own choice: less than a round without any
// easy form, and more than all that an easier one saves.
const (
	grownItems    = 10
	lurchingItems = 40
)

// grownFrom reports whether a gap is a stitch wider than the one below it, or an eighth, or
// more: a few stitches left over at the end of a round do not make it so.
func (g gap) grownFrom(below gap) bool {
	here, there := g.stitches*below.decreases, below.stitches*g.decreases
	return here-there >= g.decreases*below.decreases || 8*here >= 9*there
}

// lurchesFrom reports whether it is half as wide again, or more.
func (g gap) lurchesFrom(below gap) bool {
	return 2*g.stitches*below.decreases >= 3*below.stitches*g.decreases
}

// gapGrows reports whether the gap of any place is wider than that of the place below.
func gapGrows(join int, places []place, counts []int) bool {
	last, from := gap{}, join
	for i, to := range counts {
		here := places[i].change.gap(from, to)
		if last.decreases > 0 && here.decreases > 0 && here.grownFrom(last) {
			return true
		}
		last, from = here, to
	}
	return false
}

// follower is a count that may come above another: which of its place's, and the best sum that
// goes on from there.
type follower struct {
	at  int
	sum sum
}

// noFollower goes nowhere.
var noFollower = follower{sum: never}

// better is the better of two; of equally good ones that with more stitches.
func better(a, b follower) follower {
	if b.sum.less(a.sum) || b.sum == a.sum && b.at < a.at {
		return b
	}
	return a
}

// charged is a follower for which so many items more count.
func (f follower) charged(items int) follower {
	if f.sum != never {
		f.sum.items += items
	}
	return f
}

// followers are those of one count: of those whose rounds have no gap the best, and by the
// gaps of the others, the narrowest first, the best of those up to each. It also keeps how
// many of the gaps are not too wide for the one below.
type followers struct {
	free        follower
	gaps        []gap
	upTo        []follower
	even, lurch int // the first that is wider, and the first that is much wider
}

// reset empties it, to be used again.
func (f *followers) reset() { *f = followers{free: noFollower, gaps: f.gaps[:0], upTo: f.upTo[:0]} }

// add adds one whose gap is no narrower than those before it.
func (f *followers) add(g gap, next follower) {
	if g.decreases == 0 {
		f.free = better(f.free, next)
		return
	}
	f.gaps = append(f.gaps, g)
	f.upTo = append(f.upTo, better(f.narrower(), next))
}

// first is the best of the first so many.
func (f *followers) first(n int) follower {
	if n == 0 {
		return noFollower
	}
	return f.upTo[n-1]
}

// narrower is the best of those that were added.
func (f *followers) narrower() follower { return f.first(len(f.upTo)) }

// any is the best to go on with where the round below has no gap.
func (f *followers) any() follower { return better(f.free, f.narrower()) }

// after is the best to go on with after a gap that is no narrower than those asked before.
func (f *followers) after(below gap) follower {
	for f.even < len(f.gaps) && !f.gaps[f.even].grownFrom(below) {
		f.even++
	}
	for f.lurch < len(f.gaps) && !f.gaps[f.lurch].lurchesFrom(below) {
		f.lurch++
	}
	if f.even == len(f.gaps) {
		return f.any()
	}
	best := better(f.free, f.narrower().charged(lurchingItems))
	return better(better(best, f.first(f.lurch).charged(grownItems)), f.first(f.even))
}
