package pattern

// glance is what a text asks for, seen without reading it: enough for a price, and
// for any text that is meant to be knit it is more than what is worked. It takes one
// pass over the bytes and remembers nothing of them.
type glance struct {
	lines int // sentences and lines
	rows  int // rows worked in one size, those of repeats and trials included
	sizes int // that a list of numbers is for

	// Of the sentence at hand, from its "rep" on.
	repeats, until bool
	works          bool // "work" was read, which is a repeat where a number of times follows
	large, larger  int  // its two largest numbers

	// Of the list of numbers at hand, in one pair of brackets or several.
	listing bool
	inList  int // numbers in this pair
	before  int // numbers in the pairs before it
	most    int // the greatest number of the list, with the one that leads it

	ranged   bool // the next number is the end of a range
	labelled bool // the next number is that of a row
	row      int  // the number of the last row that has one
}

const (
	glanceUntil = 1_000 // rows of a repeat up to a count or a length: more than in any piece but the largest
	glanceOnce  = 20    // the greatest number that may be written as a word
)

func glanceAt(text string) glance {
	g := glance{lines: 1, sizes: 1}
	for i := 0; i < len(text); {
		switch c := text[i]; {
		case c >= '0' && c <= '9':
			i = g.number(text, i)
			continue
		case c|0x20 >= 'a' && c|0x20 <= 'z':
			i = g.word(text, i)
			continue
		case c == '\n' || c == '.':
			g.lines++
			g.close()
		}
		g.mark(text[i])
		i++
	}
	g.close()
	g.sizes, g.lines = min(g.sizes, MaxSizes), min(g.lines, MaxLines)
	return g
}

// number passes over digits. Rows are worked by the second number of "1-10".
func (g *glance) number(text string, i int) int {
	n := 0
	for ; i < len(text) && text[i] >= '0' && text[i] <= '9'; i++ {
		n = min(10*n+int(text[i]-'0'), MaxRows)
	}
	switch {
	case n > g.larger:
		g.large, g.larger = g.larger, n
	case n > g.large:
		g.large = n
	}
	g.inList++
	g.most = max(g.most, n)
	if g.ranged {
		g.rows += n
	}
	if g.labelled {
		g.rows += max(n-g.row-1, 0) // other rows may be worked between the two
		g.row = n
	}
	g.ranged, g.labelled = false, false
	return i
}

// word passes over letters. Rows are worked by the numbers before the word, "10 (12)
// rows".
func (g *glance) word(text string, i int) int {
	from := i
	for i < len(text) && text[i]|0x20 >= 'a' && text[i]|0x20 <= 'z' {
		i++
	}
	g.ranged, g.labelled = false, false
	switch word := text[from:i]; {
	case begins(word, "row"), begins(word, "rnd"), begins(word, "round"):
		g.rows += g.most
		g.labelled = !g.repeats
	case begins(word, "rep"):
		g.close()
		g.repeats = true
	case begins(word, "work"):
		g.works = true
	case begins(word, "times"), begins(word, "alternate"):
		g.repeats = g.repeats || g.works || word[0]|0x20 == 'a'
	case begins(word, "every"): // each run of a schedule by itself
		if g.larger > 0 {
			g.close()
		}
		g.repeats = true
	case begins(word, "from"), begins(word, "bet"): // of the row, and no row
		g.repeats = false
	case begins(word, "unt"):
		g.until = true
	case begins(word, "to"), begins(word, "thr"):
		g.ranged = true
	}
	g.listing, g.before, g.most = false, 0, 0
	return i
}

// mark passes over what is neither, and counts the numbers within brackets.
func (g *glance) mark(c byte) {
	switch c {
	case ' ':
		return
	case '-':
		g.inList++ // a size that does without
		g.ranged = true
		return
	case 0x93, 0x94: // the last bytes of the long dashes
		g.ranged = true
		return
	case ',', ';':
	case ':':
		g.most = 0
	case '(', '[', '{':
		g.listing, g.inList = true, 0
	case ')', ']', '}':
		if g.listing {
			g.before += g.inList
			g.sizes = max(g.sizes, g.before+1)
		}
		g.listing = false
	default:
		if c < 0x80 {
			g.listing, g.before, g.most = false, 0, 0
		}
	}
	g.ranged, g.labelled = false, false
}

// close adds up the sentence at hand.
func (g *glance) close() {
	switch {
	case !g.repeats:
	case g.until || g.larger == 0:
		g.rows += glanceUntil + 3*max(g.larger, glanceOnce)
	default:
		g.rows += min((g.larger+1)*max(g.large, glanceOnce), MaxRows) + 3*max(g.larger, glanceOnce)
	}
	g.repeats, g.works, g.until, g.large, g.larger = false, false, false, 0, 0
}

// begins reports whether a text begins with a word in lower case, whatever its own
// case.
func begins(text, word string) bool {
	if len(text) < len(word) {
		return false
	}
	for i := range len(word) {
		if text[i]|0x20 != word[i] {
			return false
		}
	}
	return true
}
