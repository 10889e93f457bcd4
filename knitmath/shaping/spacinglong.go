package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// mostInLong is how many gaps a longer repeat may have: brackets within it tell most of them, as
// in [[k1, k2tog, k2tog] twice, k1, k2tog] 20 times. Own choice.
const mostInLong = 8

// longRepeats tries repeats of more gaps than mostInBlock, of that length and one longer, as even as
// they can be, read from either end.
func (f *layoutFinder) longRepeats(n, gap int) {
	if !f.long || n > mostWidened {
		return
	}
	for size := mostInBlock + 1; size <= min(mostInLong, n); size++ {
		for longer := 1; longer < size; longer++ {
			for _, turned := range [...]bool{false, true} {
				f.longRepeat(n, gap, size, longer, turned)
			}
		}
	}
}

// longRepeat tries a repeat of so many gaps, some of them longer, with what is over.
func (f *layoutFinder) longRepeat(n, gap, size, longer int, turned bool) {
	gaps := f.gaps[:size]
	for i := range gaps {
		at := i
		if turned {
			at = size - 1 - i
		}
		gaps[at] = spread.GapRun{Stitches: gap + spread.Share(i, size, longer), Times: 1}
	}
	text := new(longText)
	for times := n / size; times > 1 && times >= n/size-1; times-- {
		f.over(block{gaps, times, text}, times*(size*gap+longer), n-times*size, gap)
	}
}

// longText is how a longer repeat is written, by where its gaps are told: the brackets within it are
// looked for once, however many rows it is tried in.
type longText [2][]stitch.Step

// leastInLong is the fewest items of a longer repeat: a bracket of a change and stitches, how often,
// and another of each.
const leastInLong = 5

// bracketed writes the runs of a repeat with brackets of their own, none of them within another: the
// repeat is a bracket too.
func bracketed(runs []stitch.Step) []stitch.Step {
	var list []stitch.Run
	for _, s := range runs {
		list = stitch.AppendRun(list, s.Op, s.Count)
	}
	steps := stitch.Compress(list).Steps
	for _, s := range steps {
		if slices.ContainsFunc(s.Group, func(inner stitch.Step) bool { return len(inner.Group) > 0 }) {
			return runs
		}
	}
	return steps
}

const (
	// mostPrinted is how many items a row may have that anybody would print: two brackets within brackets,
	// and something over. Own choice.
	mostPrinted = 12
	// widerGapTolerance is how many stitches a spacing may depart beyond the most even one where it
	// has more, if it is not said: a centimetre or two of a whole round. Own choice.
	widerGapTolerance = 3
	// mostWidened is up to how many changes longer repeats are looked for, and a row again: no round of a
	// garment has more.
	mostWidened = 300
)

// widened is a row that lies further from equal gaps and can be printed, if there is one.
func (s spacing) widened(least int, out EvenSpacing) EvenSpacing {
	l, ok := s.easiest(least + int(widerGapTolerance*float64(2*s.k)))
	if !ok {
		return out
	}
	if wider := s.laid(l); wider.Effort <= mostPrinted {
		return wider
	}
	return out
}

// worthFlat is how many items a row may have more so that no bracket lies within another. Own choice.
const worthFlat = 1
