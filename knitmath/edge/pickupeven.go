package edge

import "example.com/knitmath/knitmath/measure"

// A unit is a run of the common operation and the rare one after it, by how far each
// takes the row from an even share.
type unit struct{ run, rare int }

func (u unit) all() int { return u.run + u.rare }

// units are the two that part a row: their runs differ by one. from is how far the row
// has strayed before them.
type units struct {
	long, short unit
	from        int
}

// A stretch is some units of each kind, one kind after the other, and all of it so many
// times.
type stretch struct {
	long, short, times int
	shortFirst         bool
}

// plain is a stretch of one kind alone as one row of them.
func (s stretch) plain() stretch {
	if s.long == 0 || s.short == 0 {
		s.long, s.short, s.times = s.times*s.long, s.times*s.short, 1
	}
	return s
}

// asked is the word of so many units in the order that was asked for: grouped, or mixed
// by a step of Euclid's algorithm.
func (u units) asked(long, short int, grouped bool) []stretch {
	if grouped || long == 0 || short == 0 {
		return []stretch{{long: long, short: short, times: 1}}
	}
	if long < short {
		each, more := short/long, short%long
		return []stretch{{1, each + 1, more, true}, {1, each, long - more, true}}
	}
	each, more := long/short, long%short
	return []stretch{{each + 1, 1, more, false}, {each, 1, short - more, false}}
}

// strays is how far a word strays from an even share where it does so most. Along
// units in succession it goes straight, so that the first and the last of each kind
// tell, in the first and in the last of the times.
func (u units) strays(word []stretch) int {
	worst, at := measure.Abs(u.from), u.from
	some := func(from int, x unit, n int) int {
		if n > 0 {
			last := from + (n-1)*x.all()
			worst = max(worst, measure.Abs(from+x.run), measure.Abs(from+x.all()), measure.Abs(last+x.run), measure.Abs(last+x.all()))
		}
		return from + n*x.all()
	}
	for _, s := range word {
		each := s.long*u.long.all() + s.short*u.short.all()
		if s.times == 0 {
			continue
		}
		for _, from := range [2]int{at, at + (s.times-1)*each} {
			if s.shortFirst {
				some(some(from, u.short, s.short), u.long, s.long)
			} else {
				some(some(from, u.long, s.long), u.short, s.short)
			}
		}
		at += s.times * each
	}
	return worst
}

// items is how much there is to remember of a word: two numbers of each unit, how often
// it is worked in succession, and how often all of it.
func items(word []stretch) int {
	n := 0
	for _, s := range word {
		if s.times == 0 {
			continue
		}
		for _, of := range [2]int{s.long, s.short} {
			switch {
			case of > 1:
				n += 3
			case of == 1:
				n += 2
			}
		}
		if s.times > 1 {
			n++
		}
	}
	return n
}

// What evenly tries: so many blocks beyond the first number that can do, and words of
// so many rounds.
const (
	blocksTried = 300
	roundsTried = 16
)

// evenly is the word with the fewest items that strays no farther than it may; of
// equal ones the one that strays least. Where none that is tried does, it is the one
// that strays least.
//
// The units are shared out over blocks, a number of each kind to a block or one more,
// so that there are at most three kinds of block, in any order. Where they stray too
// far so, the kinds take turns, in two rounds or more. Own derivation.
func (u units) evenly(long, short, bound int) []stretch {
	var best []stretch
	bestItems, bestStrays := 0, 0
	try := func(word []stretch) {
		strays, n := u.strays(word), items(word)
		within := strays <= bound
		switch {
		case best == nil, bestStrays > bound && strays < bestStrays:
		case within && bestStrays <= bound && (n < bestItems || n == bestItems && strays < bestStrays):
		default:
			return
		}
		best, bestItems, bestStrays = append(best[:0], word...), n, strays
	}
	// Units of one kind in a block stray as far as they do together.
	first := 1 + max(measure.Abs(long*u.long.all()), measure.Abs(short*u.short.all()))/(2*bound+1)
	for rounds := 1; rounds <= roundsTried && (best == nil || bestStrays > bound); rounds++ {
		for blocks := first; blocks <= min(max(long, short), first+blocksTried); blocks++ {
			blockWords(long, short, blocks, rounds, try)
		}
	}
	return best
}

// blockWords shows every word of so many blocks in so many rounds. The blocks with one
// unit more of one kind and those with one more of the other are the same blocks as far
// as can be, or none are.
func blockWords(long, short, blocks, rounds int, show func([]stretch)) {
	moreLong, moreShort := long%blocks, short%blocks
	none := stretch{long / blocks, short / blocks, 0, false}
	oneLong, oneShort, oneOfEach := none, none, none
	oneLong.long, oneShort.short = none.long+1, none.short+1
	oneOfEach.long, oneOfEach.short = none.long+1, none.short+1
	oneOfEach.times = min(moreLong, moreShort)
	oneLong.times, oneShort.times = moreLong-oneOfEach.times, moreShort-oneOfEach.times
	none.times = blocks - max(moreLong, moreShort)
	rest := oneLong
	if moreShort > moreLong {
		rest = oneShort
	}
	inTurns([3]stretch{oneOfEach, none, rest}, rounds, show)
	if oneOfEach.times > 0 && moreLong+moreShort <= blocks {
		oneLong.times, oneShort.times, none.times = moreLong, moreShort, blocks-moreLong-moreShort
		inTurns([3]stretch{oneLong, none, oneShort}, rounds, show)
	}
}

// inTurns shows the words in which kinds of blocks take turns, in every order.
func inTurns(kinds [3]stretch, rounds int, show func([]stretch)) {
	word := make([]stretch, 0, 3*rounds)
	for _, order := range [6][3]int{{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}} {
		for _, shortFirst := range [2]bool{false, true} {
			word = word[:0]
			for round := range rounds {
				for _, k := range order {
					s := kinds[k]
					s.times, s.shortFirst = (round+1)*s.times/rounds-round*s.times/rounds, shortFirst
					if s.times > 0 {
						word = append(word, s.plain())
					}
				}
			}
			show(word)
		}
	}
}
