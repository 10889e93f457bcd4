package pattern

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// The columns of a proof, in characters: in all no more than a page of a monospaced font
// is wide.
const (
	proofWidth  = 100
	proofMark   = 2 // "!" beside a mistake
	proofLine   = 4 // the number of the line of the draft
	proofRows   = 8 // the rows of the piece
	proofSide   = 6
	proofDraft  = 46
	proofCounts = 16 // before, and after
)

// The marks in the margin of a proof.
const (
	markMistake  = "!"
	markQuestion = "?"
	markReading  = ">"
	markPassed   = "~"
)

// proof is the draft with what it comes to beside it, for a person to read.
func (o *CheckedInstructions) proof(p *Piece, w *Worked) string {
	b := proofWriter{out: o, piece: p, worked: w}
	b.line(o.Summary())
	b.where()
	b.line("")
	b.columns("", "line", "row", "side", "the draft", "before", "after")
	b.line(strings.Repeat("-", proofWidth))
	next, finding := 0, 0
	texts := draftLines(p.source)
	b.Grow(len(p.source) + len(texts)*proofWidth/2)
	for i, text := range texts {
		var lines []int
		for ; next < len(p.Lines) && p.Lines[next].Number() <= i+1; next++ {
			lines = append(lines, next)
		}
		first := finding
		for finding < len(o.Findings) && o.Findings[finding].LineNumber <= i+1 {
			finding++
		}
		b.draftLine(i+1, text, lines, o.Findings[first:finding])
	}
	b.line(strings.Repeat("-", proofWidth))
	b.ending()
	return b.String()
}

// draftLines are the lines of a text as they are counted.
func draftLines(source string) []string {
	source = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u2028", "\n", "\u2029", "\n").Replace(source)
	return strings.Split(strings.TrimRight(source, "\n"), "\n")
}

type proofWriter struct {
	strings.Builder
	out    *CheckedInstructions
	piece  *Piece
	worked *Worked
	passed bool // the line that began last is passed over, and may go on
	// readings are the findings of how it was read, by their text and what they say.
	readings map[string][]*Finding
}

func (b *proofWriter) line(text string) {
	b.WriteString(strings.TrimRight(text, " "))
	b.WriteString("\n")
}

// where lists the lines with mistakes and with questions, where they are several.
func (b *proofWriter) where() {
	var mistakes, questions []string
	for i := range b.out.Findings {
		f := &b.out.Findings[i]
		switch n := numeral(f.LineNumber); {
		case f.Kind == KindMistake && !slices.Contains(mistakes, n):
			mistakes = append(mistakes, n)
		case f.Kind == KindQuestion && !slices.Contains(questions, n):
			questions = append(questions, n)
		}
	}
	for _, q := range [...]struct {
		name  string
		lines []string
	}{{"Mistakes", mistakes}, {"Questions", questions}} {
		if len(q.lines) < 2 {
			continue
		}
		for _, part := range wrapped(q.name+" in lines "+report.Listed(q.lines)+".", proofWidth) {
			b.line(part)
		}
	}
}

// columns writes one line of a proof.
func (b *proofWriter) columns(mark, number, rows, side, text, before, after string) {
	b.line(left(mark, proofMark) + right(number, proofLine) + right(rows, proofRows) + "  " + left(side, proofSide) + left(text, proofDraft) +
		left(before, proofCounts) + after)
}

// draftLine writes a line of the draft with the rows that begin on it, and what was found
// on it below.
func (b *proofWriter) draftLine(number int, text string, lines []int, found []Finding) {
	pieces := wrapped(shown(text), proofDraft-2)
	rows := b.rows(lines)
	mark := b.mark(text, lines, found)
	for k := range max(len(pieces), len(rows), 1) {
		var piece, at string
		var row proofRow
		if k == 0 {
			at = numeral(number)
		} else {
			mark = ""
		}
		if k < len(pieces) {
			piece = pieces[k]
		}
		if k < len(rows) {
			row = rows[k]
		}
		b.columns(mark, at, row.rows, row.side, piece, row.before, row.after)
	}
	for i := range found {
		b.finding(&found[i])
	}
}

// mark is what stands in the margin of a line: the gravest of what was found on it.
func (b *proofWriter) mark(text string, lines []int, found []Finding) string {
	if len(lines) > 0 {
		b.passed = !slices.ContainsFunc(lines, func(i int) bool { return b.piece.Lines[i].info.kind != linePassed })
	}
	mark := ""
	if b.passed && strings.TrimSpace(text) != "" {
		mark = markPassed
	}
	for i := range found {
		switch found[i].Kind {
		case KindMistake:
			return markMistake
		case KindQuestion:
			mark = markQuestion
		}
	}
	return mark
}

// proofRow is what stands beside one line of print.
type proofRow struct{ rows, side, before, after string }

// rows are what stands beside a line of the draft, for each row that begins on it. Several that are
// written as others, "Rows 3-28: Rep Rows 1 and 2", are one.
func (b *proofWriter) rows(lines []int) []proofRow {
	var out []proofRow
	for k := 0; k < len(lines); {
		n := 1
		for k+n < len(lines) && b.piece.Lines[lines[k+n]].info.at.start == b.piece.Lines[lines[k]].info.at.start {
			n++
		}
		if b.piece.Lines[lines[k]].info.kind != linePassed {
			out = append(out, b.rowsOf(lines[k:k+n])...)
		}
		k += n
	}
	return out
}

// rowsOf is what stands beside lines that are one in the text.
func (b *proofWriter) rowsOf(lines []int) []proofRow {
	w, last := &b.worked.Lines[lines[0]], &b.worked.Lines[lines[0]]
	for _, i := range lines[1:] {
		if c := &b.worked.Lines[i]; c.lastRow > last.lastRow {
			last = c
		}
	}
	end := last.EndStitches
	if last.lastEnd != nil {
		end = last.lastEnd
	}
	before, after := wrapped(sized(w.StartStitches), proofCounts-2), wrapped(sized(end), proofCounts-2)
	if w.firstRow > 0 {
		before, after = orAsked(before), orAsked(after)
	}
	out := make([]proofRow, max(len(before), len(after), 1))
	out[0].rows = rowsNamed(w.firstRow, last.lastRow)
	if w.firstRow > 0 {
		out[0].side = sideMark[w.Side]
	}
	for k := range before {
		out[k].before = before[k]
	}
	for k := range after {
		out[k].after = after[k]
	}
	return out
}

// orAsked is a count beside a row, "?" where it is not known.
func orAsked(count []string) []string {
	if len(count) == 0 {
		return []string{"?"}
	}
	return count
}

// sideMark is a side as it stands beside a row.
var sideMark = map[stitch.Side]string{stitch.RightSide: "RS", stitch.WrongSide: "WS"}

// rowsNamed is "3" or "3-12".
func rowsNamed(first, last int) string {
	switch {
	case first == 0:
		return ""
	case last <= first:
		return numeral(first)
	}
	return numeral(first) + "-" + numeral(last)
}

// ending says what the whole comes to, and what the marks are.
func (b *proofWriter) ending() {
	text := "At the end: " + report.AmountOf(orUnknown(sized(b.out.EndStitches)), "sts") + ", after " +
		report.AmountOf(orUnknown(sized(b.out.WorkedRows)), "rows")
	if b.out.RowsOpen {
		text += " and those of which the number is left open"
	}
	for _, part := range wrapped(text+".", proofWidth) {
		b.line(part)
	}
	if b.piece.SizeCount > 1 {
		b.line("Rows are numbered as in the first size.")
	}
	b.line(markMistake + " mistake  " + markQuestion + " question  " + markReading + " how it was read  " +
		markPassed + " passed over: not worked")
}

func orUnknown(text string) string {
	if text == "" {
		return "an unknown number of"
	}
	return text
}
