package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Options say how a text is read.
type Options struct {
	// SizeCount is the number of sizes; 0 takes it from the first list of
	// numbers in the text, 1 if there is none.
	SizeCount int
	// Abbreviations are the caller's own. Names are told apart by the first.
	Abbreviations []Abbreviation
}

// Read reads a text of at most MaxTextBytes; what is beyond is not read. It
// takes any bytes, and memory in proportion to them.
func Read(text string, o Options) *Piece {
	if len(text) > MaxTextBytes {
		text = text[:MaxTextBytes]
	}
	return read(text, o.SizeCount, ownNames(o.Abbreviations))
}

// read reads a text that is not too long.
func read(text string, sizes int, own map[string]meaning) *Piece {
	p := parser{tokens: scan(text), own: own, sizes: sizes}
	p.found.source = text
	if p.sizes < 1 {
		p.sizes = min(p.sizesIn(), MaxSizes)
	}
	piece := &Piece{source: text, SizeCount: p.sizes}
	for {
		p.skipBreaks()
		t := p.peek()
		if t.kind == tokenEnd {
			break
		}
		if len(piece.Lines) == MaxLines {
			p.mistake(ReasonTooMany, t.span,
				"a text has at most "+strconv.Itoa(MaxLines)+" rows and directions; nothing is read from here on")
			break
		}
		piece.Lines = append(piece.Lines, p.line())
		p.nameRow(&piece.Lines[len(piece.Lines)-1], len(piece.Lines)-1)
	}
	piece.found, piece.looked = p.found, p.looked+len(p.tokens)
	return piece
}

// parser reads tokens by recursive descent, one function for each rule of the
// grammar. A rule that fails has left a finding that says why.
type parser struct {
	tokens []token
	next   int
	sizes  int
	own    map[string]meaning
	found  findings
	depth  int // of brackets and stars
	inside int // brackets open, within which line breaks count for nothing
	stars  []string
	steps  int
	listed int
	named  int              // row numbers in labels and repeats
	names  map[string]int16 // the lines of rows that have a name
	looked int              // tokens looked at ahead, where they may be many: what reading costs
}

func (p *parser) peek() *token { return &p.tokens[p.next] }

// ahead is the token n further on, or the last one.
func (p *parser) ahead(n int) *token { return &p.tokens[min(p.next+n, len(p.tokens)-1)] }

func (t *token) is(texts ...string) bool {
	if t.kind == tokenStar || t.kind == tokenEnd || t.kind == tokenNewline {
		return false
	}
	for _, s := range texts {
		if t.text == s {
			return true
		}
	}
	return false
}

// accept passes over the next token if it is one of the texts.
func (p *parser) accept(texts ...string) bool {
	if p.peek().is(texts...) {
		p.next++
		return true
	}
	return false
}

// acceptAll passes over the words if they all come next, in this order.
func (p *parser) acceptAll(texts ...string) bool {
	for i, s := range texts {
		if !p.ahead(i).is(s) {
			return false
		}
	}
	p.next += len(texts)
	return true
}

// last is the span of the token before the next.
func (p *parser) last() span { return p.tokens[max(p.next-1, 0)].span }

func (p *parser) mistake(reason report.Reason, at span, description string) {
	p.found.add(KindMistake, reason, at, description)
}

func (p *parser) ask(reason report.Reason, at span, description string) {
	p.found.add(KindQuestion, reason, at, description)
}

func (p *parser) reading(at span, description string) {
	p.found.add(KindReading, ReasonReading, at, description)
}

// skipBreaks passes over what stands between lines.
func (p *parser) skipBreaks() {
	for p.peek().kind == tokenNewline || p.peek().is(".", ";", ",") {
		p.next++
	}
}

// line reads one row or direction. Whatever happens, it moves on.
func (p *parser) line() Line {
	from := p.peek().span
	first := p.next
	p.depth, p.inside, p.stars = 0, 0, p.stars[:0]
	line := p.lineBody()
	if p.next == first {
		p.next++
	}
	if line.info.kind == lineUnread {
		p.recover(&line)
	}
	line.info.at = from.to(p.last())
	line.info.ownLine = int(from.line)
	if line.info.kind != lineRow {
		said := p.found.source[from.start:max(from.start, line.info.at.end)]
		line.Direction = joined(said)
		if line.info.kind == lineUnread {
			line.Direction = asBroken(said)
		}
		line.Steps = nil
	}
	return line
}

// recover passes over the rest of a line that could not be read. A claim at its
// end still says how many stitches there are.
func (p *parser) recover(line *Line) {
	for {
		p.looked++
		t := p.peek()
		if t.kind == tokenEnd || t.kind == tokenNewline {
			return
		}
		if t.is(".") {
			p.next++
			if p.startsLine() {
				return
			}
			continue
		}
		if line.ClaimedStitches == nil && line.ClaimedChangeStitches == nil && t.kind == tokenMark && p.claimAhead() {
			p.claim(line)
			continue
		}
		p.next++
	}
}

func (p *parser) lineBody() Line {
	var line Line
	if p.label(&line) {
		if len([]rune(line.Label)) > MaxLabelLength {
			p.mistake(ReasonTooLarge, line.info.at, "a label has at most "+strconv.Itoa(MaxLabelLength)+" characters")
			line.Label, line.info.ranges, line.info.kind = "", nil, lineUnread
			return line
		}
		p.row(&line)
		return line
	}
	if p.direction(&line) {
		if p.peek().is(".") {
			p.next++
			if !p.claimAhead() {
				p.next--
			}
		}
		if line.info.kind != lineUnread && p.claimAhead() {
			p.claim(&line)
		}
		return line
	}
	p.row(&line)
	return line
}

// oneLine reports whether a text that was written from a line was read as one
// line of that kind, in which nothing is wrong; if not, which part of it is to
// blame, "label", "steps" or "direction", and why.
func (p *Piece) oneLine(from *Line) (field, why string, ok bool) {
	field = "steps"
	if from.Direction != "" {
		field = "direction"
	}
	for _, f := range p.found.list {
		if f.Kind != KindReading {
			return field, f.Description, false
		}
	}
	switch {
	case len(p.Lines) != 1:
		return field, "it has several rows", false
	case p.Lines[0].Label != joined(from.Label):
		return "label", "a label ends with row or rnd, and has a number, or at most four words before it", false
	case (p.Lines[0].Direction != "") != (from.Direction != ""):
		return field, "it is a row where a direction is wanted, or the other way round", false
	}
	return "", "", true
}
