package pattern

import (
	"slices"
	"strings"
)

// spot is a number in the text.
type spot struct {
	value int
	at    span   // of the number, or of the word that it is a part of
	head  string // what stands before the digits in that word, "k" of "k18"
	tail  string // what stands after them
	word  bool   // it is written out
	often bool   // it is "once" or "twice"
}

// spotsIn are the numbers of a stretch of the text, in order; those that belong to the
// name of a stitch, such as k2tog, are not among them.
func spotsIn(source string, at span) []spot {
	return spotsOf(scan(source[at.start:at.end]), source, at)
}

// spotsIn are the numbers of a stretch of the text that is corrected, looked for in the room of
// what is tried: for each number of a row its step is looked through.
func (c *corrector) spotsIn(at span) []spot {
	source := c.piece.source
	c.room.tokens = scanned(source[at.start:at.end], c.room.tokens, 0).tokens
	return spotsOf(c.room.tokens, source, at)
}

// spotsOf are the numbers among the tokens of a stretch of the text.
func spotsOf(tokens []token, source string, at span) []spot {
	most := 0
	for i := range tokens {
		if k := tokens[i].kind; k == tokenNumber || k == tokenWord || tokens[i].is("-") {
			most++
		}
	}
	spots := make([]spot, 0, most) // grown bit by bit, those of a long row would be five times as much
	for _, t := range tokens {
		s := spot{at: t.span}
		switch {
		case t.kind == tokenNumber:
			s.value = int(t.number)
		case t.is("-"):
			s.value = -1
		case t.is("once"):
			s.value, s.word, s.often = 1, true, true
		case t.is("twice"):
			s.value, s.word, s.often = 2, true, true
		case t.kind == tokenWord:
			if n, ok := t.written(); ok {
				s.value, s.word = n, true
				break
			}
			base, n, tail, ok := split(t.text)
			if !ok || tail == "tog" || tail == "togtbl" {
				continue
			}
			written := source[at.start+t.start : at.start+t.end]
			s.value, s.head = n, written[:min(len(base), len(written))]
			s.tail = strings.TrimLeft(written[len(s.head):], "0123456789")
		default:
			continue
		}
		s.at = shifted(t.span, at)
		spots = append(spots, s)
	}
	return spots
}

// shifted is a place within a stretch of the text as a place in the text. The stretch
// may have line breaks.
func shifted(in, at span) span {
	out := span{start: at.start + in.start, end: at.start + in.end, line: at.line + in.line - 1, column: in.column}
	if in.line == 1 {
		out.column = at.column + in.column - 1
	}
	return out
}

// run finds a list of numbers among spots, the first or the last time that it stands
// there. A dash is a size without a number, or only stands between two.
func run(spots []spot, numbers []int, last bool) []spot {
	if found := inSuccession(spots, numbers, last); found != nil || len(numbers) == 0 {
		return found
	}
	return inSuccession(slices.DeleteFunc(slices.Clone(spots), func(s spot) bool { return s.value < 0 }), numbers, last)
}

func inSuccession(spots []spot, numbers []int, last bool) []spot {
	n := len(numbers)
	if n == 0 {
		return nil
	}
	for k := range len(spots) - n + 1 {
		i := k
		if last {
			i = len(spots) - n - k
		}
		if slices.EqualFunc(spots[i:i+n], numbers, func(s spot, v int) bool { return s.value == v }) {
			return spots[i : i+n]
		}
	}
	return nil
}
