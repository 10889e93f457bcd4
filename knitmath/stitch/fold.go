package stitch

const (
	// maxPeriod is the longest group, in tokens, that fold looks for. A longer
	// one is neither read nor remembered at a glance, and the bound keeps the
	// work proportional to the number of tokens.
	maxPeriod = 24

	// maxShares is how many ways of sharing out one run fold follows. Rows with
	// a pattern in them need one or two; the bound is for rows without.
	maxShares = 8
)

// folder arranges tokens into groups. Its states are suffixes of the row: place
// (i, r) is what remains from token i on when r of its workings are left. The
// cost of a place is the length of the shortest text for it.
//
// At a place the row goes on either with the r workings as a plain run, or with
// a group, before which some of the r may stand plain. For a group whose period
// is q tokens, the tokens from i+1 on must repeat at distance q. Its first piece
// is s of token i, and there are two shapes:
//
//	closed: s, t[i+1], ..., t[i+q-1]       token i+q has exactly s workings
//	joined: s, t[i+1], ..., t[i+q-1], e    token i+q has s+e: end meets beginning
//
// The last piece of the last repeat may be only a part of its token; the rest of
// the token begins the next place. The number of repeats is the largest possible
// or somewhat less, down to where a following group of maxPeriod tokens could
// profit from what is left over: beyond that, two overlapping repeats share a
// common period (Fine and Wilf 1965) and are one.
type folder struct {
	tokens []token
	eager  bool
	apart  []int     // apart[i] counts the tokens before i that stand apart
	widths []int     // widths[i] sums the widths of the tokens before i
	same   [][]int32 // same[q][i]: how many tokens from i on equal those q further on
	places [][]place // places[i]: first all of token i, then the shares
}

// place is one state with the best way found to go on from it.
type place struct {
	left   int // workings of the token left
	cost   int
	plain  int // of them worked plain before the group, all if times is 0
	times  int
	period int
	end    int // the joined shape's last piece, 0 if closed
	next   int // token of the next place
	rest   int // workings of it left
}

// fold returns the steps of shortest text that work the tokens in order, with
// groups, each of at most period tokens, one deep. Among equals, an eager fold
// prefers a group that begins at once, so that what is left over stands at the
// end, as in "[k2, p2] 20 times, k2"; any other fold prefers runs.
func fold(tokens []token, period int, eager bool) []Step {
	f := newFolder(tokens, period)
	f.eager = eager
	for i := len(tokens) - 1; i >= 0; i-- {
		f.cost(i, tokens[i].count)
	}
	var steps []Step
	for i, r := 0, f.whole(0); i < len(tokens); {
		p := f.find(i, r)
		if p.plain > 0 {
			steps = append(steps, tokens[i].part(p.plain))
		}
		if p.times > 0 {
			steps = append(steps, f.group(i, *p))
		}
		i, r = p.next, p.rest
	}
	return steps
}

func newFolder(tokens []token, period int) *folder {
	n := len(tokens)
	f := &folder{
		tokens: tokens,
		apart:  make([]int, n+1),
		widths: make([]int, n+1),
		same:   make([][]int32, max(min(period, n-1), 0)+1),
		places: make([][]place, n),
	}
	for i, t := range tokens {
		f.widths[i+1] = f.widths[i] + t.width(t.count)
		f.apart[i+1] = f.apart[i]
		if t.apart {
			f.apart[i+1]++
		}
	}
	for q := 1; q < len(f.same); q++ {
		f.same[q] = make([]int32, n+1)
		for i := n - q - 1; i >= 0; i-- {
			if a, b := &tokens[i], &tokens[i+q]; a.key == b.key && a.count == b.count {
				f.same[q][i] = f.same[q][i+1] + 1
			}
		}
	}
	return f
}

// whole returns the workings of token i, 0 behind the last.
func (f *folder) whole(i int) int {
	if i == len(f.tokens) {
		return 0
	}
	return f.tokens[i].count
}

// find returns the place (i, r), nil if it has not been looked at.
func (f *folder) find(i, r int) *place {
	for k := range f.places[i] {
		if f.places[i][k].left == r {
			return &f.places[i][k]
		}
	}
	return nil
}

// cost returns the cost of the place (i, r). All of the tokens after i must have
// been looked at as a whole.
func (f *folder) cost(i, r int) int {
	if i == len(f.tokens) {
		return 0
	}
	if p := f.find(i, r); p != nil {
		return p.cost
	}
	best := place{left: r, plain: r, next: i + 1, rest: f.whole(i + 1)}
	best.cost = f.tokens[i].width(r) + f.cost(i+1, best.rest)
	share := r < f.whole(i)
	if !share || len(f.places[i]) < maxShares {
		for q := 2; q < len(f.same) && i+q < len(f.tokens); q++ {
			if f.widths[i+q]-f.widths[i+1] > best.cost {
				break // the group alone would be longer
			}
			if f.tokens[i+q].key == f.tokens[i].key {
				f.try(i, r, q, &best)
			}
		}
	}
	f.places[i] = append(f.places[i], best)
	return best.cost
}

// try improves best by groups of period q that begin at the place (i, r).
func (f *folder) try(i, r, q int, best *place) {
	n, run := int(f.same[q][i+1]), f.tokens[i+q].count

	// Closed: the first piece is as large as the token that begins the second
	// repeat. The last token of all need only be large enough.
	if run <= r && f.apart[i] == f.apart[i+q] {
		piece := f.whole(i + q - 1)
		inner := f.tokens[i].width(run) + f.widths[i+q] - f.widths[i+1]
		for t, low := repeats((n+2)/q+1, q); t >= low; t-- {
			last := i + t*q - 1
			if last >= len(f.tokens) || f.tokens[last].key != f.tokens[i+q-1].key || f.whole(last) < piece {
				continue
			}
			f.offer(i, place{left: r, plain: r - run, times: t, period: q}, inner, last, piece, best)
		}
	}

	// Joined: the first piece is all that is left here, or such that the last
	// piece uses up the last token, or one of both is a single working, which
	// spares brackets.
	if f.apart[i] != f.apart[i+q+1] {
		return
	}
	between := f.widths[i+q] - f.widths[i+1]
	for t, low := repeats((n+1)/q+1, q); t >= low; t-- {
		last := i + t*q
		if last >= len(f.tokens) || f.tokens[last].key != f.tokens[i].key {
			continue
		}
		for _, s := range [4]int{r, run - f.whole(last), 1, run - 1} {
			end := run - s
			if s < 1 || s > r || end < 1 || end > f.whole(last) {
				continue
			}
			inner := f.tokens[i].width(s) + between + f.tokens[i].width(end)
			f.offer(i, place{left: r, plain: r - s, times: t, period: q, end: end}, inner, last, end, best)
		}
	}
}

// repeats returns the range of repeats worth trying, given the most there are.
func repeats(most, q int) (high, low int) {
	return most, max(2, most-maxPeriod/q-3)
}

// offer completes the candidate p at token i, whose pieces are inner wide and
// whose last piece takes piece workings of token last, and keeps it if it is
// better than best.
func (f *folder) offer(i int, p place, inner, last, piece int, best *place) {
	p.next, p.rest = last, f.whole(last)-piece
	if p.rest == 0 {
		p.next, p.rest = last+1, f.whole(last+1)
	}
	p.cost = inner + timesWidth(p.times) + 2
	if p.plain > 0 {
		p.cost += f.tokens[i].width(p.plain)
	}
	if p.cost > best.cost {
		return
	}
	p.cost += f.cost(p.next, p.rest)
	if p.cost < best.cost || f.eager && p.cost == best.cost && p.plain == 0 && best.plain > 0 {
		*best = p
	}
}

// group returns the step of the group that place p of token i begins with.
func (f *folder) group(i int, p place) Step {
	first := p.left - p.plain
	g := make([]Step, 0, p.period+1)
	g = append(g, f.tokens[i].part(first))
	g = append(g, stepsOf(f.tokens[i+1:i+p.period])...)
	if p.end > 0 {
		g = append(g, f.tokens[i].part(p.end))
	}
	return Repeat(p.times, g...)
}
