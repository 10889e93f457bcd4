package pattern

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/stitch"
)

// runCount is about how many runs a text has when its repeats are written out,
// seen at a glance: one for each word, as often as the brackets or stars round it
// say.
type runCount struct {
	runs    int                      // within the brackets at hand
	outer   [stitch.MaxDepth + 2]int // before each bracket that is open
	depth   int
	starred bool
	inWord  bool
}

func runsAt(text string) int {
	var u runCount
	for i := range len(text) {
		c := text[i]
		u.letter(c)
		switch {
		case c == '[' || c == '(' || c == '{' || c == '*' && !u.starred:
			u.open()
		case c == ']' || c == ')' || c == '}' || c == '*':
			u.close(timesAt(text[i+1:]))
		}
		if c == '*' {
			u.starred = !u.starred
		}
	}
	for u.depth > 0 {
		u.close(1)
	}
	return u.runs
}

// letter counts a word where it begins.
func (u *runCount) letter(c byte) {
	letter := c|0x20 >= 'a' && c|0x20 <= 'z'
	if letter && !u.inWord {
		u.runs = cost.Sum(u.runs, 1)
	}
	u.inWord = letter || u.inWord && c >= '0' && c <= '9'
}

func (u *runCount) open() {
	if u.depth < len(u.outer) {
		u.outer[u.depth], u.runs = u.runs, 0
		u.depth++
	}
}

func (u *runCount) close(times int) {
	if u.depth > 0 {
		u.depth--
		u.runs = cost.Sum(u.outer[u.depth], cost.Product(times, u.runs))
	}
}

// timesAt is how often what comes before is worked: a number, or a word for one.
func timesAt(text string) int {
	n := 0
	for i := 0; i < len(text) && (text[i] == ' ' || text[i] >= '0' && text[i] <= '9'); i++ {
		if text[i] != ' ' {
			n = min(10*n+int(text[i]-'0'), MaxNumber)
		}
	}
	if n == 0 {
		return glanceOnce
	}
	return n + 1 // "more times"
}
