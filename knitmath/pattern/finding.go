package pattern

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/knitmath/knitmath/report"
)

// Kind says what a finding asks of the reader.
type Kind int32

// The kinds of findings.
const (
	// KindUnspecified is never sent.
	KindUnspecified Kind = iota
	// KindMistake: the pattern cannot be right as it stands.
	KindMistake
	// KindQuestion: it cannot be read or judged without an answer.
	KindQuestion
	// KindReading: it can be read in several ways; this one was taken.
	KindReading
)

// A Finding is one remark on a text.
type Finding struct {
	Kind   Kind
	Reason report.Reason
	// LineNumber and ColumnNumber are where the text begins, both from 1; columns count
	// characters. 0 when it is about no one place.
	LineNumber, ColumnNumber int
	// Text is the piece of the text that is meant, cut off after 60 characters.
	Text string
	// Description says what is wrong and what would be right.
	Description string
	// SizeNumbers are the sizes that it is about, from 1, in order; empty for all.
	SizeNumbers []int
	// DifferenceStitches are, for each of them, how many stitches are left over
	// (above 0) or missing (below 0); empty where that means nothing.
	DifferenceStitches []int
	// WorkedRowNumber is the row of the piece in which it first shows, from 1, in the
	// first of the sizes; 0 for what is seen without working.
	WorkedRowNumber int
	// Corrections are changes of the text that were tried and make it right, the
	// likeliest first; see correct.
	Corrections []Correction

	at   span
	from int32 // where the line begins at which it was found
}

// span is a stretch of the text.
type span struct {
	start, end   int32 // bytes
	line, column int32
}

// to is the span from s to the end of t.
func (s span) to(t span) span {
	s.end = max(s.end, t.end)
	return s
}

// findings gathers remarks; those of one place and reason are one.
type findings struct {
	list     []Finding
	at       map[findingKey]int
	source   string
	more     int // mistakes and questions not listed
	unsaid   int // readings not listed
	readings int // listed
}

// mark is how much has been found, to go back to.
type mark struct{ listed, more, unsaid, readings int }

func (f *findings) mark() mark { return mark{len(f.list), f.more, f.unsaid, f.readings} }

// rewind forgets what was found since a mark.
func (f *findings) rewind(m mark) {
	if len(f.list) > m.listed {
		for key, i := range f.at {
			if i >= m.listed {
				delete(f.at, key)
			}
		}
		f.list = f.list[:m.listed]
	}
	f.more, f.unsaid, f.readings = m.more, m.unsaid, m.readings
}

type findingKey struct {
	start  int32
	reason report.Reason
}

//go:noinline
func (f *findings) add(kind Kind, reason report.Reason, at span, description string) {
	f.place(kind, reason, at, description)
}

// place returns the index of the finding of this place and reason, and whether
// it is new; -1 when there is no room for it.
func (f *findings) place(kind Kind, reason report.Reason, at span, description string) (int, bool) {
	key := findingKey{at.start, reason}
	if i, known := f.at[key]; known {
		return i, false
	}
	if kind == KindReading {
		if f.readings == maxReadings || len(f.list) >= MaxFindings { // there is always room for what has to be mended
			f.unsaid++
			return -1, false
		}
		f.readings++
	}
	if len(f.list) >= MaxFindings {
		f.more++
		return -1, false
	}
	if f.at == nil {
		f.at = map[findingKey]int{}
	}
	f.at[key] = len(f.list)
	f.list = append(f.list, Finding{Kind: kind, Reason: reason, LineNumber: int(at.line), ColumnNumber: int(at.column),
		Text: snippet(f.source, at), Description: description, at: at})
	return len(f.list) - 1, true
}

// snippet is the piece of the text, at most 60 characters, on one line.
func snippet(source string, at span) string {
	if int(at.end) > len(source) || at.start >= at.end {
		return ""
	}
	return shorten(source[at.start:at.end], 60)
}

// shorten is a text joined and cut off.
func shorten(text string, most int) string {
	if len(text) > 8*most {
		text = text[:8*most]
	}
	text = joined(text)
	if utf8.RuneCountInString(text) <= most {
		return text
	}
	n := 0
	for i := range text {
		if n == most-1 {
			return text[:i] + "…"
		}
		n++
	}
	return text
}

// joined is a text on one line, its words apart by single spaces, and valid
// UTF-8.
func joined(text string) string {
	text = strings.TrimSpace(strings.ToValidUTF8(text, "\uFFFD"))
	if isJoined(text) { // as most are
		return text
	}
	var b strings.Builder
	b.Grow(len(text))
	gap := false
	for _, r := range text {
		if unicode.IsSpace(r) {
			gap = true
			continue
		}
		if gap {
			b.WriteByte(' ')
			gap = false
		}
		b.WriteRune(r)
	}
	return b.String()
}

// isJoined reports whether the words of a trimmed text are apart by single spaces.
func isJoined(text string) bool {
	before := rune(0)
	for _, r := range text {
		if unicode.IsSpace(r) && (r != ' ' || before == ' ') {
			return false
		}
		before = r
	}
	return true
}

// asBroken is a text with its line breaks kept, each of its lines joined: what
// could not be read must not become readable by being written on one line.
func asBroken(text string) string {
	var kept []string
	for text != "" {
		line := text
		if end := strings.IndexAny(text, "\n\r"); end >= 0 {
			line, text = text[:end], text[end+1:]
		} else {
			text = ""
		}
		if line = joined(line); line != "" {
			kept = append(kept, line)
		}
	}
	return strings.Join(kept, "\n")
}
