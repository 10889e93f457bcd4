package pattern

import "testing"

// sixthDir holds pieces and drafts whose expectations were written before this room was asked
// about them: see its README. When they were first asked, 57 of the 81 pieces were read right, 15
// asked about, 9 called mistaken, none refused and none agreed with in silence; of the four drafts one
// agreed, with one alarm, which was right, and two questions, 37 of 37 counts and 17 of 18 planted
// mistakes.
const sixthDir = "../../testdata/pattern/sixth"

// sixthRight is how many pieces are read right, sixthAlarms how many are called mistaken and are
// none. Worse fails.
const (
	sixthRight  = 77
	sixthAlarms = 0
)

// sixthDrafts is how its drafts stand.
var sixthDrafts = proofread{agreeing: 4, alarms: 0, questions: 0, countsRight: 37, found: 18}

// TestSixthCorpus asks the pieces of the sixth corpus and prints their table by kind.
func TestSixthCorpus(t *testing.T) {
	askPieces(t, sixthDir, sixthRight, sixthAlarms, 0)
}

// TestSixthDrafts reads its drafts as they are, and with each of their mistakes.
func TestSixthDrafts(t *testing.T) {
	askDrafts(t, sixthDir, sixthDrafts)
}
