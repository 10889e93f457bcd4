package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/report"
)

// leftAsGiven is said of a text that is not written anew.
var leftAsGiven = report.Notice{Field: "text", Reason: ReasonLeftAsGiven, Description: "the text is left as it was given: " +
	"with its rows written anew it would be read otherwise, or there is too much in it to be mended first"}

// anew is a text with its rows written in the shortest honest form where they stand,
// and all else as it was, and whether reading that gives the same lines. It is asked of
// the reader itself: a row that is written otherwise may change what a word after it
// means that was not read.
func (p *Piece) anew(style RepeatStyle, own []Abbreviation) (lines []Line, text string, same bool) {
	lines = compressed(p.Lines, runsFor(len(p.source)))
	if _, more := p.Findings(); more > 0 {
		return lines, "", false // it has to be mended first
	}
	if text = p.spliced(lines, style); len(text) > MaxTextBytes {
		return lines, text, false
	}
	again := p.room.forTrials().read(text, parser{own: ownNames(own)})
	return lines, text, again.SizeCount == p.SizeCount && sameLines(lines, again.Lines, style)
}

// spliced writes lines in the place of those that were read. Rows that are written as others, "Row 5:
// Rep Row 3", stay so.
func (p *Piece) spliced(lines []Line, style RepeatStyle) string {
	var w strings.Builder
	var done int32
	for i := range lines {
		if !writtenAnew(lines, i) {
			continue
		}
		l := &lines[i]
		w.WriteString(p.source[done:l.info.at.start])
		done = l.info.at.end
		w.WriteString(p.inItsPlace(l, style))
	}
	w.WriteString(p.source[done:])
	return w.String()
}

// inItsPlace is a row as it is written where it stands: with the words that lead its steps in, the end of
// what was printed bold before them, and what ends it for what comes next.
func (p *Piece) inItsPlace(l *Line, style RepeatStyle) string {
	raw, text := p.source[l.info.at.start:l.info.at.end], l.Text(style)
	label, steps := "", text
	if l.Label != "" {
		label, steps = l.Label+":", text[len(l.Label)+1:]
	}
	if strings.HasSuffix(p.source[:l.info.at.start], bold) && strings.Contains(raw, bold) && label != "" {
		label += bold
	}
	if led := p.source[l.info.ledBy.start:l.info.ledBy.end]; led != "" {
		steps = strings.TrimSpace(led) + " " + strings.TrimSpace(steps)
		if label != "" {
			label += " "
		}
	}
	if end := raw[len(raw)-1:]; (end == "." || end == ";") && !strings.HasSuffix(steps, end) {
		steps += end
	}
	return label + steps
}

// bold is what stands before and after what is printed bold.
const bold = "**"

// writtenAnew reports whether a line is a row that is written in its place.
func writtenAnew(lines []Line, i int) bool {
	l := &lines[i]
	return l.Direction == "" && len(l.Steps) > 0 && l.toldBySteps() &&
		(i == 0 || lines[i-1].info.at.end <= l.info.at.start) && (i+1 == len(lines) || l.info.at.end <= lines[i+1].info.at.start)
}

// toldBySteps reports whether all that a row says is told by its steps: no other row, no colour, no edge
// along which stitches are picked up.
func (l *Line) toldBySteps() bool {
	return !l.follows() && !l.info.coloured && !l.fromElsewhere()
}

// follows reports whether a row may be another where rows before it are.
func (l *Line) follows() bool { return l.info.asGiven || l.info.copied }

// fromElsewhere reports whether stitches of a row come from elsewhere than the needle.
func (l *Line) fromElsewhere() bool {
	return l.info.brings || slices.ContainsFunc(l.Steps, func(s Step) bool { return s.Name == pickedUp || s.Name == takenUp })
}

// sameLines reports whether lines are written, and were read, alike.
func sameLines(a, b []Line, style RepeatStyle) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !(a[i].follows() && b[i].follows()) && !sameLine(&a[i], &b[i], style) {
			return false
		}
	}
	return true
}

func sameLine(a, b *Line, style RepeatStyle) bool {
	return a.info.kind == b.info.kind && a.info.forSizes == b.info.forSizes && a.Text(style) == b.Text(style)
}
