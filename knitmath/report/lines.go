package report

import "strconv"

// Lines are texts that are written one after the other, word by word, all of them in one piece of memory.
type Lines struct {
	text []byte
	ends []int
}

// Room is lines of about so many bytes in all.
func Room(lines, bytes int) Lines {
	return Lines{make([]byte, 0, bytes), make([]int, 0, lines)}
}

// Say adds words to the line.
func (l *Lines) Say(words ...string) {
	for _, w := range words {
		l.text = append(l.text, w...)
	}
}

// Number adds a number to the line.
func (l *Lines) Number(n int) { l.text = strconv.AppendInt(l.text, int64(n), 10) }

// Count adds what CountOf says.
func (l *Lines) Count(n int, plural string) {
	if n == 1 {
		plural = singular(plural)
	}
	l.Number(n)
	l.Say(" ", plural)
}

// Append adds what append adds to a text, to the line.
func (l *Lines) Append(add func([]byte) []byte) { l.text = add(l.text) }

// Rows adds what Rows says.
func (l *Lines) Rows(noun string, first, last int) {
	l.text = append(l.text, noun...)
	if at := len(l.text) - len(noun); noun != "" && 'a' <= noun[0] && noun[0] <= 'z' {
		l.text[at] -= 'a' - 'A'
	}
	if first == last {
		l.Say(" ")
		l.Number(first)
		return
	}
	l.Say("s ")
	l.Number(first)
	l.Say("-")
	l.Number(last)
}

// Even adds a line "Rows 3-7: work even.", or nothing where the last lies before the first.
func (l *Lines) Even(noun string, first, last int) {
	if first <= last {
		l.Rows(noun, first, last)
		l.End(": work even.")
	}
}

// End adds words to the line and ends it.
func (l *Lines) End(words ...string) {
	l.Say(words...)
	l.ends = append(l.ends, len(l.text))
}

// Line is all that was said, as one.
func (l *Lines) Line() string { return string(l.text) }

// Strings are the lines.
func (l *Lines) Strings() []string {
	all, list, begin := string(l.text), make([]string, len(l.ends)), 0
	for i, end := range l.ends {
		list[i], begin = all[begin:end], end
	}
	return list
}
