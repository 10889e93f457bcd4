package pattern

// rowAgain reports whether the word that ends here says once more that what comes is the number of
// a row, in a range or a list of them: the second word of "R8-R18", "Row 1 through Row 6" and
// "R1, R3 and R5". It adds nothing to the first, and makes no token.
func (s *scanner) rowAgain(word string) bool {
	lettered := word == "r"
	if !lettered && !(&token{kind: tokenWord, text: word}).row() || !s.digitNext(lettered) {
		return false
	}
	n := len(s.tokens) - 1
	if n < 2 || !s.tokens[n].among("- ~ to through thru") && !(lettered && s.tokens[n].among(", and & +")) {
		return false
	}
	for ; n >= 2 && s.tokens[n-1].kind == tokenNumber && s.tokens[n].kind != tokenNumber; n -= 2 {
		if s.tokens[n-2].row() {
			return true
		}
	}
	return false
}

// digitNext reports whether a digit comes next, at once or after a blank.
func (s *scanner) digitNext(atOnce bool) bool {
	at := s.at
	for !atOnce && at < len(s.source) && s.source[at] == ' ' {
		at++
	}
	return at < len(s.source) && isDigit(rune(s.source[at]))
}

// afterRowNumber reports whether what stands before may go on with the number of another row: a
// number, and what parts it from the next.
func (s *scanner) afterRowNumber() bool {
	n := len(s.tokens) - 1
	return n >= 2 && s.tokens[n].among("- ~ to through thru , and & +") && s.tokens[n-1].kind == tokenNumber
}

// rowsNamedNext reports whether the token before the n-th is a word after which rows are named: "rep R1-R4", "same as R3".
func (s *scanner) rowsNamedNext(n int) bool {
	return n > 0 && s.tokens[n-1].among("rep repeat as work of from after with then like")
}
