package pattern

import (
	"strconv"
	"strings"
)

// ribIn is how many stitches the repeat of a rib takes that is named between two tokens, "k2, p2
// rib", "2x2 ribbing", "rib (k1 tbl, p1)"; 0 where none is, its stitches are not told, or it goes on
// as something was set.
func (p *parser) ribIn(from, to int) int {
	stitches, named := 0, false
	for i := from; i < to; i++ {
		t := &p.tokens[i]
		switch {
		case t.among("est established as patt pattern"):
			return 0
		case t.is("rib", "ribbing"):
			named = true
		case t.among("k p knit purl") && p.tokens[i+1].kind == tokenNumber:
			i++
			stitches += int(p.tokens[i].number)
		case t.is("k", "p"):
			stitches++
		case p.byNumber(i):
			stitches += int(t.number)
		case t.kind == tokenWord && ribWord(t.text):
			stitches += digitsIn(t.text)
		}
	}
	if !named || stitches < 2 || stitches > 100 {
		return 0
	}
	return stitches
}

// byNumber reports whether token i is one of the numbers of "2 x 2", "2 by 2", "2/2", "2x2".
func (p *parser) byNumber(i int) bool {
	then := &p.tokens[i+1]
	return p.tokens[i].kind == tokenNumber && (then.is("x", "by", "/") || p.tokens[i-1].is("x", "by", "/") ||
		strings.HasPrefix(then.text, "x") && ribWord(then.text))
}

// digitsIn is the sum of the numbers within a word, "k2/p2".
func digitsIn(word string) int {
	sum := 0
	for _, part := range strings.FieldsFunc(word, func(c rune) bool { return c < '0' || c > '9' }) {
		if n, err := strconv.Atoi(part); err == nil {
			sum += n
		}
	}
	return sum
}

// ribFits asks where a rib does not come out in the round: it would be broken where the round
// begins, and still could be knit. Back and forth a row may end within a repeat.
func (r *runner) ribFits(i int) {
	l := &r.piece.Lines[i]
	each, total := int64(l.info.rib), r.now.total()
	if each == 0 || r.shapedFirst(i) || !r.known || !r.round || r.now.behind > 0 || total%each == 0 || !r.wanted(ReasonUneven, l.info.at) {
		return
	}
	over := total % each
	r.fault(KindQuestion, ReasonUneven, l.info.at, int(over), "does the rib end within a repeat where the round begins? it takes "+
		stitches(int(each))+" and "+stitches(int(over))+" "+remain(over)+" over: "+
		strconv.Itoa(int(total-over))+" or "+strconv.Itoa(int(total-over+each))+" would fit, "+multiple(total-over, each))
}

// shapedFirst reports whether the sentence goes on with a change of the count in the first of its
// rows: "dec 3 sts evenly on first rnd".
func (r *runner) shapedFirst(i int) bool {
	if i+1 == len(r.piece.Lines) || r.piece.Lines[i+1].info.ownLine != r.piece.Lines[i].info.ownLine {
		return false
	}
	at := r.piece.Lines[i+1].info.at
	said := strings.ToLower(r.piece.source[at.start:max(at.start, at.end)])
	return strings.Contains(said, "first") || strings.Contains(said, "1st") || strings.Contains(said, "next")
}
