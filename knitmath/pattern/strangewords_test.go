package pattern

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// strangeWords are made up or misspelt: no knitter knows them.
var strangeWords = strings.Fields(`flurble grumph xyzzy plonkit wibble snorf quuxle bramp tazzle florp k2tgo ssk2togg
	purrl qx incresae decraese yoo
	cblf 	tw2x knti pruls slp m1q kfbb grumph3 k2tgther ktbl2x sskk ppsso yyo m11l kfbk rsk zt vw jjk flm qqt bx7 wq knitt purll slpi knot2 pss
	Flurble QX Knti Purrl vvzz brk9 glorp crinkel stitchl twirlo nubbet yarnovr decr3x incc sstr`)

// strangePlaces are where such a word may stand, at the sign %.
var strangePlaces = []string{
	"Row 1: %", "Row 1: %.\nRow 2: Knit.", "Row 1: K3, %, k to end. (20 sts)", "Row 1: [K3, %] twice, k to end.",
	"Row 1: K3, % 3 times, k to end.",
	"Row 1: *k2, %; rep from * to end.", "Row 1: K2 % k17.", "% 1: K20.\nRow 2: P20.", "% 1 (RS): K20.", "Row 1: K20.\n% 2: P20.", "% k18.",
	"%\nRow 1: K20.", "%.", "Knit 3 rows, %.", "Row 1: K to last 3 sts, %, k1.", "Row 1: K2, (k1, %) in next st, k to end.",
}

// strangePrefixes are signs that stand before the word in its line or above it, and are of one, two,
// three or four bytes, or read as other signs, or not at all.
var strangePrefixes = []string{"", "\ufeff", "CO 20 sts\u00ad.\r\n", "Größe 1: für alle\n", "🧶 🐑 Notes\n\n", "Ｃａｐ\n",
	"e\u0301te\u0301\r\n\r\n"}

// TestStrangeWordsAreNotUnderstood: that is what is said of them, in the very place where they stand.
// Columns are counted in characters, of however many bytes.
func TestStrangeWordsAreNotUnderstood(t *testing.T) {
	asked := 0
	for _, word := range strangeWords {
		for _, place := range strangePlaces {
			for _, prefix := range strangePrefixes {
				text := prefix + "CO 20 sts.\n" + strings.Replace(place, "%", word, 1)
				if !strings.Contains(prefix, "CO") {
					text = prefix + "CO 20 sts.\nK\u00adnit 2 ｒｏｗｓ. " + strings.Replace(place, "%", word, 1)
				}
				before := text[:strings.LastIndex(text, word)]
				line := 1 + strings.Count(before, "\n")
				column := 1 + utf8.RuneCountInString(before[strings.LastIndexByte(before, '\n')+1:])
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				asked++
				if err != nil || !saysNotUnderstood(&out, line, column, word) {
					t.Errorf("%q: %v, not at %d:%d: %s", text, err, line, column, judgedText(out.Findings))
				}
			}
		}
	}
	t.Logf("%d texts", asked)
}

// saysNotUnderstood reports whether a finding about a word stands at its place, and calls it not understood.
func saysNotUnderstood(out *CheckedInstructions, line, column int, word string) bool {
	for _, f := range out.Findings {
		if f.Kind == KindQuestion && f.LineNumber == line && f.ColumnNumber == column && strings.HasPrefix(f.Text, word) {
			return strings.HasPrefix(f.Description, "not understood")
		}
	}
	return false
}
