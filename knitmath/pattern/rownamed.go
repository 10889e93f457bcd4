package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/draft"
)

// The name of a row is written in many ways, and becomes one here: "R 1", "SR 1", "Row No. 1" and "Row #1" are "Row 1", and so is
// the first cell of a table.

// rowLettered reports whether a word stands for "row", where a number follows: the "R" of "R 1", the "SR" of "SR 3" of short rows.
func (s *scanner) rowLettered(word string) bool {
	n := len(s.tokens)
	switch word {
	case "r":
		return s.digitNext(true) && (s.sentenceStart(n) || s.rowsNamedNext(n)) || s.digitNext(false) && s.lineStart() && s.rowColon()
	case "sr", "srs":
		return s.digitNext(false) && (s.sentenceStart(n) || s.rowsNamedNext(n))
	}
	return false
}

// rowColon reports whether a number and then a colon, a dash or a bracket stand next.
func (s *scanner) rowColon() bool {
	rest := strings.TrimLeft(s.source[s.at:min(len(s.source), s.at+12)], " ")
	rest = strings.TrimLeft(strings.TrimLeft(rest, "0123456789"), " ")
	if rest == "" {
		return false
	}
	for _, c := range rest {
		c = draft.Plain(c)
		return c == ':' || c == '-' || c == '(' || c == '[' || c == '.'
	}
	return false
}

// numberSign reports whether "No." or "#" stands between "row" and its number; it is passed over.
func (s *scanner) numberSign() bool {
	n := len(s.tokens)
	if n == 0 || !s.tokens[n-1].row() {
		return false
	}
	trimmed := strings.TrimLeft(strings.TrimPrefix(s.source[s.at:], "."), " ")
	if trimmed == "" || !isDigit(rune(trimmed[0])) {
		return false
	}
	s.skipTo(len(s.source) - len(trimmed))
	return true
}

// namesRow reads a sign that belongs to the name of a row, or to a table of rows.
func (s *scanner) namesRow(from span, c rune) bool {
	return c == '|' && s.cell(from) || c == '#' && s.hashed()
}

// hashed passes over the "#" of "Row #1".
func (s *scanner) hashed() bool {
	s.at++
	ok := s.numberSign()
	if s.at--; ok {
		s.at++
		s.column++
	}
	return ok
}

// cell reads the stroke between the cells of a table that has a row in each of its lines, "| 1 | K2, p2 | 4 |": the first cell is
// the number of the row, and a number at the end its count. It reports whether the stroke was one of these.
func (s *scanner) cell(from span) bool {
	cells := s.cellsAhead()
	if s.lineStart() {
		named, _, labelled := strings.Cut(cells[0], ":")
		if labelled && rowCell(named) { // a row with its label
			s.advance(1)
			return true
		}
		return len(cells) > 1 && s.firstCell(from, cells)
	}
	n := len(s.tokens)
	switch {
	case n < 2 || !s.rowInLine():
		return false
	case cells[0] == "": // the end of the line
		s.advance(1)
	case s.tokens[n-2].row() && s.tokens[n-1].kind == tokenNumber && workedCell(cells[0]):
		s.advance(1)
		s.put(tokenMark, from, ":")
	case isDigit(rune(cells[0][0])):
		s.advance(1)
		s.put(tokenMark, from, "=")
	default:
		return false
	}
	return true
}

// firstCell reads the stroke with which a line of such a table begins.
func (s *scanner) firstCell(from span, cells []string) bool {
	switch {
	case rowCell(cells[0]) && workedCell(cells[1]):
		s.advance(1)
		if isDigit(rune(cells[0][0])) {
			s.put(tokenWord, from, "row")
		}
		return true
	case headCell(cells[0]):
		s.skipTo(s.at + lineLength(s.source[s.at:]))
		return true
	}
	return false
}

// cellsAhead are the cells after the stroke at hand, up to the end of its line.
func (s *scanner) cellsAhead() []string {
	line := s.source[s.at+1:]
	line = line[:lineLength(line)]
	s.ahead += len(line)
	cells := strings.Split(line, "|")
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	return cells
}

// lineLength is how long the first line of a text is, at most as long as a table is read.
func lineLength(text string) int {
	text = text[:min(len(text), maxBullet)]
	if i := strings.IndexAny(text, "\r\n"); i >= 0 {
		return i
	}
	return len(text)
}

// rowCell reports whether a cell names a row by its number, "1" or "Row 1".
func rowCell(cell string) bool {
	for _, head := range [...]string{"row ", "rnd ", "round ", "r"} {
		if begins(cell, head) {
			cell = strings.TrimLeft(cell[len(head):], " ")
			break
		}
	}
	_, ok := whole(cell)
	return ok
}

// headCell reports whether a cell stands at the head of a column, or in the line below it.
func headCell(cell string) bool {
	switch strings.ToLower(strings.Trim(cell, "*.:#")) {
	case "row", "rows", "rnd", "round", "row no", "no":
		return true
	}
	return len(cell) > 1 && strings.Trim(cell, "-: ") == ""
}

// workedCell reports whether a cell begins with what is worked.
func workedCell(cell string) bool {
	return cell != "" && strings.IndexByte("kKpPsS*[(", cell[0]) >= 0
}

// rowInLine reports whether the line at hand begins with the name of a row.
func (s *scanner) rowInLine() bool {
	for i := len(s.tokens) - 1; i > 0 && s.tokens[i].kind != tokenNewline; i-- {
		s.ahead++
		if s.tokens[i].kind == tokenNumber && s.tokens[i-1].row() && (i == 1 || s.tokens[i-2].kind == tokenNewline) {
			return true
		}
	}
	return false
}
