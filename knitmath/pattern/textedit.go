package pattern

import (
	"slices"
	"sort"
	"strings"
)

// spellings are words of the vocabulary that differ by one letter from one that is not
// understood.
func (c *corrector) spellings(f *Finding, i int) []candidate {
	if f.at.end <= f.at.start || c.piece.Lines[i].info.kind != lineUnread {
		return nil
	}
	tokens := scan(c.piece.source[f.at.start:f.at.end])
	if len(tokens) == 0 || tokens[0].kind != tokenWord || len(tokens[0].text) < 3 {
		return nil
	}
	at := shifted(tokens[0].span, f.at)
	said := c.piece.source[at.start:at.end]
	var out []candidate
	for _, known := range nearWords(tokens[0].text) {
		if said[0] >= 'A' && said[0] <= 'Z' {
			known = strings.ToUpper(known[:1]) + known[1:]
		}
		out = append(out, candidate{at: at, put: known, says: known + " instead of " + joined(said), row: i})
	}
	return out
}

// nearWords are words of the vocabulary that differ by one letter from another, and the words that
// begin a row or repeat it, those with the same letters first.
func nearWords(word string) []string {
	var near []string
	for known, m := range words {
		if m.ask == "" && len(known) > 1 && oneLetterOff(word, known) {
			near = append(near, known)
		}
	}
	for _, known := range [...]string{"row", "rnd", "round", "rep", "repeat", "next"} {
		if oneLetterOff(word, known) {
			near = append(near, known)
		}
	}
	sort.Slice(near, func(i, j int) bool {
		a, b := near[i], near[j]
		if swapped := sameLetters(b, word) - sameLetters(a, word); swapped != 0 {
			return swapped < 0
		}
		return a < b
	})
	return near
}

// sameLetters is 1 where two words have the same letters in another order.
func sameLetters(a, b string) int {
	x, y := []byte(a), []byte(b)
	inOrder(x)
	inOrder(y)
	if slices.Equal(x, y) {
		return 1
	}
	return 0
}

// swapped reports whether a word is another with two letters the wrong way round.
func swapped(a, b string) bool { return a != b && sameLetters(a, b) == 1 && oneLetterOff(a, b) }

// oneLetterOff reports whether two words differ by one letter: another one, one more, one
// less, or two that stand the wrong way round.
func oneLetterOff(a, b string) bool {
	if len(a) > len(b) {
		a, b = b, a
	}
	if len(b)-len(a) > 1 {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	if len(a) < len(b) {
		return a[i:] == b[i+1:]
	}
	if i == len(a) {
		return false
	}
	return a[i+1:] == b[i+1:] || i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
}

// marksPutIn are a bracket or a star put in where one is wanting.
func (c *corrector) marksPutIn(f *Finding, i int) []candidate {
	l := &c.piece.Lines[i]
	source, region := c.piece.source, l.info.at
	switch f.Reason {
	case ReasonOpenBracket:
		closer := closers[source[f.at.start:f.at.end]]
		if closer == "" {
			return nil
		}
		return c.putIn(after(source, f.at, region), closer, i, false, closesBefore)
	case ReasonStray:
		region.end = f.at.start
		opener := map[string]string{")": "(", "]": "[", "}": "{"}[source[f.at.start:f.at.end]]
		out := c.putIn(region, opener, i, true, opensAt)
		slices.Reverse(out)
		return out
	case ReasonNoStar:
		region.end = f.at.start
		return c.putIn(region, "*", i, false, opensAt)
	}
	return nil
}

// putIn puts a mark at the places of a region that fit.
func (c *corrector) putIn(region span, mark string, row int, atEnd bool, fits func(before, t *token) (here, isBefore bool)) []candidate {
	if mark == "" || region.end <= region.start {
		return nil
	}
	source, says := c.piece.source, mark+" put in"
	var out []candidate
	before := &token{kind: tokenMark, text: ":"}
	c.room.tokens = scanned(source[region.start:region.end], c.room.tokens, 0).tokens
	for i := range c.room.tokens {
		t := &c.room.tokens[i]
		here, behind := fits(before, t)
		if here {
			place := shifted(t.span, region)
			if behind {
				b := shifted(before.span, region)
				place = after(source, b, span{end: b.end})
			}
			place.end = place.start
			if len(out) == maxTried { // no more are tried: of openers those nearest to the end
				if !atEnd {
					return out
				}
				out = slices.Delete(out, 0, 1)
			}
			out = append(out, candidate{at: place, put: mark, says: says, row: row})
		}
		before = t
	}
	return out
}

// closesBefore reports whether a bracket may close before a token: before how often, or
// how far, something is repeated.
func closesBefore(before, t *token) (here, behind bool) {
	return before.kind != tokenMark && (t.kind == tokenNumber && before.end < t.start ||
		t.among("once twice to x across around") ||
		t.kind == tokenEnd), true
}

// opensAt reports whether a bracket may open at a token: where a stitch begins.
func opensAt(before, t *token) (here, behind bool) {
	return t.kind == tokenWord && before.is(",", ";", ":"), false
}
