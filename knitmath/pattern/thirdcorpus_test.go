package pattern

import "testing"

// thirdDir holds pieces and drafts whose expectations were written before this room was asked
// about them: see its README.
const thirdDir = "../../testdata/pattern/third"

// thirdRight is how many pieces are read right, thirdAlarms how many are called mistaken and are
// none, thirdFound how many planted mistakes are found in the drafts. Worse fails.
const (
	thirdRight  = 0
	thirdAlarms = 150
	thirdFound  = 0
)

// TestThirdCorpus asks the pieces of the third corpus and prints their table by kind.
func TestThirdCorpus(t *testing.T) {
	askPieces(t, thirdDir, thirdRight, thirdAlarms)
}

// TestThirdDrafts reads its drafts as they are, and with each of their mistakes.
func TestThirdDrafts(t *testing.T) {
	if sum := askDrafts(t, thirdDir); sum.found < thirdFound || sum.silent > 0 {
		t.Errorf("worse than it stood: %+v", sum)
	}
}
