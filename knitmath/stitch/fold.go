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
	period int // the longest group looked for
	eager  bool
	apart  []int   // apart[i] counts the tokens before i that stand apart
	widths []int   // widths[i] sums the widths of the tokens before i
	stride int     // one more than the longest period of same
	same   []int16 // same[i*stride+q]: how many tokens from i on equal those q further on
	places []place // in the order in which they were looked at
	at     []found // the places of each token
	pieces []token // what nest makes of the groups of one level
}

// found is the place of a token that was looked at last, and how many were.
type found struct {
	last int32 // the index of a place, plus 1
	n    int32
}

// place is one state with the best way found to go on from it. There are several for
// every token, hence the small numbers: no token has more than MaxOperations workings.
type place struct {
	left   int32 // workings of the token left
	plain  int32 // of them worked plain before the group, all if times is 0
	end    int32 // the joined shape's last piece, 0 if closed
	rest   int32 // workings left of the token of the next place
	next   int32
	cost   int32
	times  int32
	period int32
	before int32 // the place of this token looked at before, plus 1
}

// newFolder returns a folder with room for so many tokens, at most MaxOperations,
// at a time.
func newFolder(n int) *folder {
	return &folder{
		apart:  make([]int, n+1),
		widths: make([]int, n+1),
		same:   make([]int16, (n+1)*(max(min(maxPeriod, n-1), 0)+1)),
		places: make([]place, 0, n+n/2),
		at:     make([]found, n),
	}
}

// load takes tokens to fold, with groups of at most maxPeriod tokens, and makes room
// for them where there is too little.
func (f *folder) load(tokens []token) {
	n := len(tokens)
	if n > len(f.at) {
		pieces := f.pieces
		*f = *newFolder(n)
		f.pieces = pieces
	}
	f.tokens = tokens
	f.stride = max(min(maxPeriod, n-1), 0) + 1
	f.apart[0], f.widths[0] = 0, 0
	for i := range tokens {
		t := &tokens[i]
		f.widths[i+1] = f.widths[i] + t.width(t.count)
		f.apart[i+1] = f.apart[i]
		if t.apart {
			f.apart[i+1]++
		}
	}
	clear(f.same[n*f.stride : (n+1)*f.stride])
	for i := n - 1; i >= 0; i-- {
		here, next := f.same[i*f.stride:(i+1)*f.stride], f.same[(i+1)*f.stride:]
		for q := 1; q < f.stride; q++ {
			here[q] = 0
			if i+q < n && tokens[i].key == tokens[i+q].key && tokens[i].count == tokens[i+q].count {
				here[q] = next[q] + 1
			}
		}
	}
}

// fold returns the steps of shortest text that work the tokens in order, with
// groups, each of at most period tokens, one deep. Among equals, an eager fold
// prefers a group that begins at once, so that what is left over stands at the
// end, as in "[k2, p2] 20 times, k2"; any other fold prefers runs.
func (f *folder) fold(period int, eager bool) []Step {
	f.period, f.eager = min(period, f.stride-1), eager
	f.places = f.places[:0]
	clear(f.at[:len(f.tokens)])
	for i := len(f.tokens) - 1; i >= 0; i-- {
		f.cost(i, f.tokens[i].count)
	}
	steps := make([]Step, 0, f.stepCount())
	for i, r := 0, f.whole(0); i < len(f.tokens); {
		p := f.find(i, r)
		if p.plain > 0 {
			steps = append(steps, f.tokens[i].part(int(p.plain)))
		}
		if p.times > 0 {
			steps = append(steps, f.group(i, p))
		}
		i, r = int(p.next), int(p.rest)
	}
	return steps
}

// stepCount is how many steps the best way has.
func (f *folder) stepCount() int {
	n := 0
	for i, r := 0, f.whole(0); i < len(f.tokens); {
		p := f.find(i, r)
		if p.plain > 0 {
			n++
		}
		if p.times > 0 {
			n++
		}
		i, r = int(p.next), int(p.rest)
	}
	return n
}

// whole returns the workings of token i, 0 behind the last.
func (f *folder) whole(i int) int {
	if i == len(f.tokens) {
		return 0
	}
	return f.tokens[i].count
}

// find returns the place (i, r), nil if it has not been looked at. It stays where
// it is only until the next one is looked at.
func (f *folder) find(i, r int) *place {
	for k := f.at[i].last; k > 0; k = f.places[k-1].before {
		if f.places[k-1].left == int32(r) {
			return &f.places[k-1]
		}
	}
	return nil
}

// cost returns the cost of the place (i, r). All of the tokens after i must have
// been looked at as a whole.
func (f *folder) cost(i, r int) int32 {
	if i == len(f.tokens) {
		return 0
	}
	if p := f.find(i, r); p != nil {
		return p.cost
	}
	next := f.whole(i + 1)
	best := place{left: int32(r), plain: int32(r), next: int32(i + 1), rest: int32(next)}
	best.cost = int32(f.tokens[i].width(r)) + f.cost(i+1, next)
	share := r < f.whole(i)
	if !share || f.at[i].n < maxShares {
		same := f.same[(i+1)*f.stride:]
		base, reach := 1, 0 // the period that goes on longest, and how far
		for q := 2; q <= f.period && i+q < len(f.tokens); q++ {
			if f.widths[i+q]-f.widths[i+1] > int(best.cost) {
				break // the group alone would be longer
			}
			// What goes on for less than a period is no repeat, and one that
			// repeats within itself is longer than that written so.
			n := int(same[q])
			if n+2 < q || f.tokens[i+q].key != f.tokens[i].key || base > 1 && q%base == 0 && n+q <= reach {
				continue
			}
			if n+q > reach {
				base, reach = q, n+q
			}
			f.closed(i, r, q, n, &best)
			f.joined(i, r, q, n, &best)
		}
	}
	best.before = f.at[i].last
	if len(f.places) == cap(f.places) { // doubled: what is outgrown is as much again, and no more
		f.places = append(make([]place, 0, 2*cap(f.places)+4), f.places...)
	}
	f.places = append(f.places, best)
	f.at[i] = found{int32(len(f.places)), f.at[i].n + 1}
	return best.cost
}
