package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
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
	p := parser{tokens: scan(text), own: ownNames(o.Abbreviations), sizes: o.SizeCount}
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
			p.mistake(ReasonTooMany, t.span, "a text has at most "+strconv.Itoa(MaxLines)+" rows and directions; nothing is read from here on")
			break
		}
		piece.Lines = append(piece.Lines, p.line())
	}
	piece.found = p.found
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
	named  int // row numbers in labels and repeats
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

func (p *parser) mistake(reason string, at span, description string) {
	p.found.add(KindMistake, reason, at, description)
}

func (p *parser) ask(reason string, at span, description string) {
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
		line.Direction = joined(p.found.source[from.start:max(from.start, line.info.at.end)])
		line.Steps = nil
	}
	return line
}

// recover passes over the rest of a line that could not be read. A claim at its
// end still says how many stitches there are.
func (p *parser) recover(line *Line) {
	for {
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
		if line.ClaimedCounts == nil && line.ClaimedChanges == nil && t.kind == tokenMark && p.claimAhead() {
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

// row reads steps and the claim after them.
func (p *parser) row(line *Line) {
	steps, ok := p.items("")
	line.Steps = steps
	if !ok {
		line.info.kind = lineUnread
		return
	}
	if p.claimAhead() && !p.claim(line) {
		line.info.kind = lineUnread
		return
	}
	if t := p.peek(); t.is(".") {
		p.next++
	}
	t := p.peek()
	switch {
	case t.is(")", "]", "}"):
		p.mistake(ReasonStray, t.span, "no bracket is open here")
	case t.is("rep", "repeat") && !p.startsLine():
		p.mistake(ReasonNoStar, t.span, "no star is open here")
	case t.kind != tokenEnd && t.kind != tokenNewline && !p.startsLine():
		p.ask(ReasonUnread, t.span, "nothing is expected after the count")
	case len(steps) == 0:
		at := line.info.at
		if line.Label == "" || at.end == 0 {
			at = p.last()
		}
		p.mistake(ReasonEmpty, at, "the row has no steps")
	default:
		if p.placed(steps) {
			p.fit(steps)
			return
		}
	}
	line.info.kind = lineUnread
}

// fit gives every "rep from *" without an end the stitches that must remain.
func (p *parser) fit(steps []Step) {
	for i := range steps {
		if s := &steps[i]; s.toFit {
			s.toFit = false
			s.LastCounts = make([]int, p.sizes)
			for size := range s.LastCounts {
				s.LastCounts[size] = int(min(restTakes(steps[i+1:], size), MaxNumber))
			}
			s.LastCounts = tidy(s.LastCounts)
		}
	}
}

// placed checks that turns end their row, that nothing inside a repeat is worked
// to the last stitches, and how deep repeats lie.
func (p *parser) placed(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.Operation.EndsRow() && i == len(steps)-1 && len(s.Counts) == 1 && s.Counts[0] == 1 {
			continue
		}
		if !p.placedInside(s, 0) {
			return false
		}
	}
	return true
}

// pass is the most stitches that one working of a step takes in any size.
func (p *parser) pass(s *Step) int64 {
	n := int64(0)
	for size := range p.sizes {
		n = max(n, s.pass(size).takes)
	}
	return n
}

func (p *parser) placedInside(s *Step, depth int) bool {
	switch {
	case s.Steps != nil && depth == stitch.MaxDepth:
		p.tooDeep(s.at)
		return false
	case s.Operation.EndsRow():
		p.mistake(ReasonTurnInside, s.at, "the work is turned here: what follows is a row of its own")
		return false
	case s.stretch() && depth > 0:
		p.mistake(ReasonStretch, s.at, "within a repeat it would find no stitches the second time: say how many")
		return false
	case s.stretch() && p.pass(s) < 1:
		p.mistake(ReasonNever, s.at, "it takes no stitch from the left needle and never gets there")
		return false
	}
	for i := range s.Steps {
		if !p.placedInside(&s.Steps[i], depth+1) {
			return false
		}
	}
	return true
}

// items reads steps up to a closing bracket, the end of the row, a claim, or
// "rep from *". inner is the closing bracket awaited, "" at the top.
func (p *parser) items(inner string) ([]Step, bool) {
	var steps []Step
	for {
		if p.separators(inner) {
			return steps, true
		}
		t := p.peek()
		switch {
		case t.kind == tokenEnd || t.is(")", "]", "}"), p.claimAhead():
			return steps, true
		case t.is("rep", "repeat") && len(p.stars) > 0:
			return steps, true
		case t.is("rep", "repeat") && inner == "":
			return steps, true
		case t.kind == tokenStar && len(p.stars) > 0 && p.stars[len(p.stars)-1] == t.text:
			return steps, true
		}
		if p.steps++; p.steps > MaxSteps {
			p.mistake(ReasonTooMany, t.span, "a text has at most "+strconv.Itoa(MaxSteps)+" steps; the row is not read from here on")
			return steps, false
		}
		s, ok := p.item(len(steps) == 0 && inner == "")
		if !ok {
			return steps, false
		}
		if s, ok := p.passedOver(steps, s); ok {
			steps = s
			continue
		}
		steps = append(steps, s)
	}
}

// separators passes over commas, full stops and the like. It reports whether the
// row ends here: with its line, unless a comma came last, or where the next
// sentence begins a line of its own.
func (p *parser) separators(inner string) bool {
	comma := false
	for {
		t := p.peek()
		switch {
		case t.is(",", ";", ":"):
			comma = true
		case t.is("and", "then", "&", "ending", "end", "ends", "with") && !p.ahead(1).is("ws", "rs"):
		case t.is("."):
			if p.tokens[p.next+1].kind == tokenNewline && inner == "" && p.inside == 0 {
				p.next++
				return true
			}
			p.next++
			if p.startsLine() {
				return true
			}
			continue
		case t.kind == tokenNewline:
			p.next++
			if p.startsLine() || inner == "" && p.inside == 0 && !comma && !p.repeatAhead() {
				p.next--
				return true
			}
			continue
		default:
			return false
		}
		p.next++
	}
}

// repeatAhead reports whether "rep from *" comes next, which belongs to the row
// before it also on a new line.
func (p *parser) repeatAhead() bool {
	return len(p.stars) > 0 && p.peek().is("rep", "repeat")
}

// passedOver makes "sl 1, k1, psso" one skp, "sl 1, k2tog, psso" one sk2p and
// "sl 2, k1, p2sso" one cdd: they are other words for them.
func (p *parser) passedOver(steps []Step, s Step) ([]Step, bool) {
	n := len(steps)
	if n < 2 || s.Name != "psso" && s.Name != "p2sso" || len(s.Counts) != 1 || s.Counts[0] != 1 {
		return nil, false
	}
	slipped, worked := &steps[n-2], &steps[n-1]
	if slipped.Operation != stitch.Slip || !single(worked.Counts, 1) || worked.LastCounts != nil {
		return nil, false
	}
	var op stitch.Op
	switch {
	case s.Name == "psso" && single(slipped.Counts, 1) && worked.Operation == stitch.Knit:
		op = stitch.SKP
	case s.Name == "psso" && single(slipped.Counts, 1) && worked.Operation == stitch.K2tog:
		op = stitch.SK2P
	case single(slipped.Counts, 2) && worked.Operation == stitch.Knit:
		op = stitch.CDD
	default:
		return nil, false
	}
	at := slipped.at.to(s.at)
	steps = append(steps[:n-2], Step{Operation: op, Counts: one, at: at, takes: int16(op.Takes()), leaves: int16(op.Leaves())})
	return steps, true
}

func single(numbers []int, n int) bool { return len(numbers) == 1 && numbers[0] == n }

// OneLine reports whether a text that was written from a line was read as one
// line of that kind, in which nothing is wrong; if not, which part of it is to
// blame, "label", "steps" or "direction", and why.
func (p *Piece) OneLine(from *Line) (field, why string, ok bool) {
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
