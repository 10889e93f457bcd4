package pattern

import (
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
	text, ok := p.spliced(lines, style)
	if !ok || len(text) > MaxTextBytes {
		return lines, text, false
	}
	again := p.room.forTrials().read(text, parser{own: ownNames(own)})
	return lines, text, again.SizeCount == p.SizeCount && sameLines(lines, again.Lines, style)
}

// spliced writes lines in the place of those that were read.
func (p *Piece) spliced(lines []Line, style RepeatStyle) (text string, ok bool) {
	var w strings.Builder
	var done int32
	for i := range lines {
		l := &lines[i]
		if l.Direction != "" || len(l.Steps) == 0 || l.info.asGiven {
			continue
		}
		if l.info.at.start < done {
			return "", false
		}
		w.WriteString(p.source[done:l.info.at.start])
		written := l.Text(style)
		w.WriteString(written)
		done = l.info.at.end
		if end := p.source[done-1 : done]; (end == "." || end == ";") && !strings.HasSuffix(written, end) {
			w.WriteString(end) // it ends the row for what comes next
		}
	}
	w.WriteString(p.source[done:])
	return w.String(), true
}

// sameLines reports whether lines are written, and were read, alike.
func sameLines(a, b []Line, style RepeatStyle) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].info.kind != b[i].info.kind || a[i].info.forSizes != b[i].info.forSizes || a[i].Text(style) != b[i].Text(style) {
			return false
		}
	}
	return true
}
