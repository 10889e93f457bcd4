package pattern

import "strings"

// finding writes what was found, below its line. How a word is read is written where it
// stands first, with the number of its places.
func (b *proofWriter) finding(f *Finding) {
	mark, name := markReading, "read as"
	places := b.places(f)
	switch {
	case f.Kind == KindMistake:
		mark, name = markMistake, "mistake"
	case f.Kind == KindQuestion:
		mark, name = markQuestion, "question"
	case f.Reason == ReasonPassedOver:
		return // the margin says it, or it is of no weight
	case len(places) > 0 && places[0] != f:
		return
	}
	const indent = proofMark + proofLine + proofRows + 2 + proofSide
	text := b.findingText(name, f)
	if len(places) > 1 {
		text += " It stands in " + numeral(len(places)) + " places."
	}
	parts := wrapped(shown(text), proofWidth-indent-2)
	for i := range f.Corrections {
		if rows := f.Corrections[i].Replacement; strings.Contains(rows, "\n") { // rows that are put in are written out
			for _, row := range strings.Split(rows, "\n") {
				parts = append(parts, wrapped(shown("+ "+row), proofWidth-indent-2)...)
			}
		}
	}
	for k, part := range parts {
		if k > 0 {
			mark = ""
		}
		b.line(left(mark, proofMark) + strings.Repeat(" ", indent-proofMark+2) + part)
	}
}

// places are the findings that say of the same word what f says, if it is how a word is read.
func (b *proofWriter) places(f *Finding) []*Finding {
	if f.Kind != KindReading || strings.ContainsAny(f.Text, " \n") {
		return nil
	}
	if b.readings == nil {
		b.readings = map[string][]*Finding{}
		for i := range b.out.Findings {
			if g := &b.out.Findings[i]; g.Kind == KindReading {
				b.readings[g.Text+"\n"+g.Description] = append(b.readings[g.Text+"\n"+g.Description], g)
			}
		}
	}
	return b.readings[f.Text+"\n"+f.Description]
}

// findingText is what was found, where, in which sizes, and with what it would be right.
func (b *proofWriter) findingText(name string, f *Finding) string {
	text := name + " at column " + numeral(f.ColumnNumber)
	if f.Text != "" {
		text += ", \"" + f.Text + "\""
	}
	text += ": " + f.Description
	if !strings.HasSuffix(text, ".") && !strings.HasSuffix(text, "?") {
		text += "."
	}
	if n := len(f.SizeNumbers); b.piece.SizeCount > 1 && n > 0 && !strings.Contains(f.Description, "size "+numeral(f.SizeNumbers[0])+":") {
		text += " In size " + sizesListed(f.SizeNumbers) + "."
	}
	return text + b.correctionsText(f)
}

// correctionsText says with what a line would be right, and where that is put.
func (b *proofWriter) correctionsText(f *Finding) string {
	if len(f.Corrections) == 0 {
		return ""
	}
	text := ""
	for k, c := range f.Corrections {
		if k == 0 {
			text += " It would be right with " + c.Description
		} else {
			text += ", or with " + c.Description
		}
		switch {
		case c.LineNumber != f.LineNumber:
			text += " in line " + numeral(c.LineNumber)
		case c.Text != "" && b.severalTimes(&c):
			text += " at column " + numeral(c.ColumnNumber)
		}
	}
	return text + "."
}

// severalTimes reports whether what a correction replaces stands in its line more than once.
func (b *proofWriter) severalTimes(c *Correction) bool {
	lines := draftLines(b.piece.source)
	return c.LineNumber >= 1 && c.LineNumber <= len(lines) && strings.Count(lines[c.LineNumber-1], c.Text) > 1
}

func sizesListed(numbers []int) string {
	texts := make([]string, len(numbers))
	for i, n := range numbers {
		texts[i] = numeral(n)
	}
	return strings.Join(texts, ", ")
}
