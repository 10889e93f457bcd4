package pattern

import "strings"

// rowHyphened puts the first word of "Short-row 3" apart, so that a row is called so with a hyphen
// as without, and returns where the word that is left begins.
func (s *scanner) rowHyphened(from span) span {
	written := s.source[from.start:s.at]
	hyphen := strings.LastIndexByte(written, '-')
	if hyphen < 1 || !s.numberNext() {
		return from
	}
	switch strings.ToLower(written[hyphen+1:]) {
	case "row", "rows", "rnd", "rnds", "round", "rounds":
	default:
		return from
	}
	end, column := s.at, s.column
	s.at, s.column = int(from.start)+hyphen, column-int32(len(written)-hyphen)
	s.put(tokenWord, from, strings.ToLower(written[:hyphen]))
	s.advance(1)
	from = s.here()
	s.at, s.column = end, column
	return from
}

// numberNext reports whether a number stands next, after spaces.
func (s *scanner) numberNext() bool {
	at := s.at
	for at < len(s.source) && s.source[at] == ' ' && at < s.at+3 {
		at++
	}
	return at > s.at && at < len(s.source) && isDigit(rune(s.source[at]))
}
