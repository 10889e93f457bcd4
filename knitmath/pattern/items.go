package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

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
	if n < 2 || s.Name != "psso" && s.Name != "p2sso" || len(s.Times) != 1 || s.Times[0] != 1 {
		return nil, false
	}
	slipped, worked := &steps[n-2], &steps[n-1]
	if slipped.Operation != stitch.Slip || !single(worked.Times, 1) || worked.RemainingStitches != nil {
		return nil, false
	}
	var op stitch.Op
	switch {
	case s.Name == "psso" && single(slipped.Times, 1) && worked.Operation == stitch.Knit:
		op = stitch.SKP
	case s.Name == "psso" && single(slipped.Times, 1) && worked.Operation == stitch.K2tog:
		op = stitch.SK2P
	case single(slipped.Times, 2) && worked.Operation == stitch.Knit:
		op = stitch.CDD
	default:
		return nil, false
	}
	at := slipped.at.to(s.at)
	steps = append(steps[:n-2], Step{Operation: op, Times: one, at: at, takes: int16(op.Takes()), leaves: int16(op.Leaves())})
	return steps, true
}

func single(numbers []int, n int) bool { return len(numbers) == 1 && numbers[0] == n }
