package pattern

import (
	"slices"
	"strconv"
)

// wholeOf is which stitches a number of those that are put aside is said to be all of.
type wholeOf uint8

const (
	wholeNone  wholeOf = iota
	wholeAll           // "all 18 sts"
	wholeRest          // "rem 18 sts"
	wholeThese         // "these 18 sts"
	wholeOther         // "the other 18 sts", of those that were left out before
)

// wholeSaid reads which of them stands from token i to the next, unless a part is named
// beside it: "next 18 sts", "rem 18 thumb sts", "these 18 sts for the thumb".
func (p *parser) wholeSaid(i int) wholeOf {
	said := wholeNone
	for ; i < p.next; i++ {
		switch t := &p.tokens[i]; {
		case t.is("other"):
			said = wholeOther
		case t.among("next first last following foll centre center each held reserved freed resting " +
			"thumb sleeve back front body heel instep left right gusset neck top"):
			return wholeNone
		case t.is("all"):
			said = wholeAll
		case t.among("rem remaining rest remainder others unworked"):
			said = wholeRest
		case t.is("these", "those") && said == wholeNone:
			said = wholeThese
		}
	}
	if said != wholeOther && p.peek().among("for of from at each") {
		return wholeNone
	}
	return said
}

// wholeHeld compares stitches that are put aside with those that they are said to be all of,
// and is how many they are.
func (r *runner) wholeHeld(l *Line, n int64) int64 {
	total, whole := r.now.total(), l.info.whole
	if whole == wholeNone || l.info.counts == nil || n > max(total, r.aside) {
		return n
	}
	if whole == wholeOther && r.aside == 0 {
		return r.otherThanTurned(l, n)
	}
	there := r.wholeCounts(whole)
	if slices.Contains(there, n) || r.other != nil && r.other.total() == n && r.resolved(l, n) ||
		whole == wholeThese && r.justWorked(n) {
		return n
	}
	text := "there are " + stitches(int(there[0])) + ", not " + strconv.Itoa(int(n))
	if 2*n == total && r.now.behind == 0 { // of two pieces worked at once it may be one
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, text+": is it half of them?")
		return n
	}
	if r.wanted(ReasonClaim, l.info.at) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(n-there[0]), text)
	}
	return there[0]
}

// otherThanTurned compares "the other 24 sts", after a row that turned, with those that it left. Where the round begins
// in the middle of a heel, half of its stitches are worked before the turn.
func (r *runner) otherThanTurned(l *Line, n int64) int64 {
	worked, rest := r.now.left, r.now.behind
	heel := r.now.total() - n
	if r.turned == 0 || rest == 0 || n == rest || worked < heel && 2*worked <= heel+1 {
		return n
	}
	if r.wanted(ReasonClaim, l.info.at) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(n-rest), "the turn leaves "+stitches(int(rest))+", not "+strconv.Itoa(int(n)))
	}
	if 2*n == r.now.total() {
		return n // as for the other half
	}
	return rest
}

// justWorked reports whether so many stitches were brought last, or worked by the last row.
func (r *runner) justWorked(n int64) bool {
	return n == r.broughtLast || r.lastLine >= 0 && int64(r.out.Lines[r.lastLine].LeftStitches[r.size]) == n
}

// wholeCounts are how many all of them may be, what is likeliest first: those aside, those on
// the needle, and those that a turn has left.
func (r *runner) wholeCounts(whole wholeOf) []int64 {
	there := []int64{r.now.total()}
	switch {
	case whole == wholeOther, whole == wholeRest && r.aside > 0 && r.asideAt == r.rows: // left out just now
		there = []int64{r.aside}
	case r.aside > 0:
		there = []int64{r.aside, r.now.total()}
	}
	if r.now.behind > 0 && whole != wholeAll { // left by a turn
		there = append([]int64{r.now.behind}, there...)
		if whole == wholeThese {
			there = append(there, r.now.left)
		}
	}
	return there
}
