package pattern

import "testing"

// ninthDir holds pieces by four editors who had not seen this room: see its README. When they were first asked, 189 of the 320 were
// read right, 83 asked about, 25 called mistaken, 13 refused, 5 agreed with in silence against what was expected (two of them by rows
// alone) and 5 mistakes missed. After a day's mends, for which only the odd pieces were looked at, 122 of the 160 odd ones were right
// (93 before) and 99 of the 160 even ones (96 before): mends of one sentence hardly carry over to the next.
const ninthDir = "../../testdata/pattern/ninth"

// ninthRight is how many pieces are read right, ninthAlarms how many are called mistaken and are none. Worse fails.
const (
	ninthRight  = 245
	ninthAlarms = 9
	ninthSilent = 0
)

// TestNinthCorpus asks the pieces of the ninth corpus and prints their table by kind.
func TestNinthCorpus(t *testing.T) {
	askPieces(t, ninthDir, ninthRight, ninthAlarms, ninthSilent)
}
