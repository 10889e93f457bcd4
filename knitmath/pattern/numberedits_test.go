package pattern

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Of so many numbers that are exchanged for another, each seeded by its number, no more of a hundred
// may be agreed with: rows that are worked even, lengths, where a marker lies that nothing is said
// of, which no count tells.
const numbersAgreed = 17

var anyNumber = regexp.MustCompile(`[0-9]+`)

// TestNumbersThatNobodyMinds guards how much of a draft is proofread: one number of what is worked
// is exchanged, by one, two, twice, with its digits the other way round, and counted is how often
// the text is agreed with all the same.
func TestNumbersThatNobodyMinds(t *testing.T) {
	texts := agreeingDrafts(t)
	agreed, tried := 0, 0
	most := knittest.Sweep(2000, 800)
	for n := range most {
		r := rand.New(rand.NewPCG(23, uint64(n)))
		text := texts[r.IntN(len(texts))]
		from := max(strings.Index(strings.ToLower(text), "cast on"), strings.Index(text, "CO "))
		if from < 0 {
			continue
		}
		all := anyNumber.FindAllStringIndex(text[from:], -1)
		at := all[r.IntN(len(all))]
		was, err := strconv.Atoi(text[from+at[0] : from+at[1]])
		puts := editsOf(was)
		if err != nil || len(puts) == 0 {
			continue
		}
		edited := text[:from+at[0]] + strconv.Itoa(puts[r.IntN(len(puts))]) + text[from+at[1]:]
		tried++
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: edited}); err == nil && out.Agrees {
			agreed++
		}
	}
	t.Logf("%d of %d agreed with", agreed, tried)
	if tried < most/2 || 100*agreed > numbersAgreed*tried {
		t.Errorf("%d of %d edits are agreed with; %d of a hundred may be", agreed, tried, numbersAgreed)
	}
}
