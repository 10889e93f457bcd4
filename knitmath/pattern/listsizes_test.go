package pattern

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// lastInList is the last number of a list of sizes.
var lastInList = regexp.MustCompile(`, \d+\)`)

// listsUnsaid is how many of a hundred lists of sizes may lack one in silence: it is what tells how many sizes
// there are, or has but two numbers, which may be anything else.
const listsUnsaid = 3

// TestSizeLeftOut: whole drafts of all corpora, each list of sizes once without its last number, also of
// yarn, measures and parts told beside a count: that is said.
func TestSizeLeftOut(t *testing.T) {
	tried, unsaid := 0, 0
	for i, text := range wholeDrafts(t) {
		if i%knittest.Sweep(1, 6) != 0 {
			continue
		}
		known := judgedIn(t, text)
		for _, at := range lastInList.FindAllStringIndex(text, -1) {
			tried++
			if edited := text[:at[0]] + ")" + text[at[1]:]; !saysMore(known, judgedIn(t, edited)) {
				unsaid++
			}
		}
	}
	t.Logf("%d of %d lists lack a size unsaid", unsaid, tried)
	if tried < knittest.Sweep(500, 50) || 100*unsaid > knittest.Sweep(listsUnsaid, 20)*tried {
		t.Errorf("%d of %d lists lack a size unsaid, %d of a hundred stood", unsaid, tried, listsUnsaid)
	}
}

// wholeDrafts are the drafts of all corpora.
func wholeDrafts(t *testing.T) []string {
	t.Helper()
	var texts []string
	for _, files := range []string{"../../testdata/pattern/*/drafts/*.txt", freshDir + "/*.txt", "../../testdata/pattern/*.txt"} {
		found, err := filepath.Glob(files)
		if err != nil || len(found) == 0 {
			t.Fatalf("%s: %d, %v", files, len(found), err)
		}
		for _, file := range found {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			texts = append(texts, string(text))
		}
	}
	return texts
}

// judgedIn are the mistakes and questions of a text, without their places, which may move.
func judgedIn(t *testing.T, text string) map[string]bool {
	t.Helper()
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
	if err != nil {
		return map[string]bool{err.Error(): true}
	}
	said := map[string]bool{}
	for _, f := range out.Findings {
		if f.Kind != KindReading {
			said[fmt.Sprint(f.Reason, f.Text, f.SizeNumbers, f.DifferenceStitches)] = true
		}
	}
	return said
}

// saysMore reports whether something is found that was not before.
func saysMore(before, after map[string]bool) bool {
	for k := range after {
		if !before[k] {
			return true
		}
	}
	return false
}

// TestListsOfOtherThings: what stands in brackets after a number and is no list of sizes.
func TestListsOfOtherThings(t *testing.T) {
	for sizes := 3; sizes < 8; sizes++ {
		list := "60 (" + strings.TrimSuffix(strings.Repeat("66, ", sizes-1), ", ") + ")"
		parts := strings.TrimSuffix(strings.Repeat("10, ", sizes), ", ")
		for _, other := range []string{
			fmt.Sprintf("Materials: %d buttons (%s)\n", 10*sizes, parts), "Yarn: 2 balls (50 g)\n", "Notes: see page 4 (5 in print)\n",
		} {
			text := other + "CO " + list + " sts.\nKnit 4 rows."
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
				t.Errorf("%s: %v %s", text, err, said(&out))
			}
		}
	}
}
