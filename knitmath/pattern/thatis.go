package pattern

// thatIs passes over the full stop of "i.e.", and a comma behind it, where the word was just read: what
// follows says the same once more.
func (s *scanner) thatIs(word string) bool {
	if word != "ie" {
		return false
	}
	for _, mark := range [...]byte{'.', ','} {
		if s.at < len(s.source) && s.source[s.at] == mark {
			s.advance(1)
		}
	}
	return true
}
